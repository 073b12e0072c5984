import { nameOf, type SheetText } from '../hardware/sheet-text.ts'
import { exactLength } from '../units/exact-length.ts'
import type { Curb, FitFacts } from './fit.ts'
import type { FitCheck } from './fit-check.ts'
import { type FitCitation, fitCheck } from './fit-check.ts'
import type { FitTopic, FitValue } from './fit-saying.ts'

/** Where and before what a curb may stand; the two published texts on it each for itself, since they disagree. */
export function checkCurb(facts: FitFacts): FitCheck[] {
  const { curb, speed } = facts
  const terminals = terminalsBefore(facts).map((end) => beforeTerminal(end, curb))
  if (curb === null || curb === 'none') return [withoutCurb(curb), ...terminals]
  const checks = [judge(curb, bandOf(guideBands, speed), { what: beforeRail('guide'), ...guide })]
  if (isFaster(speed, studyBands[studyBands.length - 1]!.above))
    checks.push(judge(curb, bandOf(studyBands, speed), { what: beforeRail('study'), ...study }))
  return [...checks, ...terminals]
}

const beforeRail = (by: 'guide' | 'study'): FitTopic => ({ kind: 'curb before rail', by })

interface CurbBand {
  /** The band holds above this speed; `inclusive`, at it too. */
  readonly above: Speed
  readonly inclusive: boolean
  readonly highestInches: number
  /** Least distance behind the curb where the rail may stand besides flush; null where only flush is allowed. */
  readonly leastBehindFeet: number | null
  /** Run of 1 vertical that a sloping face must have at least; null where its slope is not asked. */
  readonly faceSlope: number | null
}

type Speed = FitFacts['speed']

/** @source AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, as quoted in Midwest Roadside Safety Facility public answer 1074 */
const guide: FitCitation = { source: { kind: 'guide on curbs' }, confirmation: 'published' }

/** In mi/h, highest first: less than 45, 45 to 50, above 50, above 60. @source `guide` */
const guideBands: readonly CurbBand[] = [
  { above: mph(60), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: 3 },
  { above: mph(50), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: null },
  { above: mph(45), inclusive: true, highestInches: 4, leastBehindFeet: 13, faceSlope: null },
  { above: mph(0), inclusive: true, highestInches: 6, leastBehindFeet: 8, faceSlope: null },
]

/** @source NCHRP Report 537, 2005, page 94 */
const study: FitCitation = { source: { kind: 'study on curbs' }, confirmation: 'published' }

/** In km/h; below, the report's page was not read. Its 100-mm curb is the trade's 4-in one. @source `study` */
const studyBands: readonly CurbBand[] = [
  { above: kmh(90), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: 3 },
  { above: kmh(85), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: null },
]

/**
 * A rail up to 6 in behind the face counts as flush: the crash-tested 31-in run stood so. No text of the guide says it.
 * @source Midwest Roadside Safety Facility, public answers 1074 and 261
 */
const flushInches = 6

function mph(value: number): Speed {
  return { value, unit: 'mi/h' }
}

function kmh(value: number): Speed {
  return { value, unit: 'km/h' }
}

/** Whole millimetres an hour: a mile is 1 609 344 mm, so both units meet without rounding. */
const exactSpeed = ({ value, unit }: Speed): number => Math.round(value * (unit === 'mi/h' ? 1_609_344 : 1_000_000))

const isFaster = (speed: Speed, than: Speed): boolean => exactSpeed(speed) > exactSpeed(than)

const bandOf = (bands: readonly CurbBand[], speed: Speed): CurbBand =>
  bands.find(({ above, inclusive }) => isFaster(speed, above) || (inclusive && !isFaster(above, speed)))!

function judge(curb: Curb, band: CurbBand, cited: FitCitation & { readonly what: FitTopic }): FitCheck {
  const flush = curb.toRail >= 0 && curb.toRail <= exactLength(flushInches, 'in')
  const behind = band.leastBehindFeet !== null && curb.toRail >= exactLength(band.leastBehindFeet, 'ft')
  const low = curb.height <= exactLength(band.highestInches, 'in')
  const face = faceMeets(curb, band)
  const { leastBehindFeet, highestInches, faceSlope } = band
  return fitCheck({
    ...cited,
    meets: low && (flush || behind) ? face : false,
    limit: {
      kind: 'curb allowed',
      ...{ flushInches, leastBehindFeet, highestInches, faceSlope },
      testDiffers: flush && !low && isAsTested(curb),
      textsDiffer: behind && isOverridden(curb),
    },
    value: { kind: 'curb there is', curb },
    change: {
      kind: 'change curb',
      highestInches: low ? null : highestInches,
      railFlush: !flush && !behind,
      face: face === false ? { slope: faceSlope } : null,
    },
  })
}

/** Null where the slope of the face decides and nobody said it. */
function faceMeets(curb: Curb, { faceSlope }: CurbBand): boolean | null {
  if (curb.face === 'vertical') return false
  if (faceSlope === null) return true
  return curb.faceSlope === null ? null : curb.faceSlope >= faceSlope
}

/** A curb no higher than the one that a test passed with, flush. @source public answers 1074 and 261 */
const isAsTested = (curb: Curb): boolean => curb.face === 'sloping' && curb.height <= exactLength(6, 'in')

/**
 * A rail so near behind a curb that a vehicle may go over it.
 * @source NCHRP Report 537, page 93: 0.5 m to 7.0 m behind a 150-mm curb, 0.6 m to 7.0 m behind a 100-mm one
 */
const isOverridden = (curb: Curb): boolean => curb.toRail <= exactLength(7, 'm')

const withoutCurb = (curb: 'none' | null): FitCheck =>
  fitCheck({
    what: beforeRail('guide'),
    meets: curb === null ? null : true,
    limit: { kind: 'no curb or one for the speed' },
    value: curbThere(curb),
    ...guide,
    change: null,
  })

/** Ends that are struck head on: the approach end, and the other where opposing traffic may reach it. */
function terminalsBefore({ approach, departure, opposingReaches }: FitFacts): readonly SheetText[] {
  const terminals = [approach, opposingReaches === false ? null : departure]
    .filter((end) => end !== null)
    .filter(({ kind }) => kind === 'terminal')
  return [...new Set(terminals)].map(nameOf)
}

/**
 * No printed number was found for a curb before a terminal: a high or vertical one fails by what is remembered, any other
 * stays undecided.
 */
function beforeTerminal(terminal: SheetText, curb: FitFacts['curb']): FitCheck {
  const highestInches = 4
  const bad =
    curb !== null && curb !== 'none' && (curb.face === 'vertical' || curb.height > exactLength(highestInches, 'in'))
  return fitCheck({
    what: { kind: 'curb before terminal', terminal },
    meets: curb === 'none' ? true : bad ? false : null,
    limit: { kind: 'no curb near terminal', fromFeet: 50, highestInches },
    value: curbThere(curb),
    source: { kind: 'recalled curbs before terminals' },
    confirmation: 'from memory',
    change: { kind: 'take curb away' },
  })
}

const curbThere = (curb: FitFacts['curb']): FitValue =>
  curb === null ? { kind: 'site does not say' } : { kind: 'curb there is', curb }
