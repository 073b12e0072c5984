import { agreementDates, agreementSource } from '../hardware/agreement-dates.ts'
import { feetInchesText, lengthText } from '../hardware/dimension-text.ts'
import type { EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { exactLength, lengthIn, type Nanometres } from '../units/exact-length.ts'
import { checkCurb } from './check-curb.ts'
import { checkGround } from './check-ground.ts'
import { checkWorkingWidth } from './check-working-width.ts'
import type { FitCheck, FitFacts } from './fit.ts'
import { fitCheck, reachingText, sheetSource } from './fit-check.ts'

/** Every check of the chosen hardware against the site, in the order in which a designer asks. */
export function checkFit(facts: FitFacts): readonly FitCheck[] {
  const ends = [facts.approach, facts.departure].filter((end) => end !== null)
  const sheets = [facts.system, ...ends].filter((sheet) => sheet !== null)
  return [
    ...sheets.map((sheet) => checkTestLevel(sheet, facts)),
    ...sheets.map((sheet) => checkCriteria(sheet, facts)),
    ...ends.map((end) => checkJoins(end, facts)),
    ...checkAdjoining(facts),
    ...checkDepartureEnd(facts),
    ...checkStroke(facts),
    ...checkShortestRun(facts),
    ...checkWorkingWidth(facts),
    ...checkGround(facts),
    ...checkCurb(facts),
  ]
}

/** Highest speeds of the test levels: 50, 70 and 100 km/h tests. Recalled: NCHRP Report 350 and MASH, table 2-1; state practice. */
const levels = [
  { testLevel: 1, highest: { 'mi/h': 31, 'km/h': 50 } },
  { testLevel: 2, highest: { 'mi/h': 45, 'km/h': 70 } },
] as const

function checkTestLevel(sheet: HardwareSheet, { speed }: FitFacts): FitCheck {
  const needed = levels.find(({ highest }) => speed.value <= highest[speed.unit])?.testLevel ?? 3
  const has = Math.max(...sheet.criteria.map(({ testLevel }) => testLevel))
  return fitCheck({
    what: `test level of ${sheet.name}`,
    meets: has >= needed,
    limit: `test level ${needed} or higher at ${speed.value} ${speed.unit}`,
    value: `test level ${has}`,
    source: 'Recalled: NCHRP Report 350 and MASH test speeds, as states apply them to posted speed',
    confirmation: 'from memory',
    change: `hardware tested to level ${needed}`,
  })
}

function checkCriteria(sheet: HardwareSheet, { work, letting }: FitFacts): FitCheck {
  const date = agreementDates.find(({ category }) => category === sheet.category)!
  const mash = sheet.criteria.some(({ standard, edition }) => standard === 'MASH' && edition >= 2016)
  const known = mash || work === 'standing' || (work === 'new' && letting !== null)
  return fitCheck({
    what: `test criteria of ${sheet.name} for this work`,
    meets: known ? mash || work === 'standing' || letting! <= date.lastLetting : null,
    limit: `MASH 2016 for new work let after ${date.lastLetting} (${date.category})`,
    value: `${sheet.criteria.map(({ standard, edition }) => (standard === 'MASH' ? `MASH ${edition}` : standard)).join(', ')}; ${work === null ? 'kind of work not said' : `${work} work`}, ${letting === null ? 'letting not said' : `let ${letting}`}`,
    source: `${agreementSource.title}, ${agreementSource.edition}`,
    confirmation: date.confirmation,
    change: `a ${date.category === 'W-beam terminal' ? 'terminal' : 'system'} tested to MASH 2016`,
  })
}

function checkJoins(end: EndSheet, { system }: FitFacts): FitCheck {
  const joins = system === null ? null : end.joins.includes(system.id)
  return fitCheck({
    what: `${end.name} on the chosen system`,
    meets: joins,
    limit: `joins ${end.joins.join(', ')}`,
    value: system === null ? 'no system chosen' : system.id,
    ...sheetSource(end, end.listedLength),
    change: `the system ${end.joins.join(' or ')}, or an end made for ${system?.name ?? ''}`,
  })
}

/** @source Handbook of the trade, recalled state sheets: 3 1/4 in over 25 ft to 50 ft */
const transitionOver = '25 ft to 50 ft of rail'

function checkAdjoining({ adjoining, system, approach }: FitFacts): FitCheck[] {
  if (adjoining === null || system === null) return []
  const { nominal, low, unit } = system.railHeight
  const height = exactLength(nominal === 'notStated' ? (low as number) : nominal, unit)
  const apart = Math.abs(height - adjoining.railHeight)
  const sameSplice = adjoining.splice === null || adjoining.splice === system.splice.position
  const tolerance = exactLength(1, 'in')
  const text = (length: Nanometres): string => lengthText(lengthIn(length, 'in'), 'in')
  const changes = [
    apart > tolerance
      ? `change height by ${text(apart)} over ${transitionOver}, outside the terminal and its stopping distance`
      : '',
    sameSplice ? '' : 'one odd panel (9 ft 4 1/2 in or 15 ft 7 1/2 in) shifts the splices by half a post space',
  ]
  return [
    fitCheck({
      what: 'rail height and splices against the adjoining run',
      meets: apart <= tolerance && sameSplice,
      limit: `${text(height)} within ${text(tolerance)}, splices ${system.splice.position === 'post' ? 'at posts' : 'midway between posts'}`,
      value: `${text(adjoining.railHeight)}${adjoining.splice === null ? '' : `, splices ${adjoining.splice === 'post' ? 'at posts' : 'midway between posts'}`}`,
      source: `Recalled: state sheets on height transitions${approach === null ? '' : '; no height change inside a terminal or its stopping distance (public research answer 1114)'}`,
      confirmation: 'from memory',
      change: changes.filter((change) => change !== '').join('; '),
    }),
  ]
}

/** A trailing anchor may stand only where opposing traffic cannot reach it. */
function checkDepartureEnd({ departure, opposingReaches }: FitFacts): FitCheck[] {
  if (departure === null) return []
  return [
    fitCheck({
      what: `${departure.name} at the departure end`,
      meets: departure.crashworthy ? true : opposingReaches === null ? null : !opposingReaches,
      limit: 'crashworthy where opposing traffic can reach it',
      value: `${departure.crashworthy ? 'crashworthy' : 'not crashworthy'}; opposing traffic ${opposingReaches === null ? 'not judged' : opposingReaches ? 'can reach it' : 'cannot reach it'}`,
      source:
        'Texas DOT Roadway Design Manual on turned-down ends; AASHTO Roadside Design Guide, 2011, 5.6.4, three cases of opposing traffic',
      confirmation: 'published',
      change: 'a crashworthy terminal at this end',
    }),
  ]
}

/** @source public research answer 1277: 12.5 ft of plain rail, and 46 ft 10 1/2 in of barrier before the W-to-thrie piece, more when the stroke is longer */
function checkStroke({ approach, departure, runLength }: FitFacts): FitCheck[] {
  if (approach === null || departure === null || departure.kind !== 'bridge end') return []
  const needed = Math.max(
    562.5,
    approach.stroke === 'notStated' ? 0 : approach.stroke.inches,
    approach.listedLength.inches + 150,
  )
  const have = runLength === null ? null : runLength - exactLength(departure.listedLength.inches, 'in')
  const short = have === null ? 0 : exactLength(needed, 'in') - have
  return [
    fitCheck({
      what: 'barrier before the transition',
      meets: have === null ? null : short <= 0,
      limit: `at least ${feetInchesText(needed)}: 46 ft 10 1/2 in, the terminal with 12 ft 6 in of plain rail, and the terminal's stroke`,
      value: have === null ? 'run not laid out' : reachingText(have),
      source: 'Midwest Roadside Safety Facility, public answer 1277',
      confirmation: 'published',
      change: `${panelsText(short)} more plain rail between terminal and transition`,
    }),
  ]
}

/**
 * A run shorter than the shortest tested fails. One between that and the length that is advised cannot be told to meet: it
 * passed one test, and only part of it redirects.
 */
function checkShortestRun({ system, runLength }: FitFacts): FitCheck[] {
  if (system === null || system.shortestRun === 'notStated') return []
  const { shortestRun, shortestRunRedirects: redirects, recommendedRun: advised } = system
  const least = exactLength(shortestRun.inches, 'in')
  const wanted = typeof advised === 'object' ? advised : shortestRun
  const isBetween = runLength !== null && runLength >= least && runLength < exactLength(wanted.inches, 'in')
  const conditions = [
    `at least ${feetInchesText(shortestRun.inches)}, the shortest tested`,
    typeof redirects === 'object' ? `of that only about ${feetInchesText(redirects.inches)} redirects` : '',
    typeof advised === 'object' ? `at least ${feetInchesText(advised.inches)} is recommended` : '',
  ]
  return [
    fitCheck({
      what: 'length of the run, anchor to anchor',
      meets: runLength === null || isBetween ? null : runLength >= least,
      limit: conditions.filter((text) => text !== '').join('; '),
      value: runLength === null ? 'run not laid out' : reachingText(runLength),
      ...sheetSource(system, isBetween ? wanted : shortestRun),
      change: `${panelsText(least - (runLength ?? 0))} more rail`,
    }),
  ]
}

/** As many 12 ft 6 in panels as make up for `short`. */
function panelsText(short: Nanometres): string {
  const panel = exactLength(150, 'in')
  return feetInchesText(Math.ceil(short / panel) * 150)
}
