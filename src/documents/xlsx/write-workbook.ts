import ExcelJS from 'exceljs'
import { instantOf } from '../printed-time.ts'
import { fixZipTimes } from './fix-zip-times.ts'
import { type Cell, cellName, type Sheet } from './sheet.ts'

export interface WorkbookProperties {
  readonly title: string
  readonly author: string
  /** ISO 8601; stated as the time of writing. */
  readonly writtenAt: string
  /** In the foot of each printed page; `&P` stands for its number, `&N` for how many there are. */
  readonly page: string
}

/**
 * The sheets as an XLSX workbook: first row frozen, filtered and repeated on each page, print area set, one page wide.
 * The same input gives the same bytes.
 */
export async function writeWorkbook(sheets: readonly Sheet[], properties: WorkbookProperties): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook()
  const written = new Date(instantOf(properties.writtenAt))
  workbook.title = properties.title
  workbook.creator = properties.author
  workbook.lastModifiedBy = properties.author
  workbook.created = written
  workbook.modified = written
  for (const sheet of sheets) addSheet(workbook, sheet, properties.page)
  return fixZipTimes(new Uint8Array(await workbook.xlsx.writeBuffer()))
}

function addSheet(workbook: ExcelJS.Workbook, { name, columns, rows, page: orientation }: Sheet, page: string): void {
  const sheet = workbook.addWorksheet(name, {
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: {
      orientation,
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '1:1',
      printArea: `A1:${cellName(columns.length - 1, rows.length - 1)}`,
    },
    headerFooter: { oddFooter: `&L&A&R${page}` },
  })
  const wrapped = { vertical: 'top', wrapText: true } as const
  columns.forEach(({ header, width, decimals }, i) => {
    const column = sheet.getColumn(i + 1)
    column.width = width
    column.alignment = wrapped
    if (decimals !== null) column.numFmt = decimals === 0 ? '0' : `0.${'0'.repeat(decimals)}`
    sheet.getCell(1, i + 1).value = safeText(header)
  })
  const head = sheet.getRow(1)
  head.font = { bold: true }
  head.alignment = wrapped
  head.height = heightOf(
    columns.map(({ header }) => header),
    columns,
  )
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      sheet.getCell(r + 2, c + 1).value = cellValue(cell)
    })
    sheet.getRow(r + 2).height = heightOf(row, columns)
  })
  sheet.autoFilter = `A1:${cellName(columns.length - 1, rows.length - 1)}`
}

/** One line of the default letters, and the highest that a row may be; points. */
const lineHeight = 15
const highest = 409

/** High enough for every cell of a row as it wraps: without a stated height some programs print rows over each other. */
function heightOf(row: readonly Cell[], columns: Sheet['columns']): number {
  const lines = row.map((cell, c) => (typeof cell === 'string' ? wrappedLines(cell, columns[c]!.width) : 1))
  return Math.min(highest, lineHeight * Math.max(1, ...lines))
}

/** Words go whole to the next line, which leaves about a tenth of each empty; a head is bold, and so as much wider. */
const wrappedLines = (text: string, width: number): number =>
  text.split('\n').reduce((lines, part) => lines + Math.max(1, Math.ceil(part.length / (width * 0.85))), 0)

function cellValue(cell: Cell): ExcelJS.CellValue {
  if (typeof cell === 'string') return safeText(cell)
  return cell !== null && typeof cell === 'object' ? { formula: cell.formula, result: cell.result } : cell
}

/** Longest text that a cell may hold. */
const longest = 32_767

/** The text without what XML cannot hold, and no longer than a cell may be. It is stored as text, never as a formula. */
function safeText(text: string): string {
  const sound = text.replace(/[^\P{Cc}\t\n\r]|[\ufffe\uffff]|\p{Cs}/gu, '\ufffd')
  return sound.length <= longest ? sound : `${sound.slice(0, longest - 1)}…`
}
