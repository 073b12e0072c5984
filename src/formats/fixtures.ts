/** A file that must be refused, for the tests of a format and of its published schema. */
export interface BrokenFile {
  readonly title: string
  readonly raw: unknown
  /** Every problem, as printed, without the name of the file. */
  readonly problems: readonly string[]
  /** False when only reading the file shows it, because a JSON Schema cannot say it. */
  readonly inSchema: boolean
}

/** A copy of `base`, as JSON has it, with `value` at `path`; undefined takes the field away. */
export function changed(base: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const copy: unknown = JSON.parse(JSON.stringify(base))
  const last = path.at(-1)
  if (last === undefined) throw new RangeError('path must not be empty')
  const owner = path.slice(0, -1).reduce((at, step) => (at as Record<string | number, unknown>)[step], copy)
  const fields = owner as Record<string | number, unknown>
  if (value === undefined) delete fields[last]
  else fields[last] = value
  return copy
}
