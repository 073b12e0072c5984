import type { Said } from '../said.ts'
import { tables } from './tables.ts'

/** What stands for a part in a pattern. */
const sign = /[$#_]/

const known = new Map(tables.flatMap(({ sentences }) => Object.entries(sentences)))

interface Pattern {
  /** The longest text between its parts: a sentence without it needs no closer look. */
  readonly needed: string
  readonly expression: RegExp
  /** Words of the pattern itself: where several fit, the one that leaves least to its parts is meant. */
  readonly own: number
  /** What each part has to be, by its sign. */
  readonly signs: readonly string[]
  /** Spanish texts between parts, and the parts by their number from 1. */
  readonly pieces: readonly (string | number)[]
}

const patterns = tables
  .flatMap((table) => table.patterns)
  .map(([english, spanish]) => compile(english, spanish))
  .toSorted((a, b) => b.own - a.own)

const said = new Map<string, Said>()

/** The sentence in Spanish; as it is where it is not one of the model's. */
export function sayWithRest(sentence: string): Said {
  const before = said.get(sentence)
  if (before !== undefined) return before
  const now = say(sentence)
  said.set(sentence, now)
  return now
}

function say(sentence: string): Said {
  const whole = known.get(sentence) ?? lowered(sentence)
  if (whole !== undefined) return { text: whole, left: [] }
  if (isMeasure(sentence)) return { text: sentence, left: [] }
  let best: Said = { text: sentence, left: [sentence] }
  for (const way of [byPattern, bySentences, byList]) {
    const one = way(sentence)
    if (one?.left.length === 0) return one
    if (one !== null && lettersLeft(one) < lettersLeft(best)) best = one
  }
  return best
}

/** Names of sheets begin with a small letter inside a sentence. */
function lowered(sentence: string): string | undefined {
  const spanish = known.get(upperFirst(sentence))
  return spanish === undefined ? undefined : lowerFirst(spanish)
}

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

const lettersLeft = ({ left }: Said): number => left.reduce((sum, { length }) => sum + length, 0)

/** Numbers and units read the same in both languages: `12 ft 6 in`, `1V:10H`, `12+37.50`. */
const isMeasure = (text: string): boolean =>
  !/\p{L}/u.test(text.replaceAll(/\b(mi\/h|km\/h|in|ft|mm|m|km|lbf·ft|N·m|lbf|kN)\b|\b\d+V:[\d.]+H\b|\(k = 2\)/g, ''))

function compile(english: string, spanish: string): Pattern {
  const between = english.split(sign)
  const source = between.map((part) => part.replace(/[.*+?^{}()|[\]\\]/g, '\\$&'))
  let last = 0
  const pieces = spanish.split(/([$#_]\d?)/).map((piece) => {
    if (!sign.test(piece.charAt(0))) return piece
    last = piece.length === 1 ? last + 1 : Number(piece.slice(1))
    return last
  })
  return {
    needed: between.toSorted((a, b) => b.length - a.length)[0]!,
    expression: new RegExp(`^${source.join('(.+?)')}$`, 's'),
    own: between.join('').length,
    signs: [...english].filter((letter) => sign.test(letter)),
    pieces,
  }
}

/** By the pattern with most words of its own that leaves nothing unsaid; if none, by the first that fits. */
function byPattern(sentence: string): Said | null {
  let best: Said | null = null
  for (const { needed, expression, signs, pieces } of patterns) {
    if (!sentence.includes(needed)) continue
    const found = expression.exec(sentence)?.slice(1)
    if (found === undefined || found.some((part, i) => signs[i] === '#' && !isMeasure(part))) continue
    const parts = found.map((part, i) => (signs[i] === '_' ? { text: part, left: [] } : sayWithRest(part)))
    const text = pieces.map((piece) => (typeof piece === 'string' ? piece : parts[piece - 1]!.text)).join('')
    const left = parts.flatMap((part) => part.left)
    if (left.length === 0) return { text, left }
    if (best === null || lettersLeft({ text, left }) < lettersLeft(best)) best = { text, left }
  }
  return best
}

/** Several sentences one after the other: divided where least is left unsaid. */
function bySentences(sentence: string): Said | null {
  let best: Said | null = null
  for (const { index } of sentence.matchAll(/[.:!?] (?=\S)/g)) {
    const parts = [sentence.slice(0, index + 1), sentence.slice(index + 2)]
    const one = joined(parts.map(sayWithRest), ' ')
    if (one.text !== sentence && (best === null || lettersLeft(one) < lettersLeft(best))) best = one
  }
  if (best !== null || !sentence.endsWith('.')) return best
  const bare = sayWithRest(sentence.slice(0, -1))
  return bare.text === sentence.slice(0, -1) ? null : { ...bare, text: `${bare.text}.` }
}

/** Things in a row, where any of them can be said. */
function byList(sentence: string): Said | null {
  let best: Said | null = null
  for (const [between, spanish] of lists) {
    const parts = sentence.split(between)
    if (parts.length === 1) continue
    const one = joined(parts.map(sayWithRest), spanish)
    if (one.left.length === 0) return one
    if (one.text !== parts.join(spanish) && (best === null || lettersLeft(one) < lettersLeft(best))) best = one
  }
  return best
}

const lists = [
  ['; or ', '; o '],
  ['; ', '; '],
  [', or ', ' o '],
  [' or ', ' o '],
  [' and ', ' y '],
  [', ', ', '],
] as const

const joined = (parts: readonly Said[], between: string): Said => ({
  text: parts.map(({ text }) => text).join(between),
  left: parts.flatMap(({ left }) => left),
})
