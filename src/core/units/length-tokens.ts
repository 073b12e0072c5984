import { err, ok, type Result } from '../result.ts'
import type { LengthUnit } from './exact-length.ts'
import type { LengthProblem, TextPlace } from './length-problem.ts'

/** One word of a length text: a number, `/`, a fraction glyph, a unit, or a dash. The last token is always `end`. */
export type LengthToken = TextPlace &
  (
    | { readonly kind: 'number' | 'slash' | 'hyphen' | 'minus' | 'plus' | 'word' | 'other' | 'end' }
    | { readonly kind: 'glyph'; readonly numerator: string; readonly denominator: string }
    | { readonly kind: 'unit'; readonly unit: LengthUnit; readonly isMark: boolean }
  )

const unitOf: Readonly<Record<string, LengthUnit>> = {
  '"': 'in',
  "''": 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
}

const dashes = { '/': 'slash', '-': 'hyphen', '\u2212': 'minus', '+': 'plus' } as const

// The glyphs are U+00BC to U+00BE and U+2150 to U+215E, each one character for a whole fraction.
const tokenPattern =
  /(?<exponent>[\d.]*\d[\d.]*e[+-]?\d+)|(?<number>[\d.]*\d[\d.]*)|(?<glyph>[\u00bc-\u00be\u2150-\u215e])|(?<mark>''|["'])|(?<word>\p{L}+(?:\.(?!\d))?)|(?<dash>[-\u2212+/])|(?<comma>,)|\S/giu

/** The tokens of `text` with their places; or the first number in it that is written in a way we do not read. */
export function scanLength(text: string): Result<readonly LengthToken[], LengthProblem> {
  const tokens: LengthToken[] = []
  for (const match of normalise(text).matchAll(tokenPattern)) {
    const { exponent, number, glyph, mark, word, dash, comma } = match.groups ?? {}
    const place = { at: match.index, found: text.slice(match.index, match.index + match[0].length) }
    if (exponent) return err({ kind: 'exponent', ...place })
    if (comma) return err({ kind: 'comma', ...place })
    if (number && !/^(\d+(\.\d+)?|\.\d+)$/.test(number)) return err({ kind: 'not-a-number', ...place })
    if (number) tokens.push({ kind: 'number', ...place })
    else if (glyph) tokens.push({ kind: 'glyph', ...glyphParts(glyph), ...place })
    else if (mark || word) tokens.push(unitToken(mark ?? word ?? '', place))
    else if (dash) tokens.push({ kind: dashes[dash as keyof typeof dashes], ...place })
    else tokens.push({ kind: 'other', ...place })
  }
  tokens.push({ kind: 'end', at: text.length, found: '' })
  return ok(tokens)
}

/** The token at `index`; `end` from the last one on. */
export function tokenAt(tokens: readonly LengthToken[], index: number): LengthToken {
  const token = tokens[Math.min(index, tokens.length - 1)]
  if (!token) throw new RangeError(`token index must be at least 0, got ${index}`)
  return token
}

/** Index of the first character after the token. */
export const endOf = (place: TextPlace): number => place.at + place.found.length

/** Typographic marks as the keyboard writes them, one character for one, so that places stay those of the text. */
function normalise(text: string): string {
  return text
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/[\u201c\u201d\u2033]/g, '"')
    .replace(/\u2044/g, '/')
    .replace(/[\u2010\u2011\u2013]/g, '-')
}

function glyphParts(glyph: string): { numerator: string; denominator: string } {
  const [numerator = '', denominator = ''] = glyph.normalize('NFKC').split('\u2044')
  return { numerator, denominator }
}

function unitToken(word: string, place: TextPlace): LengthToken {
  const unit = unitOf[word.toLowerCase().replace('.', '')]
  return unit ? { kind: 'unit', unit, isMark: /^['"]/.test(word), ...place } : { kind: 'word', ...place }
}
