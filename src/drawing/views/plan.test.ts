import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxOf, drawnGroups, drawnItems, drawnWords } from '../../../test/cases/drawing/drawn.ts'
import { mirrorPair, siteInput, siteInputs, twoWaySite } from '../../../test/cases/drawing/site-inputs.ts'
import { cornersOf, touchingTexts } from '../../../test/cases/drawing/site-text-boxes.ts'
import { findNeed } from '../../core/need/need.ts'
import type { Site } from '../../core/site/site.ts'
import { feet } from '../../core/units/quantity.ts'
import type { Drawing, Polyline } from '../drawing.ts'
import { barrierLine } from './plan/barrier-line.ts'
import type { SitePage } from './plan/site-view.ts'
import { planDrawing, planFrame, planHandles } from './plan.ts'

const inputs = Object.entries(siteInputs)
const pages: readonly SitePage[] = ['web', 'phone', 'letter', 'A4', 'tabloid']

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const groupBox = (drawing: Drawing, id: string, layer: string) =>
  boxOf(
    drawnGroups(drawing.items, new RegExp(`^${id}$`))
      .flatMap((one) => drawnItems(one.items))
      .find((item) => item.layer === layer)!,
    drawing.scale,
  )

describe.each(inputs)('the plan of the site “%s”', (_, make) => {
  it.each(pages)('on %s lets no text run into another and keeps all within the picture', (page) => {
    const drawing = planDrawing(make(page))
    expect(touchingTexts(drawing)).toEqual([])
    const { extent, scale } = drawing
    for (const item of drawnItems(drawing.items)) {
      const box = boxOf(item, scale)
      const corners =
        item.kind === 'text'
          ? cornersOf(item, scale / 72)
          : [
              { x: box.minX, y: box.minY },
              { x: box.maxX, y: box.maxY },
            ]
      for (const { x, y } of corners) {
        expect(x, JSON.stringify(item)).toBeGreaterThanOrEqual(extent.minX)
        expect(x, JSON.stringify(item)).toBeLessThanOrEqual(extent.maxX)
        expect(y, JSON.stringify(item)).toBeGreaterThanOrEqual(extent.minY)
        expect(y, JSON.stringify(item)).toBeLessThanOrEqual(extent.maxY)
      }
    }
  })

  it('goes from the road to the drawing and back to a micrometre', () => {
    const frame = planFrame(make('web'))
    const { from, to } = frame.range
    const place = fc.tuple(
      fc.double({ min: from, max: to, noNaN: true }),
      fc.double({ min: -20, max: 30, noNaN: true }),
    )
    fc.assert(
      fc.property(place, ([station, lateral]) => {
        const at = frame.toDrawing(station, lateral)
        const back = frame.toSite(at.x, at.y)!
        expect(Math.abs(back.station - station)).toBeLessThan(1e-6)
        expect(Math.abs(back.lateral - lateral)).toBeLessThan(1e-6)
      }),
      { seed: 81, numRuns: 200 },
    )
  })

  it('has the barrier at the end of need where the need says, and the path straight through it', () => {
    const input = make('web')
    const frame = planFrame(input)
    const barrier = barrierLine(input)
    for (const need of [input.need!.approach, input.need!.departure]) {
      if (need === null || need.path.length === 0) continue
      expect(barrier.lateralAt(need.station)).toBeCloseTo(need.lateralAtEnd, 6)
      const [a, b, c] = need.path.map(({ station, lateral }) => frame.toDrawing(station, lateral))
      const away = (b!.x - a!.x) * (c!.y - a!.y) - (b!.y - a!.y) * (c!.x - a!.x)
      expect(Math.abs(away) / Math.hypot(c!.x - a!.x, c!.y - a!.y)).toBeLessThan(1e-3)
    }
  })
})

/** Any road, one to three hazards of any size, any ends. */
const anySite: fc.Arbitrary<Site> = fc
  .record({
    alignment: fc.oneof(
      fc.constant({ kind: 'straight' as const }),
      fc.constant(siteInputs.spiral('web').site.road.alignment),
      fc.record({
        kind: fc.constant('curve' as const),
        radius: between(60, 900),
        turn: fc.constantFrom('right' as const, 'left' as const),
      }),
    ),
    hazards: fc.array(
      fc.record({
        name: fc.constantFrom('tree', 'river', 'bridge pier with a rather long name'),
        from: between(270, 350),
        length: between(0, 40),
        gap: between(0, 4),
        depth: between(0, 6),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    traffic: fc.constantFrom('one-way' as const, 'two-way' as const, 'divided' as const),
    lanes: fc.integer({ min: 1, max: 5 }),
    units: fc.constantFrom('us' as const, 'metric' as const),
    side: fc.constantFrom('right' as const, 'left' as const),
    offset: between(1, 4),
    flare: fc.option(
      fc.record({
        rate: between(8, 30),
        parallelLength: between(0, 20),
        ends: fc.constantFrom('approach' as const, 'both' as const),
      }),
    ),
    approachEnd: fc.constantFrom(null, 'flared-terminal-31', 'buried-end-31'),
    departureEnd: fc.constantFrom(null, 'trailing-anchor-31', 'bridge-end-31'),
    clearZone: between(5, 16),
  })
  .map(({ alignment, hazards, traffic, lanes, units, side, clearZone, ...barrier }) => ({
    ...twoWaySite,
    units,
    side,
    clearZone: { kind: 'width', width: clearZone },
    road: { ...twoWaySite.road, alignment, traffic, lanes, medianWidth: traffic === 'divided' ? 8 : null },
    hazards: hazards.map(({ name, from, length, gap, depth }) => ({
      name,
      from,
      to: from + length,
      near: barrier.offset + gap,
      far: barrier.offset + gap + depth + 0.1,
      beyondClearZone: false,
    })),
    barrier,
  }))

it('on no site does a text of a plan run into another, or anything out of the picture', () => {
  fc.assert(
    fc.property(anySite, fc.constantFrom<SitePage>('web', 'phone', 'letter'), (site, page) => {
      const need = findNeed(site)
      const plan = planDrawing({ ...siteInputs.twoWay(page), site, need: need.ok ? need.value : null })
      expect(touchingTexts(plan)).toEqual([])
      for (const item of drawnItems(plan.items)) {
        const box = boxOf(item, plan.scale)
        expect(box.minX >= plan.extent.minX && box.minY >= plan.extent.minY, JSON.stringify(item)).toBe(true)
        if (item.kind !== 'text')
          expect(box.maxX <= plan.extent.maxX && box.maxY <= plan.extent.maxY, JSON.stringify(item)).toBe(true)
      }
    }),
    { seed: 82, numRuns: 150 },
  )
})

describe('the plan of a straight road', () => {
  const drawing = planDrawing(siteInputs.twoWay('web'))

  it('has x for the station and y for the lateral distance, in inches', () => {
    // culvert headwall: stations 10+00 to 10+20, 13 to 24 ft from the edge
    expect(groupBox(drawing, 'hazard-1', 'hazards')).toEqual({
      minX: expect.closeTo(12_000, 6),
      maxX: expect.closeTo(12_240, 6),
      minY: expect.closeTo(-288, 6),
      maxY: expect.closeTo(-156, 6),
    })
    expect(groupBox(drawing, 'clear-zone', 'clear zone').minY).toBeCloseTo(-360, 6)
    expect(groupBox(drawing, 'shy-line', 'shy line').minY).toBeCloseTo(-96, 6)
    expect(groupBox(drawing, 'approach-path', 'runout path').minX).toBeCloseTo((1000 - 210) * 12, 6)
  })

  // By the flared formula, by hand: (24 + 25/14 - 10) / (1/14 + 24/210) = 85, and 24 - 24/210 · 85 = 14.2857 ft.
  // Opposing traffic: 24 + 12 is cut at the clear zone, so the leg governs: 210 (30 - 22) / 30 = 56 ft from 10+56.
  it('has the barrier flared from 9+75 to the end of need at 9+15, and parallel to that at 11+12', () => {
    const { unit } = barrierLine(siteInputs.twoWay('web')).approach
    // the terminal counts from 12.5 ft behind its tip: measured along a flare of 14:1
    const beside = 12.5 * Math.cos(Math.atan(1 / 14))
    expect(unit!.tip / 0.3048).toBeCloseTo(915 - beside, 6)
    const bare = siteInput(
      { ...twoWaySite, barrier: { ...twoWaySite.barrier, approachEnd: null, departureEnd: null } },
      'web',
    )
    const rail = drawnGroups(planDrawing(bare).items, /^barrier$/)[0]!.items[0] as Polyline
    expect(rail.points.map(({ x, y }) => [x / 12, y / 12])).toEqual([
      [expect.closeTo(915, 6), expect.closeTo(-14.285714, 5)],
      [expect.closeTo(975, 6), expect.closeTo(-10, 6)],
      [expect.closeTo(1112, 6), expect.closeTo(-10, 6)],
    ])
    expect(drawnWords(drawing)).toEqual(expect.arrayContaining(['length of need X 85 ft', 'X 56 ft']))
  })

  it('says which hazard governs, the widths of clear zone and shy line, and both sides of a hazard', () => {
    expect(drawnWords(drawing)).toEqual(
      expect.arrayContaining([
        'culvert headwall: governs approach',
        'sign bridge leg: governs departure',
        'limit of clear zone, 30 ft',
        'shy line, 8 ft',
        'near side 13 ft',
        'far side 24 ft',
        'flare 14:1',
        'field access',
      ]),
    )
  })

  it('is mirrored when the side is', () => {
    const [right, left] = mirrorPair().map((site) => siteInput(site, 'web'))
    const [a, b] = [planHandles(right!), planHandles(left!)]
    expect(a.map((one) => one.place)).toEqual(b.map((one) => one.place))
    const [there, back] = [planDrawing(right!), planDrawing(left!)]
    for (const [id, layer] of [
      ['hazard-1', 'hazards'],
      ['barrier', 'barrier'],
      ['approach-unit', 'barrier'],
      ['clear-zone', 'clear zone'],
      ['approach-path', 'runout path'],
      ['flare', 'handles'],
    ] as const) {
      const [box, mirrored] = [groupBox(there, id, layer), groupBox(back, id, layer)]
      expect(mirrored.minX, id).toBeCloseTo(box.minX, 6)
      expect(mirrored.minY, id).toBeCloseTo(-box.maxY, 6)
      expect(mirrored.maxY, id).toBeCloseTo(-box.minY, 6)
    }
  })

  it('is enlarged across the road on a phone, says so, and keeps its stations', () => {
    const phone = planDrawing(siteInputs.twoWay('phone'))
    const box = groupBox(phone, 'hazard-1', 'hazards')
    expect([box.minX, box.maxX]).toEqual([expect.closeTo(12_000, 6), expect.closeTo(12_240, 6)])
    const times = planFrame(siteInputs.twoWay('phone')).across
    expect(times).toBeGreaterThan(1)
    expect(box.minY).toBeCloseTo(-288 * times, 6)
    expect(drawnWords(phone).join(' ')).toContain(`DRAWN ${times} TIMES LARGER`)
  })

  it('has on paper a plain scale, which it names', () => {
    const letter = planDrawing(siteInputs.twoWay('letter'))
    expect(letter.scale % 120).toBe(0)
    expect(drawnWords(letter).join(' ')).toContain(`1 in = ${letter.scale / 12} ft (1:${letter.scale})`)
    expect(((letter.extent.maxX - letter.extent.minX) / letter.scale) * 72).toBeCloseTo(11 * 72, 6)
  })
})

describe('the plan of a curve', () => {
  it('lies on circles around one centre, the hazards outside or inside', () => {
    const radius = 700 * 12
    for (const [input, sign] of [
      [siteInputs.outside('web'), 1],
      [siteInputs.inside('web'), -1],
    ] as const) {
      const frame = planFrame(input)
      const middle = (frame.range.from + frame.range.to) / 2
      // The middle of the range is the origin, with the chord level: the centre lies right above or below it.
      for (const ahead of [-300, -120, 0, 77, 250]) {
        for (const lateral of [-24, 0, 10, 40]) {
          const at = frame.toDrawing(middle + feet(ahead), feet(lateral))
          const arm = radius + sign * lateral * 12
          expect(at.x).toBeCloseTo(arm * Math.sin(ahead / 700), 3)
          expect(at.y).toBeCloseTo(sign * (radius - arm * Math.cos(ahead / 700)), 3)
        }
      }
    }
  })
})

describe('what can be moved', () => {
  const input = siteInputs.twoWay('web')

  it('has a name, a place in the picture and a place by the road', () => {
    const drawing = planDrawing(input)
    const frame = planFrame(input)
    const handles = planHandles(input)
    expect(handles.map((one) => one.place)).toEqual([
      ...['near-from', 'near-to', 'far-from', 'far-to'].map((corner) => `hazard-1-${corner}`),
      ...['near-from', 'near-to', 'far-from', 'far-to'].map((corner) => `hazard-2-${corner}`),
      'barrier-offset',
      'flare-start',
      'flare',
    ])
    for (const { place, station, lateral } of handles) {
      const box = groupBox(drawing, place, 'handles')
      const at = frame.toDrawing(station, lateral)
      expect((box.minX + box.maxX) / 2).toBeCloseTo(at.x, 6)
      expect((box.minY + box.maxY) / 2).toBeCloseTo(at.y, 6)
    }
    expect(drawnGroups(planDrawing(siteInputs.twoWay('letter')).items, /-near-from$/)).toEqual([])
  })

  it('leaves scale and road where they were while the range is held', () => {
    for (const make of Object.values(siteInputs)) {
      const before = make('web')
      const { range } = planFrame(before)
      const [first, ...others] = before.site.hazards
      const moved: Site = {
        ...before.site,
        hazards: [{ ...first!, from: first!.from - 4, near: first!.near + 0.2 }, ...others],
      }
      const need = findNeed(moved)
      const after = { ...before, site: moved, need: need.ok ? need.value : null, range }
      expect(planDrawing(after).scale).toBe(planDrawing({ ...before, range }).scale)
      expect(planFrame(after).toDrawing(range.from, 3)).toEqual(planFrame(before).toDrawing(range.from, 3))
    }
  })

  it('is still drawn where the need is refused', () => {
    const drawing = planDrawing({ ...input, need: null, clearZone: null, shyLine: null })
    expect(groupBox(drawing, 'hazard-1', 'hazards').minX).toBeCloseTo(12_000, 6)
    expect(drawnGroups(drawing.items, /^(approach|departure)-(path|end)$|clear-zone/)).toEqual([])
    expect(touchingTexts(drawing)).toEqual([])
  })
})
