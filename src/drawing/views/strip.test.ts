import { describe, expect, it } from 'vitest'
import { boxOf, drawnGroups, drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { bridgeRun, culvertRun, mirrored, mixedVerdicts } from '../../../test/cases/drawing/hand-layouts.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import { dimensionParts } from '../dimension-parts.ts'
import type { Drawing, Group } from '../drawing.ts'
import { papers } from '../paper.ts'
import type { StripInput } from './strip/strip-input.ts'
import { stripDrawing, stripPages } from './strip.ts'

const judged = (input: StripInput): StripInput => ({ ...input, verdicts: mixedVerdicts(input.layout) })

const runs: readonly (readonly [string, StripInput])[] = [
  ['a short run', judged(culvertRun(6))],
  ['a run of 60 posts', judged(culvertRun(26))],
  ['a run of 300 posts', judged(culvertRun(146))],
  ['a bridge end and a standing run', judged(bridgeRun())],
]
const paperNames = Object.keys(papers) as PaperName[]

/** Centre of the sign of each post, by number: its post or omitted-post shape, not its block. */
function postCentres(drawing: Drawing): Map<string, number> {
  const centre = (group: Group): number => {
    const sign = group.items.find((item) => item.kind === 'area' && item.layer === 'posts')!
    const box = boxOf(sign as Exclude<typeof sign, Group>, drawing.scale)
    return (box.minX + box.maxX) / 2
  }
  const signs = drawnGroups(drawing.items, /^post-/).filter((group) =>
    group.items.some((item) => 'layer' in item && item.layer === 'posts'),
  )
  return new Map(signs.map((group) => [group.id, centre(group)]))
}

describe.each(runs)('the strip of %s', (_, input) => {
  it('shows every post once, where the layout puts it', () => {
    const centres = postCentres(stripDrawing(input))
    expect(centres.size).toBe(input.layout.posts.length)
    for (const post of input.layout.posts) expect(centres.get(`post-${post.number}`)).toBeCloseTo(post.alongInches, 6)
  })

  it.each(paperNames)('shows every post once over the pages on %s, at one scale', (page) => {
    const drawings = stripPages(input, page, 'own')
    const centres = drawings.map(postCentres)
    const ids = centres.flatMap((map) => [...map.keys()])
    expect(ids.sort()).toEqual(input.layout.posts.map((post) => `post-${post.number}`).sort())
    for (const drawing of drawings) {
      expect(drawing.scale).toBe(drawings[0]!.scale)
      expect(((drawing.extent.maxX - drawing.extent.minX) / drawing.scale) * 72).toBeCloseTo(
        papers[page].widthPoints,
        6,
      )
    }
  })

  it('keeps the distances between posts of one row of a page true', () => {
    for (const drawing of stripPages(input, 'letter', 'own')) {
      const centres = postCentres(drawing)
      const { posts } = input.layout
      posts.slice(1).forEach((post, i) => {
        const [a, b] = [centres.get(`post-${posts[i]!.number}`), centres.get(`post-${post.number}`)]
        if (a === undefined || b === undefined || b < a) return
        expect(b - a).toBeCloseTo(post.alongInches - posts[i]!.alongInches, 6)
      })
    }
  })

  it('writes the length of every panel, on the long strip and on paper', () => {
    const lengths = input.units === 'metric' ? /\d+\.\d{3} m$/ : /\d' [\d /]+"$|^\d+"$/
    for (const drawings of [[stripDrawing(input)], stripPages(input, 'letter', 'own')]) {
      const written = drawings.flatMap((drawing) =>
        drawnGroups(drawing.items, /^panel-/).filter((group) =>
          drawnWords({ ...drawing, items: group.items }).some((words) => lengths.test(words)),
        ),
      )
      expect(new Set(written.map((group) => group.id)).size).toBe(input.layout.panels.length)
    }
  })

  it('has a sign for every place that was judged, at least once', () => {
    const places = new Set(input.verdicts!.map((verdict) => verdict.requirement.split('/')[0]!))
    const signed = new Set(
      stripPages(input, 'tabloid', 'own')
        .flatMap((drawing) => drawnGroups(drawing.items, /./))
        .filter((group) => drawnItems(group.items).some((item) => item.layer.startsWith('verdict')))
        .map((group) => group.id),
    )
    expect(signed).toEqual(places)
  })

  it.each(paperNames)('keeps everything within the page on %s, in letters of at least 6.5 points', (page) => {
    for (const drawing of stripPages(input, page, 'own')) {
      const margin = (18 * drawing.scale) / 72
      for (const item of drawnItems(drawing.items)) {
        const box = boxOf(item, drawing.scale)
        expect(box.minX, JSON.stringify(item)).toBeGreaterThanOrEqual(margin)
        expect(box.maxX, JSON.stringify(item)).toBeLessThanOrEqual(drawing.extent.maxX - margin)
        expect(box.minY, JSON.stringify(item)).toBeGreaterThanOrEqual(margin)
        expect(box.maxY, JSON.stringify(item)).toBeLessThanOrEqual(drawing.extent.maxY - margin)
        if (item.kind === 'text' || item.kind === 'dimension')
          expect('points' in item.height && item.height.points).toBeGreaterThanOrEqual(6.5)
      }
    }
  })

  it.each(paperNames)('lets no text run into another on %s', (page) => {
    for (const drawing of stripPages(input, page, 'own')) {
      const texts = drawnItems(drawing.items).flatMap((item) =>
        item.kind === 'text'
          ? [item]
          : item.kind === 'dimension'
            ? [dimensionParts(item, drawing.scale / 72).text]
            : [],
      )
      const boxes = texts.map((item) => boxOf(item, drawing.scale))
      const touching = boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .flatMap((b, j) =>
            a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY
              ? [`${texts[i]!.text} | ${texts[i + 1 + j]!.text}`]
              : [],
          ),
      )
      expect(touching).toEqual([])
    }
  })
})

describe('the strip', () => {
  it('of a mirrored run is the mirrored strip, flare and all', () => {
    const input = culvertRun(6)
    const { posts } = input.layout
    const last = posts.at(-1)!.alongInches
    const signAt = (drawing: Drawing, number: number) => {
      const group = drawnGroups(drawing.items, new RegExp(`^post-${number}$`))[0]!
      return boxOf(drawnItems(group.items).find((item) => item.layer === 'posts')!, drawing.scale)
    }
    const [there, back] = [stripDrawing(input), stripDrawing(mirrored(input))]
    for (const post of posts) {
      const [a, b] = [signAt(there, post.number), signAt(back, posts.length + 1 - post.number)]
      expect(b.minX).toBeCloseTo(last - a.maxX, 6)
      expect(b.minY).toBeCloseTo(a.minY, 6)
    }
  })

  it('draws the flare at its true offset, or enlarged and then says so', () => {
    const head = (exaggeration: number) => {
      const drawing = stripDrawing({ ...culvertRun(6), lateralExaggeration: exaggeration })
      const rail = drawnItems(drawnGroups(drawing.items, /^panel-1$/)[0]!.items).find(
        (item) => item.kind === 'polyline',
      )!
      return { y: rail.points[0]!.y, words: drawnWords(drawing).join(' ') }
    }
    // The sheet of the flared terminal says 48 in.
    expect(head(1).y).toBeCloseTo(-48, 6)
    expect(head(1).words).toContain('to the same scale')
    expect(head(3).y).toBeCloseTo(-144, 6)
    expect(head(3).words).toContain('OFFSETS ARE DRAWN 3 TIMES THEIR SIZE')
  })

  it('lays the upstream panel on the traffic side of every splice, and says so', () => {
    const input = culvertRun(6)
    const drawing = stripDrawing(input)
    for (const splice of input.layout.splices) {
      const rail = (number: number) =>
        drawnItems(drawnGroups(drawing.items, new RegExp(`^panel-${number}$`))[0]!.items).find(
          (item) => item.kind === 'polyline',
        )!
      // Both panels reach over the splice; at the end of the upstream one, the downstream one lies behind it.
      const up = rail(splice.number).points.at(-1)!
      const down = rail(splice.number + 1).points
      expect(up.x).toBeGreaterThan(splice.alongInches)
      expect(down[0]!.x).toBeLessThan(splice.alongInches)
      expect(down[1]!.y).toBeLessThan(up.y)
      expect(drawnGroups(drawing.items, new RegExp(`^splice-${splice.number}$`))[0]!.title).toContain(
        'upstream panel on the traffic side',
      )
    }
  })

  it('laps the second end the other way where its sheet goes by the terminal', () => {
    const input = mirrored(culvertRun(6))
    const sheet = { ...input.second.sheet!, lap: { ...input.second.sheet!.lap, rule: 'terminal end-on' as const } }
    const drawing = stripDrawing({ ...input, second: { ...input.second, sheet } })
    const titles = input.layout.splices.map(
      (splice) => drawnGroups(drawing.items, new RegExp(`^splice-${splice.number}$`))[0]!.title,
    )
    const own = input.layout.splices.map((splice) => splice.unit === 'second')
    expect(titles.map((title) => title.includes('downstream panel on the traffic side'))).toEqual(own)
    expect(own).toContain(true)
  })

  it('tells a post that breaks away, a special, a moved and a standing one apart by shape', () => {
    const shapes = (input: StripInput, number: number) =>
      drawnGroups(stripDrawing(input).items, new RegExp(`^post-${number}$`))[0]!
        .items.filter((item) => item.kind !== 'text' && 'layer' in item && item.layer === 'posts')
        .map((item) => (item.kind === 'area' ? `${item.points.length} ${item.fill}` : item.kind))
        .join(', ')
    const [culvert, bridge] = [culvertRun(6), bridgeRun()]
    const all = [shapes(culvert, 1), shapes(culvert, 7), shapes(culvert, 10), shapes(bridge, 14), shapes(bridge, 15)]
    expect(new Set(all).size).toBe(5)
  })

  it('gives the worst verdict of a place, with how many are as bad', () => {
    const input = culvertRun(6)
    const verdicts = mixedVerdicts(input.layout).filter((verdict) => verdict.requirement.startsWith('post-1/'))
    expect(verdicts.map((verdict) => verdict.verdict)).toEqual(['fails', 'too close', 'meets'])
    const drawing = stripDrawing({ ...input, verdicts })
    expect(drawnGroups(drawing.items, /^post-1$/).map((group) => group.title)).toContain('post 1: fails, 1 of 3')
  })

  it('marks the need and the rail that counts where they are, counted from post 1', () => {
    const drawing = stripDrawing(bridgeRun())
    const [need] = drawnGroups(drawing.items, /^need$/)
    const box = boxOf(drawnItems(need!.items)[0]!, drawing.scale)
    // The datum lies 100 in before post 1.
    expect([box.minX, box.maxX]).toEqual([0, 400])
    expect(drawnGroups(drawing.items, /^counts$/)[0]!.title).toContain('goes on in the standing run')
  })
})
