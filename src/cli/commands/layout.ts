import { layOutRun } from '../../operations/lay-out-run.ts'
import { layoutOutput } from '../../operations/outputs.ts'
import { english } from '../../words/english.ts'
import { BadInput, badWords, type Run } from '../command.ts'
import { loadRun, print, printJson, say } from '../io.ts'

/** Orders of panels grow without end with the length of a run; nobody reads more of them. Our judgement. */
const most = 10_000

export const layout: Run = async (args, options) => {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0) throw badWords('layout RUN.json', args.join(' '))
  const run = await loadRun(file)
  const words = english(run.units)
  const laid = layOutRun(file, run, limitOf(options.limit))
  if (!laid.ok) throw new BadInput(laid.error)
  const output = layoutOutput(laid.value, words)
  if (options.json) printJson(output)
  else {
    for (const [i, one] of output.runs.entries()) {
      print(`${i + 1}. panels ${one.panels.map(({ inches }) => words.feetInches(inches)).join(', ')}`)
      for (const why of one.why) print(`   ${why}`)
    }
    if (output.more) print('… and more lawful runs; --limit asks for them')
    for (const { reason } of output.refused) print(`refused: ${reason}`)
  }
  if (output.runs.length === 0) say('no lawful run; the reasons stand above')
  return output.runs.length === 0 ? 2 : 0
}

function limitOf(text: string | null): number {
  if (text === null) return 20
  if (text === 'all') return most
  if (!/^[1-9]\d{0,4}$/.test(text) || Number(text) > most)
    throw badWords(`--limit with a whole number from 1 to ${most}, or all`, text)
  return Number(text)
}
