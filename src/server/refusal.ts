import { z } from 'zod'
import type { InputProblem } from '../formats/input-problem.ts'

/** Why a request is not answered as asked, with the status that says so. */
export interface Refusal {
  readonly status: 400 | 404 | 503
  readonly message: string
  readonly problems: readonly InputProblem[]
}

export const problemShape = z.object({
  file: z.string(),
  place: z.string(),
  expected: z.string(),
  found: z.string(),
})

export const errorShape = z.object({
  error: z.object({ message: z.string(), problems: z.array(problemShape).readonly().optional() }),
})

/** The errors that a route may answer with. */
export const refusals = { 400: errorShape, 404: errorShape, 503: errorShape } as const

export const errorOf = ({ message, problems }: Refusal): z.output<typeof errorShape> => ({
  error: problems.length === 0 ? { message } : { message, problems },
})

export const unavailable = (reason: string): Refusal => ({
  status: 503,
  message: `The store does not answer: ${reason}. Nothing is lost; try again.`,
  problems: [],
})

export const noSuchRun = (id: string): Refusal => ({ status: 404, message: `There is no run ${id}.`, problems: [] })

export const badInput = (message: string, problems: readonly InputProblem[]): Refusal => ({
  status: 400,
  message,
  problems,
})
