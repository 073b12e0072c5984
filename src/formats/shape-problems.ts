import type * as z from 'zod/mini'
import type { InputProblem } from './input-problem.ts'
import { plain } from './range/range-faults.ts'

type Path = readonly PropertyKey[]

/** One thing that does not fit; `depth` says how far a value fitted before it, to tell which alternative was meant. */
interface Misfit {
  readonly path: Path
  readonly expected: string
  readonly depth: number
}

/** The issues of a schema as problems of a file: each where it lies, with what was expected and what stood there. */
export function shapeProblems(file: string, raw: unknown, issues: readonly z.core.$ZodIssue[]): InputProblem[] {
  return issues
    .flatMap((issue) => misfitsOf(issue, []))
    .map(({ path, expected }) => ({
      file,
      place: printPath(path),
      expected,
      found: printFound(valueAt(raw, path)),
    }))
}

function misfitsOf(issue: z.core.$ZodIssue, base: Path): Misfit[] {
  const path = [...base, ...issue.path]
  const inside = path.length + 0.5
  switch (issue.code) {
    case 'invalid_type':
      return [{ path, expected: typeNames[issue.expected] ?? issue.expected, depth: path.length }]
    case 'invalid_value':
      return [{ path, expected: oneOf(issue.values), depth: path.length }]
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: [...path, key],
        expected: `no field named ${JSON.stringify(key)}`,
        depth: path.length + 1,
      }))
    case 'invalid_key':
      return issue.issues.flatMap((inner) =>
        misfitsOf(inner, path).map((misfit) => ({ ...misfit, expected: `${misfit.expected} as field name` })),
      )
    case 'invalid_union':
      return issue.errors.length > 0
        ? nearest(issue, path)
        : [{ path, expected: oneOf((issue as { options?: unknown[] }).options ?? []), depth: path.length }]
    case 'too_small':
      return [{ path, expected: boundOf(issue.origin, issue.inclusive, issue.minimum, least), depth: inside }]
    case 'too_big':
      return [{ path, expected: boundOf(issue.origin, issue.inclusive, issue.maximum, most), depth: inside }]
    default:
      return [{ path, expected: issue.message.replace(/^Invalid \w+: (must be |expected )?/, ''), depth: inside }]
  }
}

/**
 * The misfits of the alternative that fits deepest, and of several equally deep the one with the fewest misfits; when
 * that leaves several, what each of them expects.
 */
function nearest(issue: z.core.$ZodIssueInvalidUnion, path: Path): Misfit[] {
  const branches = issue.errors.map((branch) => branch.flatMap((inner) => misfitsOf(inner, path)))
  const depthOf = (branch: readonly Misfit[]) => Math.min(...branch.map(({ depth }) => depth))
  const deepest = Math.max(...branches.map(depthOf))
  const deep = branches.filter((branch) => depthOf(branch) === deepest)
  const fewest = Math.min(...deep.map(({ length }) => length))
  const best = deep.filter(({ length }) => length === fewest)
  if (best.length === 1) return best.flat()
  const stated = issue.message === 'Invalid input' ? alternatives(best.flat(), path) : issue.message
  return [{ path, expected: stated, depth: deepest }]
}

function alternatives(misfits: readonly Misfit[], path: Path): string {
  const texts = misfits.map((misfit) => {
    const below = printPath(misfit.path.slice(path.length))
    return below === '' ? misfit.expected : `${misfit.expected} in ${below}`
  })
  return [...new Set(texts)].join(' or ')
}

const typeNames: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
  null: 'null',
}

const oneOf = (values: readonly unknown[]): string => values.map((value) => JSON.stringify(value)).join(' or ')

const least = { inclusive: 'at least', exclusive: 'more than' }
const most = { inclusive: 'at most', exclusive: 'less than' }

function boundOf(origin: string, inclusive: boolean | undefined, bound: number | bigint, words: typeof least): string {
  const limit = `${inclusive ? words.inclusive : words.exclusive} ${typeof bound === 'number' ? plain(bound) : bound}`
  if (origin === 'string') return bound === 1 && words === least ? 'a text that is not empty' : `${limit} characters`
  if (origin === 'array') return bound === 1 && words === least ? 'a list that is not empty' : `${limit} in the list`
  return `a value of ${limit}`
}

function printPath(path: Path): string {
  return path.map((step, i) => printStep(step, i === 0)).join('')
}

function printStep(step: PropertyKey, isFirst: boolean): string {
  if (typeof step === 'number') return `[${step}]`
  const name = String(step)
  if (!/^[\w-]+$/.test(name)) return `[${JSON.stringify(name)}]`
  return isFirst ? name : `.${name}`
}

function valueAt(raw: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, step) => {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined
    return (value as Record<PropertyKey, unknown>)[step]
  }, raw)
}

function printFound(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) {
    const names = Object.keys(value)
    return names.length === 0 ? 'an empty object' : `an object with ${shorten(names.join(', '))}`
  }
  return shorten(typeof value === 'number' ? String(value) : JSON.stringify(value))
}

const shorten = (text: string): string => (text.length > 80 ? `${text.slice(0, 77)}…` : text)
