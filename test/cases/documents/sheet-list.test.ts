// Whoever has the manual in hand gets every statement that is not confirmed, and none that is, in both languages.
import { expect, test } from 'vitest'
import { confirmStatement } from '../../../src/core/hardware/confirm-statement.ts'
import type { HardwareSheet, LongitudinalSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { unconfirmedList } from '../../../src/operations/write-sheet-list.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { pseudo } from '../../pseudo/pseudo.ts'
import { fileOf, isInstalled, textOf } from './outside-programs.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
const printing = { isChanged: false, page: 'letter', printedAt: '2026-11-28T09:00:00Z', author: '' } as const

const textFor = async (sheet: HardwareSheet, print = english(null)): Promise<string> =>
  textOf(fileOf(await unconfirmedList(sheet, system, { ...printing, print }), 'list.pdf'))

test.skipIf(!isInstalled('pdftotext'))('what is confirmed leaves the list, in English and in Spanish', async () => {
  const before = await textFor(flared)
  expect(before).toContain('36 of 38 statements are not confirmed')
  expect(before).toContain('Middle of the panel from a string between its ends')
  expect(before).toContain('The panel is straight: its middle lies at most 1/2 in')
  // Published already: whether its cited slope is right is no question to who has the manual.
  expect(before).not.toContain('Slope of the platform')
  const confirming = { document: { title: 'Manual', edition: '3' }, page: '4', by: 'R. Quist', on: '2026-11-28' }
  const after = await textFor(confirmStatement(flared, 'straightness', confirming))
  expect(after).toContain('35 of 38 statements are not confirmed')
  expect(after).not.toContain('Middle of the panel from a string between its ends')
  const inSpanish = await textFor(flared, spanish(null))
  expect(inSpanish).toContain('36 de 38 datos están sin confirmar')
  expect(inSpanish).toContain('Centro del panel desde un hilo entre sus extremos')
  expect(inSpanish).not.toContain('Middle of the panel')
  expect(before).toContain(`edition ${flared.version} `)
  expect(before).not.toContain('not saved')
  const changed = textOf(
    fileOf(
      await unconfirmedList(flared, system, { ...printing, isChanged: true, print: english(null) }),
      'changed.pdf',
    ),
  )
  expect(changed).toContain(`edition ${flared.version} with changes that are not saved yet`)
  // No run is printed, so that there is no hash of a record.
  expect(before).not.toContain('Record hash')
})

test.skipIf(!isInstalled('pdftotext'))('no line of it is written in code', async () => {
  const text = await textFor(flared, pseudo(null))
  for (const word of ['Numbers to confirm', 'Rail height', 'Straightness of panels', 'offset block: no'])
    expect(text).not.toContain(word)
})
