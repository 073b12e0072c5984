import { letterWidths } from './letter-widths.ts'

/** Width of `words` in points, set at `size` points in the wider of the faces that drawings are set in. */
export function textWidth(words: string, size: number, bold = false): number {
  let width = 0
  for (const letter of words) width += widthOf(letter, bold)
  return width * size
}

/** Of a letter beyond ASCII that of the letter it comes from, else as wide as the widest of its kind. */
function widthOf(letter: string, bold: boolean): number {
  const table = bold ? letterWidths.bold : letterWidths.regular
  const known = table[letter.charCodeAt(0) - 32]
  if (known !== undefined) return known
  if (letter > '\u2fff') return 1
  if (/\p{Mn}|\p{Cf}/u.test(letter)) return 0
  const plain = table[letter.normalize('NFD').charCodeAt(0) - 32]
  if (plain !== undefined) return plain
  if (/[·’‘′°²³]/.test(letter)) return 0.4
  return /\p{Ll}|\p{Nd}|[–“”″−×±]/u.test(letter) ? 0.66 : 1
}

/** `words` if they are at most `points` wide, otherwise as many letters of them as fit, and an ellipsis. */
export function fitText(words: string, points: number, size: number, bold = false): string {
  if (textWidth(words, size, bold) <= points) return words
  let fitting = ''
  let width = textWidth('…', size, bold)
  for (const letter of words) {
    width += widthOf(letter, bold) * size
    if (width > points) break
    fitting += letter
  }
  return `${fitting.trimEnd()}…`
}

/**
 * `words` broken at spaces into lines of at most `points`; at most `most` lines, the last one shortened to fit. A length
 * and the same in the other system, as `787.4 mm (31 in)`, stay together where there is room for it.
 */
export function wrapText(words: string, points: number, size: number, most: number): string[] {
  const glued = words.replaceAll(inBothSystems, (pair) => pair.replaceAll(' ', '\u00a0'))
  const together = wrapAtSpaces(glued, points, size, most).map((line) => line.replaceAll('\u00a0', ' '))
  return together.some((line) => line.endsWith('…')) ? wrapAtSpaces(words, points, size, most) : together
}

const inBothSystems = /\d (?:in|ft|mm|m) \((?:\d+ ft )?[\d /.]+[ -](?:in|ft|mm|m)\)/g

function wrapAtSpaces(words: string, points: number, size: number, most: number): string[] {
  const lines: string[] = []
  let current = ''
  for (const word of words.split(/[^\S\u00a0]+/)) {
    const longer = current === '' ? word : `${current} ${word}`
    if (current !== '' && lines.length < most - 1 && textWidth(longer, size) > points) {
      lines.push(current)
      current = word
    } else current = longer
  }
  return [...lines, current].map((one) => fitText(one, points, size))
}
