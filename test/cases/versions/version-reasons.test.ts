import { describe, expect, test } from 'vitest'
import { recordContents } from '../../../src/documents/record-contents.ts'
import { runSheets } from '../../../src/documents/xlsx/run-sheets.ts'
import { runEntries } from '../../../src/formats/entry/run-entries.ts'
import type { RunFile } from '../../../src/formats/run/run-file.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { quantityList } from '../../../src/operations/write-exports.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import type { Print } from '../../../src/words/print.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'
import { atSplices } from '../exports/export-project.ts'

const third = demoVersions(['v1', 'v2', 'v3'])[2]!
const because = ['the culvert is longer', undefined]
const run: RunFile = {
  ...third,
  version: {
    ...third.version!,
    earlier: third.version!.earlier.map((one, i) => ({ ...one, because: because[i] })),
  },
}

/** Entries as a device or the server holds them: each version under its id. */
const { versions } = runEntries(
  ['v1', 'v2', 'v3'].map((id, i) => ({
    ...{ id, kind: 'run', schemaVersion: 2, author: `person ${i + 1}`, supersedes: null, body: {} },
    capturedAt: `2026-05-0${i + 1}T15:30:00.000Z`,
  })),
)

function printedOf(of: RunFile, made: typeof versions, print: Print) {
  const required = requireRun('run', of)
  if (!required.ok) throw new Error('the run cannot be laid out')
  const input = recordInput(judgeKnown(required.value, []), print)
  const { versionReasons } = recordContents(
    input,
    { printedAt: '2026-05-13T09:00:00-06:00', author: '', hash: '' },
    {
      signed: [],
      photos: [],
      photoStrokes: [],
      photoHashes: {},
      photosHash: '',
      photosHere: new Set(),
      versions: made,
      assignments: [],
    },
  )
  const quantities = quantityList('run', required.value, atSplices, print)
  if (!quantities.ok) throw new Error('the quantities cannot be taken')
  const [facts] = runSheets(input, null, quantities.value, { photos: [], versions: made, assignments: [] })
  return { versionReasons, facts: facts!.rows.map(([name, value]) => `${name}: ${value}`) }
}

describe('why a version of a run was made', () => {
  test('stands in record and workbook, with who made that version and when, in the words of the language', () => {
    const said = printedOf(run, versions, english(null))
    expect(said.versionReasons).toEqual(['Version 2: the culvert is longer (person 2, 2026-05-02 15:30 UTC)'])
    expect(said.facts).toContain(`Why it was changed: ${said.versionReasons[0]}`)
    const dicho = printedOf(run, versions, spanish(null))
    expect(dicho.versionReasons).toEqual(['Versión 2: the culvert is longer (person 2, 2026-05-02 15:30 UTC)'])
    expect(dicho.facts).toContain(`Por qué se cambió: ${dicho.versionReasons[0]}`)
  })

  test('stands without them where the entries are not at hand', () => {
    expect(printedOf(run, [], english(null)).versionReasons).toEqual(['Version 2: the culvert is longer'])
  })

  test('is left out where nobody wrote one', () => {
    const { versionReasons, facts } = printedOf(third, versions, english(null))
    expect(versionReasons).toEqual([])
    expect(facts.join()).not.toContain('Why it was changed')
  })
})
