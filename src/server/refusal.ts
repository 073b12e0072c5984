import { type InputProblem, problemInWords } from '../formats/input-problem.ts'
import { type ErrorAnswer, errorAnswer, type ToldProblem } from '../protocol/error-answer.ts'
import type { Answer } from '../words/answers.ts'
import { english } from '../words/english.ts'
import type { Saying } from '../words/saying.ts'

/** Why a request is not answered as asked, with the status that says so. */
export interface Refusal {
  readonly status: 400 | 404 | 503
  readonly message: Answer
  readonly problems: readonly InputProblem[]
}

/** The errors that a route may answer with. */
export const refusals = { 400: errorAnswer, 404: errorAnswer, 503: errorAnswer } as const

/** The words of the answers themselves; a page that speaks another language says their data. */
const print = english(null)

export function problemTold(problem: InputProblem): ToldProblem {
  const { expected, found } = problem
  return { ...problemInWords(problem, print), saying: { expected, found } }
}

/** What was answered in words, with the data beside. */
export const told = <S extends Saying>(saying: S): { readonly message: string; readonly saying: S } => ({
  message: print.say(saying),
  saying,
})

export const errorOf = ({ message, problems }: Pick<Refusal, 'message' | 'problems'>): ErrorAnswer => ({
  error: problems.length === 0 ? told(message) : { ...told(message), problems: problems.map(problemTold) },
})

export const unavailable = (reason: string): Refusal => ({
  status: 503,
  message: { kind: 'store silent for now', reason },
  problems: [],
})

export const noSuchRun = (run: string): Refusal => ({ status: 404, message: { kind: 'no run', run }, problems: [] })

export const badInput = (message: Answer, problems: readonly InputProblem[]): Refusal => ({
  status: 400,
  message,
  problems,
})
