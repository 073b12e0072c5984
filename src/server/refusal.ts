import type { InputProblem } from '../formats/input-problem.ts'
import { type ErrorAnswer, errorAnswer } from '../protocol/error-answer.ts'

/** Why a request is not answered as asked, with the status that says so. */
export interface Refusal {
  readonly status: 400 | 404 | 503
  readonly message: string
  readonly problems: readonly InputProblem[]
}

/** The errors that a route may answer with. */
export const refusals = { 400: errorAnswer, 404: errorAnswer, 503: errorAnswer } as const

export const errorOf = ({ message, problems }: Refusal): ErrorAnswer => ({
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
