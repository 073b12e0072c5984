import { describe, expect, it } from 'vitest'
import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import { feet } from '../../../src/core/units/quantity.ts'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { placeRun, type RoadPlace } from '../../../src/operations/place-run.ts'
import {
  quantityList,
  stakeList,
  writeRunGeoJson,
  writeRunGeoPackage,
  writeRunWorkbook,
  writeStakeCsv,
  writeStakeDxf,
  writeStakeXml,
} from '../../../src/operations/write-exports.ts'
import { writeRunViewDxf } from '../../../src/operations/write-strip.ts'
import { english } from '../../../src/words/english.ts'
import { atSplices, inventedRoad, judgedDemo, newYorkEast, placedDemo, sound, stamp } from './export-project.ts'

const judged = judgedDemo()

/** A straight road whose azimuth has the sine 0.6 and the cosine 0.8; station 0+00 at E 1000 ft, N 2000 ft. */
const road345 = {
  horizontal: layAlignment(
    { point: { easting: feet(1000), northing: feet(2000) }, azimuth: Math.atan2(3, 4), station: 0 },
    [{ length: feet(40_000), curvatureStart: 0, curvatureEnd: 0 }],
  ),
  equations: [],
  surface: null,
}

describe('stakes on a straight road, worked by hand', () => {
  const placed = sound(placeRun('run.json', judged, { offset: feet(12), road: road345, unit: 'foot' }))
  const { posts, postOneAtInches } = judged.model.layout
  const csv = writeStakeCsv(
    placed,
    {
      order: 'point, northing, easting, elevation, code',
      header: false,
      unit: 'foot',
    },
    english(null),
  )
  const rows = csv
    .trimEnd()
    .split('\r\n')
    .map((row) => row.split(','))

  it('puts a post behind the flare at its station and 12 ft to the right', () => {
    expect(postOneAtInches, "the demo's datum at 208+40 lies 62.5 ft behind post 1").toBe(-750)
    const station = 20_840 - 62.5 + posts[14]!.alongInches / 12
    // ahead (0.6, 0.8), right (0.8, -0.6)
    const easting = 1000 + 0.6 * station + 0.8 * 12
    const northing = 2000 + 0.8 * station - 0.6 * 12
    expect(rows[14]).toEqual(['15', northing.toFixed(4), easting.toFixed(4), '', 'POST standard post with block'])
  })

  it('puts post 1 four feet farther out, its flare run out at the splice 34 ft 4 1/2 in on', () => {
    expect(judged.model.layout.panels.slice(0, 3).map(({ inches }) => inches)).toEqual([150, 150, 112.5])
    const station = 20_840 - 62.5 + 34.375 - Math.sqrt(34.375 ** 2 - 4 ** 2)
    expect(Number(rows[0]![2])).toBeCloseTo(1000 + 0.6 * station + 0.8 * 16, 3)
    expect(Number(rows[0]![1])).toBeCloseTo(2000 + 0.8 * station - 0.6 * 16, 3)
  })
})

describe('placing', () => {
  it.each([
    [{ side: null }, 'run.json', 'road.side'],
    [{ side: 'left', traffic: null }, 'run.json', 'road.traffic'],
    [{ datumStation: null }, 'run.json', 'road.datumStation'],
    [{ datumStation: '990+00' }, 'run.json', 'road.datumStation'],
  ])('asks for what the run file does not say: %o', (road, file, place) => {
    const demo = judgedDemo({
      road: { route: 'County Road 14', side: 'right', datumStation: '208+40', traffic: 'two-way', ...road },
    })
    const found = placeRun('run.json', demo, { offset: 3.6, road: road345, unit: 'foot' })
    expect(found.ok ? [] : found.error.map((problem) => [problem.file, problem.place])).toEqual([[file, place]])
  })

  it('refuses coordinates that do not lie in the reference system', async () => {
    const placed = sound(placeRun('run.json', judged, { offset: 3.6, road: null, unit: 'foot' }))
    const written = writeRunGeoJson('run.json', judged, placed, await newYorkEast(), english(null))
    expect(written.ok ? 'written' : english(null).say(written.error[0]!.expected)).toContain('EPSG:2260')
  })
})

describe('a road that is broken', () => {
  const start = { point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }
  const tangent = (length: number) => ({ length: feet(length), curvatureStart: 0, curvatureEnd: 0 })
  const point = (easting: number, northing: number) => ({ easting: feet(easting), northing: feet(northing) })
  /** Two tangents; the second begins `right` ft beside and `on` ft beyond the end of the first, turned by `azimuth`. */
  const broken = (first: number, right: number, on: number, azimuth: number) => ({
    horizontal: layAlignment(start, [
      tangent(first),
      { ...tangent(30_000), own: { point: point(right, first + on), azimuth } },
    ]),
    equations: [],
    surface: null,
  })
  const place = (road: RoadPlace, unit: 'foot' | 'metre' = 'foot') =>
    placeRun('run.json', judged, { offset: feet(12), road, unit })
  const told = (road: RoadPlace, unit?: 'metre') => {
    const placed = place(road, unit)
    return placed.ok ? 'placed' : placed.error.map((one) => printProblem(one, english('us'))).join('\n')
  }

  // The demo's run ends at station 208+40 - 62.5 ft + 18 spaces, some 300 ft on.
  it.each([
    ['a gap before the run', broken(20_000, 0, 488, 0), /station 200[+]00[.]00 it goes on 488 ft/],
    ['a gap within the run', broken(20_850, 3, 0, 0), /station 208[+]50[.]00 it goes on 36 in/],
    ['a kink within the run', broken(20_850, 0, 0, -0.01), /turned 0[.]573° to the left/],
    [
      'a kink before the run',
      broken(10_000, 0, 0, 0.01),
      /station 100[+]00[.]00 it goes on turned 0[.]573° to the right/,
    ],
  ])('is refused with %s, and the refusal says where', (_, road, why) => {
    expect(told(road)).toMatch(why)
  })

  it('is told of beyond the run, in the list of stakes too', () => {
    const placed = sound(place(broken(21_500, 0, 50, 0.2)))
    expect(placed.breaksBeyond).toEqual([
      {
        kind: 'break of road',
        station: '215+00.00',
        metres: expect.closeTo(feet(50), 9),
        degrees: expect.closeTo(11.459, 3),
      },
    ])
    const { notes } = stakeList(judged, placed, 'foot', english('us'))
    expect(notes.at(-1)).toMatch(/Beyond the run .* station 215[+]00[.]00 .* 50 ft/)
    expect(sound(place(road345)).breaksBeyond).toEqual([])
  })

  it('is not broken where its numbers are rounded to 10 mm or 1 mrad, and is just above', () => {
    expect(told(broken(20_000, 0.0099 / 0.3048, 0, 0.00099))).toBe('placed')
    expect(told(broken(20_000, 0.0101 / 0.3048, 0, 0))).toContain('200+00.00')
    expect(told(broken(20_000, 0, 0, -0.00101))).toContain('200+00.00')
  })

  it('takes no run in feet on a road in metres: 208+40 could be either', () => {
    expect(told(road345, 'metre')).toMatch(/^run[.]json.*units/)
  })
})

describe('every export', () => {
  it('gives the same bytes for the same run and stamp', { timeout: 30_000 }, async () => {
    const system = await newYorkEast()
    const write = async () => {
      const run = judgedDemo()
      const placed = placedDemo(run)
      const quantities = sound(quantityList('run.json', run, atSplices, english(null)))
      const package_ = await writeRunGeoPackage('run.json', run, placed, {
        system,
        sqliteAt: null,
        stamp,
        print: english(null),
      })
      const workbook = await writeRunWorkbook(
        run,
        stakeList(run, placed, system.unit, english(null)),
        quantities,
        noEntries,
        stamp,
        english(null),
      )
      return [
        writeStakeXml(placed, system.unit, stamp, english(null)),
        writeStakeDxf(run, placed, system.unit, stamp, english(null)),
        writeRunViewDxf(run, 'strip', stamp.author, english(null))[0]!,
        sound(writeRunGeoJson('run.json', run, placed, system, english(null))),
        Buffer.from(sound(package_)).toString('base64'),
        Buffer.from(workbook).toString('base64'),
      ]
    }
    const first = await write()
    // ZIP times step by two seconds
    await new Promise((resolve) => setTimeout(resolve, 2100))
    expect(await write()).toEqual(first)
  })

  it('is closed: both ways to every stake meet', () => {
    expect(placedDemo(judged).staking.closure.largest).toBeLessThan(1e-6)
  })

  it('uses the foot of the road: the same text in the other foot lies 2 ppm away', () => {
    const inUs = placedDemo(judged).staking.stakes[14]!
    const place = { offset: inUs.offset, road: inventedRoad, unit: 'foot' } as const
    const inFoot = sound(placeRun('run.json', judged, place)).staking.stakes[14]!
    // 208+40: 20840 ft are 0.0417 ft short of 20840 US survey feet
    expect((inUs.station - inFoot.station) / 0.3048).toBeCloseTo(20_840 * 2e-6, 4)
  })
})
