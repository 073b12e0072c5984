import { lengthRanges, ranges } from '../../src/formats/range/ranges.ts'

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
}

type Random = () => number

export const pick = <T>(random: Random, from: readonly T[]): T => from[Math.floor(random() * from.length)]!

const rangeEdges: readonly number[] = Object.values(ranges).flatMap(({ least, most, usual }) => [
  ...[least, most],
  ...(usual?.us ?? []),
])

/** Numbers at which something ends: of arithmetic, and of every range that a file is held to. */
const edges: readonly number[] = [
  ...[0, -0, 1, -1, 1 / 16, 0.1, 1e-308, 5e-324, 1e-9, 1e9, 1e15, 1e17, 1e308, -1e308, 2 ** 31, 2 ** 53],
  ...rangeEdges,
]

const texts: readonly string[] = [
  ...[
    '',
    ' ',
    '0',
    '-31 in',
    '1e308',
    '27 3/4',
    '6\'-3"',
    '12 ft 6 in',
    '3810 mm',
    '99999999999 ft',
    '0.0001 mm',
    '1V:6H',
  ],
  ...[
    '14:1',
    '0:1',
    '12+37.50',
    '-0+50',
    '99999999+00',
    '1+237.500',
    '2016-02-29',
    '0001-01-01',
    '9999-12-31',
    '\u0000',
  ],
  ...[
    '\ud800',
    '__proto__',
    'constructor',
    'post-3/rail-height',
    'w-beam-midspan-31',
    'tangent-terminal-31',
    'é'.repeat(300),
  ],
  ...Object.values(lengthRanges).flatMap(({ least, most }) => [`${least} m`, `${most} m`]),
]

/** `original` changed in a few places: in its values, in its bytes, or in both; always the same for the same numbers. */
export function mutated(original: Uint8Array, random: Random): Uint8Array {
  // A picture is no text.
  const way = original[0]! < 0x80 ? random() : 1
  const text = new TextDecoder().decode(original)
  const inValues = way < 0.75 ? new TextEncoder().encode(changedValues(text, random)) : original
  return way < 0.55 ? inValues : changedBytes(inValues, random)
}

function changedValues(text: string, random: Random): string {
  // One document, or several of a line each, one of which is changed.
  const lines = text.split('\n')
  if (lines.length > 1 && lines.every((line) => line.startsWith('{'))) {
    const at = Math.floor(random() * lines.length)
    return lines.with(at, changedValues(lines[at]!, random)).join('\n')
  }
  if (!/^\s*\{/.test(text)) return changedNumbers(text, random)
  let value: unknown = JSON.parse(text)
  const times = 1 + Math.floor(random() ** 3 * 5)
  for (let i = 0; i < times; i++) value = changedOnce(value, random)
  return JSON.stringify(value)
}

/** Every text has its numbers; an attribute or coordinate of XML is one. */
function changedNumbers(text: string, random: Random): string {
  const numbers = [...text.matchAll(/-?\d+(\.\d+)?/g)]
  if (numbers.length === 0) return text
  const { 0: found, index } = pick(random, numbers)
  const next = random() < 0.5 ? pick(random, edges) : Number(found) * pick(random, [0, -1, 0.001, 1.001, 3, 1000, 1e9])
  return text.slice(0, index) + next + text.slice(index + found.length)
}

type Owner = Record<string, unknown> | unknown[]

/** Every place of a value: its owner and its key there. */
function placesIn(value: unknown): [Owner, string | number][] {
  if (typeof value !== 'object' || value === null) return []
  const own = Object.keys(value).map((key): [Owner, string | number] => [value as Owner, key])
  return [...own, ...Object.values(value).flatMap(placesIn)]
}

function changedOnce(value: unknown, random: Random): unknown {
  const places = placesIn(value)
  if (places.length === 0) return pick(random, [null, {}, [], 1, ''])
  // Numbers half of the time: what comes through with another number goes furthest.
  const numbers = places.filter(([at, step]) => typeof (at as Record<string | number, unknown>)[step] === 'number')
  const [owner, key] = pick(random, random() < 0.5 && numbers.length > 0 ? numbers : places)
  const fields = owner as Record<string | number, unknown>
  const at = fields[key]
  const way = random()
  if (typeof at === 'number' && way > 0.2) fields[key] = anotherNumber(at, random)
  else if (Array.isArray(owner) && way < 0.25) owner.splice(Number(key), 0, ...Array(pick(random, [1, 2, 40])).fill(at))
  else if (way < 0.33) delete fields[key]
  else if (way < 0.4) {
    const [other, step] = pick(random, places)
    fields[key] = structuredClone((other as Record<string | number, unknown>)[step] ?? null)
  } else fields[key] = anotherFor(at, random)
  return value
}

/** Often one that the file may still hold: scaled a little, or a whole number of sixteenths. */
function anotherNumber(value: number, random: Random): number {
  const way = random()
  if (way < 0.45) return value * pick(random, [0, 0.01, 0.5, 0.75, 1.0625, 1.5, 2, 4, 10, -1])
  if (way < 0.7) return value + pick(random, [-300, -75, -37.5, -1, -1 / 16, 1 / 16, 1, 37.5, 75, 300])
  return pick(random, way < 0.85 ? rangeEdges : edges)
}

function anotherFor(value: unknown, random: Random): unknown {
  const way = random()
  if (typeof value === 'boolean') return way < 0.8 ? !value : pick(random, [null, 1, 'true'])
  if (typeof value === 'string')
    return way < 0.7 ? pick(random, texts) : pick(random, [null, 7, value + value, value.slice(1)])
  return way < 0.5 ? pick(random, [null, [], {}, 0, '']) : pick<unknown>(random, [...edges, ...texts])
}

function changedBytes(original: Uint8Array, random: Random): Uint8Array {
  const bytes = [...original]
  const times = 1 + Math.floor(random() * 4)
  for (let i = 0; i < times && bytes.length > 0; i++) {
    const at = Math.floor(random() * bytes.length)
    const length = 1 + Math.floor(random() ** 3 * 50)
    const way = random()
    if (way < 0.4) bytes[at] = bytes[at]! ^ (1 << Math.floor(random() * 8))
    else if (way < 0.6) bytes.splice(at, length)
    else if (way < 0.8) bytes.splice(at, 0, ...bytes.slice(at, at + length))
    else bytes.splice(at, 0, Math.floor(random() * 256))
  }
  return Uint8Array.from(bytes)
}
