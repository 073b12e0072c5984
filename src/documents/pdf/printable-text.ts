import { printableRanges } from './printable-ranges.ts'

const printable: ReadonlySet<number> = new Set(
  printableRanges
    .trim()
    .split(/\s+/)
    .flatMap((range) => {
      const [from = 0, to = from] = range.split('-').map((end) => Number.parseInt(end, 16))
      return Array.from({ length: to - from + 1 }, (_, i) => from + i)
    }),
)

/** Longest stretch without a place to break that the narrowest column holds, in characters. */
const longestWord = 18

/**
 * `text` in characters that the documents' fonts have: any other stands as its number, `[U+1F600]`, so that nothing is
 * lost and nothing hidden. Line breaks and tabs become spaces, and what could turn the reading order round is shown too.
 */
export function printableText(text: string): string {
  let out = ''
  for (const letter of text.replace(/\s+/g, ' ')) {
    const code = letter.codePointAt(0)!
    if (printable.has(code)) out += letter
    // The signs that only choose how the one before looks need no showing.
    else if (!/[\ufe00-\ufe0f]/.test(letter)) out += `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`
  }
  return out
}

/** Whether the documents' fonts have every character of `text`; what only breaks lines needs none. */
export const isPrintable = (text: string): boolean =>
  [...text].every((letter) => letter === '\n' || letter === '\u200b' || printable.has(letter.codePointAt(0)!))

/**
 * `printableText` with places to break inside words that are longer than any column is wide, and inside ids as devices make
 * them: no line breaks by itself between a hyphen and a digit.
 */
export const breakableText = (text: string): string =>
  printableText(text)
    .replace(/[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}/g, (id) => id.replaceAll('-', '-\u200b'))
    .replace(new RegExp(`[^\\s\\u200b-]{${longestWord}}(?=[^\\s-]{4})`, 'g'), '$&\u200b')

/** All texts of `data`, at any depth, made printable; everything else as it is, and hashes too, to be copied and compared. */
export function printableData(data: unknown): unknown {
  if (typeof data === 'string') return /^[0-9a-f]{64}$/.test(data) ? data : breakableText(data)
  if (Array.isArray(data)) return data.map(printableData)
  if (typeof data !== 'object' || data === null) return data
  return Object.fromEntries(Object.entries(data).map(([name, value]) => [name, printableData(value)]))
}
