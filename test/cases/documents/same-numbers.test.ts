import ExcelJS from 'exceljs'
import { expect, test } from 'vitest'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import type { JudgedRun } from '../../../src/operations/judge-readings.ts'
import type { PacketPlace } from '../../../src/operations/packet-options.ts'
import { writePacket } from '../../../src/operations/write-packet.ts'
import { english } from '../../../src/words/english.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'
import { atSplices, inventedRoad, judgedDemo, newYorkEast, sound } from '../exports/export-project.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'

/** The files of a packet by name: PDFs as their text, all others as they are. */
async function packetOf(judged: JudgedRun, place: PacketPlace | null) {
  const files = sound(
    await writePacket(judged, {
      ...({ page: 'letter', lie: 'portrait', printedAt: '2016-05-13T09:00:00-06:00', author: 'M. Reyes' } as const),
      ...{ version: '0.1.0', sha256, sources: { run: 'run.json', readings: 'readings.json' }, pay: atSplices },
      stakes: { order: 'point, northing, easting, elevation, code', header: false } as const,
      ...{ ticket: null, place, photos: null, absentPhotos: 'left out' as const, entries: noEntries },
      ...{ purpose: null, zone: 'America/Denver', print: english(judged.run.units), progress: () => {} },
    }),
  )
  const bytes = (name: string): Uint8Array => files.find((one) => one.name === name)!.bytes
  const text = (name: string): string => new TextDecoder().decode(bytes(name))
  return { bytes, text, pdf: (name: string) => textOf(fileOf(bytes(name), name)) }
}

interface OnRoad {
  readonly post: number
  readonly station: string
  readonly offset: number
}

/** What the workbook's sheet of stakes says of each post. */
async function ofWorkbook(bytes: Uint8Array): Promise<readonly OnRoad[]> {
  const book = new ExcelJS.Workbook()
  await book.xlsx.load(bytes.slice().buffer as ArrayBuffer)
  const sheet = book.getWorksheet('Stakes')!
  const head = Array.from(sheet.getRow(1).values as string[], String)
  const [post, station, offset] = ['Point', 'Station', 'Offset'].map((name) =>
    head.findIndex((one) => one.startsWith(name)),
  )
  return sheet
    .getSheetValues()
    .slice(2)
    .map((row) => row as ExcelJS.CellValue[])
    .filter((row) => typeof row[post!] === 'number')
    .map((row) => ({ post: row[post!] as number, station: row[station!] as string, offset: row[offset!] as number }))
}

function ofMap(geoJson: string): readonly OnRoad[] {
  const { features } = JSON.parse(geoJson) as { features: { properties: Record<string, number & string> }[] }
  return features
    .filter(({ properties }) => properties.post !== undefined)
    .map(({ properties: { post, station, offset } }) => ({ post: post!, station: station!, offset: offset! }))
}

/** Stations of the posts of a building model, from the first end. */
const ofModel = (ifc: string): readonly string[] =>
  [...ifc.matchAll(/'Station',\$,IFC(?:TEXT|LABEL)\('([^']+)'/g)].map(([, station]) => station!)

/** `12.0034` as the paper has it. */
const printed = (offset: number): string => `${offset < 0 ? '−' : '+'}${Math.abs(offset).toFixed(2)}`

test.skipIf(!isInstalled('pdftotext'))(
  'on a curved road every file of the packet gives a post the one station and offset that the road gives it',
  async () => {
    const judged = judgedDemo()
    const { bytes, text, pdf } = await packetOf(judged, {
      run: { offset: 3.6576, road: inventedRoad, unit: 'US survey foot' },
      system: await newYorkEast(),
      sqliteAt: null,
    })
    const posts = await ofWorkbook(bytes('quantities.xlsx'))
    expect(posts).toHaveLength(judged.model.layout.posts.length)
    expect(ofMap(text('run.geojson'))).toEqual(posts)
    const model = ofModel(text('run.ifc'))
    for (const { station } of posts) expect(model).toContain(station)
    const record = pdf('record.pdf')
    for (const { post, station, offset } of posts) {
      for (const name of ['crew-sheet.pdf', 'crew-sheet-es.pdf'])
        expect(pdf(name), name).toContain(`${post} ${station} ${printed(offset)} `)
      expect(record).toMatch(
        new RegExp(`from post 1, station ${station.replace('+', '\\+')}, offset \\${printed(offset)} ft`),
      )
    }
    const [first, last] = [posts[0]!, posts.at(-1)!]
    for (const name of ['record.pdf', 'as-built.pdf', 'crew-sheet.pdf'])
      for (const { station, offset } of [first, last])
        expect(pdf(name), name).toContain(`station ${station}, offset ${printed(offset)} ft`)
    // The road lies left of its curve's outer side: following the rail from the datum gives other stations.
    const byRail = judged.model.layout.posts.at(-1)!.alongInches / 12
    const byRoad = feetOf(last.station) - feetOf(first.station)
    expect(Math.abs(byRail - byRoad)).toBeGreaterThan(0.05)
  },
)

const feetOf = (station: string): number => Number(station.replace('+', ''))

test.skipIf(!isInstalled('pdftotext'))('without a road no document gives a post a station', async () => {
  const { text, pdf } = await packetOf(judgedDemo(), null)
  expect(ofModel(text('run.ifc'))).toEqual([])
  for (const name of ['crew-sheet.pdf', 'record.pdf', 'as-built.pdf']) {
    // The datum's alone, which somebody wrote.
    expect(new Set(pdf(name).match(/\d+\+\d\d(\.\d+)?\b/g)), name).toEqual(new Set(['208+40']))
    expect(pdf(name), name).toContain('of rail upstream of the datum')
  }
})
