import ExcelJS from 'exceljs'
import { describe, expect, test } from 'vitest'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import type { JudgedRun } from '../../../src/operations/judge-readings.ts'
import { writePacket } from '../../../src/operations/write-packet.ts'
import { english } from '../../../src/words/english.ts'
import { sha256 } from '../../fixtures/record-text-of.ts'
import { atSplices, judgedDemo, sound } from '../exports/export-project.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'
import { judgedOf, packetOfRun, packetRuns } from './packet-runs.ts'

/** The files of a packet by name: PDFs as their text, all others as they are. */
async function packetWithoutRoad(judged: JudgedRun) {
  const files = sound(
    await writePacket(judged, {
      ...({ page: 'letter', lie: 'portrait', printedAt: '2016-05-13T09:00:00-06:00', author: 'M. Reyes' } as const),
      ...{ version: '0.1.0', sha256, sources: { run: 'run.json', readings: 'readings.json' }, pay: atSplices },
      stakes: { order: 'point, northing, easting, elevation, code', header: false } as const,
      ...{ ticket: null, place: null, photos: null, absentPhotos: 'left out' as const, entries: noEntries },
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
const printed = (offset: number, decimals: number): string =>
  `${offset < 0 ? '−' : '+'}${Math.abs(offset).toFixed(decimals)}`

/** The sheets of a workbook by name: rows of cells by the head of their column. */
async function sheetsOf(bytes: Uint8Array): Promise<ReadonlyMap<string, readonly ReadonlyMap<string, Cell>[]>> {
  const book = new ExcelJS.Workbook()
  await book.xlsx.load(bytes.slice().buffer as ArrayBuffer)
  return new Map(
    book.worksheets.map((sheet) => {
      const [head = [], ...rows] = (sheet.getSheetValues().slice(1) as ExcelJS.CellValue[][]).map((row) => row.slice(1))
      return [sheet.name, rows.map((row) => new Map(head.map((name, i) => [String(name), plain(row[i])])))] as const
    }),
  )
}

type Cell = string | number | null

const plain = (value: ExcelJS.CellValue | undefined): Cell => {
  if (typeof value === 'object' && value !== null && 'result' in value) return value.result as Cell
  return (value ?? null) as Cell
}

type Points = Readonly<Record<string, readonly [number, number]>>

/** Northing and easting of each stake, by its number, as the three files of points have them. */
const stakesOf = (text: (name: string) => string): readonly Points[] => [
  byNumber(
    text('stakes.csv')
      .split('\r\n')
      .map((line) => line.split(','))
      .filter(([point]) => /^\d+$/.test(point!))
      .map(([point, northing, easting]) => [point!, Number(northing), Number(easting)]),
  ),
  byNumber(
    [...text('stakes.xml').matchAll(/<CgPoint name="(\d+)"[^>]*>([\d.-]+) ([\d.-]+)/g)].map(
      ([, point, northing, easting]) => [point!, Number(northing), Number(easting)],
    ),
  ),
  byNumber(
    [...text('stakes.dxf').matchAll(/INSERT\r?\n[\s\S]*?STAKE\r?\n *10\r?\n([\d.-]+)\r?\n *20\r?\n([\d.-]+)/g)].map(
      ([, easting, northing], i) => [`${i + 1}`, Number(northing), Number(easting)],
    ),
  ),
]

const byNumber = (points: readonly (readonly [string, number, number])[]): Points =>
  Object.fromEntries(points.map(([point, northing, easting]) => [point, [northing, easting]]))

/** Apart by no more than half of the last digit of the file that gives the fewest: four after the point. */
function expectSame(points: Points, others: Points): void {
  expect(Object.keys(points)).toEqual(Object.keys(others))
  for (const [point, at] of Object.entries(points))
    for (const i of [0, 1] as const) expect(Math.abs(at[i] - others[point]![i]), point).toBeLessThan(0.000051)
}

describe.skipIf(!isInstalled('pdftotext')).each(packetRuns)('in every file of the packet of the run %s', (run) => {
  const judged = judgedOf(run)
  const isMetric = judged.run.units === 'metric'
  const { posts, panels } = judged.model.layout
  const read = async () => {
    const files = await packetOfRun(run)
    const bytes = (name: string): Uint8Array => files.find((one) => one.name === name)!.bytes
    const text = (name: string): string => new TextDecoder().decode(bytes(name))
    const pdf = (name: string): string => textOf(fileOf(bytes(name), `${run}-${name}`))
    return { text, pdf, sheets: await sheetsOf(bytes('quantities.xlsx')), workbook: bytes('quantities.xlsx') }
  }
  const crewSheets = ['crew-sheet.pdf', 'crew-sheet-es.pdf']
  const heads = ['record.pdf', 'as-built.pdf', 'crew-sheet.pdf']

  test('a post has the one station and offset that the road gives it', async () => {
    const { text, pdf, workbook } = await read()
    const staked = await ofWorkbook(workbook)
    expect(staked.map(({ post }) => post)).toEqual(posts.map(({ number }) => number))
    expect(ofMap(text('run.geojson'))).toEqual(staked)
    const model = ofModel(text('run.ifc'))
    const [record, ...crew] = ['record.pdf', ...crewSheets].map(pdf)
    const [unit, decimals] = isMetric ? ['m', 3] : ['ft', 2]
    for (const { post, station, offset } of staked) {
      expect(model).toContain(station)
      for (const sheet of crew) expect(sheet).toContain(`${post} ${station} ${printed(offset, decimals)} `)
      expect(record).toContain(`from post 1, station ${station}, offset ${printed(offset, decimals)} ${unit}`)
    }
    for (const name of heads)
      for (const { station, offset } of [staked[0]!, staked.at(-1)!])
        expect(pdf(name), name).toContain(`station ${station}, offset ${printed(offset, decimals)} ${unit}`)
    // The road lies left of its curve's outer side: following the rail from the datum gives other stations.
    const byRail = (posts.at(-1)!.alongInches / 12) * (isMetric ? 0.3048 : 1)
    expect(Math.abs(byRail - (numberOf(staked.at(-1)!.station) - numberOf(staked[0]!.station)))).toBeGreaterThan(0.01)
  })

  test('a stake has one place', async () => {
    const { text, sheets } = await read()
    const [csv, ...others] = stakesOf(text)
    expect(Object.keys(csv!)).toHaveLength(posts.length)
    for (const other of others) expectSame(other, csv!)
    const rows = sheets.get('Stakes')!.filter((row) => typeof row.get('Point') === 'number')
    const named = (row: ReadonlyMap<string, Cell>, name: string): number =>
      [...row].find(([head]) => head.startsWith(name))![1] as number
    expectSame(
      byNumber(rows.map((row) => [`${row.get('Point')}`, named(row, 'Northing'), named(row, 'Easting')])),
      csv!,
    )
  })

  test('posts, panels and rail are as many and as long', async () => {
    const { text, pdf, sheets } = await read()
    const rail = panels.reduce((sum, { inches }) => sum + inches, 0)
    const long = isMetric ? `${((rail * 25.4) / 1000).toFixed(3)} m` : `${Math.floor(rail / 12)} ft ${rail % 12} in`
    for (const name of heads)
      expect(pdf(name), name).toContain(`${posts.length} posts, ${panels.length} panels, ${long} of rail`)
    const { features } = JSON.parse(text('run.geojson')) as { features: { properties: Record<string, number> }[] }
    expect(features[0]!.properties).toMatchObject({ posts: posts.length, panels: panels.length })
    expect(features[0]!.properties.rail_ft ?? features[0]!.properties.rail_m! / 0.3048).toBeCloseTo(rail / 12, 3)
    expect(sheets.get('Posts')!.map((row) => row.get('Post'))).toEqual(posts.map(({ number }) => number))
    expect(sheets.get('Panels')!.at(-1)!.get('Length (in)')).toBe(rail)
    const total = (name: string): Cell =>
      sheets
        .get('Quantities')!
        .find((row) => row.get('Item') === name && row.get('Piece') === 'Total')!
        .get('Amount')!
    expect((total('Rail from end to end') as number) / (isMetric ? 0.3048 : 1)).toBeCloseTo(rail / 12, 9)
    const blocks = total('Offset blocks')
    expect(blocks).toBe(posts.filter(({ block }) => block).length)
    for (const name of ['quantities.pdf', 'material-list.pdf'])
      expect(pdf(name)).toMatch(new RegExp(`Offset blocks ${blocks}\\b`))
    const built = JSON.parse(text('run.json')) as { layout: { posts: unknown[]; panels: unknown[] } }
    expect([built.layout.posts, built.layout.panels].map(({ length }) => length)).toEqual([posts.length, panels.length])
  })

  test('verdicts are as many, and the run is as acceptable', async () => {
    const { text, pdf, sheets } = await read()
    const { verdicts, acceptance } = judged.judgement
    const [record, built] = ['record.pdf', 'as-built.pdf'].map(pdf)
    const rows = sheets.get('Requirements')!.map((row) => row.get('Verdict'))
    for (const word of ['fails', 'too close', 'unread', 'meets'] as const) {
      const count = verdicts.filter(({ verdict }) => verdict === word).length
      expect(record, word).toContain(` ${count} ${word} `)
      expect(
        rows.filter((one) => one === word),
        word,
      ).toHaveLength(count)
    }
    expect(record).toContain(acceptance.kind.toUpperCase())
    expect(built).toContain(`The run is ${acceptance.kind}.`)
    expect(JSON.parse(text('manifest.json'))).toMatchObject({ acceptance: acceptance.kind })
    const facts = sheets.get('Run')!.map((row) => [...row.values()])
    expect(facts).toContainEqual(['Acceptance', acceptance.kind])
  })
})

const numberOf = (station: string): number => Number(station.replace('+', ''))

test.skipIf(!isInstalled('pdftotext'))('without a road no document gives a post a station', async () => {
  const { text, pdf } = await packetWithoutRoad(judgedDemo())
  expect(ofModel(text('run.ifc'))).toEqual([])
  for (const name of ['crew-sheet.pdf', 'record.pdf', 'as-built.pdf']) {
    // The datum's alone, which somebody wrote.
    expect(new Set(pdf(name).match(/\d+\+\d\d(\.\d+)?\b/g)), name).toEqual(new Set(['208+40']))
    expect(pdf(name), name).toContain('of rail upstream of the datum')
  }
})
