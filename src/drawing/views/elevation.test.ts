import { describe, expect, it } from 'vitest'
import { drawnGroups, drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { bridgeRun, culvertRun } from '../../../test/cases/drawing/hand-layouts.ts'
import { touchingTexts } from '../../../test/cases/drawing/site-text-boxes.ts'
import type { Area, Drawing } from '../drawing.ts'
import { writeSvg } from '../svg/write-svg.ts'
import { equalSpaces } from './elevation/spacing-items.ts'
import { elevationDrawing, elevationPages } from './elevation.ts'

/** The largest upright shape of a post: its part above finish grade. */
function postBody(drawing: Drawing, number: number): { left: number; right: number; top: number } {
  const [post] = drawnGroups(drawing.items, new RegExp(`^post-${number}$`))
  const bodies = post!.items.filter((item): item is Area => item.kind === 'area' && item.layer === 'posts')
  const xs = bodies.flatMap((body) => body.points.map((p) => p.x))
  const ys = bodies.flatMap((body) => body.points.map((p) => p.y))
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.max(...ys) }
}

describe.each([
  ['culvert', culvertRun(6)],
  ['bridge end', bridgeRun()],
] as const)('the elevation of the run “%s”', (_, input) => {
  const drawing = elevationDrawing(input)

  it('has the middle of every post where the layout has it', () => {
    for (const post of input.layout.posts) {
      const { left, right } = postBody(drawing, post.number)
      expect((left + right) / 2).toBeCloseTo(post.alongInches, 9)
    }
  })

  it('has the top of rail 31 in above finish grade, and its lower edge 12 1/4 in below (M 180)', () => {
    const rail = drawnItems(drawing.items).filter((item): item is Area => item.kind === 'area' && item.layer === 'rail')
    expect(rail).toHaveLength(input.layout.panels.length)
    const ys = new Set(rail.flatMap((one) => one.points.map((p) => p.y)))
    expect([...ys].sort((a, b) => a - b)).toEqual([31 - 12.25, 31])
  })

  it('keeps texts apart on every page', () => {
    for (const page of ['letter', 'tabloid', 'A4', 'A3'] as const)
      for (const one of elevationPages(input, page, 'own')) expect(touchingTexts(one)).toEqual([])
  })
})

describe('dimensions', () => {
  it('say feet and inches: spaces, panels and height of the 31-in run', () => {
    const words = drawnWords(elevationDrawing(culvertRun(6)))
    // Posts 1 to 12 stand 6 ft 3 in apart: 11 x 75 in = 825 in = 68 ft 9 in; then a post is left out.
    expect(words).toEqual(expect.arrayContaining(['11 x 6\' 3" = 68\' 9"', '12\' 6"', 'panel 3: 9\' 4 1/2"', '31 in']))
  })

  it('say metres and millimetres in a metric run, and nothing in feet or inches but the names and limits of sheets', () => {
    const input = bridgeRun()
    const words = drawnWords(elevationDrawing(input))
    // 18.75 in = 0.47625 m; 5 of them 2.38125 m; 31 in = 787.4 mm.
    expect(words).toEqual(expect.arrayContaining(['5 x 0.476 m = 2.381 m', 'panel 4: 3.810 m', '787 mm']))
    const names = [input.first.name, input.system.name]
    const own = words.filter(
      (one) => !names.some((name) => one.includes(name.slice(0, 6))) && !one.includes('as the sheets state it'),
    )
    expect(own.filter((one) => /\d ?(in|ft|'|")(?![a-z])/.test(one))).toEqual([])
  })
})

it('on paper, distances in the SVG are those of the layout at the stated scale, and the bar is 2 in long', () => {
  const input = culvertRun(6)
  const [drawing] = elevationPages(input, 'letter', 'own')
  const svg = writeSvg(drawing!)
  expect(svg).toContain('Scale 1 in = 10 ft (1:120) when printed at 100 % on letter paper')
  expect(svg).toContain('width="279.4mm" height="215.9mm" viewBox="0 0 792 612"')
  const middleOf = (number: number): number => {
    const group = new RegExp(`<g data-place="post-${number}">.*?</g>`).exec(svg)![0]
    const corners = [...group.matchAll(/<polygon points="([^"]*)"/g)].at(-1)![1]!.split(' ')
    const xs = corners.map((corner) => Number(corner.split(',')[0]))
    return (Math.min(...xs) + Math.max(...xs)) / 2
  }
  // 75 in at 1:120 are 0.625 in = 45 points of the 72 to the inch, to the 0.01 points that are written.
  expect(middleOf(5) - middleOf(4)).toBeCloseTo(45, 1)
  expect(middleOf(12) - middleOf(1)).toBeCloseTo(11 * 45, 1)
  const bar = drawing!.items.filter(
    (item): item is Area => item.kind === 'area' && item.layer === 'dimensions' && item.points.length === 4,
  )
  const xs = bar.flatMap((part) => part.points.map((p) => p.x))
  // 20 ft, as its words say, at 1:120 are 2 in.
  expect((Math.max(...xs) - Math.min(...xs)) / 120).toBeCloseTo(2, 9)
  expect(drawnWords(drawing!)).toContain('20 ft')
})

it('spaces of one width are counted together, and only neighbours', () => {
  const posts = [0, 75, 150, 187.5, 225, 300].map((alongInches) => ({ alongInches }))
  expect(equalSpaces(posts)).toEqual([
    { fromInches: 0, toInches: 150, count: 2 },
    { fromInches: 150, toInches: 225, count: 2 },
    { fromInches: 225, toInches: 300, count: 1 },
  ])
})
