import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { endStation, layAlignment, pointAt } from '../../core/alignment/horizontal-alignment.ts'
import { offsetLength } from '../../core/alignment/offset-line.ts'
import { endOf } from '../../core/geometry/clothoid.ts'
import { distance } from '../../core/geometry/point.ts'
import { english } from '../../words/english.ts'
import { printProblem, problemInWords } from '../input-problem.ts'
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
  `<Alignments><Alignment name="A" staStart="1000"><CoordGeom>\n${geometry}\n</CoordGeom>${more}</Alignment></Alignments>`

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
    const problem = problemOf(file(alignment(line), units(), 'http://example.org/roads'))
    expect(problem.found).toContain('http://example.org/roads')
  })

  test.each([
    'http://www.landxml.org/schema/LandXML-1.1',
    'http://www.landxml.org/schema/LandXML-2.0',
    'http://www.inframodel.fi/inframodel',
  ])('the same road is read in the namespace %s', (namespace) => {
    expect(readLandXml('road.xml', file(alignment(line), units(), namespace))).toEqual(
      readLandXml('road.xml', file(alignment(line))),
    )
  })

  test('spirals other than clothoids, and other geometry, are refused by name', () => {
    const spiral = '<Spiral spiType="bloss" rot="cw" length="100" radiusStart="INF" radiusEnd="500"/>'
    expect(problemOf(file(alignment(spiral)))).toMatchObject({ found: 'bloss', place: expect.stringMatching(/^5:/) })
    expect(problemOf(file(alignment(`${line}\n<Chain>1 2</Chain>`)))).toMatchObject({
      found: 'Chain',
      place: expect.stringMatching(/^6:/),
    })
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

  const notesOf = (text: string) => {
    const read = readLandXml('road.xml', text)
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join())
    return read.value.notes
  }

  test('elements that do not join are told with place, station, distance and kink', () => {
    const shifted = '<Line><Start>200300.04 600400</Start><End>200600.04 600800</End></Line>'
    const bent = '<Line><Start>200300 600400</Start><End>200700 600700</End></Line>'
    const said = (second: string) => notesOf(file(alignment(`${line}\n${second}`))).map((one) => [one.place, one.said])
    const size = 1200 / 3937
    const place = expect.stringMatching(/^6:/)
    const broken = { kind: 'break of road', station: '1500.000' }
    expect(said(shifted)).toEqual([[place, { ...broken, metres: expect.closeTo(0.04 * size, 6), degrees: 0 }]])
    const turned = ((Math.atan2(3, 4) - Math.atan2(4, 3)) * 180) / Math.PI
    expect(said(bent)).toEqual([[place, { ...broken, metres: 0, degrees: expect.closeTo(turned, 7) }]])
  })

  // A line of 500 from station 1000 on; an arc of radius 100 to the right over a right angle, 157.08 long.
  const arc = (attributes: string, center = '<Center>0 100</Center>') =>
    `<Curve rot="cw" ${attributes}><Start>0 0</Start>${center}<End>100 100</End></Curve>`

  test.each([
    ['the length of a line', line.replace('<Line>', '<Line length="900">'), 'Line', 'length', 900, 500],
    ['the radius of a curve', arc('radius="500"'), 'Curve', 'radius', 500, 100],
    ['the length of a curve', arc('length="314.159"'), 'Curve', 'length', 314.159, 50 * Math.PI],
    ['the station of an element', line.replace('<Line>', '<Line staStart="1082">'), 'Line', 'staStart', 1082, 1000],
  ])('%s that its points do not give is told', (_, geometry, element, name, stated, found) => {
    expect(notesOf(file(alignment(geometry))).map(({ said }) => said)).toEqual([
      { kind: 'stated otherwise', element, name, stated, found: expect.closeTo(found, 6) },
    ])
  })

  test('the length of an alignment that its elements do not give is told, and what agrees is not', () => {
    const whole = (length: string) => file(alignment(line).replace('name="A"', `name="A" length="${length}"`))
    expect(notesOf(whole('582')).map(({ said }) => said)).toEqual([
      { kind: 'stated otherwise', element: 'Alignment', name: 'length', stated: 582, found: expect.closeTo(500, 6) },
    ])
    expect(notesOf(whole('500.02'))).toEqual([])
    expect(notesOf(file(alignment(arc('radius="100.001" length="157.08" staStart="1000.004"'))))).toEqual([])
  })

  test('an end that is not where the numbers of an element lead is told', () => {
    const off = arc('').replace('100 100', '101 100')
    expect(notesOf(file(alignment(off), units('meter'))).map(({ said }) => said)).toEqual([
      { kind: 'end elsewhere', element: 'Curve', metres: expect.closeTo(1, 2) },
    ])
  })

  test('profiles and cross sections are told to be not used', () => {
    const more = '<Profile name="P"/><CrossSects/><Profile name="Q"/>'
    expect(notesOf(file(alignment(line, more))).map(({ said }) => said)).toEqual([
      { kind: 'not used of road', names: ['Profile', 'CrossSects'] },
    ])
  })

  const elementsOf = (text: string, only: string | null = null) => {
    const read = readLandXml('road.xml', text, only)
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join())
    return read.value.alignments[0]!.horizontal.elements
  }
  const metric = (geometry: string) => elementsOf(file(alignment(geometry), units('meter')))

  test('blank attributes are missing ones, whatever reads them', () => {
    expect(problemOf(file(alignment(arc('').replace('rot="cw"', 'rot=""'))))).toMatchObject({
      place: expect.stringMatching(/^5:/),
      expected: 'the attribute rot of Curve',
      found: 'none',
    })
    const noStart = file(alignment(line)).replace('staStart="1000"', 'staStart=" "')
    expect(problemOf(noStart).expected).toBe('the attribute staStart of Alignment')
    expect(problemOf(file(alignment(line), units(' ')))).toMatchObject({
      expected: 'the attribute linearUnit of Imperial',
      found: 'none',
    })
  })

  test('a tangent of no length is passed over', () => {
    const none = '<Line length="0"><Start>200300 600400</Start><End>200300 600400</End></Line>'
    expect(metric(`${none.replaceAll('200300 600400', '200000 600000')}\n${line}\n${none}`)).toEqual(metric(line))
  })

  test.each([
    ['to the right', 'rot="cw" radius="100"', 1],
    ['to the left', 'rot="ccw" radius="100"', -1],
    // 471.239 is three quarters of the circle: the long way round.
    ['to the right and more than half around', 'rot="cw" radius="100" length="471.239"', 1],
  ])('a curve without a centre is laid by its radius %s', (_, attributes, turn) => {
    const [curve] = metric(`<Curve ${attributes}><Start>0 0</Start><End>100 100</End></Curve>`)
    expect(curve!.curvatureStart).toBeCloseTo(turn / 100, 12)
    expect(curve!.length).toBeCloseTo(attributes.includes('length') ? 150 * Math.PI : 50 * Math.PI, 6)
    expect(distance(endOf(curve!), { easting: 100, northing: 100 })).toBeLessThan(1e-9)
  })

  test('a radius that does not reach from end to end is refused', () => {
    const short = '<Curve rot="cw" radius="70"><Start>0 0</Start><End>100 100</End></Curve>'
    expect(problemOf(file(alignment(short), units('meter')))).toMatchObject({
      expected: expect.stringContaining('half of the chord'),
      found: 'a chord of 141.421 m and a radius of 70.000 m',
    })
  })

  test('a spiral is read without a PI, and with 0 for the radius of its straight end', () => {
    const spiral = (radius: string, pi: string) =>
      `<Spiral length="60" radiusStart="${radius}" radiusEnd="200" rot="cw" spiType="clothoid"><Start>0 0</Start>${pi}<End>59.865 2.994</End></Spiral>`
    const whole = metric(spiral('INF', '<PI>40.03 0</PI>'))
    expect(metric(spiral('INF', ''))).toEqual(whole)
    expect(metric(spiral('0', '<PI>40.03 0</PI>'))).toEqual(whole)
  })

  test('points are looked up by name, and one that is not there is refused', () => {
    const points =
      '<CgPoints><CgPoint name="1">200000 600000</CgPoint><CgPoint name="2">200300 600400</CgPoint></CgPoints>'
    const named = alignment('<Line><Start pntRef="1"/><End pntRef="2"/></Line>')
    expect(elementsOf(file(`${points}${named}`))).toEqual(elementsOf(file(alignment(line))))
    expect(problemOf(file(`${points}${named.replace('pntRef="2"', 'pntRef="7"')}`)).found).toBe(
      'a reference to point 7',
    )
  })

  test('coordinates may stand in a section that is not parsed', () => {
    const hidden = line.replace('200000 600000', '<![CDATA[200000 600000]]>')
    expect(elementsOf(file(alignment(hidden)))).toEqual(elementsOf(file(alignment(line))))
  })

  test('of several alignments only the one that is wanted is judged', () => {
    const bad = '<Alignment name="B" length="0" staStart="0"><CoordGeom><Chain>1 2</Chain></CoordGeom></Alignment>'
    const both = file(alignment(line).replace('</Alignments>', `${bad}</Alignments>`))
    expect(readLandXml('road.xml', both).ok).toBe(false)
    expect(elementsOf(both, 'A')).toEqual(elementsOf(file(alignment(line))))
    const none = readLandXml('road.xml', both, 'C')
    expect(none.ok ? [] : none.error.map((one) => problemInWords(one, english(null)).found)).toEqual(['"A", "B"'])
  })

  test('version 2.0 may leave the start station out, which is told; the others may not', () => {
    const text = alignment(line).replace(' staStart="1000"', '')
    const later = file(text, units(), 'http://www.landxml.org/schema/LandXML-2.0')
    expect(elementsOf(later)[0]!.station).toBe(0)
    expect(notesOf(later).map(({ said }) => said)).toEqual([{ kind: 'start station not stated' }])
    expect(problemOf(file(text)).expected).toBe('the attribute staStart of Alignment')
  })

  test('the reference system is the one that the file names', () => {
    const named = (code: string) =>
      readLandXml('road.xml', file(`<CoordinateSystem epsgCode="${code}"/>${alignment(line)}`))
    expect(named('2260')).toMatchObject({ value: { epsg: 2260 } })
    expect(named('')).toMatchObject({ value: { epsg: null } })
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
      expect(read.value.notes).toEqual([])
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
