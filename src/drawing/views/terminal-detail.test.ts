import { describe, expect, it } from 'vitest'
import { drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { bridgeRun, culvertRun, shippedSheet } from '../../../test/cases/drawing/hand-layouts.ts'
import { touchingTexts } from '../../../test/cases/drawing/site-text-boxes.ts'
import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Polyline } from '../drawing.ts'
import type { StripInput } from './strip/strip-input.ts'
import { terminalDetail } from './terminal-detail.ts'

const flared = terminalDetail(culvertRun(6), 'first', 'letter')!

describe('the detail of a flared terminal', () => {
  it('has the offsets of a straight flare of 48 in that runs out at the splice after the adapter', () => {
    // Straight from 48 in at post 1 to nothing at the splice 12 ft 6 in + 12 ft 6 in + 9 ft 4 1/2 in = 412.5 in on, posts 75 in
    // apart: 48 x (412.5 - 75 k) / 412.5 = 48 - 8.7273 k, here to the nearest 1/16 in.
    expect(drawnWords(flared)).toEqual(
      expect.arrayContaining(['48 in', '39 1/4 in', '30 9/16 in', '21 13/16 in', '13 1/16 in', '4 3/8 in']),
    )
    const face = flared.items.find((item): item is Polyline => item.kind === 'polyline' && item.layer === 'rail')!
    const [head, end] = [face.points[0]!, face.points.at(-1)!]
    expect(end.y - head.y).toBeCloseTo(48, 9)
  })

  it('says of posts 1 and 2 what the facts of the trade say: hinge sides, slots, stub (its facts 9, 10, 12 to 15)', () => {
    const said = flared.description
    expect(said).toMatch(
      /Post 1 \(1\): [^.]*no offset block, rail not bolted, hinge bolt toward the head, stub at most 4 in/,
    )
    expect(said).toMatch(
      /Post 2 \(2\): [^.]*hinge bolt away from the head, rail held in the upper slots, on the side toward the head/,
    )
    expect(said).toContain('5-in side up and its 3-in side down')
  })

  it('numbers its callouts from left to right, each once in the picture and once in the list', () => {
    const numbers = drawnItems(flared.items).flatMap((item) =>
      item.kind === 'text' && item.layer === 'text' && item.bold && /^\d+$/.test(item.text) && item.level === 'middle'
        ? [Number(item.text)]
        : [],
    )
    expect(numbers).toEqual(numbers.map((_, i) => i + 1))
    expect(numbers.length).toBeGreaterThan(8)
  })
})

const withFirst = (id: string): StripInput => {
  const sheet = shippedSheet(id) as EndSheet
  return { ...culvertRun(6), first: { name: sheet.name, kind: sheet.kind, sheet } }
}

it.each([
  ['flared', culvertRun(6), 'first'],
  ['anchor', culvertRun(6), 'second'],
  ['anchor, metric', { ...culvertRun(6), units: 'metric' }, 'second'],
  ['bridge', bridgeRun(), 'first'],
  ['tangent', withFirst('tangent-terminal-31'), 'first'],
  ['buried', withFirst('buried-end-31'), 'first'],
] as const)('the detail of every kind of end keeps its texts apart and on its page: %s', (_, input, which) => {
  for (const page of ['letter', 'A4', 'A3'] as const) {
    const drawing = terminalDetail(input, which, page)!
    expect(touchingTexts(drawing)).toEqual([])
    for (const item of drawnItems(drawing.items)) {
      if (item.kind !== 'text') continue
      expect(item.at.x, item.text).toBeGreaterThan(0)
      expect(item.at.x, item.text).toBeLessThan(drawing.extent.maxX)
      expect(item.at.y, item.text).toBeGreaterThan(0)
    }
  }
})

it('the detail of the second end names posts by the numbers of the run, its own in brackets', () => {
  // Nineteen posts; the anchor counts its two from the far end.
  expect(terminalDetail(culvertRun(6), 'second', 'letter')!.description).toContain('Posts 18 to 19 (2 to 1): ')
})

it('an end without a sheet has no detail', () => {
  expect(terminalDetail(bridgeRun(), 'second', 'letter')).toBe(null)
})
