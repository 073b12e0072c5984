import type { Theirs } from '../../core/theirs.ts'
import type { FileProblem } from './file.ts'
import type { NeedProblem } from './need.ts'
import type { ReadingProblem } from './reading.ts'
import type { RoadProblem } from './road.ts'
import type { RunProblem } from './run.ts'
import type { ShapeProblem } from './shape.ts'
import type { SheetProblem } from './sheet.ts'
import type { SiteProblem } from './site.ts'
import type { TypedProblem } from './typed.ts'
import type { VersionProblem } from './version.ts'

/** What had to stand somewhere in what was handed in, or what stands there instead. */
export type ProblemSaying =
  | TypedProblem
  | ShapeProblem
  | FileProblem
  | RoadProblem
  | SheetProblem
  | RunProblem
  | SiteProblem
  | NeedProblem
  | ReadingProblem
  | VersionProblem
  | WithinProblem
  | WholeProblem
  | UnusualValue

/** A value that is read and is seldom right: somebody should look at it again. It stands in the record. */
export interface UnusualValue {
  readonly kind: 'unusual'
  /** Path of the field, or the reading and what it is of. */
  readonly place: string
  readonly value: number
  /** Empty for a plain number. */
  readonly unit: string
  readonly low: number
  readonly high: number
}

/** Told of a part by what is told of others. */
export type WithinProblem =
  | { readonly kind: 'field name'; readonly that: ProblemSaying }
  /** @property at  path of the field inside the place; empty for the place itself */
  | { readonly kind: 'either'; readonly ways: readonly { readonly that: ProblemSaying; readonly at: string }[] }
  /** In the words of whoever says it: of the command line, or of a server that knows more kinds than we do. */
  | { readonly kind: 'in these words'; readonly words: string }

/** One thing wrong with what somebody handed in: `site.json: road.speed: expected a number above 0, found -5`. */
export interface WholeProblem {
  readonly kind: 'problem'
  readonly file: string
  /** Line, column, row or path inside the file, as `road.speed`; empty for the file as a whole. */
  readonly place: string
  readonly expected: ProblemSaying
  /** Null where it is not told. */
  readonly found: ProblemSaying | Theirs | null
}
