import { expect, test } from 'vitest'
import { confirmedOf, statementsOf } from '../../core/hardware/sheet-statements.ts'
import { readSheet, writeSheet } from '../../formats/sheet/sheet-file.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { copiedSheet, idFor } from './copy-sheet.ts'

test.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
  'a copy of %s is a sound sheet of other hardware that states the same, of which nothing is confirmed',
  (_, sheet) => {
    const copy = copiedSheet(sheet, 'county-terminal', 'County terminal')
    expect(readSheet('copy.json', writeSheet(copy))).toEqual({ ok: true, value: copy })
    expect(confirmedOf(copy)).toEqual({ confirmed: 0, all: confirmedOf(sheet).all })
    expect(new Set(statementsOf(copy).map(({ cited }) => cited.confirmation))).toEqual(new Set(['from memory']))
    expect(
      statementsOf(copy).map(({ values }) => JSON.stringify(values).replaceAll(/"(sheet|version)":"[^"]*"/g, '')),
    ).toEqual(
      statementsOf(sheet).map(({ values }) => JSON.stringify(values).replaceAll(/"(sheet|version)":"[^"]*"/g, '')),
    )
  },
)

test('a name gives an id that no other sheet has', () => {
  expect(idFor('Término de caída, 31 in', [])).toBe('termino-de-caida-31-in')
  expect(idFor('County anchor', ['county-anchor', 'county-anchor-2'])).toBe('county-anchor-3')
  expect(idFor('—', [])).toBe('sheet')
})
