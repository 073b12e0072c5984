import { err, ok, type Result } from '../../core/result.ts'
import type { InputProblem } from '../input-problem.ts'

/** A row of a table, with its number as a spreadsheet counts it. */
export interface TableRow {
  readonly row: number
  readonly cells: readonly string[]
}

/** Spreadsheets take text for UTF-8 only where it begins so. */
const mark = '\ufeff'

/**
 * Rows as comma-separated values (RFC 4180), in UTF-8 that spreadsheets know for what it is. No cell is taken for a formula:
 * one that begins like that has an apostrophe before it, which `readTable` takes off again.
 */
export const writeTable = (rows: readonly (readonly string[])[]): string =>
  mark + rows.map((cells) => `${cells.map((cell) => quoted(guarded(cell))).join(',')}\r\n`).join('')

/**
 * The rows of such a text, without those that are empty. Commas, semicolons or tabs part the cells, by the first row: which of
 * them a spreadsheet writes depends on its language.
 */
export function readTable(file: string, text: string): Result<readonly TableRow[], readonly InputProblem[]> {
  const plain = text.startsWith(mark) ? text.slice(1) : text
  const lost = plain.indexOf('\ufffd')
  if (lost >= 0) return err([{ file, place: rowAt(plain, lost), expected: { kind: 'text in UTF-8' }, found: null }])
  const separator = [',', ';', '\t'].find((one) => /^(?:"[^"]*"|[^",;\t\r\n]*)([,;\t])/.exec(plain)?.[1] === one) ?? ','
  return readRows(file, plain, separator)
}

function readRows(file: string, text: string, separator: string): Result<readonly TableRow[], readonly InputProblem[]> {
  const rows: TableRow[] = []
  let cells: string[] = []
  for (let at = 0; at < text.length; ) {
    const cell = cellAt(text, at, separator)
    const after = cell === null ? undefined : text[cell.end]
    if (cell === null || !(after === undefined || after === separator || after === '\r' || after === '\n')) {
      const place = `row ${rows.length + 1}`
      return err([{ file, place, expected: { kind: cell === null ? 'closing quote' : 'end of cell' }, found: null }])
    }
    cells.push(unguarded(cell.text))
    at = cell.end + (text.startsWith('\r\n', cell.end) ? 2 : 1)
    if (after === separator && at < text.length) continue
    if (after === separator) cells.push('')
    rows.push({ row: rows.length + 1, cells })
    cells = []
  }
  return ok(rows.filter((row) => row.cells.some((cell) => cell.trim() !== '')))
}

/** The cell that begins at `at`, and where it ends; null where it is quoted and no quote closes it. */
function cellAt(text: string, at: number, separator: string): { readonly text: string; readonly end: number } | null {
  if (text[at] !== '"') {
    let end = at
    while (end < text.length && text[end] !== separator && text[end] !== '\r' && text[end] !== '\n') end += 1
    return { text: text.slice(at, end), end }
  }
  for (let from = at + 1; ; ) {
    const quote = text.indexOf('"', from)
    if (quote < 0) return null
    if (text[quote + 1] !== '"') return { text: text.slice(at + 1, quote).replaceAll('""', '"'), end: quote + 1 }
    from = quote + 2
  }
}

const rowAt = (text: string, at: number): string => `line ${text.slice(0, at).split('\n').length}`

const quoted = (cell: string): string => (/[",;\r\n\t]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)

/** What a spreadsheet may take for a formula, with any apostrophes that stand before it. */
const formula = /^'*[=+\-@\t\r\n]/

const guarded = (cell: string): string => (formula.test(cell) ? `'${cell}` : cell)

const unguarded = (cell: string): string => (cell.startsWith("'") && formula.test(cell) ? cell.slice(1) : cell)
