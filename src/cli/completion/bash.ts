import type { Command } from '../command.ts'
import { quoted, spellingsOf } from './spellings.ts'

/** Completes commands, options and their values; files everywhere else. */
export function bashCompletion(commands: readonly Command[]): string {
  const spellings = commands.flatMap(spellingsOf)
  const taking = [...new Map(spellings.filter(({ takes }) => takes !== null).map((one) => [one.long, one])).values()]
  const cases = taking.map(({ short, long, values }) =>
    values.length === 0
      ? `    ${[short, long].filter(Boolean).join('|')}) return ;;`
      : `    ${long}) COMPREPLY=($(compgen -W ${quoted(values.join(' '))} -- "$word")); return ;;`,
  )
  const lists = commands.map((command) => {
    const options = spellingsOf(command).map(({ long }) => long)
    const words = command.firstWords ?? []
    return `    ${command.name}) options=${quoted(options.join(' '))}; words=${quoted(words.join(' '))} ;;`
  })
  return [
    '_lapwise() {',
    `  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}" command= at=0 options= words= i`,
    '  for ((i = 1; i < COMP_CWORD; i++)); do',
    `    case "\${COMP_WORDS[i]}" in -*) ;; *) command="\${COMP_WORDS[i]}"; at=$i; break ;; esac`,
    '  done',
    '  COMPREPLY=()',
    '  case "$before" in',
    ...cases,
    '  esac',
    '  case "$command" in',
    `    '') options='--help --version'; words=${quoted(commands.map(({ name }) => name).join(' '))} ;;`,
    ...lists,
    '  esac',
    '  if [[ "$word" == -* ]]; then COMPREPLY=($(compgen -W "$options" -- "$word"))',
    '  elif ((COMP_CWORD == at + 1)); then COMPREPLY=($(compgen -W "$words" -- "$word")); fi',
    '}',
    'complete -o default -F _lapwise lapwise',
  ].join('\n')
}
