import type { EndSheet, HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { RunEnd } from '../core/layout/layout.ts'
import type { DecisionRule } from '../core/verdicts/verdict.ts'
import type { Print } from '../words/print.ts'
import { alongText, joinWords, stationOf } from './places-text.ts'
import { instantOf, timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'

export interface Fact {
  readonly name: string
  readonly value: string
}

/** One hardware sheet that the run was judged by. */
export interface SheetLine {
  readonly role: string
  readonly name: string
  readonly id: string
  readonly version: string
  /** Test criteria and level, as `MASH 2016, test level 3 (published)`. */
  readonly criteria: string
  readonly notice: string
}

/** What identifies the run, for the head of any document of it. */
export function runFacts({ run, model, readings, print }: RecordInput): readonly Fact[] {
  const { road } = run
  const { posts, panels, postOneAtInches } = model.layout
  const last = posts.at(-1)
  const station = (along: number): string | null => {
    const text = stationOf(run, postOneAtInches + along)
    return text === null ? null : `station ${text}, by distance along the rail`
  }
  const rail = panels.reduce((sum, { inches }) => sum + inches, 0)
  const facts: (readonly [string, string | null])[] = [
    ['Route', road.route],
    ['Side', road.side === null ? null : `${road.side}, looking up-station`],
    ['Traffic', road.traffic],
    ['Speed', road.speed === null ? null : `${road.speed} ${run.units === 'metric' ? 'km/h' : 'mi/h'}`],
    ['Work', run.work],
    ['Let', run.letting],
    ['Datum of the run', road.datumStation === null ? null : `station ${road.datumStation}`],
    ['Post 1', station(0)],
    [`Post ${last?.number ?? 1}, the last`, station(last?.alongInches ?? 0)],
    ['Size', `${posts.length} posts, ${panels.length} panels, ${alongText(run, rail)} of rail`],
    ['Readings', readingsText(readings)],
  ]
  return facts.map(([name, value]) => ({
    name: print.say(name),
    value: value !== null && name === 'Route' ? print.theirs(value) : print.say(value ?? 'not said'),
  }))
}

/** `152 by J. Okafor and T. Alvarez, 2016-05-09 08:20 to 2016-05-12 10:05` */
function readingsText(readings: RecordInput['readings']): string {
  if (readings.length === 0) return 'none'
  const people = [...new Set(readings.map(({ by }) => by))]
  const times = readings.map(({ at }) => at).sort((a, b) => instantOf(a) - instantOf(b))
  const [from, to] = [timeText(times[0]!), timeText(times.at(-1)!)]
  return `${readings.length} by ${joinWords(people)}, ${from === to ? from : `${from} to ${to}`}`
}

/** The sheets of the system and the ends in walking order. */
export function sheetLines({ model, print }: Pick<RecordInput, 'model' | 'print'>): readonly SheetLine[] {
  return [
    endLine('First end, upstream', model.first, print),
    sheetLine('Run', model.system, print),
    endLine('Second end, downstream', model.second, print),
  ]
}

function endLine(role: string, end: RunEnd, print: Print): SheetLine {
  if (end.kind === 'unit') return sheetLine(role, end.sheet, print)
  const name = `Goes on from a splice that stands, at ${end.position === 'post' ? 'a post' : 'midspan'}`
  return { role, name, id: '', version: '', criteria: '', notice: '' }
}

const sheetLine = (role: string, sheet: HardwareSheet | EndSheet, print: Print): SheetLine => ({
  role,
  name: print.say(sheet.name),
  id: sheet.id,
  version: sheet.version,
  criteria: criteriaText(sheet, print),
  notice: print.say(sheet.notice),
})

function criteriaText({ criteria }: HardwareSheet, print: Print): string {
  if (criteria.length === 0) return print.say('no test criteria stated')
  return criteria
    .map(
      (test) =>
        `${print.say({ kind: 'crash tests', tests: [test] })} (${print.say(test.confirmation === 'from memory' ? 'from memory, not confirmed' : test.confirmation)})`,
    )
    .join('; ')
}

/** The decision rule in words, with its source. */
export function decisionRuleText(rule: DecisionRule): string {
  switch (rule.kind) {
    case 'guard band':
      return `Guard band (JCGM 106:2012, 8.3): a value meets a limit when it lies at least ${rule.multiple === 1 ? '' : `${rule.multiple} times `}U inside it, fails when it lies more than that outside, and is too close in between; U = 2u is the expanded uncertainty of the value.`
    case 'simple':
      return 'Simple acceptance (JCGM 106:2012, 8.2): a value on or inside the limit meets it, a value outside fails; the uncertainty is stated but moves no limit.'
    default:
      return rule satisfies never
  }
}
