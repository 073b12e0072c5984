import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { moved } from '../../../src/drawing/draw.ts'
import type { Drawing, Item } from '../../../src/drawing/drawing.ts'
import { writeSvg } from '../../../src/drawing/svg/write-svg.ts'
import { pictureDifference, readPng, renderSvg, writePng } from './picture-pixels.ts'
import { pictures } from './pictures.ts'
import { whyNotWellFormed } from './well-formed.ts'

const results = new URL('../../../test-results/drawing/', import.meta.url)

describe.each(Object.entries(pictures))('%s', (name, draw) => {
  it('is drawn as the picture that was looked at, in well-formed XML', () => {
    const svg = writeSvg(draw())
    expect(whyNotWellFormed(svg)).toBe(null)
    const difference = pictureDifference(expectedPicture(name), renderSvg(svg))
    if (difference === null) return
    mkdirSync(results, { recursive: true })
    const file = new URL(`${name}-difference.png`, results)
    writeFileSync(file, writePng(difference.shown))
    writeFileSync(new URL(`${name}-drawn.png`, results), writePng(renderSvg(svg)))
    expect.fail(`${difference.words}: see ${file.pathname}; after a look, npx tsx scripts/draw-expected.ts keeps it`)
  })
})

const expectedPicture = (name: string) => readPng(readFileSync(new URL(`./${name}/expected.png`, import.meta.url)))

it('every picture that is kept belongs to a drawing', () => {
  const folders = readdirSync(new URL('.', import.meta.url), { withFileTypes: true }).filter((one) => one.isDirectory())
  expect(folders.map((one) => one.name).sort()).toEqual(Object.keys(pictures).sort())
})

describe('the comparison of pictures', () => {
  const name = 'strip-letter'
  const drawing = pictures[name]!()
  const postPen = drawing.layers.find((layer) => layer.name === 'posts')!.penPoints
  const refusal = (change: (items: readonly Item[]) => Item[]): string | null => {
    const changed: Drawing = { ...drawing, items: change(drawing.items) }
    return pictureDifference(expectedPicture(name), renderSvg(writeSvg(changed)))?.words ?? null
  }
  // The sign of its verdict is a group of the same name with another title.
  const isPost = (item: Item): boolean =>
    item.kind === 'group' && item.id === 'post-9' && item.title.startsWith('post 9, ')
  const movePost = (points: number) => (items: readonly Item[]) =>
    items.map((item) => (isPost(item) ? moved(item, (points * drawing.scale) / 72, 0) : item))

  it('refuses one post that moved by the width of its line, and by a fifth of it', () => {
    expect(refusal(movePost(postPen))).toMatch(/^\d+ pixels differ$/)
    expect(refusal(movePost(postPen / 5))).toMatch(/^\d+ pixels differ$/)
  })

  it('lets a post pass that moved by less than the last digit that is written', () => {
    expect(refusal(movePost(0.002))).toBe(null)
  })

  it('refuses a missing post, one other letter and a picture of another size', () => {
    expect(refusal((items) => items.filter((item) => !isPost(item)))).not.toBe(null)
    const otherTitle = (item: Item): Item =>
      item.kind === 'text' && item.text === 'County Road 14' ? { ...item, text: 'County Road 15' } : item
    expect(refusal((items) => items.map(otherTitle))).not.toBe(null)
    expect(pictureDifference(expectedPicture(name), expectedPicture('strip-web'))?.words).toContain('pixels expected')
  })
})

it('the check of well-formedness refuses what is not', () => {
  const bad = ['<a>', '<a></b>', '<a/><b/>', '<a x="1" x="2"/>', '<a>1 & 2</a>', '<a x="<"/>', '<a x=1/>', 'words']
  for (const xml of bad) expect(whyNotWellFormed(xml), xml).not.toBe(null)
  expect(whyNotWellFormed('<a x="&lt;1&gt;"><b/>1 &amp; 2</a>')).toBe(null)
})
