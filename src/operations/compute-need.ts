import { checkFit } from '../core/fit/check-fit.ts'
import type { FitCheck } from '../core/fit/fit-check.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import type { Layout } from '../core/layout/layout.ts'
import type { Rule } from '../core/need/crossing.ts'
import type { DirectionNeed } from '../core/need/direction-need.ts'
import { findNeed, type Need } from '../core/need/need.ts'
import type { NoteSaying } from '../core/need/need-saying.ts'
import type { NeedRefusal } from '../core/need/refusal.ts'
import type { TableValue } from '../core/need/tables/table.ts'
import { ok, type Result } from '../core/result.ts'
import type { Site, UnitSystem } from '../core/site/site.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { type Unusual, unusualInSite } from '../formats/range/unusual.ts'
import type { FoundDirection, MadeOf } from '../formats/run/made-of.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { fitFacts } from './fit-facts.ts'
import { layOutRun } from './lay-out-run.ts'
import { runForNeed } from './run-for-need.ts'

/** The need of a site in the site's own unit. */
export interface NeedReport {
  readonly format: 'lapwise-need/1'
  readonly approach: DirectionReport
  /** null where no opposing traffic can reach the hazards. */
  readonly departure: DirectionReport | null
  readonly unit: 'ft' | 'm'
  readonly checks: readonly FitCheck[]
  /** What of the site file is seldom right. */
  readonly unusual: readonly Unusual[]
  /** The run that this need asks for, as a run file; null while system or ends are not chosen. */
  readonly run: unknown
  readonly installed: Installed | null
}

/** Lengths in the report's unit; laterals from the edge of travelled way beside the hazards. */
export interface DirectionReport {
  /** From the upstream edge of the hazard that governs, parallel to the road. */
  readonly lengthOfNeed: number
  readonly lateralAtEnd: number
  readonly runoutLength: number
  readonly governs: {
    readonly hazard: string | null
    readonly rule: Rule
    /** L_A from the edge of this direction's travelled way. */
    readonly lateralExtent: number | null
    readonly extentBy: 'far side' | 'clear zone' | null
  }
  /** Straight in plan: leaves the edge, meets the end of need, reaches the outer limit of the hazard. */
  readonly path: readonly { readonly station: number; readonly lateral: number }[]
  readonly notes: readonly NoteSaying[]
  /** Continuous station of the end of need. */
  readonly station: number
  readonly clearZone: number
  readonly sources: readonly TableValue[]
}

/** What the best layout installs, in the report's unit along the rail. */
export interface Installed {
  /** From end to end: terminals, transition and plain rail. */
  readonly length: number
  /** Rail that counts for length of need; null where a standing run goes on. */
  readonly counts: number | null
  readonly plainRail: number
  /** Panels of the plain rail, inches. */
  readonly plainPanels: readonly number[]
  readonly posts: number
}

/**
 * Where the barrier of `site` must begin and end, for both directions of traffic, and why.
 * @param file  the site's file as it was read, which a run that is made of it keeps; null where there is none
 */
export function computeNeed(site: Site, file: MadeOf['site'] | null = null): Result<NeedReport, NeedRefusal> {
  const need = findNeed(site)
  return need.ok ? ok(reportNeed(site, need.value, file)) : need
}

/** The same of a need that was found. */
export function reportNeed(site: Site, need: Need, file: MadeOf['site'] | null = null): NeedReport {
  const { approach, departure } = need
  const run = runForNeed(site, need)
  const laid = run === null ? null : layOutRun('', run, 1)
  const layout = laid?.ok ? (laid.value.layouts[0] ?? null) : null
  const report = {
    approach: reportOf(approach, site.units),
    departure: departure === null ? null : reportOf(departure, site.units),
    unit: site.units === 'us' ? 'ft' : 'm',
    checks: checkFit(fitFacts(site, need, layout)),
  } as const
  return {
    format: 'lapwise-need/1',
    ...report,
    unusual: unusualInSite(site),
    run: run === null ? null : runToValue(file === null ? run : { ...run, madeOf: madeOf(file, report) }),
    installed: layout === null ? null : installedOf(layout, site.units),
  }
}

function madeOf(
  site: MadeOf['site'],
  { approach, departure, unit, checks }: Pick<NeedReport, 'approach' | 'departure' | 'unit' | 'checks'>,
): MadeOf {
  const once = new Map(checks.map((check) => [contentOf(check), check]))
  return {
    site,
    need: { unit, approach: foundOf(approach), departure: departure === null ? null : foundOf(departure) },
    checks: [...once.values()],
  }
}

const foundOf = ({ station, lengthOfNeed, lateralAtEnd, runoutLength, clearZone, governs }: DirectionReport) =>
  ({ station, lengthOfNeed, lateralAtEnd, runoutLength, clearZone, governs }) satisfies FoundDirection

function installedOf(layout: Layout, units: UnitSystem): Installed {
  const long = (inches: number): number => inUnit(inches * 0.0254, units)
  const plain = layout.panels.filter(({ unit }) => unit === 'run').map(({ inches }) => inches)
  const { countsFromInches: from, countsToInches: to } = layout
  return {
    length: long(layout.score.railInches),
    counts: from === null || to === null ? null : long(to - from),
    plainRail: long(plain.reduce((sum, inches) => sum + inches, 0)),
    plainPanels: plain,
    posts: layout.posts.length,
  }
}

function reportOf(need: DirectionNeed, units: UnitSystem): DirectionReport {
  const long = (length: number) => inUnit(length, units)
  return {
    lengthOfNeed: long(need.lengthOfNeed),
    lateralAtEnd: long(need.lateralAtEnd),
    runoutLength: long(need.runoutLength),
    governs: {
      ...need.governs,
      lateralExtent: need.governs.lateralExtent === null ? null : long(need.governs.lateralExtent),
    },
    path: need.path.map(({ station, lateral }) => ({ station: long(station), lateral: long(lateral) })),
    notes: need.notes.map((note) => ({ kind: 'note on need', note, units, direction: null })),
    station: long(need.station),
    clearZone: long(need.clearZone),
    sources: need.sources,
  }
}

/** Metres in the site's unit, rounded to a billionth so that 38.1 m is 125 ft and not 125.00000000000001. */
export const inUnit = (length: number, units: UnitSystem): number =>
  Math.round((units === 'us' ? length / 0.3048 : length) * 1e9) / 1e9 + 0

/** A refusal as a problem of the site file: the field to change, what it would have to be, what it is. */
export function needProblem(file: string, refusal: NeedRefusal, units: UnitSystem): InputProblem {
  return {
    file,
    place: placeOf(refusal),
    expected: { kind: 'site with a need', refusal, units },
    found: { kind: 'site without a need', refusal, units },
  }
}

function placeOf(refusal: NeedRefusal): string {
  switch (refusal.kind) {
    case 'speed-above-table':
      return 'road.speed'
    case 'slope-not-tabulated':
      return `clearZone.${refusal.slope}`
    case 'curve-factor-outside-table':
    case 'alignment-broken':
    case 'curve-tighter-than-offset':
    case 'alignment-too-short':
    case 'runout-wraps-curve':
      return 'road.alignment'
    case 'hazard-off-alignment':
    case 'longer-than-one-run':
      return 'hazards'
    case 'runout-too-short':
      return 'runoutLength'
    case 'not-finite':
      return ''
    default:
      return refusal satisfies never
  }
}
