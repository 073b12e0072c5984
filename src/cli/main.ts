import { parseArgs } from 'node:util'
import { printProblem, problemInWords } from '../formats/input-problem.ts'
import { BadInput, badWords, type Command, type CommandOptions, type ExitCode, flags, textOptions } from './command.ts'
import { words as inWords, print, printJson, say } from './io.ts'
import { type Streams, withStreams } from './streams.ts'

/** In the order of the overview; each is loaded when it is asked for, with all that it alone needs. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  sheets: async () => (await import('./commands/sheets.ts')).sheetsCommand,
  alignment: async () => (await import('./commands/alignment.ts')).alignmentCommand,
  need: async () => (await import('./commands/need.ts')).needCommand,
  plan: async () => (await import('./commands/plan.ts')).planCommand,
  layout: async () => (await import('./commands/layout.ts')).layoutCommand,
  pin: async () => (await import('./commands/pin.ts')).pinCommand,
  revise: async () => (await import('./commands/revise.ts')).reviseCommand,
  shelf: async () => (await import('./commands/shelf.ts')).shelfCommand,
  requirements: async () => (await import('./commands/requirements.ts')).requirementsCommand,
  judge: async () => (await import('./commands/judge.ts')).judgeCommand,
  strip: async () => (await import('./commands/strip.ts')).stripCommand,
  record: async () => (await import('./commands/record.ts')).recordCommand,
  handover: async () => (await import('./commands/handover.ts')).handoverCommand,
  packet: async () => (await import('./commands/packet.ts')).packetCommand,
}

/**
 * Runs one command line and tells how it ended.
 * @param io  where it reads and writes: the process, or what stands for it where many are run in one
 */
export const main = (argv: readonly string[], io: Streams = process): Promise<ExitCode> =>
  withStreams(io, () => runWords(argv))

async function runWords(argv: readonly string[]): Promise<ExitCode> {
  const json = argv.includes('--json')
  try {
    return await dispatch(argv)
  } catch (cause) {
    if (cause instanceof BadInput) {
      if (json) printJson({ error: { problems: cause.problems.map((one) => problemInWords(one, inWords)) } })
      for (const problem of cause.problems) say(printProblem(problem, inWords))
      return 2
    }
    if (json) printJson({ error: { problems: [], fault: String(cause) } })
    say(
      `Lapwise has a fault; nothing was written. Please report it with this text:\n${cause instanceof Error ? cause.stack : String(cause)}`,
    )
    return 3
  }
}

async function dispatch(argv: readonly string[]): Promise<ExitCode> {
  const { options, words, help } = readWords(argv)
  const [name, ...rest] = words
  const command = await commandNamed(name)
  if (name === undefined || command === undefined) {
    if (name === undefined || name === 'help') {
      const about = await commandNamed(rest[0])
      print(about === undefined ? await overview() : helpOf(about))
      return name === undefined && !help ? 2 : 0
    }
    throw badWords(`a command: ${Object.keys(commands).join(', ')}`, JSON.stringify(name))
  }
  if (help) {
    print(helpOf(command))
    return 0
  }
  return command.run(rest, options)
}

const commandNamed = async (name = ''): Promise<Command | undefined> =>
  Object.hasOwn(commands, name) ? commands[name]!() : undefined

function readWords(argv: readonly string[]): { options: CommandOptions; words: readonly string[]; help: boolean } {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      allowPositionals: true,
      options: {
        ...named(textOptions, (name) => ({ type: 'string' as const, ...(name === 'output' ? { short: 'o' } : {}) })),
        ...named(flags, () => ({ type: 'boolean' as const })),
        help: { type: 'boolean', short: 'h' },
      },
    })
    const given: Readonly<Record<string, string | boolean | undefined>> = values
    const options = {
      ...named(textOptions, (name) => (given[name] as string | undefined) ?? null),
      ...named(flags, (name) => given[name] === true),
    }
    const help = given.help === true
    return { options, words: positionals, help }
  } catch (cause) {
    if (!(cause instanceof TypeError)) throw cause
    throw badWords('an option of the command (see lapwise --help)', cause.message.split('.')[0]!)
  }
}

/** A record of `names`, each with what `of` makes of it. */
const named = <Name extends string, T>(names: readonly Name[], of: (name: Name) => T): Record<Name, T> =>
  Object.fromEntries(names.map((name) => [name, of(name)])) as Record<Name, T>

async function overview(): Promise<string> {
  const all = await Promise.all(Object.values(commands).map((load) => load()))
  const width = Math.max(...all.map(({ name, words }) => name.length + words.length + 1))
  const lines = all.map(({ name, words, summary }) => `  ${`${name} ${words}`.padEnd(width)}  ${summary}`)
  return [
    'lapwise: from hardware sheets and a run to a judged guardrail installation',
    '',
    'Usage: lapwise COMMAND …',
    '',
    ...lines,
    '',
    'Everywhere: --json prints JSON alone on standard output; - reads standard input; --help explains a command.',
    'Ends with 0 done, 1 judged anything but acceptable, 2 bad input, 3 a fault of Lapwise.',
    'File formats: docs/formats.md.',
  ].join('\n')
}

const helpOf = ({ name, words, summary, help }: Command): string =>
  `Usage: lapwise ${name} ${words}\n\n${summary}\n\n${help}`
