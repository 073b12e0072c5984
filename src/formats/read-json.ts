import * as z from 'zod/mini'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from './input-problem.ts'
import { findJsonFault } from './json-fault.ts'
import { shapeProblems } from './shape-problems.ts'

z.config({ jitless: true })

/**
 * `text` as JSON that fits `schema`, or every problem found in it.
 * @param file  name shown in the problems
 */
export function readJson<T>(
  file: string,
  text: string,
  schema: z.core.$ZodType<T>,
): Result<T, readonly InputProblem[]> {
  const parsed = parseJson(file, text)
  return parsed.ok ? checkShape(file, parsed.value, schema) : parsed
}

/** The value that `text` is the JSON of, or where it is none. By `$schema` a file tells an editor its schema, and nothing else. */
export function parseJson(file: string, text: string): Result<unknown, readonly InputProblem[]> {
  const json = text.replace(/^\uFEFF/, '')
  const fault = findJsonFault(json)
  if (fault) {
    const { line, column, expected, found } = fault
    return err([{ file, place: `line ${line}, column ${column}`, expected, found }])
  }
  return ok(withoutSchema(JSON.parse(json)))
}

function withoutSchema(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || !('$schema' in value)) return value
  const { $schema, ...rest } = value
  return typeof $schema === 'string' ? rest : value
}

/** `raw` as a value that fits `schema`, or every problem found in it. */
export function checkShape<T>(
  file: string,
  raw: unknown,
  schema: z.core.$ZodType<T>,
): Result<T, readonly InputProblem[]> {
  const parsed = z.safeParse(schema, raw)
  return parsed.success ? ok(parsed.data) : err(shapeProblems(file, raw, parsed.error.issues))
}
