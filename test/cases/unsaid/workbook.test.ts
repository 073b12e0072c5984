import { expect, test } from 'vitest'
import { runSheets } from '../../../src/documents/xlsx/run-sheets.ts'
import type { EntryOf, PhotoBody } from '../../../src/formats/entry/entry-kinds.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { quantityList, stakeList } from '../../../src/operations/write-exports.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { inches, sampleReading } from '../../fixtures/record-inputs.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'
import { leftUnsaid, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { pseudo } from '../../pseudo/pseudo.ts'
import { atSplices, placedDemo, sound } from '../exports/export-project.ts'

/** A run with stakes, whose earlier version asked what this one does not. */
function sheets() {
  const print = pseudo(null)
  const required = sound(requireRun('run', demoVersions(['v1', 'v2'])[1]!))
  const judged = judgeKnown(required, [
    sampleReading('low-1', 'post-9/rail-height', inches(20), {
      version: 'v1',
      where: 'by the tree',
      instrument: 'tape',
    }),
    sampleReading('astray-1', 'post-9/flare-offset', inches(2), { version: 'v1', rechecks: 'splice-2/lap' }),
    sampleReading('gone-1', 'post-19/rail-height', inches(30.5), { version: 'v1' }),
  ])
  const photo: EntryOf<PhotoBody> = {
    ...{ id: 'p', author: 'J. Okafor', capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null },
    body: {
      ...({ sha256: 'b'.repeat(64), type: 'image/jpeg', bytes: 1, width: 1, height: 1 } as const),
      ...{ takenAt: null, position: null, of: 'post-19/rail-height', drawnOn: null, note: 'it leans' },
    },
  }
  return runSheets(
    recordInput(judged, print),
    stakeList(judged, placedDemo(judged), 'US survey foot', print),
    sound(quantityList('run', required, atSplices, print)),
    {
      photos: [photo],
      versions: [],
      assignments: [{ body: { finding: judged.judgement.findings[0]!.id, owner: 'R. Quist', due: '2026-06-01' } }],
    },
  )
}

test('in a language that nobody speaks, each name, head and cell of a workbook is said', () => {
  const all = sheets()
  expect(all).toHaveLength(10)
  const texts = all
    .flatMap(({ name, columns, rows }) => [name, ...columns.map(({ header }) => header), ...rows.flat()])
    .filter((cell) => typeof cell === 'string')
    // Survey codes are the same in every language.
    .filter((text) => !/^[A-Z-]+$/.test(text))
  expect(leftUnsaid('workbook', texts.flatMap(unsaidIn))).toEqual([])
})
