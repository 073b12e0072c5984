import { theirs } from '../core/theirs.ts'
import type { InputProblem } from '../formats/input-problem.ts'

/** 0 done; 1 judged not acceptable, not yet known, or acceptable only but for what is set aside; 2 bad input; 3 our fault. */
export type ExitCode = 0 | 1 | 2 | 3

/** Options that take a text. */
export const textOptions = [
  ...(['output', 'page', 'view', 'readings', 'limit', 'station', 'units'] as const),
  ...(['photos', 'ticket', 'device', 'zone', 'date', 'author', 'pay', 'boundaries', 'stake-order'] as const),
  ...(['alignment', 'offset', 'epsg', 'store', 'run', 'because'] as const),
]

/** Options that are there or not. */
export const flags = ['json', 'no-photos', 'landscape', 'no-header'] as const

/** Null or false where the command line does not have it. */
export type CommandOptions = Readonly<
  Record<(typeof textOptions)[number], string | null> & Record<(typeof flags)[number], boolean>
>

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

/** @param words  how it is written, in the words of the command line */
export const badWords = (words: string, found: string): BadInput =>
  new BadInput([{ file: 'lapwise', place: '', expected: { kind: 'in these words', words }, found: theirs(found) }])
