/**
 * Values of an exchange file as ISO 10303-21 writes them. A value is the text that stands between two commas; the
 * functions here are the only ones that make it.
 */
export type StepValue = string & { readonly step?: never }

/** A value that is not given, and one that the schema derives. */
export const unset: StepValue = '$'
export const derived: StepValue = '*'

export const list = (values: readonly StepValue[]): StepValue => `(${values.join(',')})`

/** A value of a select type, which has to name its own: `IFCLABEL('a')`. */
export const typed = (type: string, value: StepValue): StepValue => `${type.toUpperCase()}(${value})`

export const enumeration = (literal: string): StepValue => `.${literal}.`

export const truth = (value: boolean): StepValue => (value ? '.T.' : '.F.')

export function integer(value: number): StepValue {
  if (!Number.isSafeInteger(value)) throw new RangeError(`an integer is needed, got ${value}`)
  return String(value)
}

/** A real rounded to 1e-9; it always has a decimal point. */
export const real = (value: number): StepValue => exactReal(Math.round(value * 1e9) / 1e9)

/** A real to its last digit. */
export function exactReal(value: number): StepValue {
  if (!Number.isFinite(value)) throw new RangeError(`a finite number is needed, got ${value}`)
  const [mantissa = '', exponent] = String(value + 0).split('e')
  const digits = mantissa.includes('.') ? mantissa : `${mantissa}.`
  return exponent === undefined ? digits : `${digits}E${Number(exponent)}`
}

/**
 * A string: printable ASCII as it is with quotes and backslashes doubled, everything else by its code.
 * @source ISO 10303-21:2016, 6.4.3
 */
export function text(words: string): StepValue {
  let written = ''
  let page: 0 | 2 | 4 = 0
  for (const character of words) {
    const code = character.codePointAt(0)!
    const needed = code >= 0x20 && code < 0x7f ? 0 : code < 0x1_0000 ? 2 : 4
    if (needed !== page) {
      if (page !== 0) written += '\\X0\\'
      if (needed !== 0) written += `\\X${needed}\\`
      page = needed
    }
    written += needed === 0 ? plain(character) : hexadecimal(code, needed)
  }
  return `'${written}${page === 0 ? '' : '\\X0\\'}'`
}

const plain = (character: string): string => (character === "'" || character === '\\' ? character.repeat(2) : character)

/** Half of a surrogate pair is no character: it becomes U+FFFD. */
const hexadecimal = (code: number, octets: 2 | 4): string =>
  (code >= 0xd800 && code <= 0xdfff ? 0xfffd : code)
    .toString(16)
    .toUpperCase()
    .padStart(octets * 2, '0')

/** A text of the type IfcLabel or IfcIdentifier, which hold 255 characters; a longer one ends with an ellipsis. */
export function label(words: string): StepValue {
  const characters = [...words]
  return text(characters.length <= 255 ? words : `${characters.slice(0, 254).join('')}…`)
}
