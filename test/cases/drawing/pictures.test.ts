import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { writeSvg } from '../../../src/drawing/svg/write-svg.ts'
import { figureFacts } from '../../../src/drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../../../src/drawing/views/figures.ts'
import { stripDrawing, stripPages } from '../../../src/drawing/views/strip.ts'
import { figureRequirements } from './figure-requirements.ts'
import { bridgeRun, culvertRun, mixedVerdicts } from './hand-layouts.ts'
import { whyNotWellFormed } from './well-formed.ts'

const culvert = culvertRun(6)
const judged = { ...culvert, verdicts: mixedVerdicts(culvert.layout) }
const long = culvertRun(26)

const pictures: Readonly<Record<string, () => Drawing>> = {
  'strip-web': () => stripDrawing(culvert),
  'strip-web-judged': () => stripDrawing(judged),
  'strip-letter': () => stripPages(judged, 'letter')[0]!,
  'strip-letter-long': () => stripPages({ ...long, verdicts: mixedVerdicts(long.layout) }, 'letter')[0]!,
  'strip-a4-bridge-end': () => stripPages(bridgeRun(), 'A4')[0]!,
  ...Object.fromEntries(
    [...figureRequirements].map(([name, requirement]) => [
      `figure-${name}`,
      () => figureDrawing(requirement.figure!, figureFacts(requirement, culvert.first.sheet!)),
    ]),
  ),
}

/** `LAPWISE_UPDATE=1 npx vitest run --project unit test/cases/drawing` writes them anew: look at each before it is kept. */
describe.each(Object.entries(pictures))('%s', (name, draw) => {
  const folder = new URL(`./${name}/`, import.meta.url)
  const file = new URL('expected.svg', folder)

  it('is drawn as the picture that was looked at', () => {
    const svg = writeSvg(draw())
    if (process.env.LAPWISE_UPDATE === '1') {
      mkdirSync(folder, { recursive: true })
      writeFileSync(file, svg)
    }
    expect(svg).toBe(readFileSync(file, 'utf8'))
  })

  it('is well-formed XML', () => {
    expect(whyNotWellFormed(writeSvg(draw()))).toBe(null)
  })
})

it('the check of well-formedness refuses what is not', () => {
  const bad = ['<a>', '<a></b>', '<a/><b/>', '<a x="1" x="2"/>', '<a>1 & 2</a>', '<a x="<"/>', '<a x=1/>', 'words']
  for (const xml of bad) expect(whyNotWellFormed(xml), xml).not.toBe(null)
  expect(whyNotWellFormed('<a x="&lt;1&gt;"><b/>1 &amp; 2</a>')).toBe(null)
})
