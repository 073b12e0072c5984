import { type CommanderError, Command as Parser } from 'commander'
import {
  badWords,
  type Command,
  type CommandOptions,
  type ExitCode,
  type OptionForm,
  type OptionName,
  optionForms,
} from './command.ts'
import { print } from './io.ts'

/**
 * Takes a command line apart and carries it out. An option that is not of its command is refused.
 * @param settings  what the server is told by the environment, for its help
 * @returns the parser, and how the command ended that it ran
 */
export function parserOf(
  commands: readonly Command[],
  settings: readonly string[],
  version: string,
): { readonly parser: Parser; readonly ended: () => ExitCode } {
  let code: ExitCode = 0
  const parser = new Parser('lapwise')
    .description('From hardware sheets and a run to a judged guardrail installation.')
    .usage('COMMAND …')
    .version(version, '--version', 'which version this is')
    .helpOption('-h, --help', 'explains Lapwise, or a command')
    .option('--json', 'JSON alone on standard output')
    .option('--quiet', 'results and problems alone')
    .configureHelp({ showGlobalOptions: true, subcommandTerm: (one) => `${one.name()} ${one.usage()}` })
    .configureOutput({ writeOut: (text) => print(text.trimEnd()), writeErr: () => {} })
    .addHelpText('after', `\n${endings}`)
    .helpCommand('help [COMMAND]', 'explains a command')
    .exitOverride((cause) => refuse(cause, `a command: ${commands.map(({ name }) => name).join(', ')}`))
  for (const command of commands) {
    const { name, words, summary, options, notes = [], examples } = command
    const one = parser
      .command(name)
      .description(summary)
      .usage(words)
      .helpOption('-h, --help', 'explains the command')
      .argument('[words...]')
      .configureHelp({ visibleArguments: () => [], showGlobalOptions: true })
      .exitOverride((cause) => refuse(cause, `an option of ${name} (lapwise ${name} --help lists them)`))
      .action(async (given: readonly string[]) => {
        code = await (await command.load())(given, optionsIn(one.optsWithGlobals()))
      })
    for (const [option, about] of Object.entries(options) as [OptionName, string][])
      one.option(optionForms[option].written, about)
    const after = [
      ...notes,
      ...(name === 'serve' ? ['It is told of what it needs by environment variables:', ...settings] : []),
      ...(notes.length > 0 ? [''] : []),
      'Examples:',
      ...examples.map((example) => `  lapwise ${example}`),
    ]
    one.addHelpText('after', `\n${after.join('\n')}`)
  }
  return { parser, ended: () => code }
}

const endings = [
  'A file named - is standard input. lapwise COMMAND --help explains a command.',
  'Ends with 0 done, 1 judged anything but acceptable, 2 bad input, 3 a fault of Lapwise.',
  'File formats: docs/formats.md.',
].join('\n')

/** What the parser refuses is told as any other bad input is, with what it takes for meant. */
function refuse(cause: CommanderError, expected: string): never {
  if (cause.exitCode === 0) throw cause
  throw badWords(expected, cause.message.replace(/^error: /, '').replaceAll('\n', ' '))
}

/** Every option that there is, also those that the command does not take. */
function optionsIn(given: Readonly<Record<string, unknown>>): CommandOptions {
  const values = Object.entries(optionForms).map(([name, { written }]: [string, OptionForm]) => {
    // The parser keeps `--no-photos` as photos that are false.
    const isNegative = name.startsWith('no-')
    const value = given[(isNegative ? name.slice(3) : name).replaceAll(/-(\w)/g, (_, letter) => letter.toUpperCase())]
    if (written.includes('<')) return [name, typeof value === 'string' ? value : null]
    return [name, value === !isNegative]
  })
  return { ...Object.fromEntries(values), json: given.json === true } as CommandOptions
}
