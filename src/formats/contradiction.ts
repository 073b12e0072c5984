import type * as z from 'zod/mini'

/** Something in a file of the right shape that does not go with another part of it; `path` leads to it. */
export interface Contradiction {
  readonly path: readonly (string | number)[]
  readonly expected: string
}

/** Gives `context` the contradictions as issues of the value that it checks. */
export function reportContradictions(context: z.core.ParsePayload, contradictions: readonly Contradiction[]): void {
  for (const { path, expected } of contradictions)
    context.issues.push({ code: 'custom', input: context.value, path: [...path], message: expected })
}

/** The second and further places of a name that may stand once. */
export function repeated(named: readonly (readonly [string, Contradiction['path']])[]): Contradiction[] {
  const seen = new Set<string>()
  return named.flatMap(([name, path]) => {
    if (seen.has(name)) return [{ path, expected: 'something not listed before' }]
    seen.add(name)
    return []
  })
}
