import { type Theirs, theirs } from '../core/theirs.ts'
import type { Print } from '../words/print.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'

/** One thing wrong with what somebody handed in: where, what was expected, what stood there. */
export type InputProblem = Omit<Extract<ProblemSaying, { readonly kind: 'problem' }>, 'kind'>

/** `site.json: road.speed: expected a number above 0, found -5` */
export const printProblem = (problem: InputProblem, print: Print): string => print.say({ kind: 'problem', ...problem })

/** The problem with its words said, as those read it who take fields. */
export const problemInWords = ({ file, place, expected, found }: InputProblem, print: Print) => ({
  file,
  place,
  expected: print.say(expected),
  found: found === null ? '' : print.say(found),
})

/** What stood there, as a file writes it. */
export const written = (value: unknown): Theirs => theirs(JSON.stringify(value))
