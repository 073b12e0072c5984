import type { Command } from '../command.ts'
import { quoted, spellingsOf } from './spellings.ts'

/** Completes commands with what they are for, options with what they mean, and files. */
export function zshCompletion(commands: readonly Command[]): string {
  return [
    '#compdef lapwise',
    '_lapwise() {',
    '  local -a commands',
    '  commands=(',
    ...commands.map(({ name, summary }) => `    ${quoted(`${name}:${plain(summary)}`)}`),
    '  )',
    "  if ((CURRENT == 2)); then _describe 'command' commands; return; fi",
    `  local command=\${words[2]}`,
    '  shift words',
    '  ((CURRENT--))',
    '  case $command in',
    ...commands.map((command) => `    ${command.name}) _arguments ${argumentsOf(command).join(' ')} ;;`),
    '  esac',
    '}',
    'compdef _lapwise lapwise',
  ].join('\n')
}

function argumentsOf(command: Command): readonly string[] {
  const options = spellingsOf(command).flatMap(({ short, long, takes, values, about }) =>
    [short, long]
      .filter((name) => name !== null)
      .map((name) => {
        const action = values.length === 0 ? '_files' : `(${values.join(' ')})`
        return quoted(`${name}[${plain(about)}]${takes === null ? '' : `:${takes}:${action}`}`)
      }),
  )
  const { firstWords } = command
  return [
    ...options,
    ...(firstWords === undefined ? [] : [quoted(`1:word:(${firstWords.join(' ')})`)]),
    "'*:file:_files'",
  ]
}

/** Without what ends a text of it. */
const plain = (text: string): string => text.replaceAll(/[[\]]/g, '').replaceAll(':', ',')
