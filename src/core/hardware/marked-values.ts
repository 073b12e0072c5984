import { type Unit, valueIn } from '../units/quantity-kinds.ts'
import { parseValue } from '../units/value-text.ts'

/** A value that a text of a sheet marks by braces, so that it is said in the units asked for. */
export interface MarkedValue {
  /** As it stands between the braces: `27 3/4 in`, `5-in`, `25 lbf·ft`. */
  readonly written: string
  readonly value: number
  readonly unit: Unit
}

/**
 * The text of a sheet in parts, in order: what is said as it stands, and the values that it marks.
 * @example partsOf('The gap is {18 in} or less.').length  // 3
 */
export const partsOf = (text: string): readonly (string | MarkedValue)[] =>
  text.includes('{') ? text.split(/(\{[^{}]*\})/).map((part) => markedValue(part) ?? part) : [text]

/** Null for what is no mark, which braces around anything but a value are not. */
function markedValue(part: string): MarkedValue | null {
  if (!part.startsWith('{') || !part.endsWith('}')) return null
  const written = part.slice(1, -1)
  const read = parseValue(written.replace(/-(?=[a-z]+$)/, ' '), null)
  return read.ok ? { written, value: valueIn(read.value.value, read.value.unit), unit: read.value.unit } : null
}

/** The text as it reads without braces round its values; the same text before somebody marked them. */
export const unmarked = (text: string): string =>
  partsOf(text)
    .map((part) => (typeof part === 'string' ? part : part.written))
    .join('')

/** The values that a text marks, alike for texts that mark the same ones in whatever order and words. */
export const marksIn = (text: string): string =>
  partsOf(text)
    .flatMap((part) => (typeof part === 'string' ? [] : [`${part.value} ${part.unit}`]))
    .sort()
    .join(', ')
