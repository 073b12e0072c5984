import { crashworthySource, type EndExposure, isEndSafe } from '../hardware/crashworthy-end.ts'
import { endExposure, neededTestSaying, sourceSaying } from '../hardware/hardware-saying.ts'
import type { EndSheet, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import { findTest, neededTest, testConfirmation, testSource } from '../hardware/tested-criteria.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import { checkCurb } from './check-curb.ts'
import { checkGround } from './check-ground.ts'
import { checkWorkingWidth } from './check-working-width.ts'
import type { FitFacts } from './fit.ts'
import type { FitCheck } from './fit-check.ts'
import { fitCheck, sheetSource } from './fit-check.ts'
import type { FitValue } from './fit-saying.ts'

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
    what: { kind: 'crash test of sheet', sheet: nameOf(sheet) },
    meets: answer.verdict === 'unread' ? null : answer.verdict === 'meets',
    limit: neededTestSaying(sheet, at),
    value: { kind: 'crash tests and work', tests: { kind: 'crash tests', tests: sheet.criteria }, work, letting },
    source: sourceSaying(testSource),
    confirmation: testConfirmation(sheet, at, answer),
    change: { kind: 'take tested hardware', of: sheet.kind, needed: neededTest(sheet.category, at) },
  })
}

function checkJoins(end: EndSheet, { system }: FitFacts): FitCheck {
  const joins = system === null ? null : end.joins.includes(system.id)
  return fitCheck({
    what: { kind: 'end on chosen system', sheet: nameOf(end) },
    meets: joins,
    limit: { kind: 'joins systems', systems: end.joins },
    value: { kind: 'chosen system', id: system === null ? null : system.id },
    ...sheetSource(end, end.listedLength),
    change: system === null ? null : { kind: 'take joining parts', systems: end.joins, chosen: nameOf(system) },
  })
}

/** @source Handbook of the trade, recalled state sheets: 3 1/4 in over 25 ft to 50 ft */
const heightOverFeet = [25, 50] as const

/** Odd panels that shift the splices by half a post space, inches: 9 ft 4 1/2 in and 15 ft 7 1/2 in. */
const shiftingPanels = [112.5, 187.5] as const

function checkAdjoining({ adjoining, system, approach }: FitFacts): FitCheck[] {
  if (adjoining === null || system === null) return []
  const { nominal, low, unit } = system.railHeight
  const height = exactLength(nominal === 'notStated' ? (low as number) : nominal, unit)
  const apart = Math.abs(height - adjoining.railHeight)
  const sameSplice = adjoining.splice === null || adjoining.splice === system.splice.position
  const tolerance = exactLength(1, 'in')
  return [
    fitCheck({
      what: { kind: 'against adjoining run' },
      meets: apart <= tolerance && sameSplice,
      limit: { kind: 'height within', height, within: tolerance, splices: system.splice.position },
      value: { kind: 'adjoining rail', height: adjoining.railHeight, splices: adjoining.splice },
      source: { kind: 'recalled height transitions', beforeTerminal: approach !== null },
      confirmation: 'from memory',
      change: {
        kind: 'meet adjoining run',
        height: apart > tolerance ? { by: apart, overFeet: heightOverFeet } : null,
        shiftingPanels: sameSplice ? null : shiftingPanels,
      },
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
    what: { kind: 'sheet at end', sheet: nameOf(sheet), end: exposure.end },
    meets: isEndSafe(sheet, exposure),
    limit: { kind: 'needed end', end: exposure.end },
    value: endExposure(sheet, exposure),
    source: sourceSaying(crashworthySource),
    confirmation: 'published',
    change: { kind: 'take crashworthy terminal' },
  })

/** @source public research answer 1277: 12.5 ft of plain rail, and 46 ft 10 1/2 in of barrier before the W-to-thrie piece, more when the stroke is longer */
function checkStroke({ approach, departure, runLength }: FitFacts): FitCheck[] {
  if (approach === null || departure === null || departure.kind !== 'bridge end') return []
  const [leastInches, plainInches] = [562.5, 150]
  const inches = Math.max(
    leastInches,
    approach.stroke === 'notStated' ? 0 : approach.stroke.inches,
    approach.listedLength.inches + plainInches,
  )
  const have = runLength === null ? null : runLength - exactLength(departure.listedLength.inches, 'in')
  const short = have === null ? 0 : exactLength(inches, 'in') - have
  return [
    fitCheck({
      what: { kind: 'barrier before transition' },
      meets: have === null ? null : short <= 0,
      limit: { kind: 'barrier before transition at least', inches, leastInches, plainInches },
      value: laidLength(have),
      source: { kind: 'answer on transitions' },
      confirmation: 'published',
      change: { kind: 'add rail before transition', inches: wholePanels(short) },
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
  return [
    fitCheck({
      what: { kind: 'length of run' },
      meets: runLength === null || isBetween ? null : runLength >= least,
      limit: {
        kind: 'run at least',
        shortest: shortestRun.inches,
        redirects: typeof redirects === 'object' ? redirects.inches : null,
        recommended: typeof advised === 'object' ? advised.inches : null,
      },
      value: laidLength(runLength),
      ...sheetSource(system, isBetween ? wanted : shortestRun),
      change: { kind: 'add rail', inches: wholePanels(least - (runLength ?? 0)) },
    }),
  ]
}

const laidLength = (have: Nanometres | null): FitValue =>
  have === null ? { kind: 'length not laid out' } : { kind: 'length there is', length: have }

/** As many 12 ft 6 in panels as make up for `short`, inches. */
const wholePanels = (short: Nanometres): number => Math.ceil(short / exactLength(150, 'in')) * 150
