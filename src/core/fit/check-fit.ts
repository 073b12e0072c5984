import {
  crashworthySource,
  type EndExposure,
  exposureText,
  isEndSafe,
  neededEndText,
} from '../hardware/crashworthy-end.ts'
import { feetInchesText, lengthText } from '../hardware/dimension-text.ts'
import type { EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { neededTestName, neededTestText, testsText } from '../hardware/test-text.ts'
import { findTest, testConfirmation, testSource } from '../hardware/tested-criteria.ts'
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
    ...sheets.map((sheet) => checkTest(sheet, facts)),
    ...ends.map((end) => checkJoins(end, facts)),
    ...checkAdjoining(facts),
    ...checkEnds(facts),
    ...checkStroke(facts),
    ...checkShortestRun(facts),
    ...checkWorkingWidth(facts),
    ...checkGround(facts),
    ...checkCurb(facts),
  ]
}

/** One and the same crash test has to cover the criteria in force and the level for the speed. */
function checkTest(sheet: HardwareSheet, { speed, work, letting }: FitFacts): FitCheck {
  const at = { speed, work, letting }
  const answer = findTest(sheet, at)
  return fitCheck({
    what: `crash test of ${sheet.name} for this work and speed`,
    meets: answer.verdict === 'unread' ? null : answer.verdict === 'meets',
    limit: neededTestText(sheet, at),
    value: `${testsText(sheet.criteria)}; ${work === null ? 'kind of work not said' : `${work} work`}, ${letting === null ? 'letting not said' : `let ${letting}`}`,
    source: `${testSource.title}, ${testSource.edition}`,
    confirmation: testConfirmation(sheet, at, answer),
    change: `a ${sheet.kind === 'longitudinal' ? 'system' : sheet.kind} with ${neededTestName(sheet, at)}`,
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

/** Traffic meets the approach end in any case, the departure end where opposing traffic can reach it. */
function checkEnds({ approach, departure, opposingReaches }: FitFacts): FitCheck[] {
  return [
    ...(approach === null ? [] : [checkEnd(approach, { end: 'approach', opposingReaches })]),
    ...(departure === null ? [] : [checkEnd(departure, { end: 'departure', opposingReaches })]),
  ]
}

const checkEnd = (sheet: EndSheet, exposure: EndExposure): FitCheck =>
  fitCheck({
    what: `${sheet.name} at the ${exposure.end} end`,
    meets: isEndSafe(sheet, exposure),
    limit: neededEndText(exposure),
    value: exposureText(sheet, exposure),
    source: `${crashworthySource.title}, ${crashworthySource.edition}`,
    confirmation: 'published',
    change: 'a crashworthy terminal at this end',
  })

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
