// What is unusual stands in the record, and a record without it has no such heading.
import { expect, test } from 'vitest'
import { noEntries } from '../../../src/formats/entry/run-entries.ts'
import { writeRecord } from '../../../src/operations/write-record.ts'
import { sha256 } from '../../../src/store/sha256.ts'
import { english } from '../../../src/words/english.ts'
import { judgedDemo } from '../exports/export-project.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'

test.skipIf(!isInstalled('pdftotext'))('a record says what is unusual, where anything is', async () => {
  const textFor = async (name: string, changes: object): Promise<string> => {
    const { pdf } = await writeRecord(judgedDemo(changes), {
      ...{ page: 'letter', lie: 'portrait', printedAt: '2016-05-13T09:00:00Z', author: '', sha256 },
      ...{ entries: noEntries, photos: null, print: english(null) },
    })
    return textOf(fileOf(pdf, name)).replaceAll(/\s+/g, ' ')
  }
  const unusual = await textFor('unusual.pdf', { decisionRule: { kind: 'guard band', multiple: 4 } })
  expect(unusual).toContain('Unusual values')
  expect(unusual).toContain('"decisionRule.multiple": 4 is unusual, usual is 0.5 to 3')
  expect(await textFor('plain.pdf', {})).not.toContain('Unusual values')
})
