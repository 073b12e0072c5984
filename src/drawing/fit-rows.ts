import { textWidth, wrapText } from './text-width.ts'

/** A text as it fits: the size of its letters in points, and its rows. */
interface FittedText {
  readonly size: number
  readonly rows: readonly string[]
}

/** Shares of their full size at which letters are tried; smaller ones cannot be read on paper. */
const shares = [1, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6]

/**
 * `words` in letters of `full` points if they fit into `most` rows of `width` points, broken at spaces; else in smaller
 * ones, which leave room for more rows. What does not fit even so is cut short.
 */
export function fitRows(words: string, full: number, width: number, most: number, bold = false): FittedText {
  let fitted: FittedText = { size: full, rows: [words] }
  for (const share of shares) {
    const size = full * share
    fitted = { size, rows: rowsOf(words, size, width, Math.floor(most / share + 1e-6), bold) }
    if (fitted.rows.every((row) => !row.endsWith('…'))) break
  }
  return fitted
}

function rowsOf(words: string, size: number, width: number, most: number, bold: boolean): readonly string[] {
  const whole = textWidth(words, size, bold)
  return whole <= width ? [words] : wrapText(words, (width * textWidth(words, size)) / whole, size, most)
}
