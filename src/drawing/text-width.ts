/**
 * Width of `words` in points, set in a plain sans serif of `size` points.
 *
 * An estimate on the wide side from the usual proportions of such faces (digits 0.56 of the size), enough to keep texts
 * apart; bold is about 6 % wider.
 */
export function textWidth(words: string, size: number, bold = false): number {
  let width = 0
  for (const letter of words) width += knownWidth(letter)
  return width * size * (bold ? 1.06 : 1)
}

/** Widths of the ASCII letters, looked up once: a drawing asks for the same few thousands of times. */
const asciiWidths = Array.from({ length: 128 }, (_, code) => letterWidth(String.fromCharCode(code)))

const knownWidth = (letter: string): number => asciiWidths[letter.charCodeAt(0)] ?? letterWidth(letter)

function letterWidth(letter: string): number {
  if (letter > '\u2fff') return 1
  if (/\p{Mn}|\p{Cf}/u.test(letter)) return 0
  if (/[ '.,:;|!iljIft/()[\]·]/.test(letter)) return 0.3
  if (/["r-]/.test(letter)) return 0.36
  if (/[mwMW@%…]/.test(letter)) return 0.92
  return /\p{Lu}/u.test(letter) ? 0.71 : 0.56
}

/** `words` if they are at most `points` wide, otherwise as many letters of them as fit, and an ellipsis. */
export function fitText(words: string, points: number, size: number, bold = false): string {
  if (textWidth(words, size, bold) <= points) return words
  let fitting = ''
  let width = textWidth('…', size, bold)
  for (const letter of words) {
    width += knownWidth(letter) * size * (bold ? 1.06 : 1)
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
