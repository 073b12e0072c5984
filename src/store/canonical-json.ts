import { createHash } from 'node:crypto'
import { err, ok, type Result } from '../core/result.ts'
import { isStorable, storableDescription } from './storable-text.ts'

/** Where in a value stands something that JSON in PostgreSQL cannot hold unchanged: place as `.readings[3].note`. */
export interface NotJson {
  readonly place: string
  readonly expected: string
  readonly found: string
}

/** Deepest nesting taken: our judgement, far above any entry and far below what overflows a parser's stack. */
const deepest = 64

/**
 * `value` as the one JSON text that equal values share: no spaces, names in order of their UTF-16 code units, numbers
 * and strings as ECMAScript prints them. A field that is `undefined` is left out; anything else that JSON would drop
 * or turn into null (NaN, functions, dates) is refused, since a fact must come back as it was handed in.
 * @source the rules of RFC 8785 (JSON Canonicalization Scheme), section 3.2
 * @example canonicalJson({ b: 1, a: [true, null] })  // {"a":[true,null],"b":1}
 */
export function canonicalJson(value: unknown): Result<string, NotJson> {
  const problems: NotJson[] = []
  const text = print(value, '', 0, problems)
  const [first] = problems
  return first === undefined ? ok(text) : err(first)
}

/** SHA-256 of a canonical JSON text in UTF-8, hexadecimal. */
export function hashOf(canonical: string): string {
  return createHash('sha256').update(canonical, 'utf8').digest('hex')
}

function print(value: unknown, place: string, depth: number, problems: NotJson[]): string {
  const refuse = (expected: string, found: string): string => {
    problems.push({ place, expected, found })
    return ''
  }
  if (depth > deepest) return refuse(`at most ${deepest} levels`, 'more')
  if (value === null || typeof value === 'boolean') return String(value)
  if (typeof value === 'number') {
    return Number.isFinite(value) ? JSON.stringify(value) : refuse('a finite number', String(value))
  }
  if (typeof value === 'string') return printText(value) ?? refuse(storableDescription, JSON.stringify(value))
  if (Array.isArray(value)) {
    return `[${value.map((item, i) => print(item, `${place}[${i}]`, depth + 1, problems)).join(',')}]`
  }
  if (!isPlainRecord(value)) return refuse('a JSON value', typeof value)
  const fields = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort()
    .map((name) => {
      const label = printText(name) ?? refuse(storableDescription, JSON.stringify(name))
      return `${label}:${print(value[name], `${place}.${name}`, depth + 1, problems)}`
    })
  return `{${fields.join(',')}}`
}

function printText(value: string): string | null {
  return isStorable(value) ? JSON.stringify(value) : null
}

function isPlainRecord(value: unknown): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null) return false
  const prototype: unknown = Object.getPrototypeOf(value)
  return prototype === Object.prototype || prototype === null
}
