import type * as z from 'zod/mini'
import { theirs } from '../core/theirs.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import type { Bound, ValueType } from '../words/problems/shape.ts'
import type { InputProblem } from './input-problem.ts'
import { formNamed } from './range/form.ts'

type Path = readonly PropertyKey[]

/** One thing that does not fit; `depth` says how far a value fitted before it, to tell which alternative was meant. */
interface Misfit {
  readonly path: Path
  readonly expected: ProblemSaying
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
      found: foundIn(valueAt(raw, path)),
    }))
}

function misfitsOf(issue: z.core.$ZodIssue, base: Path): Misfit[] {
  const path = [...base, ...issue.path]
  const inside = path.length + 0.5
  switch (issue.code) {
    case 'invalid_type':
      return [{ path, expected: typeNamed(issue.expected), depth: path.length }]
    case 'invalid_value':
      return [{ path, expected: oneOf(issue.values), depth: path.length }]
    case 'unrecognized_keys':
      return issue.keys.map((name) => ({
        path: [...path, name],
        expected: { kind: 'no field named', name },
        depth: path.length + 1,
      }))
    case 'invalid_key':
      return issue.issues.flatMap((inner) =>
        misfitsOf(inner, path).map((misfit) => ({
          ...misfit,
          expected: { kind: 'field name', that: misfit.expected },
        })),
      )
    case 'invalid_union':
      return issue.errors.length > 0
        ? nearest(issue, path)
        : [{ path, expected: oneOf((issue as { options?: unknown[] }).options ?? []), depth: path.length }]
    case 'too_small':
      return [{ path, expected: boundOf(issue.origin, issue.inclusive, issue.minimum, least), depth: inside }]
    case 'too_big':
      return [{ path, expected: boundOf(issue.origin, issue.inclusive, issue.maximum, most), depth: inside }]
    case 'custom':
      return [{ path, expected: (issue.params?.expected as ProblemSaying | undefined) ?? named(issue), depth: inside }]
    default:
      return [{ path, expected: named(issue), depth: inside }]
  }
}

const named = ({ message }: z.core.$ZodIssue): ProblemSaying => formNamed(message) ?? { kind: 'another value' }

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
  return [{ path, expected: formNamed(issue.message) ?? alternatives(best.flat(), path), depth: deepest }]
}

/** What each of them expects, once. */
function alternatives(misfits: readonly Misfit[], path: Path): ProblemSaying {
  const ways = new Map(
    misfits.map((misfit) => {
      const way = { that: misfit.expected, at: printPath(misfit.path.slice(path.length)) }
      return [JSON.stringify(way), way]
    }),
  )
  return { kind: 'either', ways: [...ways.values()] }
}

function typeNamed(name: string): ProblemSaying {
  const type = types[name]
  return type === undefined ? { kind: 'another value' } : { kind: 'value of type', type }
}

const types: Readonly<Record<string, ValueType>> = {
  string: 'text',
  number: 'number',
  int: 'whole number',
  boolean: 'true or false',
  array: 'list',
  tuple: 'list',
  object: 'object',
  record: 'object',
  null: 'null',
}

const oneOf = (values: readonly unknown[]): ProblemSaying => ({
  kind: 'one of values',
  values: values.map((value) => JSON.stringify(value)),
})

const least = { inclusive: 'at least', exclusive: 'more than' } as const
const most = { inclusive: 'at most', exclusive: 'less than' } as const

function boundOf(
  origin: string,
  inclusive: boolean | undefined,
  value: number | bigint,
  words: { readonly inclusive: Bound; readonly exclusive: Bound },
): ProblemSaying {
  const kind = origin === 'string' ? 'text bound' : origin === 'array' ? 'list bound' : 'number bound'
  return { kind, bound: inclusive ? words.inclusive : words.exclusive, value: Number(value) }
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

function foundIn(value: unknown): NonNullable<InputProblem['found']> {
  if (value === undefined) return { kind: 'nothing' }
  if (Array.isArray(value))
    return value.length === 0 ? { kind: 'empty list' } : { kind: 'list of', length: value.length }
  if (typeof value === 'object' && value !== null) {
    const names = Object.keys(value)
    return names.length === 0 ? { kind: 'empty object' } : { kind: 'object with', fields: shorten(names.join(', ')) }
  }
  return theirs(shorten(typeof value === 'number' ? String(value) : JSON.stringify(value)))
}

const shorten = (text: string): string => (text.length > 80 ? `${text.slice(0, 77)}…` : text)
