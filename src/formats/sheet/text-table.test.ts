import { describe, expect, it } from 'vitest'
import { inventedEnd } from '../../../test/fixtures/sheet-files.ts'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { english } from '../../words/english.ts'
import { readTable, writeTable } from '../csv/table.ts'
import { printProblem } from '../input-problem.ts'
import { readSheet, writeSheet } from './sheet-file.ts'
import { placedTexts } from './sheet-texts.ts'
import { takeTexts, writeTexts } from './text-table.ts'

const bare: HardwareSheet = { ...inventedEnd, translations: {} }
const sheetOf = (taken: ReturnType<typeof takeTexts>): HardwareSheet => {
  if (!taken.ok) throw new Error(taken.error.map((one) => printProblem(one, english(null))).join('\n'))
  return taken.value.sheet
}
const tableOf = (...rows: readonly (readonly string[])[]): string => writeTable([['key', 'en', 'es'], ...rows])
const rowsOf = (text: string) => {
  const read = readTable('texts.csv', text)
  return read.ok ? read.value.map(({ cells }) => cells) : []
}

describe('the texts of a sheet as a table', () => {
  it.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))('bring all of %s back', (_, sheet) => {
    const texts = writeTexts(sheet, 'es')
    const untranslated: HardwareSheet = { ...sheet, translations: {} }
    expect(sheetOf(takeTexts('texts.csv', texts, untranslated)).translations).toEqual(sheet.translations)
    expect(takeTexts('texts.csv', texts, sheet)).toMatchObject({ ok: true, value: { sheet, translated: 0 } })
    expect(
      rowsOf(texts)
        .slice(1)
        .map(([, text]) => text),
    ).toEqual(expect.arrayContaining(placedTexts(sheet).flatMap(({ text, isOfSource }) => (isOfSource ? [] : [text]))))
  })

  it('say which are missing, and put each text once', () => {
    const rows = rowsOf(writeTexts(bare, 'es'))
    const texts = rows.slice(1).map(([, text]) => text)
    expect(rows[0]).toEqual(['key', 'en', 'es', 'state', 'en before', 'es before'])
    expect(new Set(texts).size).toBe(texts.length)
    expect(rows.find(([, text]) => text === 'Turn it.')!.slice(2, 4)).toEqual(['', 'missing'])
  })

  it('say of a text that was changed since what it said and how that was translated', () => {
    const sheet: HardwareSheet = {
      ...bare,
      earlierTranslations: { es: { 'Turn it.': { text: 'Turn the plate.', said: 'Gire la placa.' } } },
    }
    const [, ...rows] = rowsOf(writeTexts(sheet, 'es'))
    expect(rows.find(([, text]) => text === 'Turn it.')!.slice(2)).toEqual([
      '',
      'changed',
      'Turn the plate.',
      'Gire la placa.',
    ])
    const after = sheetOf(takeTexts('texts.csv', tableOf(['x', 'Turn it.', 'Gírelo.']), sheet))
    expect(after).toMatchObject({ translations: { es: { 'Turn it.': 'Gírelo.' } }, earlierTranslations: { es: {} } })
    expect(readSheet('next.json', writeSheet(after)).ok).toBe(true)
  })

  it('that left before the sheet was changed come back as earlier translations, and what is gone is told', () => {
    const left = rowsOf(writeTexts(bare, 'es')).map((row) =>
      row[1] === 'Turn it.' ? [...row.slice(0, 2), 'Gírelo.'] : row,
    )
    const since = JSON.parse(JSON.stringify(bare).replace('"Turn it."', '"Turn it round."')) as HardwareSheet
    const taken = takeTexts('texts.csv', writeTable([...left, ['parts[no].name', 'No more', 'Ya no']]), since)
    expect(sheetOf(taken).earlierTranslations).toEqual({
      es: { 'Turn it round.': { text: 'Turn it.', said: 'Gírelo.' } },
    })
    const row = left.findIndex(([, text]) => text === 'Turn it.') + 1
    expect(taken).toMatchObject({ value: { translated: 0, changed: [row], gone: [left.length + 1] } })
    expect(readSheet('next.json', writeSheet(sheetOf(taken))).ok).toBe(true)
  })

  it.each([
    [
      'columns',
      writeTable([['key', 'english', 'es']]),
      'row 1: expected a first row with the columns key, en, es, found "key, english, es"',
    ],
    [
      'values',
      tableOf(['a', 'Turn it {5 in}.', 'Gírelo {4 in}.']),
      'row 2, es: expected the same values in braces as the text (5 in), found "Gírelo {4 in}."',
    ],
    [
      'two of one',
      tableOf(['a', 'Turn it.', 'Gírelo.'], ['b', 'Turn it.', 'Gire.']),
      'row 3, es: expected the same translation as in row 2, of the same text, found "Gire."',
    ],
  ])('are refused for their %s, by row', (_, text, problem) => {
    const taken = takeTexts('texts.csv', text, bare)
    expect(taken.ok ? [] : taken.error.map((one) => printProblem(one, english(null)))).toEqual([
      `texts.csv: ${problem}`,
    ])
  })
})
