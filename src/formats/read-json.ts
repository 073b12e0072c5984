import { z } from 'zod'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from './input-problem.ts'

z.config({ jitless: true })

/**
 * `text` as JSON that fits `schema`, or every problem found in it.
 * @param file  name shown in the problems
 */
export function readJson<T>(file: string, text: string, schema: z.ZodType<T>): Result<T, readonly InputProblem[]> {
  let raw: unknown
  try {
    raw = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (cause) {
    if (!(cause instanceof SyntaxError)) throw cause
    return err([{ file, place: '', expected: 'a JSON document', found: cause.message }])
  }
  return checkShape(file, raw, schema)
}

/** `raw` as a value that fits `schema`, or every problem found in it. */
export function checkShape<T>(file: string, raw: unknown, schema: z.ZodType<T>): Result<T, readonly InputProblem[]> {
  const parsed = schema.safeParse(raw)
  if (parsed.success) return ok(parsed.data)
  return err(parsed.error.issues.map((issue) => problemOf(file, raw, issue)))
}

function problemOf(file: string, raw: unknown, issue: z.core.$ZodIssue): InputProblem {
  return {
    file,
    place: printPath(issue.path),
    expected: expectedOf(issue),
    found: printFound(valueAt(raw, issue.path)),
  }
}

function expectedOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ')
    case 'unrecognized_keys':
      return `no field named ${issue.keys.map((key) => JSON.stringify(key)).join(', ')}`
    case 'too_small':
      return `${issue.origin === 'array' || issue.origin === 'string' ? 'a length' : 'a value'} of ${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`
    case 'too_big':
      return `${issue.origin === 'array' || issue.origin === 'string' ? 'a length' : 'a value'} of ${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}`
    default:
      return issue.message.replace(/^Invalid input: expected /, '').replace(/^expected /i, '')
  }
}

function printPath(path: readonly PropertyKey[]): string {
  return path.map((step, i) => (typeof step === 'number' ? `[${step}]` : `${i ? '.' : ''}${String(step)}`)).join('')
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, step) => (value as Record<PropertyKey, unknown> | undefined)?.[step], raw)
}

function printFound(value: unknown): string {
  if (value === undefined) return 'nothing'
  const text = JSON.stringify(value)
  return text.length > 80 ? `${text.slice(0, 77)}…` : text
}
