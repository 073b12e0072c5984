import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { requirementsOutput } from '../../operations/outputs.ts'
import { english } from '../../words/english.ts'
import { badWords, type Run } from '../command.ts'
import { loadRequired, print, printJson } from '../io.ts'

export const requirements: Run = async (args, options) => {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0) throw badWords('requirements RUN.json', args.join(' '))
  const required = await loadRequired(file)
  const words = english(required.run.units)
  if (options.json) printJson(requirementsOutput(required, words))
  else {
    for (const { id, must, look, hold, confirmation } of required.requirements) {
      const limits = look.kind === 'measure' ? ` [${words.say(limitsOf(look.limits))}]` : ''
      print(
        `${hold ? 'HOLD ' : ''}${id}: ${words.say(must)}${limits}${confirmation === 'from memory' ? ' (limit from memory, unconfirmed)' : ''}`,
      )
    }
  }
  return 0
}
