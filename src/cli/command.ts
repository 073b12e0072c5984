import type { InputProblem } from '../formats/input-problem.ts'

/** 0 done; 1 judged not acceptable or not yet known; 2 bad input; 3 our fault. */
export type ExitCode = 0 | 1 | 2 | 3

export interface CommandOptions {
  readonly json: boolean
  readonly output: string | null
  readonly page: string | null
  readonly view: string | null
  readonly readings: string | null
  readonly limit: string | null
  readonly station: string | null
  readonly units: string | null
  readonly photos: string | null
  readonly ticket: string | null
}

export interface Command {
  readonly name: string
  /** Words after the name, as `RUN.json READINGS.json`. */
  readonly words: string
  readonly summary: string
  /** What the options mean here; empty for those that it does not take. */
  readonly help: string
  readonly run: (words: readonly string[], options: CommandOptions) => Promise<ExitCode>
}

/** Thrown by helpers of the shell when what the user handed in is wrong; the shell prints it and exits with 2. */
export class BadInput extends Error {
  constructor(readonly problems: readonly InputProblem[]) {
    super('bad input')
  }
}

export const badWords = (expected: string, found: string): BadInput =>
  new BadInput([{ file: 'lapwise', place: '', expected, found }])
