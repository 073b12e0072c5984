import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hardwareNotSaid } from '../../../test/fixtures/hardware-not-said.ts'
import { layAlignment, pointAt } from '../alignment/horizontal-alignment.ts'
import { pointToStationOffset, stationOffsetToPoint } from '../alignment/station-offset.ts'
import type { Hazard, Side, Site, SiteAlignment } from '../site/site.ts'
import { feet } from '../units/quantity.ts'
import type { DirectionNeed } from './direction-need.ts'
import { findNeed, type Need } from './need.ts'

const hazard = (from: number, to: number, near: number, far: number | null): Hazard => ({
  name: `hazard at ${from}`,
  from: feet(from),
  to: feet(to),
  near: feet(near),
  far: far === null ? null : feet(far),
  beyondClearZone: far === null,
})

/** 60 mi/h, ADT 3,000: runout length 210 ft, shy line 8 ft. Two-lane two-way road, 12-ft lanes. */
const base: Site = {
  units: 'us',
  edition: 'rdg-2011',
  interpolateSpeeds: false,
  runoutOnCurves: 'edge',
  road: {
    speed: 60,
    adt: 3000,
    traffic: 'two-way',
    lanes: 2,
    laneWidth: feet(12),
    shoulderWidth: feet(8),
    medianWidth: null,
    alignment: { kind: 'straight' },
  },
  clearZone: { kind: 'width', width: feet(40) },
  runoutLength: null,
  shyLine: null,
  flareLimits: null,
  side: 'right',
  hazards: [hazard(1000, 1050, 12, 24)],
  barrier: { offset: feet(10), flare: null, approachEnd: null, departureEnd: null },
  driveways: [],
  hardware: hardwareNotSaid,
  sheets: [],
}

const onRoad = (site: Site, alignment: SiteAlignment): Site => ({ ...site, road: { ...site.road, alignment } })

function needOf(site: Site): Need {
  const need = findNeed(site)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  return need.value
}

const kinds = (need: DirectionNeed) => need.notes.map((note) => note.kind)
const inFeet = (length: number) => length / 0.3048

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const turn = fc.constantFrom<Side>('right', 'left')

/** Any road: straight, circular (either turn), or tangent, spiral, curve, spiral, tangent with the hazard anywhere on it. */
const roads: fc.Arbitrary<SiteAlignment> = fc.oneof(
  fc.constant<SiteAlignment>({ kind: 'straight' }),
  fc.record({ kind: fc.constant('curve' as const), radius: between(200, 3000), turn }),
  fc.record({ radius: between(200, 2000), spiral: between(40, 150), lead: between(350, 700), turn }).map((shape) => {
    const curvature = (shape.turn === 'right' ? 1 : -1) / shape.radius
    return {
      kind: 'elements' as const,
      line: 'edge' as const,
      equations: [],
      unit: 'metre' as const,
      horizontal: layAlignment({ point: { easting: 1000, northing: 2000 }, azimuth: 0.4, station: feet(1000) - 600 }, [
        { length: shape.lead, curvatureStart: 0, curvatureEnd: 0 },
        { length: shape.spiral, curvatureStart: 0, curvatureEnd: curvature },
        { length: 150, curvatureStart: curvature, curvatureEnd: curvature },
        { length: shape.spiral, curvatureStart: curvature, curvatureEnd: 0 },
        { length: 700, curvatureStart: 0, curvatureEnd: 0 },
      ]),
    }
  }),
)

const sites: fc.Arbitrary<Site> = fc
  .record({
    alignment: roads,
    offset: between(4, 12),
    gap: between(0.5, 5),
    depth: between(1, 15),
    runout: between(120, 400),
    side: turn,
    reading: fc.constantFrom('path' as const, 'edge' as const),
    flare: fc.option(fc.record({ rate: between(10, 30), parallel: between(0, 60) }), { nil: null }),
  })
  .map(({ alignment, offset, gap, depth, runout, side, reading, flare }) => ({
    ...onRoad(base, alignment),
    runoutLength: feet(runout),
    runoutOnCurves: reading,
    side,
    hazards: [hazard(1000, 1050, offset + gap, offset + gap + depth)],
    barrier: {
      ...base.barrier,
      offset: feet(offset),
      flare: flare && { rate: flare.rate, parallelLength: feet(flare.parallel), ends: 'both' as const },
    },
  }))

const check = (property: (site: Site) => void, seed: number, numRuns = 300) =>
  fc.assert(fc.property(sites, property), { seed, numRuns })

describe('laws of the need', () => {
  test('a road seen in a mirror needs the mirrored barrier', () => {
    check((site) => {
      const oneWay = { ...site, road: { ...site.road, traffic: 'one-way' as const } }
      const mirrored: Site = {
        ...onRoad(oneWay, mirror(site.road.alignment)),
        side: site.side === 'right' ? 'left' : 'right',
      }
      expectAlike(needOf(mirrored).approach, needOf(oneWay).approach, (station) => station)
    }, 61)
  })

  test('a two-way road stationed from its other end needs the same barrier', () => {
    check((site) => {
      const { alignment } = site.road
      if (alignment.kind === 'elements') return
      const turned: Site = {
        ...onRoad(site, alignment.kind === 'curve' ? mirror(alignment) : alignment),
        side: site.side === 'right' ? 'left' : 'right',
        hazards: site.hazards.map((h) => ({ ...h, from: -h.to, to: -h.from })),
      }
      const [there, here] = [needOf(turned), needOf(site)]
      expectAlike(there.approach, here.approach, (station) => -station)
      expectAlike(there.departure!, here.departure!, (station) => -station)
    }, 62)
  })

  test('feet and metres make no difference to the same geometry', () => {
    check((site) => {
      const speed = Math.round(site.road.speed * 1.609344)
      const metric: Site = { ...site, units: 'metric', road: { ...site.road, speed } }
      const [there, here] = [needOf(metric), needOf(site)]
      expect(there.approach.lengthOfNeed).toBe(here.approach.lengthOfNeed)
      expect(there.departure!.lengthOfNeed).toBe(here.departure!.lengthOfNeed)
    }, 63)
  })

  test('a wider hazard never shortens the need', () => {
    check((site) => {
      const wider = { ...site, hazards: site.hazards.map((h) => ({ ...h, far: h.far! + feet(2) })) }
      const [more, less] = [needOf(wider), needOf(site)]
      expect(more.approach.lengthOfNeed).toBeGreaterThanOrEqual(less.approach.lengthOfNeed - 1e-6)
      expect(more.departure!.lengthOfNeed).toBeGreaterThanOrEqual(less.departure!.lengthOfNeed - 1e-6)
    }, 64)
  })

  test('a longer runout length never shortens the need', () => {
    check((site) => {
      const longer = { ...site, runoutLength: site.runoutLength! + feet(20) }
      expect(needOf(longer).approach.lengthOfNeed).toBeGreaterThanOrEqual(needOf(site).approach.lengthOfNeed - 1e-6)
    }, 65)
  })

  test('another hazard never lets the barrier begin later', () => {
    check((site) => {
      const more = { ...site, hazards: [...site.hazards, hazard(1020, 1080, inFeet(site.barrier.offset) + 1, 26)] }
      const [both, one] = [needOf(more), needOf(site)]
      const direction = site.side === 'right' ? 1 : -1
      expect(direction * (one.approach.station - both.approach.station)).toBeGreaterThan(-1e-6)
    }, 66)
  })

  test('a curve of ever larger radius gives the straight answer, when the runout length is that of the edge', () => {
    check((site) => {
      const straight = needOf(onRoad(site, { kind: 'straight' })).approach.lengthOfNeed
      const curved = { ...site, runoutOnCurves: 'edge' as const }
      for (const turn of ['left', 'right'] as const)
        for (const [radius, difference] of [
          [1e9, 1e-3],
          [1e12, 1e-6],
        ] as const) {
          const need = needOf(onRoad(curved, { kind: 'curve', radius, turn })).approach
          expect(Math.abs(need.lengthOfNeed - straight)).toBeLessThan(difference)
        }
    }, 67)
  })

  test('the same circle as an alignment of one curve gives the closed form', () => {
    check((site) => {
      const { alignment } = site.road
      if (alignment.kind !== 'curve') return
      const curvature = (alignment.turn === 'right' ? 1 : -1) / alignment.radius
      const length = Math.min(5 * alignment.radius, 800)
      const horizontal = layAlignment(
        { point: { easting: 0, northing: 0 }, azimuth: 0, station: feet(1025) - length / 2 },
        [{ length, curvatureStart: curvature, curvatureEnd: curvature }],
      )
      const general = findNeed(
        onRoad(site, { kind: 'elements', line: 'edge', horizontal, equations: [], unit: 'metre' }),
      )
      if (!general.ok) return expect(general.error.kind).toBe('alignment-too-short')
      expectAlike(general.value.approach, needOf(site).approach, (station) => station)
      expectAlike(general.value.departure!, needOf(site).departure!, (station) => station)
    }, 68)
  })
})

describe('on any alignment, the path', () => {
  test('leaves the edge outwards, within the runout length, and meets barrier and hazard where the result says', () => {
    check(
      (site) => {
        const { alignment } = site.road
        if (alignment.kind !== 'elements') return
        const { approach } = needOf(site)
        const side = site.side === 'right' ? 1 : -1
        const place = ({ station, lateral }: { station: number; lateral: number }) => {
          const point = stationOffsetToPoint(alignment.horizontal, { station, offset: side * lateral })
          if (!point.ok) throw new Error(point.error.kind)
          return point.value
        }
        const [leaves, meets, reaches] = approach.path.map(place)
        const share = (t: number) => ({
          easting: leaves!.easting + t * (reaches!.easting - leaves!.easting),
          northing: leaves!.northing + t * (reaches!.northing - leaves!.northing),
        })
        // the end of need lies on the straight line from edge to hazard
        const off = (p: { easting: number; northing: number }, q: { easting: number; northing: number }) =>
          (p.easting - leaves!.easting) * (q.northing - leaves!.northing) -
          (p.northing - leaves!.northing) * (q.easting - leaves!.easting)
        expect(Math.abs(off(meets!, reaches!))).toBeLessThan(1e-5)
        // and the path stays outside the edge on its way
        for (let t = 0.02; t < 1; t += 0.07) {
          const [answer] = pointToStationOffset(alignment.horizontal, share(t))
          expect(side * answer!.offset).toBeGreaterThan(-1e-6)
        }
        const begin = Math.abs(approach.path[0]!.station - approach.path[2]!.station)
        const path = Math.hypot(reaches!.easting - leaves!.easting, reaches!.northing - leaves!.northing)
        const runout = approach.runoutLength
        const isStraight = approach.governs.rule === 'parallel' || approach.governs.rule === 'flared'
        const measured = site.runoutOnCurves === 'edge' || isStraight ? begin : path
        if (approach.governs.rule === 'tangent path') expect(measured).toBeLessThanOrEqual(runout + 1e-6)
        else expect(Math.abs(measured - runout)).toBeLessThan(1e-6)
        if (approach.governs.rule === 'tangent path') {
          const ahead = pointAt(alignment.horizontal, approach.path[0]!.station + 1e-4)
          const behind = pointAt(alignment.horizontal, approach.path[0]!.station - 1e-4)
          const sine = off(
            {
              easting: leaves!.easting + ahead.easting - behind.easting,
              northing: leaves!.northing + ahead.northing - behind.northing,
            },
            reaches!,
          )
          expect(Math.abs(sine / (2e-4 * path))).toBeLessThan(1e-5)
        }
      },
      69,
      600,
    )
  })
})

describe('several hazards', () => {
  test('the one that makes the barrier begin first governs, and is named', () => {
    const site = { ...base, hazards: [hazard(1000, 1010, 12, 14), hazard(1040, 1060, 12, 30)] }
    const { approach } = needOf(site)
    // 210 (30 - 10)/30 = 140 from station 1040, against 210 (14 - 10)/14 = 60 from 1000
    expect(inFeet(approach.lengthOfNeed)).toBeCloseTo(140, 9)
    expect(inFeet(approach.station)).toBeCloseTo(900, 9)
    expect(approach.governs.hazard).toBe('hazard at 1040')
    expect(kinds(approach)).toContain('later-hazard-governs')
  })

  test('a flare begins ahead of the first hazard, so that a later one sees a longer parallel part', () => {
    const flare = { rate: 14, parallelLength: feet(25), ends: 'both' as const }
    const site = {
      ...base,
      hazards: [hazard(1000, 1010, 12, 14), hazard(1040, 1060, 12, 30)],
      barrier: { ...base.barrier, flare },
    }
    // L_1 = 25 + 40; X = (30 + 65/14 - 10)/(1/14 + 30/210)
    expect(inFeet(needOf(site).approach.lengthOfNeed)).toBeCloseTo((20 + 65 / 14) / (1 / 14 + 30 / 210), 9)
  })

  test('hazards outside the clear zone are named and not shielded', () => {
    const { approach } = needOf({ ...base, hazards: [hazard(1000, 1050, 41, 60)] })
    expect(approach).toMatchObject({ lengthOfNeed: 0, governs: { hazard: null, rule: 'nothing to shield' }, path: [] })
    expect(kinds(approach)).toContain('hazard-outside-clear-zone')
  })

  test('a hazard at the very limit of the clear zone counts as inside, one just beyond does not', () => {
    const at = needOf({ ...base, hazards: [hazard(1000, 1050, 40, null)] }).approach
    expect(inFeet(at.lengthOfNeed)).toBeCloseTo((210 * 30) / 40, 9)
    expect(kinds(at)).toContain('at-clear-zone-limit')
    expect(needOf({ ...base, hazards: [hazard(1000, 1050, 40.001, null)] }).approach.lengthOfNeed).toBe(0)
  })
})

describe('opposing traffic', () => {
  test('sees a multilane road from the edge of its own lanes', () => {
    // four lanes: 24 ft between; L_A 48 cut to 40, L_2 34: 210 (40 - 34)/40
    const { departure } = needOf({ ...base, road: { ...base.road, lanes: 4 } })
    expect(inFeet(departure!.lengthOfNeed)).toBeCloseTo((210 * 6) / 40, 9)
    expect(inFeet(departure!.station)).toBeCloseTo(1050 + (210 * 6) / 40, 9)
  })

  test('is judged across a median of known width only', () => {
    const divided = { ...base.road, traffic: 'divided' as const, lanes: 4 }
    const unknown = needOf({ ...base, road: divided })
    expect(unknown.departure).toBeNull()
    expect(kinds(unknown.approach)).toContain('opposing-traffic-not-judged')
    // 24 ft of lanes and 2 ft of median: L_A 50 cut to 40, L_2 36
    const narrow = needOf({ ...base, road: { ...divided, medianWidth: feet(2) } })
    expect(inFeet(narrow.departure!.lengthOfNeed)).toBeCloseTo((210 * 4) / 40, 9)
    const wide = needOf({ ...base, road: { ...divided, medianWidth: feet(40) } })
    expect(wide.departure!.lengthOfNeed).toBe(0)
    expect(kinds(wide.departure!)).toEqual(expect.arrayContaining(['hazard-outside-clear-zone', 'anchor-only']))
  })

  test('there is none on a one-way road: an anchor is enough', () => {
    const { approach, departure } = needOf({ ...base, road: { ...base.road, traffic: 'one-way' } })
    expect(departure).toBeNull()
    expect(kinds(approach)).toContain('anchor-only')
  })

  test('a barrier inside its clear zone needs a crashworthy end even where its hazard is outside', () => {
    const site = {
      ...base,
      clearZone: { kind: 'width' as const, width: feet(23) },
      hazards: [hazard(1000, 1050, 12, 20)],
    }
    const { departure } = needOf(site)
    expect(departure!.lengthOfNeed).toBe(0)
    expect(kinds(departure!)).toEqual(expect.arrayContaining(['hazard-outside-clear-zone', 'crashworthy-end']))
  })

  test('meets a parallel barrier when only the approach end is flared', () => {
    const flare = { rate: 14, parallelLength: 0, ends: 'approach' as const }
    const site = { ...base, barrier: { ...base.barrier, flare } }
    expect(needOf(site).departure!.governs.rule).toBe('parallel')
    expect(
      needOf({ ...site, barrier: { ...site.barrier, flare: { ...flare, ends: 'both' } } }).departure!.governs.rule,
    ).toBe('flared')
  })
})

describe('the flare', () => {
  const flared = (rate: number, offset: number, far: number): Site => ({
    ...base,
    road: { ...base.road, adt: 12_000 },
    hazards: [hazard(1000, 1050, offset + 2, far)],
    barrier: { ...base.barrier, offset: feet(offset), flare: { rate, parallelLength: feet(25), ends: 'both' } },
  })

  test('that crosses the shy line is held to both limits, and the compound flare is worked out', () => {
    const note = needOf(flared(26, 4, 34)).approach.notes.find((n) => n.kind === 'flare-crosses-shy-line')
    if (note?.kind !== 'flare-crosses-shy-line') throw new Error('no note')
    expect(inFeet(note.at)).toBeCloseTo(129, 9)
    expect([note.insideLimit, note.beyondLimit]).toEqual([26, 14])
    // y = 8 + (x - 129)/14 meets y = 34 (1 - x/300): x = (26 + 129/14)/(1/14 + 34/300)
    const x = (26 + 129 / 14) / (1 / 14 + 34 / 300)
    expect(inFeet(note.compound!.lengthOfNeed)).toBeCloseTo(x, 9)
    expect(inFeet(note.compound!.lateralAtEnd)).toBeCloseTo(8 + (x - 129) / 14, 9)
  })

  test('is too steep just above the limit of the part where it lies, at the limit not', () => {
    const steep = (site: Site) =>
      needOf(site).approach.notes.flatMap((note) => (note.kind === 'flare-too-steep' ? [note.where] : []))
    expect(steep(flared(14, 8, 34))).toEqual([])
    expect(steep(flared(13.99, 8, 34))).toEqual(['beyond shy line'])
    expect(steep(flared(26, 4, 34))).toEqual([])
    expect(steep(flared(25.99, 4, 34))).toEqual(['inside shy line'])
    expect(steep(flared(13, 4, 34))).toEqual(['inside shy line', 'beyond shy line'])
  })
})

describe('a driveway that cuts the run', () => {
  const site: Site = {
    ...base,
    road: { ...base.road, traffic: 'one-way' },
    driveways: [{ name: 'farm lane', from: feet(920), to: feet(940) }],
  }
  const noteOf = (cut: Site) => needOf(cut).approach.notes.find((note) => note.kind === 'driveway-cuts-run')

  test('leaves a shortfall, and every alternative closes it when carried out', () => {
    const note = noteOf(site)
    if (note?.kind !== 'driveway-cuts-run') throw new Error('no note')
    // need 210 (24 - 10)/24 = 122.5 ft, of which 60 ft fit
    expect(inFeet(note.available)).toBeCloseTo(60, 9)
    expect(inFeet(note.shortfall)).toBeCloseTo(62.5, 9)
    expect(note.alternatives.map((a) => a.change)).toEqual(['flare', 'far side of hazard', 'accept runout length'])
    for (const alternative of note.alternatives) {
      const changed: Site =
        alternative.change === 'flare'
          ? {
              ...site,
              barrier: { ...site.barrier, flare: { rate: alternative.rate, parallelLength: 0, ends: 'both' } },
            }
          : alternative.change === 'far side of hazard'
            ? { ...site, hazards: [{ ...site.hazards[0]!, far: alternative.to }] }
            : alternative.change === 'barrier offset'
              ? { ...site, barrier: { ...site.barrier, offset: alternative.to } }
              : { ...site, runoutLength: alternative.to }
      expect(inFeet(needOf(changed).approach.lengthOfNeed)).toBeCloseTo(60, 6)
      expect(noteOf(changed)).toBeUndefined()
    }
  })

  test('says nothing where it lies upstream of the end of need or behind the hazard', () => {
    const at = (from: number, to: number) =>
      noteOf({ ...site, driveways: [{ name: 'x', from: feet(from), to: feet(to) }] })
    expect(at(800, 870)).toBeUndefined()
    expect(at(1060, 1080)).toBeUndefined()
    expect(at(870, 880)).toBeDefined()
  })
})

test('a hazard beyond the ends of the alignment is refused by its name', () => {
  const start = { point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }
  const horizontal = layAlignment(start, [{ length: 300, curvatureStart: 0, curvatureEnd: 0 }])
  const site = onRoad(base, { kind: 'elements', line: 'edge', horizontal, equations: [], unit: 'metre' })
  expect(findNeed(site)).toEqual({
    ok: false,
    error: { kind: 'hazard-off-alignment', hazard: 'hazard at 1000', from: 0, to: 300 },
  })
})

test('a road that is broken between hazard and runout length gives no need, and elsewhere it gives what it gave', () => {
  const start = { point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }
  const tangent = (length: number) => ({ length, curvatureStart: 0, curvatureEnd: 0 })
  const at = (station: number, gap: number) => {
    const own = { point: { easting: 0, northing: station + gap }, azimuth: 0 }
    const horizontal = layAlignment(start, [tangent(station), { ...tangent(2000 - station), own }])
    return onRoad(base, { kind: 'elements', line: 'edge', horizontal, equations: [], unit: 'metre' })
  }
  const [hazard] = base.hazards
  const front = hazard!.from
  expect(findNeed(at(front - 10, 50))).toEqual({
    ok: false,
    error: { kind: 'alignment-broken', station: front - 10, distance: 50, kink: 0 },
  })
  expect(findNeed(at(1900, 50))).toEqual(findNeed(at(1900, 0)))
  expect(findNeed(at(1900, 0)).ok).toBe(true)
})

test('the centreline of the road as alignment gives what its edge gives', () => {
  const [radius, half] = [400, feet(12)]
  const arc = (r: number) => [{ length: r * 2, curvatureStart: -1 / r, curvatureEnd: -1 / r }]
  const start = { point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }
  const at = (line: 'edge' | 'centreline', r: number, side: Side): Site => ({
    ...onRoad(base, { kind: 'elements', line, horizontal: layAlignment(start, arc(r)), equations: [], unit: 'metre' }),
    side,
    hazards: [{ ...base.hazards[0]!, from: r, to: 1.05 * r }],
  })
  for (const [side, edge] of [
    ['right', radius + half],
    ['left', radius - half],
  ] as const) {
    const [byEdge, byCentre] = [needOf(at('edge', edge, side)), needOf(at('centreline', radius, side))]
    for (const end of ['approach', 'departure'] as const) {
      expect(byCentre[end]!.lengthOfNeed).toBeCloseTo(byEdge[end]!.lengthOfNeed, 9)
      expect(byCentre[end]!.station / radius).toBeCloseTo(byEdge[end]!.station / edge, 9)
    }
  }
})

function mirror(alignment: SiteAlignment): SiteAlignment {
  if (alignment.kind === 'straight') return alignment
  if (alignment.kind === 'curve') return { ...alignment, turn: alignment.turn === 'right' ? 'left' : 'right' }
  const { horizontal } = alignment
  const shapes = horizontal.elements.map(({ length, curvatureStart, curvatureEnd }) => ({
    length,
    curvatureStart: -curvatureStart,
    curvatureEnd: -curvatureEnd,
  }))
  const first = horizontal.elements[0]!
  const start = { point: first.start, azimuth: -first.azimuth, station: horizontal.startStation }
  return { ...alignment, horizontal: layAlignment(start, shapes) }
}

function expectAlike(there: DirectionNeed, here: DirectionNeed, station: (s: number) => number): void {
  expect(Math.abs(there.lengthOfNeed - here.lengthOfNeed)).toBeLessThan(1e-6)
  expect(Math.abs(there.lateralAtEnd - here.lateralAtEnd)).toBeLessThan(1e-6)
  expect(Math.abs(there.station - station(here.station))).toBeLessThan(1e-6)
  expect(there.governs).toEqual({ ...here.governs, lateralExtent: expect.closeTo(here.governs.lateralExtent!, 9) })
  there.path.forEach((place, i) => {
    expect(Math.abs(place.station - station(here.path[i]!.station))).toBeLessThan(1e-6)
    expect(Math.abs(place.lateral - here.path[i]!.lateral)).toBeLessThan(1e-6)
  })
}
