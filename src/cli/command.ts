import { theirs } from '../core/theirs.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { packetPurposes } from '../protocol/packet-purposes.ts'

/** 0 done; 1 judged not acceptable, not yet known, or acceptable only but for what is set aside; 2 bad input; 3 our fault. */
export type ExitCode = 0 | 1 | 2 | 3

/** Every option of any command: how it is written, and what it can be where that is one of a few words. */
export const optionForms = {
  output: { written: '-o, --output <FILE>' },
  limit: { written: '--limit <N>' },
  language: { written: '--language <LANGUAGE>', values: ['en', 'es'] },
  units: { written: '--units <UNITS>', values: ['us', 'metric'] },
  page: { written: '--page <PAGE>', values: ['letter', 'tabloid', 'A4', 'A3'] },
  landscape: { written: '--landscape' },
  view: { written: '--view <VIEW>', values: ['strip', 'elevation', 'detail'] },
  station: { written: '--station <TEXT>' },
  readings: { written: '--readings <FILE>' },
  device: { written: '--device <FILE>' },
  photos: { written: '--photos <DIR>' },
  'no-photos': { written: '--no-photos' },
  for: { written: '--for <PURPOSE>', values: packetPurposes },
  ticket: { written: '--ticket <TEXT>' },
  zone: { written: '--zone <NAME>' },
  date: { written: '--date <DATE>' },
  author: { written: '--author <NAME>' },
  pay: { written: '--pay <ROUNDING>' },
  boundaries: { written: '--boundaries <FIRST,SECOND>' },
  'stake-order': { written: '--stake-order <WHICH>', values: ['northing', 'easting'] },
  'no-header': { written: '--no-header' },
  alignment: { written: '--alignment <FILE>' },
  offset: { written: '--offset <LENGTH>' },
  epsg: { written: '--epsg <CODE>' },
  because: { written: '--because <TEXT>' },
  summary: { written: '--summary' },
  store: { written: '--store <PLACE>' },
  run: { written: '--run <ID>' },
  lan: { written: '--lan' },
  head: { written: '--head <COUNT:HASH>' },
} as const satisfies Readonly<Record<string, OptionForm>>

export interface OptionForm {
  readonly written: string
  readonly values?: readonly string[]
}

export type OptionName = keyof typeof optionForms
type Flag = {
  [N in OptionName]: (typeof optionForms)[N]['written'] extends `${string}<${string}` ? never : N
}[OptionName]

/** Null or false where the command line does not have it; `json` holds for every command. */
export type CommandOptions = Readonly<Record<Exclude<OptionName, Flag>, string | null> & Record<Flag | 'json', boolean>>

/** Carries a command out. */
export type Run = (words: readonly string[], options: CommandOptions) => Promise<ExitCode>

export interface Command {
  readonly name: string
  /** Words after the name, as `RUN.json READINGS.json`. */
  readonly words: string
  /** What the first word can be, where it is one of a few and no file. */
  readonly firstWords?: readonly string[]
  readonly summary: string
  /** The options that it takes, with what each means here. */
  readonly options: Readonly<Partial<Record<OptionName, string>>>
  /** What else is to be known. */
  readonly notes?: readonly string[]
  /** As they are typed, without `lapwise`. */
  readonly examples: readonly string[]
  /** What carries it out is loaded when it is asked for, with all that it alone needs. */
  readonly load: () => Promise<Run>
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
