import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { endStation, layAlignment, pointAt } from '../../core/alignment/horizontal-alignment.ts'
import { offsetLength } from '../../core/alignment/offset-line.ts'
import { distance } from '../../core/geometry/point.ts'
import { english } from '../../words/english.ts'
import { problemInWords } from '../input-problem.ts'
import type { LinearUnit } from './landxml.ts'
import { readLandXml } from './read-landxml.ts'
import { writeLandXml } from './write-landxml.ts'

const units = (linear = 'USSurveyFoot') =>
  linear === 'meter'
    ? '<Units><Metric linearUnit="meter"/></Units>'
    : `<Units><Imperial linearUnit="${linear}"/></Units>`

const file = (body: string, unit = units(), namespace = 'http://www.landxml.org/schema/LandXML-1.2') =>
  `<?xml version="1.0"?>\n<LandXML xmlns="${namespace}" version="1.2" date="2026-11-25" time="12:00:00">\n${unit}\n${body}\n</LandXML>`

const alignment = (geometry: string, more = '') =>
  `<Alignments><Alignment name="A" length="0" staStart="1000"><CoordGeom>\n${geometry}\n</CoordGeom>${more}</Alignment></Alignments>`

const line = '<Line><Start>200000 600000</Start><End>200300 600400</End></Line>'

const problemOf = (text: string) => {
  const read = readLandXml('road.xml', text)
  if (read.ok) throw new Error('read without a problem')
  return problemInWords(read.error[0]!, english(null))
}

describe('reading LandXML', () => {
  test('northing comes first, and the three linear units are three sizes', () => {
    for (const [unit, size] of [
      ['meter', 1],
      ['foot', 0.3048],
      ['USSurveyFoot', 1200 / 3937],
    ] as const) {
      const read = readLandXml('road.xml', file(alignment(line), units(unit)))
      if (!read.ok) throw new Error(JSON.stringify(read.error))
      const { horizontal } = read.value.alignments[0]!
      expect(horizontal.elements[0]!.start).toEqual({ easting: 600_000 * size, northing: 200_000 * size })
      expect(endStation(horizontal)).toBeCloseTo(1500 * size, 9)
      expect(pointAt(horizontal, endStation(horizontal)).easting).toBeCloseTo(600_400 * size, 6)
    }
  })

  test('a file without units is refused, and so is a unit that is not known', () => {
    expect(problemOf(file(alignment(line), ''))).toMatchObject({
      expected: expect.stringContaining('Units'),
      found: 'none',
    })
    expect(problemOf(file(alignment(line), '<Units><Imperial linearUnit="mile"/></Units>'))).toMatchObject({
      place: expect.stringMatching(/^3:/),
      expected: 'linearUnit foot or USSurveyFoot',
      found: 'mile',
    })
  })

  test('another namespace is refused by its name', () => {
    const problem = problemOf(file(alignment(line), units(), 'http://www.inframodel.fi/inframodel'))
    expect(problem.found).toContain('http://www.inframodel.fi/inframodel')
  })

  test('spirals other than clothoids, and other geometry, are refused by name', () => {
    const spiral = '<Spiral spiType="bloss" rot="cw" length="100" radiusStart="INF" radiusEnd="500"/>'
    expect(problemOf(file(alignment(spiral)))).toMatchObject({ found: 'bloss', place: expect.stringMatching(/^5:/) })
    expect(problemOf(file(alignment(`${line}\n<Chain>1 2</Chain>`)))).toMatchObject({
      found: 'Chain',
      place: expect.stringMatching(/^6:/),
    })
    const reference = '<Line><Start pntRef="7"/><End>1 2</End></Line>'
    expect(problemOf(file(alignment(reference))).found).toBe('a reference to point 7')
  })

  test('points that are not two or three numbers are refused', () => {
    for (const text of ['1', '1 2 3 4', '1 east', '1 1e999'])
      expect(problemOf(file(alignment(`<Line><Start>${text}</Start><End>5 5</End></Line>`))).expected).toContain(
        'northing easting',
      )
  })

  test('an external entity is not fetched and an undefined one is an error', () => {
    const declared = '<!DOCTYPE LandXML [<!ENTITY x SYSTEM "file:///etc/hostname">]>'
    const text = file(alignment(line)).replace('?>\n', `?>\n${declared}\n`)
    expect(readLandXml('road.xml', text).ok).toBe(true)
    const used = text.replace('name="A"', 'name="&x;"')
    expect(problemOf(used)).toMatchObject({
      expected: 'well-formed XML',
      found: expect.stringContaining('undefined entity'),
    })
  })

  test('broken XML is refused with its line', () => {
    expect(problemOf(file(alignment('<Line><Start>1 2</Line>')))).toMatchObject({
      expected: 'well-formed XML',
      place: expect.stringMatching(/^5:/),
    })
    expect(problemOf('').expected).toContain('XML')
  })

  test('elements that do not join are reported with place, distance and kink', () => {
    const shifted = '<Line><Start>200300.02 600400</Start><End>200600.02 600800</End></Line>'
    const bent = '<Line><Start>200300 600400</Start><End>200700 600700</End></Line>'
    const size = 1200 / 3937
    const gaps = (second: string) => {
      const read = readLandXml('road.xml', file(alignment(`${line}\n${second}`)))
      if (!read.ok) throw new Error(JSON.stringify(read.error))
      return read.value.gaps
    }
    expect(gaps(shifted)).toEqual([
      {
        alignment: 'A',
        place: expect.stringMatching(/^6:/),
        station: expect.closeTo(1500 * size, 6),
        distance: expect.closeTo(0.02 * size, 6),
        kink: 0,
      },
    ])
    expect(gaps(bent)).toEqual([
      expect.objectContaining({ distance: 0, kink: expect.closeTo(Math.atan2(3, 4) - Math.atan2(4, 3), 9) }),
    ])
  })

  test('station equations are read with the continuous station, and one that contradicts itself is refused', () => {
    const equation = (back: string) => `<StaEquation staAhead="2000" staBack="${back}" staInternal="1200"/>`
    const read = readLandXml('road.xml', file(alignment(line, equation('1200')), units('meter')))
    expect(read.ok && read.value.alignments[0]!.equations).toEqual([{ internal: 1200, back: 1200, ahead: 2000 }])
    expect(problemOf(file(alignment(line, equation('1250')))).expected).toContain('staBack')
  })
})

describe('writing LandXML', () => {
  const tangent = (length: number) => ({ length, curvatureStart: 0, curvatureEnd: 0 })
  const road = layAlignment({ point: { easting: 600_000, northing: 200_000 }, azimuth: 0.7, station: 3000 }, [
    tangent(200),
    { length: 90, curvatureStart: 0, curvatureEnd: 1 / 300 },
    { length: 160, curvatureStart: 1 / 300, curvatureEnd: 1 / 300 },
    { length: 40, curvatureStart: 1 / 300, curvatureEnd: 1 / 150 },
    { length: 150, curvatureStart: 1 / 150, curvatureEnd: -1 / 200 },
    { length: 700, curvatureStart: -1 / 200, curvatureEnd: -1 / 200 },
    { length: 60, curvatureStart: -1 / 200, curvatureEnd: 0 },
    tangent(250),
  ])
  const equations = [
    { internal: 3100, back: 3100, ahead: 5000 },
    { internal: 3400, back: 5300, ahead: 5200 },
  ]

  test('what is written reads back as the same line without gaps, in every unit', () => {
    for (const unit of ['meter', 'foot', 'USSurveyFoot'] satisfies LinearUnit[]) {
      const text = writeLandXml(
        { unit, alignments: [{ name: 'A & "B" <1>', horizontal: road, equations }] },
        '2026-11-25',
        '12:00:00',
      )
      const read = readLandXml('road.xml', text)
      if (!read.ok) throw new Error(JSON.stringify(read.error))
      const [back] = read.value.alignments
      expect(read.value.unit).toBe(unit)
      expect(read.value.gaps).toEqual([])
      expect(back!.name).toBe('A & "B" <1>')
      expect(back!.equations).toEqual(
        equations.map((e) => ({
          internal: expect.closeTo(e.internal, 6),
          back: expect.closeTo(e.back, 6),
          ahead: expect.closeTo(e.ahead, 6),
        })),
      )
      expect(Math.abs(endStation(back!.horizontal) - endStation(road))).toBeLessThan(1e-6)
      fc.assert(
        fc.property(fc.double({ min: 3000, max: endStation(road), noNaN: true }), (station) => {
          expect(distance(pointAt(back!.horizontal, station), pointAt(road, station))).toBeLessThan(1e-6)
        }),
        { seed: 51, numRuns: 200 },
      )
    }
  })

  test('the same input gives the same bytes', () => {
    const write = () =>
      writeLandXml({ unit: 'foot', alignments: [{ name: 'A', horizontal: road, equations }] }, '2026-11-25', '12:00:00')
    expect(write()).toBe(write())
  })
})

describe('a road by its own numbers', () => {
  const tangent = (length: number) => ({ length, curvatureStart: 0, curvatureEnd: 0 })
  const shapes = [
    tangent(200),
    { length: 90, curvatureStart: 0, curvatureEnd: 1 / 300 },
    { length: 160, curvatureStart: 1 / 300, curvatureEnd: 1 / 300 },
    { length: 90, curvatureStart: 1 / 300, curvatureEnd: 0 },
    tangent(250),
  ]

  test.each(Array.from({ length: 36 }, (_, i) => i * 10))(
    'is as long beside it, wherever it leads: first towards %i degrees',
    (degrees) => {
      const start = { point: { easting: 600_000, northing: 200_000 }, azimuth: (degrees * Math.PI) / 180, station: 0 }
      const laid = layAlignment(start, shapes)
      const written = writeLandXml(
        { unit: 'meter', alignments: [{ name: 'A', horizontal: laid, equations: [] }] },
        '2026-11-25',
        '12:00:00',
      )
      const read = readLandXml('road.xml', written)
      if (!read.ok) throw new Error(JSON.stringify(read.error))
      // The line 7.5 m to the right turns by 250/300 rad in all: it is that much times 7.5 m shorter.
      const turning = (90 / 2 + 160 + 90 / 2) / 300
      expect(offsetLength(read.value.alignments[0]!.horizontal, 100, 700, 7.5)).toBeCloseTo(600 - 7.5 * turning, 6)
    },
  )
})
