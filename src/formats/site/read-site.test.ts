import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { endStation, layAlignment, pointAt } from '../../core/alignment/horizontal-alignment.ts'
import { stationOffsetToPoint } from '../../core/alignment/station-offset.ts'
import { azimuthFrom, distance } from '../../core/geometry/point.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { readSite } from './read-site.ts'
import { writeElements } from './write-elements.ts'

const good = {
  format: 'lapwise-site/1',
  units: 'us',
  edition: 'rdg-2011',
  interpolateSpeeds: true,
  runoutOnCurves: 'edge',
  road: {
    speed: 55,
    adt: 4750,
    traffic: 'two-way',
    lanes: 2,
    laneWidth: 12,
    shoulderWidth: 8,
    alignment: { kind: 'straight' },
  },
  clearZone: 34,
  hazards: [{ name: 'culvert', from: '10+00', to: '10+40', near: 10, far: 20, side: 'right', beyondClearZone: false }],
  barrier: { offset: 8, flare: { rate: '14:1', parallelLength: 25 }, approachEnd: null, departureEnd: null },
}

// biome-ignore lint/suspicious/noExplicitAny: the tests spoil single fields of a file
type Loose = any

const problems = (spoil: (site: Loose) => void): readonly string[] => {
  const site = structuredClone(good)
  spoil(site)
  const read = readSite('site.json', JSON.stringify(site))
  return read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))
}

describe('a site file', () => {
  test('is read in metres, with stations and rates as numbers or as text', () => {
    const read = readSite('site.json', JSON.stringify(good))
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join())
    expect(read.value.hazards[0]).toEqual({
      name: 'culvert',
      from: 304.8,
      to: expect.closeTo(316.992, 12),
      near: expect.closeTo(3.048, 12),
      far: expect.closeTo(6.096, 12),
      beyondClearZone: false,
    })
    expect(read.value.barrier.flare).toEqual({ rate: 14, parallelLength: expect.closeTo(7.62, 12), ends: 'both' })
    const numbers = structuredClone(good) as Loose
    numbers.hazards[0].from = 1000
    numbers.hazards[0].to = 1040
    numbers.barrier.flare.rate = 14
    expect(readSite('site.json', JSON.stringify(numbers))).toEqual(read)
  })

  test('may leave out what has a default', () => {
    expect(
      problems((site) => {
        for (const field of ['edition', 'interpolateSpeeds', 'runoutOnCurves']) delete site[field]
        delete site.road.alignment
        delete site.hazards[0].side
        site.barrier = { offset: 8 }
      }),
    ).toEqual([])
  })

  test.each<[string, (site: Loose) => void, string]>([
    ['a negative lane', (s) => (s.road.laneWidth = -12), 'road.laneWidth: expected a value of at least 1, found -12'],
    [
      'a hazard in the lane',
      (s) => (s.hazards[0].near = -1),
      'hazards[0].near: expected a hazard outside the travelled way',
    ],
    [
      'a barrier behind the hazard',
      (s) => (s.barrier.offset = 11),
      'barrier.offset: expected a barrier in front of "culvert", at most 10 ft',
    ],
    [
      'a barrier at the far side',
      (s) => Object.assign(s.hazards[0], { near: 8, far: 8 }),
      'barrier.offset: expected a barrier in front of "culvert", less than 8 ft',
    ],
    [
      'stations that go backwards',
      (s) => (s.hazards[0].to = '9+99.99'),
      'hazards[0].to: expected a station at or after `from`, "10+00"',
    ],
    ['a station that is none', (s) => (s.hazards[0].to = '10+4'), 'hazards[0].to: expected a station (12+37.50)'],
    ['a far side before the near one', (s) => (s.hazards[0].far = 9), 'hazards[0].far: expected at least'],
    ['no far side', (s) => (s.hazards[0].far = null), 'hazards[0].far: expected the lateral distance to its far side'],
    [
      'hazards on both sides',
      (s) => s.hazards.push({ ...s.hazards[0], side: 'left' }),
      'hazards[1].side: expected the side of the first hazard',
    ],
    [
      'a flare written upside down',
      (s) => (s.barrier.flare.rate = '1:14'),
      'barrier.flare.rate: expected 14 or "14:1", found "1:14"',
    ],
    [
      'a slope that is none',
      (s) => (s.clearZone = { foreslope: 'flat' }),
      'clearZone.foreslope: expected 6 or "1V:6H", found "flat"',
    ],
    ['a field that is not known', (s) => (s.road.sped = 55), 'expected no field named "sped"'],
    ['an unknown edition', (s) => (s.edition = '1989'), 'edition: expected "rdg-2011" or "rdg-2006", found "1989"'],
    ['no hazard', (s) => (s.hazards = []), 'hazards: expected a list that is not empty'],
    ['a median on an undivided road', (s) => (s.road.medianWidth = 10), 'road.medianWidth: expected no median'],
  ])('with %s is refused with place, expectation and finding', (_, spoil, expected) => {
    const found = problems(spoil)
    expect(found).toHaveLength(1)
    expect(found[0]).toContain(expected)
  })
})

describe('stations on an alignment of elements', () => {
  const elements = (stationEquations: object[]) => ({
    kind: 'elements',
    start: { station: '0+00' },
    elements: [{ kind: 'tangent', length: 3000 }],
    stationEquations,
  })
  const withStation = (from: string | number, equations: object[]) =>
    problems((site) => {
      site.road.alignment = elements(equations)
      site.hazards[0].from = from
      site.hazards[0].to = 2900
    })

  test('in a gap mean nothing, in an overlap two places', () => {
    const gap = [{ back: '10+00', ahead: '12+00' }]
    const overlap = [{ back: '10+00', ahead: '9+00' }]
    expect(withStation('11+00', gap)[0]).toContain('expected a station on the alignment')
    expect(withStation('9+50', overlap)[0]).toContain(
      'this station comes twice, write the distance along the alignment instead (950 or 1050)',
    )
    expect(withStation(1050, overlap)).toEqual([])
    expect(withStation('13+00', gap)).toEqual([])
  })

  test('off the alignment are refused, and so are equations out of order', () => {
    expect(withStation('31+00', [])[0]).toContain('which runs from 0 to 3000')
    expect(
      withStation('5+00', [
        { back: '10+00', ahead: '20+00' },
        { back: '19+00', ahead: '25+00' },
      ])[0],
    ).toContain('stationEquations[1].back')
  })
})

test('the short form of an alignment reads back as the same line', () => {
  const road = layAlignment({ point: { easting: 5000, northing: 7000 }, azimuth: 2, station: 100 }, [
    { length: 200, curvatureStart: 0, curvatureEnd: 0 },
    { length: 90, curvatureStart: 0, curvatureEnd: 1 / 300 },
    { length: 160, curvatureStart: 1 / 300, curvatureEnd: 1 / 300 },
    { length: 40, curvatureStart: 1 / 300, curvatureEnd: 1 / 150 },
    { length: 150, curvatureStart: 1 / 150, curvatureEnd: -1 / 200 },
    { length: 60, curvatureStart: -1 / 200, curvatureEnd: 0 },
  ])
  const equations = [{ internal: 300, back: 300, ahead: 500 }]
  for (const units of ['us', 'metric'] as const) {
    const site = structuredClone(good) as Loose
    site.units = units
    site.road.alignment = writeElements('centreline', road, equations, units)
    site.hazards[0].from = 1000
    site.hazards[0].to = 1010
    if (units === 'metric') Object.assign(site.hazards[0], { from: 400, to: 410 })
    const read = readSite('site.json', JSON.stringify(site))
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join())
    const { alignment } = read.value.road
    if (alignment.kind !== 'elements') throw new Error('not elements')
    expect(alignment.line).toBe('centreline')
    expect(alignment.equations).toEqual(
      equations.map((e) =>
        expect.objectContaining({ internal: expect.closeTo(e.internal, 9), ahead: expect.closeTo(e.ahead, 9) }),
      ),
    )
    fc.assert(
      fc.property(fc.double({ min: 100, max: endStation(road), noNaN: true }), (station) => {
        expect(distance(pointAt(alignment.horizontal, station), pointAt(road, station))).toBeLessThan(1e-6)
      }),
      { seed: 71, numRuns: 100 },
    )
  }
})

test('the short form of a road with gaps and rounded joints is that road, 34 km on', () => {
  // Points rounded to a millimetre, as files have them: each joint has a kink of its own.
  const rounded = (value: number) => Math.round(value * 1000) / 1000
  const points = Array.from({ length: 343 }, (_, i) => ({
    easting: rounded(4_000_000 + 95 * i + 40 * Math.sin(i)),
    northing: rounded(500_000 + 25 * i + 30 * Math.cos(1.7 * i) + (i > 200 ? 61 : 0)),
  }))
  const azimuthOf = (i: number) => azimuthFrom(points[i]!, points[i + 1]!)
  const road = layAlignment(
    { point: points[0]!, azimuth: azimuthOf(0), station: 0 },
    points.slice(1).map((to, i) => {
      const length = distance(points[i]!, to)
      return { length, curvatureStart: 0, curvatureEnd: 0, own: { point: points[i]!, azimuth: azimuthOf(i) } }
    }),
  )
  expect(endStation(road)).toBeGreaterThan(34_000)
  for (const units of ['us', 'metric'] as const) {
    const site = structuredClone(good) as Loose
    site.units = units
    site.road.alignment = writeElements('centreline', road, [], units)
    Object.assign(site.hazards[0], { from: 1000, to: 1010 })
    const read = readSite('site.json', JSON.stringify(site))
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join())
    const { alignment } = read.value.road
    if (alignment.kind !== 'elements') throw new Error('not elements')
    expect(endStation(alignment.horizontal)).toBeCloseTo(endStation(road), 4)
    for (let station = 50; station < endStation(road); station += 97.3) {
      for (const offset of [-15, 0, 8]) {
        const [there, back] = [road, alignment.horizontal].map((one) => stationOffsetToPoint(one, { station, offset }))
        if (!there!.ok || !back!.ok) throw new Error(`no point at ${station}`)
        // 1 mm is what stakes from both may differ by.
        expect(distance(there!.value, back!.value)).toBeLessThan(0.0005)
      }
    }
  }
})
