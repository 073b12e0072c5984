import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { withEarlier, withTranslation } from '../../core/hardware/translate-text.ts'
import type { Language } from '../../core/language.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { readTable, type TableRow, writeTable } from '../csv/table.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { marksFault } from './sheet-sense.ts'
import { placedTexts } from './sheet-texts.ts'
import { languagesBeside, textRows } from './text-rows.ts'

/**
 * The texts of a sheet for who translates them: where each stands, what it says, what the other language says, whether that is
 * missing or the text was changed since; and then the text and its translation as they were before.
 */
export function writeTexts(sheet: HardwareSheet, to: Language): string {
  const { language: own = 'en' } = sheet
  const rows = textRows(sheet, to).map(({ place, text, said, before, state }) => [
    ...[place, text, said ?? '', state],
    ...[before?.text ?? '', before?.said ?? ''],
  ])
  return writeTable([['key', own, to, 'state', `${own} before`, `${to} before`], ...rows])
}

/** What came of a table of texts. */
export interface TakenTexts {
  readonly sheet: HardwareSheet
  /** How many texts are said now that were not, or otherwise. */
  readonly translated: number
  /** Rows whose text was changed in the sheet since: their translation is kept as the earlier one. */
  readonly changed: readonly number[]
  /** Rows whose text and place the sheet has no longer. */
  readonly gone: readonly number[]
}

/** The sheet with the translations of a table that left it; a cell that is empty changes nothing. Or what is wrong, row by row. */
export function takeTexts(
  file: string,
  text: string,
  sheet: HardwareSheet,
): Result<TakenTexts, readonly InputProblem[]> {
  const table = readTable(file, text)
  if (!table.ok) return table
  const [head, ...rows] = table.value
  const { language: own = 'en' } = sheet
  const names = (head?.cells ?? []).map((name) => name.trim().toLowerCase())
  const to = languagesBeside(sheet).find((one) => names.includes(one))
  if (to === undefined || !names.includes('key') || !names.includes(own)) {
    const columns = ['key', own, languagesBeside(sheet).join('/')]
    const found = written((head?.cells ?? []).join(', '))
    return err([{ file, place: `row ${head?.row ?? 1}`, expected: { kind: 'columns of table', columns }, found }])
  }
  const said = rows
    .map(({ row, cells }) => {
      const cell = (name: string): string => cells[names.indexOf(name)] ?? ''
      return { row, key: cell('key'), text: cell(own), said: cell(to) }
    })
    .filter((one) => one.said.trim() !== '')
  const problems = said.flatMap((one, i) => problemOf(file, to, one, said.slice(0, i)))
  return problems.length > 0 ? err(problems) : ok(taken(sheet, to, said))
}

interface SaidRow extends Pick<TableRow, 'row'> {
  readonly key: string
  readonly text: string
  readonly said: string
}

function problemOf(file: string, to: Language, one: SaidRow, before: readonly SaidRow[]): readonly InputProblem[] {
  const other = before.find(({ text, said }) => text === one.text && said !== one.said)
  const expected =
    marksFault(one.text, one.said) ??
    (other === undefined ? null : ({ kind: 'same as in row', row: other.row } as const))
  return expected === null ? [] : [{ file, place: `row ${one.row}, ${to}`, expected, found: written(one.said) }]
}

function taken(sheet: HardwareSheet, to: Language, rows: readonly SaidRow[]): TakenTexts {
  const placed = placedTexts(sheet)
  const texts = new Set(placed.map(({ text }) => text))
  const now = new Map(placed.map(({ place, text }) => [place, text]))
  const news = rows.filter(({ text, said }) => texts.has(text) && sheet.translations?.[to]?.[text] !== said)
  const otherwise = rows.filter(({ text, key }) => !texts.has(text) && now.has(key))
  const translated = news.reduce((into, { text, said }) => withTranslation(into, to, text, said), sheet)
  const all = otherwise.reduce(
    (into, { key, text, said }) =>
      into.translations?.[to]?.[now.get(key)!] === undefined
        ? withEarlier(into, to, now.get(key)!, { text, said })
        : into,
    translated,
  )
  return {
    sheet: all,
    translated: new Set(news.map(({ text }) => text)).size,
    changed: otherwise.map(({ row }) => row),
    gone: rows.filter(({ text, key }) => !texts.has(text) && !now.has(key)).map(({ row }) => row),
  }
}
