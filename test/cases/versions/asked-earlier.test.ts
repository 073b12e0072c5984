import ExcelJS from 'exceljs'
import { describe, expect, test } from 'vitest'
import type { Reading } from '../../../src/core/measurement/reading.ts'
import { recordContents } from '../../../src/documents/record-contents.ts'
import type { EntryOf, PhotoBody } from '../../../src/formats/entry/entry-kinds.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { judgeOutput } from '../../../src/operations/outputs.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { versionsOf } from '../../../src/operations/run-history.ts'
import { quantityList, writeRunWorkbook } from '../../../src/operations/write-exports.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { inches, sampleReading } from '../../fixtures/record-inputs.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'
import { atSplices } from '../exports/export-project.ts'

const [first, second] = demoVersions(['v1', 'v2'])
const required = requireRun('run', second!)
if (!required.ok) throw new Error('the run cannot be laid out')

// Posts 19 and 20 are of the second end, which version v2 has farther on; post 9 is in both.
const readings: readonly Reading[] = [
  sampleReading('here', 'post-9/rail-height', inches(30.5), { version: 'v1', photos: ['photo-here'] }),
  sampleReading('gone', 'post-19/rail-height', inches(30.5), { version: 'v1', photos: ['photo-gone'] }),
  sampleReading('chosen', 'post-20/post-kind', { kind: 'choice', choice: 'right' }, { version: 'v1' }),
]
const photo = (id: string, of: string | null, letter: string): EntryOf<PhotoBody> => ({
  ...{ id, author: 'J. Okafor', capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null },
  body: {
    ...({ sha256: letter.repeat(64), type: 'image/jpeg', bytes: 1, width: 1, height: 1 } as const),
    ...{ takenAt: '2026-05-04T15:30:00.000Z', position: null, of, drawnOn: null, note: 'leans' },
  },
})
const photos = [
  photo('p1', 'post-9/rail-height', 'a'),
  photo('p2', 'post-19/rail-height', 'b'),
  photo('p3', null, 'c'),
  photo('p4', 'post-9/along', 'd'),
  photo('p5', 'post-9/never-asked', 'e'),
]
const held = versionsOf({ files: new Map([['v1', first!]]) })
const judged = judgeKnown(required.value, readings, held)
const contents = recordContents(
  recordInput(judged, english(null)),
  { printedAt: '2026-05-13T09:00:00-06:00', author: '', hash: '' },
  {
    signed: [],
    photos,
    photoStrokes: [],
    photoHashes: {},
    photosHash: '',
    photosHere: new Set(),
    versions: [],
    assignments: [],
  },
)

describe('what an earlier version asked and this one does not', () => {
  test('is of places that only the earlier one has', () => {
    const ids = (run = first!) => run.version!.layout.posts.map(({ id }) => id)
    expect(ids()).toEqual(expect.arrayContaining(['post-9', 'post-19', 'post-20']))
    expect(ids(second)).toContain('post-9')
    expect(ids(second)).not.toContain('post-19')
  })

  test('stands in the record, with the version that was seen and the reason, and nowhere else', () => {
    expect(contents.askedEarlier.readings).toMatchObject([
      {
        reading: { id: 'gone', of: 'post 19, version 1, rail height', answer: '30 1/2 in', by: 'J. Okafor' },
        version: '1',
      },
      // The choice is called as the version called it that offered it.
      {
        reading: {
          id: 'chosen',
          of: 'post 20, version 1, kind of post',
          answer: 'A breakaway wood post, sound',
        },
        version: '1',
      },
    ])
    expect(contents.askedEarlier.readings.map(({ why }) => why)).toEqual([
      'the run no longer has this place',
      'the run no longer has this place',
    ])
    const lines = [...contents.holdPoints, ...contents.requirements].flatMap((line) => line.readings)
    expect(lines.map(({ id }) => id)).toEqual(['here'])
    expect([...contents.measured, ...contents.replaced]).toEqual([])
  })

  test('keeps its photos: those named in readings are in the record, and those of such a requirement are listed', () => {
    expect(contents.photos.map((one) => one.photo)).toEqual(
      expect.arrayContaining(['photo-here', 'photo-gone', ...photos.map(({ body }) => body.sha256)]),
    )
    expect(contents.askedEarlier.photos).toMatchObject([
      { photo: 'b'.repeat(64), of: 'post 19, version 1, rail height', by: 'J. Okafor', note: 'leans' },
      { photo: 'e'.repeat(64), of: 'post 9, never-asked' },
    ])
    expect(contents.askedEarlier.photos.map(({ why }) => why)).toEqual([
      'the run no longer has this place',
      'it is no longer asked of this place',
    ])
  })

  test('is printed by judge --json, in the words of the language', () => {
    const said = { by: 'J. Okafor', version: 'v1', because: 'place gone' }
    expect(judgeOutput(judged, english(null)).askedEarlier).toMatchObject([
      { reading: 'gone', of: 'post-19/rail-height', ...said, why: 'the run no longer has this place' },
      { reading: 'chosen', of: 'post-20/post-kind', ...said },
    ])
    expect(judgeOutput(judged, spanish(null)).askedEarlier[0]!.why).toBe('el tramo ya no tiene este lugar')
  })

  test('has a sheet of its own in the workbook, which a run without any does not have', async () => {
    const quantities = quantityList('run', required.value, atSplices, english(null))
    if (!quantities.ok) throw new Error('the quantities cannot be taken')
    const stamp = { at: '2026-05-13T15:00:00.000Z', author: '' }
    const sheetOf = async (run: typeof judged, entered: typeof photos) => {
      const bytes = await writeRunWorkbook(
        run,
        null,
        quantities.value,
        { photos: entered, versions: [], assignments: [] },
        stamp,
        english(null),
      )
      const workbook = new ExcelJS.Workbook()
      await workbook.xlsx.load(bytes.buffer as ArrayBuffer)
      return workbook.getWorksheet('Asked earlier')
    }
    const sheet = (await sheetOf(judged, photos))!
    const heads = sheet.getRow(1).values as readonly unknown[]
    const asked = ['Reading', 'Of', 'Answer', 'Photos', 'Version', 'Why it is not judged'].map((head) =>
      heads.indexOf(head),
    )
    const rows = [2, 3, 4, 5].map((row) => sheet.getRow(row).values as readonly unknown[])
    expect(rows.map((row) => asked.map((column) => row[column]))).toEqual([
      ['gone', 'post 19, version 1, rail height', '30 1/2 in', 'photo-gone', '1', 'the run no longer has this place'],
      [
        'chosen',
        'post 20, version 1, kind of post',
        'A breakaway wood post, sound',
        '',
        '1',
        'the run no longer has this place',
      ],
      [
        undefined,
        'post 19, version 1, rail height',
        undefined,
        'b'.repeat(64),
        undefined,
        'the run no longer has this place',
      ],
      [undefined, 'post 9, never-asked', undefined, 'e'.repeat(64), undefined, 'it is no longer asked of this place'],
    ])
    expect(await sheetOf(judgeKnown(required.value, readings.slice(0, 1)), photos.slice(0, 1))).toBeUndefined()
  })
})
