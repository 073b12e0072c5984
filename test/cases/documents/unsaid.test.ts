import { createHash } from 'node:crypto'
import ExcelJS from 'exceljs'
import { expect, test } from 'vitest'
import { crewSheetContents } from '../../../src/documents/crew-sheet-contents.ts'
import { writeCrewSheet } from '../../../src/documents/pdf/crew-sheet.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { deviceRun } from '../../../src/operations/device-run.ts'
import { stripInput } from '../../../src/operations/strip-input.ts'
import { writePacket } from '../../../src/operations/write-packet.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { leftUnsaid, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { pseudo } from '../../pseudo/pseudo.ts'
import { atSplices, judgedDemo, sound } from '../exports/export-project.ts'
import { deviceOf, onDevice } from './device-of-demo.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'

const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex')

/** Every document of a run with logs, ticket and signatures, in the pseudo-language, by name. */
async function documents(): Promise<ReadonlyMap<string, Uint8Array>> {
  const print = pseudo(null)
  const judged = onDevice(judgedDemo())
  const { entries } = sound(deviceRun('device.json', deviceOf(judged, demoProject().run, []), judged.run))
  const printing = {
    ...({ page: 'letter', lie: 'portrait' } as const),
    ...{ printedAt: '2016-05-13T09:00:00-06:00', author: 'M. Reyes', print },
  }
  const files = sound(
    await writePacket(judged, {
      ...printing,
      ...{ version: '0.1.0', sha256, purpose: null, zone: 'America/Denver', progress: () => {} },
      stakes: { order: 'point, northing, easting, elevation, code', header: true } as const,
      sources: { run: 'run.json', readings: 'readings.json' },
      ...{ pay: atSplices, ticket: null, place: null, photos: null, absentPhotos: 'problem' as const, entries },
    }),
  )
  const crewSheet = await writeCrewSheet(
    crewSheetContents(recordInput(judged, print), null),
    { ...stripInput(judged, print), verdicts: null },
    [],
    { ...printing, hash: '0'.repeat(64) },
  )
  return new Map([...files.map((one) => [one.name, one.bytes] as const), ['crew-sheet.pdf', crewSheet]])
}

async function cellsOf(workbook: Uint8Array): Promise<readonly string[]> {
  const book = new ExcelJS.Workbook()
  await book.xlsx.load(workbook.slice().buffer as ArrayBuffer)
  return book.worksheets.flatMap((sheet) => [
    sheet.name,
    ...sheet
      .getSheetValues()
      .flatMap((row) => (Array.isArray(row) ? row : []))
      .filter((cell) => typeof cell === 'string'),
  ])
}

/** What a manifest says in words. */
function wordsOf(manifest: Uint8Array): readonly string[] {
  const { acceptance, pay, leftOut, notes } = JSON.parse(new TextDecoder().decode(manifest))
  return [acceptance, pay.boundaries, pay.rounding, ...leftOut.map(({ why }: { why: string }) => why), ...notes]
}

test.skipIf(!isInstalled('pdftotext'))(
  'in a language that nobody speaks, no document has an unknown text unsaid',
  {
    timeout: 60_000,
  },
  async () => {
    const files = await documents()
    const texts = new Map<string, readonly string[]>([
      ['quantities.xlsx', await cellsOf(files.get('quantities.xlsx')!)],
      ['manifest.json', wordsOf(files.get('manifest.json')!)],
    ])
    for (const [name, bytes] of files)
      if (name.endsWith('.pdf') && name !== 'crew-sheet-es.pdf') texts.set(name, [textOf(fileOf(bytes, name))])
    expect(texts.size).toBe(10)
    expect([...texts].flatMap(([name, all]) => leftUnsaid(name, all.flatMap(unsaidIn)))).toEqual([])
  },
)
