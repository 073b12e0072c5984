import { type Command, type OptionForm, type OptionName, optionForms } from '../command.ts'

/** An option as a shell has to know it. */
export interface Spelling {
  /** `-o`; null where there is none. */
  readonly short: string | null
  /** `--output` */
  readonly long: string
  /** What has to follow it, as `FILE`; null for a flag. */
  readonly takes: string | null
  readonly values: readonly string[]
  readonly about: string
}

const everywhere: readonly Spelling[] = [
  { short: null, long: '--json', takes: null, values: [], about: 'JSON alone on standard output' },
  { short: null, long: '--quiet', takes: null, values: [], about: 'results and problems alone' },
  { short: '-h', long: '--help', takes: null, values: [], about: 'explains the command' },
]

/** The options of a command, those that all have included. */
export const spellingsOf = ({ options }: Command): readonly Spelling[] => [
  ...(Object.entries(options) as [OptionName, string][]).map(([name, about]) => {
    const { written, values = [] }: OptionForm = optionForms[name]
    const [, short = null, long, takes = null] = /^(?:(-\w), )?(--[\w-]+)(?: <(.+)>)?$/.exec(written)!
    return { short, long: long!, takes, values, about }
  }),
  ...everywhere,
]

/** In single quotes, for any of the three shells. */
export const quoted = (text: string): string => `'${text.replaceAll("'", '’')}'`
