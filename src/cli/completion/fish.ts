import type { Command } from '../command.ts'
import { quoted, spellingsOf } from './spellings.ts'

/** Completes commands with what they are for, options with what they mean, and files. */
export const fishCompletion = (commands: readonly Command[]): string =>
  commands
    .flatMap((command) => {
      const { name, summary, firstWords = [] } = command
      const within = `complete -c lapwise -n '__fish_seen_subcommand_from ${name}'`
      return [
        `complete -c lapwise -n __fish_use_subcommand -f -a ${name} -d ${quoted(summary)}`,
        ...(firstWords.length === 0 ? [] : [`${within} -a ${quoted(firstWords.join(' '))}`]),
        ...spellingsOf(command).map(({ short, long, takes, values, about }) =>
          [
            within,
            ...(short === null ? [] : [`-s ${short.slice(1)}`]),
            `-l ${long.slice(2)}`,
            ...(takes === null ? [] : ['-r']),
            ...(values.length === 0 ? [] : [`-f -a ${quoted(values.join(' '))}`]),
            `-d ${quoted(about)}`,
          ].join(' '),
        ),
      ]
    })
    .join('\n')
