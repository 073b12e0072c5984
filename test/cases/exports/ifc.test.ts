import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import { verticalAlignment } from '../../../src/core/alignment/vertical-alignment.ts'
import { metresFromGround } from '../../../src/core/units/ground-unit.ts'
import { feet } from '../../../src/core/units/quantity.ts'
import type { JudgedRun } from '../../../src/operations/judge-readings.ts'
import { type PlacedRun, placeRun, type RoadPlace } from '../../../src/operations/place-run.ts'
import { writeRunIfc } from '../../../src/operations/write-exports.ts'
import { english } from '../../../src/words/english.ts'
import { allOf, attributeOf, checkIfc, referredTo } from './check-ifc.ts'
import { inventedRoad, judgedDemo, newYorkEast, placedDemo, sound, stamp } from './export-project.ts'
import { readStep, type Value } from './step-reader.ts'

const sha256 = (content: string): string => createHash('sha256').update(content).digest('hex')
const usFeet = (length: number): number => metresFromGround(length, 'US survey foot')

/** The invented road with heights: up 3 %, a crest of 300 ft, down 2 %; the pavement falls 2 % to both sides. */
function roadWithHeights(): RoadPlace {
  const profile = verticalAlignment([
    { station: usFeet(19_500), elevation: usFeet(400), curveLength: 0 },
    { station: usFeet(20_800), elevation: usFeet(439), curveLength: usFeet(300) },
    { station: usFeet(22_000), elevation: usFeet(415), curveLength: 0 },
  ])
  if (!profile.ok) throw new Error(profile.error.kind)
  return {
    ...inventedRoad,
    surface: { profile: profile.value, crossSlopes: [{ station: 0, left: -0.02, right: -0.02 }] },
  }
}

const place = (judged: JudgedRun, road: RoadPlace | null, unit: 'foot' | 'US survey foot'): PlacedRun =>
  sound(placeRun('run.json', judged, { offset: usFeet(12), road, unit }))

async function written(judged: JudgedRun, placed: PlacedRun): Promise<string> {
  const system = await newYorkEast()
  return sound(
    writeRunIfc('run.json', judged, placed, { system, unit: system.unit, sha256, stamp, print: english(null) }),
  )
}

const withoutSystem = (judged: JudgedRun, placed: PlacedRun): string =>
  sound(writeRunIfc('run.json', judged, placed, { system: null, unit: 'foot', sha256, stamp, print: english(null) }))

const road = { route: 'County Road 14', side: 'right', datumStation: '208+40', traffic: 'two-way' }
const demo = judgedDemo()

describe('the table of the schema finds nothing wrong', () => {
  it('with a run on spirals', async () => {
    expect(checkIfc(await written(demo, placedDemo(demo)))).toEqual([])
  })

  it('with a run on a road with heights', async () => {
    const file = await written(demo, place(demo, roadWithHeights(), 'US survey foot'))
    expect(checkIfc(file)).toEqual([])
    expect(file).toContain('IFCGRADIENTCURVE')
    expect(file).toContain('.PARABOLICARC.')
  })

  it('with a run on the left against the stations, and one without a road', async () => {
    const left = judgedDemo({ road: { ...road, side: 'left' } })
    expect(checkIfc(await written(left, placedDemo(left)))).toEqual([])
    expect(checkIfc(withoutSystem(demo, place(demo, null, 'foot')))).toEqual([])
  })

  it('with station equations', async () => {
    const equation = { internal: usFeet(20_500), back: usFeet(20_500), ahead: usFeet(20_450) }
    const equated = { ...inventedRoad, equations: [equation] }
    const file = await written(demo, place(demo, equated, 'US survey foot'))
    expect(checkIfc(file)).toEqual([])
    expect(file).toContain("'205+00.00 = 204+50.00'")
    expect(file).toContain("IFCPROPERTYSINGLEVALUE('IncomingStation'")
  })

  it('with the worst of words', async () => {
    const name = `'); #1=IFCWALL(\\X2\\ 🚧 مرحبا\n\u0007${'é'.repeat(4000)}`
    const judged = judgedDemo({ name })
    expect(checkIfc(await written(judged, placedDemo(judged)))).toEqual([])
  })
})

describe('the table of the schema refuses', () => {
  it.each([
    ['a value too few', /(IFCRAILING\([^)]*),\.GUARDRAIL\./, '$1', '8 values for 9 attributes'],
    ['a reference to nowhere', /(IFCRAILING\('[^']*',\$,'[^']*',\$,\$,)#\d+/, '$1#999999', '#999999 is nowhere'],
    [
      'a reference to something else',
      /(IFCRAILING\('[^']*',\$,'[^']*',\$,\$,)#\d+/,
      '$1#1',
      'ObjectPlacement: #1 is no IfcObjectPlacement',
    ],
    ['an enumeration of another list', /\.GUARDRAIL\./, '.GUARDRAILS.', 'no IfcRailingTypeEnum'],
    ['a mandatory value left out', /(IFCEXTRUDEDAREASOLID\(#\d+,#\d+,#\d+),[^)]*/, '$1,$', 'Depth: is missing'],
    ['a length of nothing', /(IFCEXTRUDEDAREASOLID\(#\d+,#\d+,#\d+),[^)]*/, '$1,0.', 'no IfcPositiveLengthMeasure'],
    ['an integer for a real', /IFCVECTOR\((#\d+),1\.\)/, 'IFCVECTOR($1,1)', 'Magnitude: no IfcLengthMeasure'],
    [
      'a value of no type where one is needed',
      /IFCLENGTHMEASURE\((0\.)\),IFCLENGTHMEASURE/,
      '$1,IFCLENGTHMEASURE',
      'a IfcCurveMeasureSelect without its type',
    ],
    ['a GlobalId of 21 characters', /IFCMEMBER\('./, "IFCMEMBER('", 'is none'],
    ['the GlobalId of another', /(IFCBEAM\()'.{22}'([\s\S]*?IFCBEAM\()('.{22}')/, '$1$3$2$3', 'is used twice'],
    ['an unknown entity', /IFCMEMBER\(/, 'IFCGUARDRAILPOST(', 'no entity of the table'],
    ['an open string', /'Post 1'/, "'Post 1", 'not to be read'],
    ['a character that is not encoded', /'Post 1'/, "'P\\X2\\00 1'", 'not to be read'],
    [
      'a type of its own without a name',
      /(IFCELEMENTASSEMBLY\('[^']*',\$,'[^']*',\$,)'[^']*'/,
      '$1$',
      'a type of its own without a name',
    ],
    ['a part of nothing', /(IFCRELAGGREGATES\([^(]*\(#\d+),#\d+/, '$1', 'has 0 wholes'],
    ['a derived value written', /IFCSIUNIT\(\*/, 'IFCSIUNIT($', 'Dimensions: is to be derived'],
    ['another schema', /IFC4X3_ADD2/, 'IFC4', 'another schema: IFC4'],
    ['a file cut short', /[\s\S]{40}$/, '', 'the file has no line END-ISO-10303-21;'],
  ])('%s', async (_, found, instead, because) => {
    const file = await written(demo, placedDemo(demo))
    const broken = file.replace(found, instead)
    expect(broken).not.toBe(file)
    expect(checkIfc(broken).join('\n')).toContain(because)
  })
})

const numbers = (value: Value): readonly number[] =>
  value.kind === 'list' ? value.values.flatMap(numbers) : 'number' in value ? [value.number] : []

/** Coordinates of the local placement of the product with this tag. */
function locationOf(file: string, tag: string): readonly number[] {
  const step = readStep(file)
  const at = (number: number | undefined) => step.instances.get(number!)!
  const [, product] = allOf(step, 'IfcElement').find(([, one]) => {
    const value = attributeOf(one, 'Tag')
    return value.kind === 'string' && value.text === tag
  })!
  const placement = at(referredTo(product, 'ObjectPlacement')[0])
  const axes = at(referredTo(placement, 'RelativePlacement')[0])
  return numbers(attributeOf(at(referredTo(axes, 'Location')[0]), 'Coordinates'))
}

describe('places, worked by hand', () => {
  it('puts a post behind the flare at its station and 12 ft to the right', () => {
    // azimuth with the sine 0.6 and the cosine 0.8; station 0+00 at E 1000 ft, N 2000 ft
    const start = { point: { easting: feet(1000), northing: feet(2000) }, azimuth: Math.atan2(3, 4), station: 0 }
    const horizontal = layAlignment(start, [{ length: feet(40_000), curvatureStart: 0, curvatureEnd: 0 }])
    const straight = { horizontal, equations: [], surface: null }
    const placed = sound(placeRun('run.json', demo, { offset: feet(12), road: straight, unit: 'foot' }))
    const station = 20_840 - 62.5 + demo.model.layout.posts[14]!.alongInches / 12
    const [easting, northing, elevation] = locationOf(withoutSystem(demo, placed), 'post-15')
    expect(easting! / 0.3048).toBeCloseTo(1000 + 0.6 * station + 0.8 * 12, 5)
    expect(northing! / 0.3048).toBeCloseTo(2000 + 0.8 * station - 0.6 * 12, 5)
    expect(elevation).toBe(0)
  })

  it('gives the map conversion in the unit of the map, a US survey foot', async () => {
    const step = readStep(await written(demo, placedDemo(demo)))
    const [[, conversion]] = allOf(step, 'IfcMapConversion') as [[number, never]]
    const [eastings, northings, scale] = ['Eastings', 'Northings', 'Scale'].map((name) =>
      numbers(attributeOf(conversion, name)),
    ) as [[number], [number], [number]]
    expect(scale[0], '3937/1200 US survey feet in a metre').toBeCloseTo(3937 / 1200, 12)
    // cs2cs EPSG:4269 EPSG:2260 puts the start of the road, 41 N 74 W, here
    const [, segment] = allOf(step, 'IfcAlignmentHorizontalSegment')[0]!
    const point = step.instances.get(referredTo(segment, 'StartPoint')[0]!)!
    const [x, y] = numbers(attributeOf(point, 'Coordinates')) as [number, number]
    expect(eastings[0] + scale[0] * x).toBeCloseTo(630128.2058, 6)
    expect(northings[0] + scale[0] * y).toBeCloseTo(789591.521, 6)
  })

  it('says the alignment in the standard way: from east against the clock, to the left positive', async () => {
    const step = readStep(await written(demo, placedDemo(demo)))
    const segments = allOf(step, 'IfcAlignmentHorizontalSegment').map(([, segment]) => {
      const [direction, start, end, length] = [
        'StartDirection',
        'StartRadiusOfCurvature',
        'EndRadiusOfCurvature',
        'SegmentLength',
      ].map((name) => numbers(attributeOf(segment, name))[0]!)
      const kind = attributeOf(segment, 'PredefinedType')
      return {
        kind: kind.kind === 'enumeration' && kind.literal,
        direction: direction!,
        radii: [usFeetOf(start!), usFeetOf(end!)],
        length: usFeetOf(length!),
      }
    })
    // the road begins at azimuth 0.9 rad; 700 ft straight, 150 ft of spiral to a radius of 900 ft on the right, 600 ft of it
    const east = Math.PI / 2 - 0.9
    expect(segments).toEqual([
      { kind: 'LINE', direction: expect.closeTo(east, 8), radii: [0, 0], length: 700 },
      { kind: 'CLOTHOID', direction: expect.closeTo(east, 8), radii: [0, -900], length: 150 },
      { kind: 'CIRCULARARC', direction: expect.closeTo(east - 150 / 1800, 8), radii: [-900, -900], length: 600 },
      { kind: 'LINE', direction: expect.closeTo(east - 150 / 1800 - 600 / 900, 8), radii: [0, 0], length: 0 },
    ])
  })
})

it('says the profile by grades and parabolas, worked by hand', async () => {
  const step = readStep(await written(demo, place(demo, roadWithHeights(), 'US survey foot')))
  const names = ['StartDistAlong', 'HorizontalLength', 'StartHeight', 'StartGradient', 'EndGradient']
  const segments = allOf(step, 'IfcAlignmentVerticalSegment').map(([, segment]) => {
    const [along, length, height, start, end] = names.map((name) => numbers(attributeOf(segment, name))[0]!)
    return [
      ...[along, length, height].map((one) => usFeetOf(one!)),
      ...[start, end].map((one) => Number(one!.toFixed(9))),
    ]
  })
  // the road begins at 200+00 and ends at 214+50, 500 ft beyond the first point of the profile; the crest is 150 ft each way
  expect(segments).toEqual([
    [0, 650, 400 + 0.03 * 500, 0.03, 0.03],
    [650, 300, 439 - 0.03 * 150, 0.03, -0.02],
    [950, 500, 439 - 0.02 * 150, -0.02, -0.02],
    [1450, 0, 439 - 0.02 * 650, -0.02, -0.02],
  ])
})

const usFeetOf = (length: number): number => Math.round(((length * 3937) / 1200) * 1e6) / 1e6 + 0

it('gives the same text for the same run and stamp', async () => {
  const write = async () => {
    const judged = judgedDemo()
    return written(judged, placedDemo(judged))
  }
  expect(await write()).toBe(await write())
})

it('refuses coordinates that do not lie in the reference system', async () => {
  const system = await newYorkEast()
  const options = { system, unit: system.unit, sha256, stamp, print: english(null) }
  const refused = writeRunIfc('run.json', demo, place(demo, null, 'foot'), options)
  expect(refused.ok ? 'written' : english(null).say(refused.error[0]!.expected)).toContain('EPSG:2260')
})
