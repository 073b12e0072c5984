import { badWords, type Command } from './command.ts'
import { bashCompletion } from './completion/bash.ts'
import { fishCompletion } from './completion/fish.ts'
import { zshCompletion } from './completion/zsh.ts'
import { print } from './io.ts'

const shells = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion }
const names = Object.keys(shells) as (keyof typeof shells)[]

/** @param commands  all others */
export const completionCommand = (commands: readonly Command[]): Command => {
  const own: Command = {
    name: 'completion',
    words: names.join(' | '),
    firstWords: names,
    summary: 'A script that lets a shell complete commands, options and their values.',
    options: {},
    notes: [
      'bash   eval "$(lapwise completion bash)" in ~/.bashrc',
      'zsh    eval "$(lapwise completion zsh)" in ~/.zshrc, after compinit',
      'fish   lapwise completion fish > ~/.config/fish/completions/lapwise.fish',
    ],
    examples: ['completion bash'],
    load: async () => async (words) => {
      const shell = names.find((name) => name === words[0])
      if (shell === undefined || words.length > 1) throw badWords('completion bash, zsh or fish', words.join(' '))
      print(shells[shell]([...commands, own]))
      return 0
    },
  }
  return own
}
