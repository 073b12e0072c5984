import { CommanderError } from 'commander'
import { printProblem, problemInWords } from '../formats/input-problem.ts'
import type { ServerProgram } from '../protocol/server-program.ts'
import { backupCommands } from './backup-commands.ts'
import { BadInput, type ExitCode } from './command.ts'
import { commands } from './commands.ts'
import { completionCommand } from './completion-command.ts'
import { words as inWords, printJson, say } from './io.ts'
import { parserOf } from './parser.ts'
import { programVersion } from './program-version.ts'
import { serveCommand } from './serve-command.ts'
import { type Streams, withStreams } from './streams.ts'

/**
 * Runs one command line and tells how it ended.
 * @param io      where it reads and writes: the process, or what stands for it where many are run in one
 * @param server  loads the server, which is another shell
 */
export const main = (argv: readonly string[], io: Streams, server: () => Promise<ServerProgram>): Promise<ExitCode> =>
  withStreams(io, argv.includes('--quiet'), () => runWords(argv, server))

async function runWords(argv: readonly string[], server: () => Promise<ServerProgram>): Promise<ExitCode> {
  const json = argv.includes('--json')
  try {
    return await dispatch(argv, server)
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

async function dispatch(argv: readonly string[], server: () => Promise<ServerProgram>): Promise<ExitCode> {
  const known = [...commands, serveCommand(server), ...backupCommands(server)]
  const all = [...known, completionCommand(known)]
  // Only the server itself knows what it is told by the environment.
  const settings = argv.includes('serve') ? (await server()).settings() : []
  const { parser, ended } = parserOf(all, settings, await programVersion())
  if (argv.length === 0) {
    parser.outputHelp()
    return 2
  }
  try {
    await parser.parseAsync(argv, { from: 'user' })
    return ended()
  } catch (cause) {
    // Help and version were printed, and end it.
    if (cause instanceof CommanderError && cause.exitCode === 0) return 0
    throw cause
  }
}
