import { feetInchesText } from '../hardware/dimension-text.ts'
import { exactLength } from '../units/exact-length.ts'
import type { Curb, FitCheck, FitFacts } from './fit.ts'
import { exceedingText, fitCheck, reachingText } from './fit-check.ts'

/** Where and before what a curb may stand; the two published texts on it each for itself, since they disagree. */
export function checkCurb(facts: FitFacts): FitCheck[] {
  const { curb, speed } = facts
  const terminals = terminalsBefore(facts).map((end) => beforeTerminal(end, curb))
  if (curb === null || curb === 'none') return [withoutCurb(curb), ...terminals]
  const checks = [judge(curb, bandOf(guideBands, speed), { what: 'curb before the rail', ...guide })]
  if (isFaster(speed, studyBands[studyBands.length - 1]!.above))
    checks.push(judge(curb, bandOf(studyBands, speed), { what: 'curb before the rail, by another study', ...study }))
  return [...checks, ...terminals]
}

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

const guide = {
  source:
    'AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, as quoted by the asking state in Midwest Roadside Safety Facility public answer 1074; NCHRP Report 1089, newer and on 31 in runs, was not read',
  confirmation: 'published',
} as const

/** In mi/h, highest first: less than 45, 45 to 50, above 50, above 60. @source `guide` */
const guideBands: readonly CurbBand[] = [
  { above: mph(60), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: 3 },
  { above: mph(50), inclusive: false, highestInches: 4, leastBehindFeet: null, faceSlope: null },
  { above: mph(45), inclusive: true, highestInches: 4, leastBehindFeet: 13, faceSlope: null },
  { above: mph(0), inclusive: true, highestInches: 6, leastBehindFeet: 8, faceSlope: null },
]

const study = {
  source: 'NCHRP Report 537, 2005, page 94, which asks this from lower speeds on than the Roadside Design Guide',
  confirmation: 'published',
} as const

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
const flushText = `flush (to ${flushInches} in behind, as the 31 in run was tested)`

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

function judge(curb: Curb, band: CurbBand, cited: Pick<FitCheck, 'what' | 'source' | 'confirmation'>): FitCheck {
  const flush = curb.toRail >= 0 && curb.toRail <= exactLength(flushInches, 'in')
  const behind = band.leastBehindFeet !== null && curb.toRail >= exactLength(band.leastBehindFeet, 'ft')
  const low = curb.height <= exactLength(band.highestInches, 'in')
  const face = faceMeets(curb, band)
  const wrong = [
    low ? '' : `a curb of ${feetInchesText(band.highestInches)}`,
    flush || behind ? '' : 'the rail flush with the curb',
    face === false ? faceText(band.faceSlope) : '',
  ].filter((text) => text !== '')
  const places =
    band.leastBehindFeet === null
      ? flushText
      : `${flushText}, or ${feetInchesText(band.leastBehindFeet * 12)} or more behind`
  return fitCheck({
    ...cited,
    meets: wrong.length > 0 ? false : face,
    limit: `rail ${places}; curb of at most ${feetInchesText(band.highestInches)} with ${faceText(band.faceSlope)}${tested(curb, flush, low)}${overridden(curb, behind)}`,
    value: curbText(curb),
    change: wrong.join(' and '),
  })
}

/** Null where the slope of the face decides and nobody said it. */
function faceMeets(curb: Curb, { faceSlope }: CurbBand): boolean | null {
  if (curb.face === 'vertical') return false
  if (faceSlope === null) return true
  return curb.faceSlope === null ? null : curb.faceSlope >= faceSlope
}

const faceText = (slope: number | null): string =>
  slope === null ? 'a sloping face' : `a sloping face of 1V:${slope}H or flatter`

/** What a test showed where it went further than the text. @source public answers 1074 and 261 */
const tested = (curb: Curb, flush: boolean, low: boolean): string =>
  flush && !low && curb.face === 'sloping' && curb.height <= exactLength(6, 'in')
    ? '; the 31 in run passed NCHRP 350 test level 3 with its rail 6 in behind a 6-in curb: text and test differ'
    : ''

/** @source NCHRP Report 537, page 93: 0.5 m to 7.0 m behind a 150-mm curb, 0.6 m to 7.0 m behind a 100-mm one */
const overridden = (curb: Curb, behind: boolean): string =>
  behind && curb.toRail <= exactLength(7, 'm')
    ? '; NCHRP Report 537, page 93, finds a risk that a vehicle goes over a rail less than 7 m behind a curb: the texts differ'
    : ''

function curbText(curb: Curb): string {
  const slope =
    curb.face === 'vertical'
      ? ''
      : curb.faceSlope === null
        ? ', slope of its face not said'
        : `, face 1V:${curb.faceSlope}H`
  return `rail ${reachingText(curb.toRail)} behind a ${curb.face} curb of ${exceedingText(curb.height)}${slope}`
}

const withoutCurb = (curb: 'none' | null): FitCheck =>
  fitCheck({
    what: 'curb before the rail',
    meets: curb === null ? null : true,
    limit: 'none, or one of the height, face and place that the speed allows',
    value: curb === null ? 'not said' : 'none',
    ...guide,
    change: '',
  })

/** Ends that are struck head on: the approach end, and the other where opposing traffic may reach it. */
function terminalsBefore({ approach, departure, opposingReaches }: FitFacts): readonly string[] {
  const names = [approach, opposingReaches === false ? null : departure]
    .filter((end) => end !== null)
    .filter(({ kind }) => kind === 'terminal')
    .map(({ name }) => name)
  return [...new Set(names)]
}

/**
 * No printed number was found for a curb before a terminal: a high or vertical one fails by what is remembered, any other
 * stays undecided.
 */
function beforeTerminal(terminal: string, curb: FitFacts['curb']): FitCheck {
  const bad = curb !== null && curb !== 'none' && (curb.face === 'vertical' || curb.height > exactLength(4, 'in'))
  return fitCheck({
    what: `curb before the ${terminal}`,
    meets: curb === 'none' ? true : bad ? false : null,
    limit:
      "none from 50 ft before post 1 to the end of the terminal; where there must be one, at most 4 in and sloping, as far as the terminal's own manual allows it",
    value: curb === null ? 'not said' : curb === 'none' ? 'none' : curbText(curb),
    source:
      'Recalled: state manuals; a public guide for military roads asks for at most 4 in before any rail at high speed',
    confirmation: 'from memory',
    change: 'no curb before the terminal',
  })
}
