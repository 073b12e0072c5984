import * as z from 'zod/mini'
import type { InputProblem } from '../formats/input-problem.ts'
import type { Answer } from '../words/answers.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'

/** What of the input is not as it has to be, and where: an `InputProblem` of the formats, in English. */
export const problem = z.object({
  file: z.string(),
  place: z.string(),
  expected: z.string(),
  found: z.string(),
  /** The same as data, for a page that says it in its own language; a server of an earlier version has none. */
  saying: z.optional(z.object({ expected: z.custom<ProblemSaying>(), found: z.custom<InputProblem['found']>() })),
})

/** Why a request was not answered as asked. */
export const errorAnswer = z.object({
  error: z.object({
    message: z.string(),
    /** The same as data; left out where the words are not ours. */
    saying: z.optional(z.custom<Answer>()),
    problems: z.optional(z.readonly(z.array(problem))),
  }),
})

export type ToldProblem = z.output<typeof problem>
export type ErrorAnswer = z.output<typeof errorAnswer>
