import { describe, expect, it } from 'vitest'
import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import { feet } from '../../../src/core/units/quantity.ts'
import { placeRun } from '../../../src/operations/place-run.ts'
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
        [],
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
