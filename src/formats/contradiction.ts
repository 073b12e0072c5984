import type * as z from 'zod/mini'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'

/** Something in a file of the right shape that does not go with another part of it; `path` leads to it. */
export interface Contradiction {
  readonly path: readonly (string | number)[]
  readonly expected: ProblemSaying
}

/** Gives `context` the contradictions as issues of the value that it checks. */
export function reportContradictions(context: z.core.ParsePayload, contradictions: readonly Contradiction[]): void {
  for (const { path, expected } of contradictions) reportUnfit(context, expected, context.value, path)
}

/** Gives `context` an issue that says what was expected where `input` stands. */
export function reportUnfit(
  context: z.core.ParsePayload,
  expected: ProblemSaying,
  input: unknown,
  path: Contradiction['path'] = [],
): void {
  context.issues.push({ code: 'custom', input, path: [...path], params: { expected } })
}

/** The second and further places of a name that may stand once. */
export function repeated(named: readonly (readonly [string, Contradiction['path']])[]): Contradiction[] {
  const seen = new Set<string>()
  return named.flatMap(([name, path]) => {
    if (seen.has(name)) return [{ path, expected: { kind: 'not listed before' } }]
    seen.add(name)
    return []
  })
}
