import { askedEarlierReason } from '../../core/record/record-saying.ts'
import { remedyOf, whatMustBe, whatWasFound } from '../../core/verdicts/saying.ts'
import { setAsideIn } from '../../core/verdicts/set-aside.ts'
import { judgeOutput } from '../../operations/outputs.ts'
import { english } from '../../words/english.ts'
import { badWords, type Run } from '../command.ts'
import { loadJudged, print, printJson } from '../io.ts'

export const judge: Run = async (args, options) => {
  const [run, readings, ...rest] = args
  if (run === undefined || readings === undefined || rest.length > 0 || (run === '-' && readings === '-')) {
    throw badWords('judge RUN.json READINGS.json', args.join(' '))
  }
  const judged = await loadJudged(run, readings)
  const words = english(judged.run.units)
  const { acceptance, verdicts, findings, unproven } = judged.judgement
  if (options.json) printJson(judgeOutput(judged, words))
  else {
    print(`${judged.run.name}: ${words.say(acceptance)}`)
    for (const { requirement, by, because } of setAsideIn(verdicts))
      print(`  set aside, ${requirement}: by ${by}: ${because}`)
    for (const word of ['meets', 'fails', 'too close', 'unread', 'does not apply'] as const) {
      print(`  ${word}: ${verdicts.filter(({ verdict }) => verdict === word).length}`)
    }
    for (const [i, finding] of findings.entries())
      print(
        [
          `finding ${i + 1}, ${words.say(finding.place)}`,
          `  found: ${words.say(whatWasFound(finding.what))}`,
          `  must be: ${words.say(whatMustBe(finding.what))}`,
          `  to do: ${words.say(remedyOf(finding))}`,
        ].join('\n'),
      )
    for (const { reading, because } of judged.askedEarlier)
      print(
        `asked by an earlier version, kept and not judged, ${reading.of}: ${words.say(askedEarlierReason({ because }))}`,
      )
    for (const { requirement, because } of unproven) print(`not proven, ${requirement}: ${words.say(because)}`)
    for (const { requirement, because } of verdicts.filter(({ verdict }) => verdict === 'fails'))
      print(`fails, ${requirement}: ${words.say(because)}`)
    if (judged.unconfirmed.length > 0)
      print(
        `${judged.unconfirmed.length} requirements rest on limits from memory that nobody confirmed yet; replace the sheets`,
      )
  }
  return acceptance.kind === 'acceptable' ? 0 : 1
}
