import { parseJson } from '../../formats/read-json.ts'
import type { MadeOf } from '../../formats/run/made-of.ts'
import { siteFromValue } from '../../formats/site/read-site.ts'
import { computeNeed, type DirectionReport, type NeedReport, needProblem } from '../../operations/compute-need.ts'
import { needOutput } from '../../operations/need-output.ts'
import { english } from '../../words/english.ts'
import type { Print } from '../../words/print.ts'
import { BadInput, badWords, type Run } from '../command.ts'
import { note, print, printJson, readText, shownName, soundValue, warn, writeWhole } from '../io.ts'

export const need: Run = async (args, options) => {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0) throw badWords('need SITE.json', args.join(' '))
  const value = soundValue(parseJson(shownName(file), await readText(file)))
  const site = soundValue(siteFromValue(shownName(file), value))
  const need = computeNeed(site, value as MadeOf['site'])
  if (!need.ok) throw new BadInput([needProblem(shownName(file), need.error, site.units)])
  warn(shownName(file), need.value.unusual)
  const words = english(site.units)
  if (options.json) printJson(needOutput(need.value, words))
  else printNeed(need.value, words)
  if (options.output !== null) {
    if (need.value.run === null)
      throw badWords(
        'a site with hardware.system, barrier.approachEnd and barrier.departureEnd, to write its run',
        'a site without them',
      )
    await writeWhole(options.output, `${JSON.stringify(need.value.run, null, 2)}\n`)
    note(`wrote ${options.output}`)
  }
  return 0
}

function printNeed({ approach, departure, unit, checks, installed }: NeedReport, words: Print): void {
  printDirection('approach', approach, unit, words)
  if (departure === null) print('departure: no opposing traffic to shield from')
  else printDirection('departure', departure, unit, words)
  if (installed !== null) {
    print(
      `installed: ${installed.length.toFixed(1)} ${unit} of rail, ${installed.plainRail.toFixed(1)} ${unit} of it plain in ${installed.plainPanels.length} panels${installed.counts === null ? '' : `; ${installed.counts.toFixed(1)} ${unit} count`}`,
    )
  }
  for (const { what, verdict, limit, value, source, confirmation, smallestChange } of checks) {
    print(
      `${verdict}: ${words.say(what)}: ${words.say(value)}; limit ${words.say(limit)} (${words.say(source)}; ${confirmation})`,
    )
    if (smallestChange !== null) print(`  smallest change: ${words.say(smallestChange)}`)
  }
}

function printDirection(name: string, need: DirectionReport, unit: string, words: Print): void {
  const { lengthOfNeed, lateralAtEnd, runoutLength, governs, notes, sources } = need
  print(
    `${name}: length of need ${lengthOfNeed.toFixed(1)} ${unit}, ending ${lateralAtEnd.toFixed(1)} ${unit} from the edge; runout length ${runoutLength} ${unit}; ${governs.hazard === null ? 'nothing to shield' : `${governs.hazard} governs (${governs.rule})`}`,
  )
  for (const note of notes) print(`  ${words.say(note)}`)
  for (const { what, value, source, confirmation } of sources)
    if (confirmation === 'from memory') print(`  ${what} ${value}: ${words.say(source)}; from memory, unconfirmed`)
}
