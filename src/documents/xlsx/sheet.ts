/** One sheet of a workbook, without any of a spreadsheet program's own terms. */
export interface Sheet {
  readonly name: string
  /** The first row, which stays in sight and is repeated on every printed page. */
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly Cell[])[]
  readonly page: 'portrait' | 'landscape'
}

export interface Column {
  /** With its unit, as `Offset (ft)`. */
  readonly header: string
  /** In letters. */
  readonly width: number
  /** Digits after the point that its numbers show; null to show as many as they have. */
  readonly decimals: number | null
}

/** A number stays a number; a text stays a text, whatever it begins with. */
export type Cell = string | number | null | Formula

export interface Formula {
  /** Without the equals sign. */
  readonly formula: string
  /** What it comes to, kept beside it for programs that do not reckon. */
  readonly result: number
}

export const column = (header: string, width: number, decimals: number | null = null): Column => ({
  header,
  width,
  decimals,
})

/** `D7`: the cell in a column and a row of `rows`, both counted from 0. */
export const cellName = (column: number, row: number): string => `${letters(column)}${row + 2}`

function letters(column: number): string {
  const rest = column >= 26 ? letters(Math.floor(column / 26) - 1) : ''
  return `${rest}${String.fromCharCode(65 + (column % 26))}`
}
