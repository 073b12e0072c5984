import { err, ok, type Result } from '../core/result.ts'
import { theirs } from '../core/theirs.ts'
import { canonicalJson, isPlainRecord } from '../formats/canonical-json.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { isStorable } from './storable-text.ts'

/** Where in a value stands something that JSON in PostgreSQL cannot hold unchanged: place as `.readings[3].note`. */
export interface NotJson {
  readonly place: string
  readonly expected: InputProblem['expected']
  readonly found: InputProblem['found']
}

/** Deepest nesting taken: our judgement, far above any entry and far below what overflows a parser's stack. */
const deepest = 64

/**
 * `value` as its canonical JSON text; refused where something stands in it that JSON in PostgreSQL would drop, change
 * or turn into null (NaN, functions, dates, unstorable text), since a fact must come back as it was handed in.
 */
export function storableJson(value: unknown): Result<string, NotJson> {
  const problem = unstorableIn(value, '', 0)
  return problem === null ? ok(canonicalJson(value)) : err(problem)
}

function unstorableIn(value: unknown, place: string, depth: number): NotJson | null {
  if (depth > deepest) return { place, expected: { kind: 'levels at most', most: deepest }, found: { kind: 'more' } }
  if (value === null || typeof value === 'boolean') return null
  if (typeof value === 'number')
    return Number.isFinite(value) ? null : { place, expected: { kind: 'finite number' }, found: theirs(String(value)) }
  if (typeof value === 'string') return unstorableText(value, place)
  if (Array.isArray(value))
    return firstOf(value.map((item, i) => () => unstorableIn(item, `${place}[${i}]`, depth + 1)))
  if (!isPlainRecord(value)) return { place, expected: { kind: 'JSON value' }, found: theirs(typeof value) }
  const names = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort()
  return firstOf(
    names.map((name) => () => unstorableText(name, place) ?? unstorableIn(value[name], `${place}.${name}`, depth + 1)),
  )
}

function firstOf(checks: readonly (() => NotJson | null)[]): NotJson | null {
  for (const check of checks) {
    const problem = check()
    if (problem !== null) return problem
  }
  return null
}

const unstorableText = (value: string, place: string): NotJson | null =>
  isStorable(value) ? null : { place, expected: { kind: 'storable text' }, found: written(value) }
