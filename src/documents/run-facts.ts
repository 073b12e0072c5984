import type { FitCheck } from '../core/fit/fit-check.ts'
import type { EndSheet, HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { sheetText } from '../core/hardware/sheet-text.ts'
import type { RunEnd } from '../core/layout/layout.ts'
import type { DecisionRule } from '../core/verdicts/verdict.ts'
import type { FoundDirection, MadeOf } from '../formats/run/made-of.ts'
import type { Print } from '../words/print.ts'
import { alongText, fromDatumText, onRoadText, positionText } from './places-text.ts'
import { instantOf, timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'
import { type DocumentWords, documentWords } from './words/document-words.ts'

export interface Fact {
  readonly id: FactId
  readonly name: string
  readonly value: string
}

/** Which fact it is, whatever it is called. */
type FactId = keyof DocumentWords['runFacts']['names']

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
export function runFacts(input: RecordInput): readonly Fact[] {
  const { run, model, readings, print } = input
  const { road } = run
  const { posts, panels, postOneAtInches } = model.layout
  const words = documentWords(print).runFacts
  const last = posts.at(-1)
  const placed = (along: number): string =>
    onRoadText(input, along) ?? fromDatumText(run, postOneAtInches + along, print)
  const rail = panels.reduce((sum, { inches }) => sum + inches, 0)
  const { names } = words
  const facts: readonly (readonly [FactId, string, string | null])[] = [
    ['route', names.route, road.route === null ? null : print.theirs(road.route)],
    ['side', names.side, road.side === null ? null : words.sides[road.side]],
    ['traffic', names.traffic, road.traffic === null ? null : words.traffic[road.traffic]],
    ['speed', names.speed, road.speed === null ? null : `${road.speed} ${run.units === 'metric' ? 'km/h' : 'mi/h'}`],
    ['work', names.work, run.work === null ? null : words.work[run.work]],
    ['letting', names.letting, run.letting],
    ['datum', names.datum, road.datumStation === null ? null : words.station(road.datumStation)],
    ...(road.position === undefined ? [] : [['position', names.position, positionText(road.position)] as const]),
    ...(run.madeOf === undefined ? [] : [['site', names.site, siteText(run.madeOf, print)] as const]),
    ['first', names.first, placed(0)],
    ['last', names.last(last?.number ?? 1), placed(last?.alongInches ?? 0)],
    ['size', names.size, words.size(posts.length, panels.length, alongText(run, rail))],
    ['readings', names.readings, readingsText(readings, print)],
  ]
  return facts.map(([id, name, value]) => ({ id, name, value: value ?? words.notSaid }))
}

/** `Mill Brook; length of need 210.5 ft and 80 ft; 26 checks: 2 fail, 18 meet; not said: clear area …` */
function siteText({ site, need, checks }: MadeOf, print: Print): string {
  const words = documentWords(print).runFacts.madeOf
  const having = (verdict: FitCheck['verdict']): readonly FitCheck[] => checks.filter((one) => one.verdict === verdict)
  const long = (one: FoundDirection): string => `${Number(one.lengthOfNeed.toFixed(2)) + 0} ${need.unit}`
  const unread = having('unread').map(({ what }) => print.say(what))
  return [
    ...(typeof site.name === 'string' && site.name !== '' ? [print.theirs(site.name)] : []),
    words.need(long(need.approach), need.departure === null ? null : long(need.departure)),
    words.checks(checks.length, having('fails').length, having('meets').length),
    ...(unread.length === 0 ? [] : [words.unread(print.list(unread, 'and'))]),
  ].join('; ')
}

/** `152 by J. Okafor and T. Alvarez, 2016-05-09 08:20 to 2016-05-12 10:05` */
function readingsText(readings: RecordInput['readings'], print: Print): string {
  const words = documentWords(print).runFacts
  if (readings.length === 0) return words.noReadings
  const people = [...new Set(readings.map(({ by }) => by))].map(print.theirs)
  const times = readings.map(({ at }) => at).sort((a, b) => instantOf(a) - instantOf(b))
  return words.readings(readings.length, print.list(people, 'and'), timeText(times[0]!), timeText(times.at(-1)!))
}

/** The sheets of the system and the ends in walking order. */
export function sheetLines({ model, print }: Pick<RecordInput, 'model' | 'print'>): readonly SheetLine[] {
  const { sheets } = documentWords(print).runFacts
  return [
    endLine(sheets.first, model.first, print),
    sheetLine(sheets.run, model.system, print),
    endLine(sheets.second, model.second, print),
  ]
}

function endLine(role: string, end: RunEnd, print: Print): SheetLine {
  if (end.kind === 'unit') return sheetLine(role, end.sheet, print)
  const { splice, unknown } = documentWords(print).runFacts.sheets
  const name = end.kind === 'unknown' ? unknown[end.because] : splice[end.position]
  return { role, name, id: '', version: '', criteria: '', notice: '' }
}

const sheetLine = (role: string, sheet: HardwareSheet | EndSheet, print: Print): SheetLine => ({
  role,
  name: print.say(sheetText(sheet, sheet.name)),
  id: sheet.id,
  version: sheet.version,
  criteria: criteriaText(sheet, print),
  notice: print.say(sheetText(sheet, sheet.notice)),
})

function criteriaText({ criteria }: HardwareSheet, print: Print): string {
  const { noCriteria, confirmations } = documentWords(print).runFacts.sheets
  if (criteria.length === 0) return noCriteria
  return criteria
    .map((test) => `${print.say({ kind: 'crash tests', tests: [test] })} (${confirmations[test.confirmation]})`)
    .join('; ')
}

/** The decision rule in words, with its source. */
export function decisionRuleText(rule: DecisionRule, print: Print): string {
  const words = documentWords(print).runFacts
  switch (rule.kind) {
    case 'guard band':
      return words.guardBand(rule.multiple)
    case 'simple':
      return words.simple
    default:
      return rule satisfies never
  }
}
