import { readdirSync, readFileSync } from 'node:fs'
import { checkFit } from '../../../src/core/fit/check-fit.ts'
import type { FitFacts } from '../../../src/core/fit/fit.ts'
import type { FitCheck } from '../../../src/core/fit/fit-check.ts'
import type { EndSheet, LongitudinalSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { findNeed } from '../../../src/core/need/need.ts'
import type { Note } from '../../../src/core/need/note.ts'
import type { NeedRefusal } from '../../../src/core/need/refusal.ts'
import type { CellSaying } from '../../../src/core/need/tables/table.ts'
import type { Site } from '../../../src/core/site/site.ts'
import { exactLength } from '../../../src/core/units/exact-length.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { planDrawing } from '../../../src/drawing/views/plan.ts'
import { sectionDrawing } from '../../../src/drawing/views/section.ts'
import type { InputProblem } from '../../../src/formats/input-problem.ts'
import { readSite } from '../../../src/formats/site/read-site.ts'
import { computeNeed, needProblem } from '../../../src/operations/compute-need.ts'
import { planInput } from '../../../src/operations/write-site-drawings.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'
import type { Print } from '../../../src/words/print.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { siteInputs } from '../drawing/site-inputs.ts'

const folder = new URL('../need/', import.meta.url)

/** The constructed cases of a need, and those whose pictures are kept. */
export const sites: readonly Site[] = [
  ...readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => readSite(name, readFileSync(new URL(`${name}/input.json`, folder), 'utf8')))
    .flatMap((read) => (read.ok ? [read.value] : [])),
  ...Object.values(siteInputs).map((input) => input('web').site),
]

export function sayingsOfSite(site: Site): Saying[] {
  const report = computeNeed(site)
  const reports = report.ok ? [report.value.approach, report.value.departure].filter((one) => one !== null) : []
  return [
    ...reports.flatMap(({ notes }) => notes),
    ...reports.flatMap(({ sources }) =>
      sources.flatMap(({ source, remark }) => [withoutTitles(source), ...(remark === undefined ? [] : [remark])]),
    ),
    ...(report.ok ? report.value.checks.flatMap(sayingsOfCheck) : []),
  ]
}

export function drawingsOfSite(site: Site, print: Print): Drawing[] {
  const need = findNeed(site)
  const [first] = site.hazards
  return (['web', 'phone'] as const).flatMap((page) => {
    const view = planInput(site, need.ok ? need.value : null, page, print)
    return [
      planDrawing(view),
      sectionDrawing(view, (first!.from + first!.to) / 2),
      sectionDrawing(view, first!.from - 30),
    ]
  })
}

/** Titles of tables and books stay as they were published. */
const withoutTitles = (cell: CellSaying): CellSaying => ({
  ...cell,
  table: 'RDG 2011 Table 5-7',
  confirmedBy: cell.confirmedBy && 'x',
})

const sayingsOfCheck = ({ what, limit, value, source, smallestChange }: FitCheck): Saying[] => [
  ...[what, limit, value],
  ...(source.kind === 'source' ? [] : [source]),
  ...(smallestChange === null ? [] : [smallestChange]),
]

/** A note of every kind, with each of its ways to be worded. */
const notes: readonly Note[] = [
  { kind: 'interpolated-speed', table: 'RDG 2011 Table 5-10(b)', lowSpeed: 50, highSpeed: 60 },
  { kind: 'next-higher-speed', table: 'RDG 2011 Table 5-10(b)', usedSpeed: 60 },
  { kind: 'runout-length-given', runoutLength: 200 },
  { kind: 'clear-zone-range', narrowest: 20, widest: 24, clearZone: 24 },
  { kind: 'clear-zone-may-be-limited', clearZone: 30 },
  { kind: 'curve-factor', factor: 1.2, radius: 1000, clearZone: 36 },
  { kind: 'curve-factor-not-applied', radius: 1000 },
  { kind: 'hazard-outside-clear-zone', hazard: 'pier 9', near: 40, clearZone: 30 },
  { kind: 'hazard-cut-at-clear-zone', hazard: 'pier 9', far: 40, clearZone: 30 },
  { kind: 'hazard-cut-at-clear-zone', hazard: 'pier 9', far: null, clearZone: 30 },
  { kind: 'at-clear-zone-limit', what: 'hazard', clearZone: 30 },
  { kind: 'at-clear-zone-limit', what: 'barrier', clearZone: 30 },
  { kind: 'no-room-behind-barrier', hazard: 'pier 9' },
  { kind: 'inside-shy-line', offset: 4, shyLine: 8 },
  { kind: 'shy-line-not-tabulated', highestSpeed: 80 },
  { kind: 'flare-limit-not-tabulated', highestSpeed: 70 },
  { kind: 'flare-too-steep', where: 'inside shy line', rate: 10, limit: 26 },
  { kind: 'flare-too-steep', where: 'beyond shy line', rate: 10, limit: 14 },
  { kind: 'flare-crosses-shy-line', at: 40, insideLimit: 26, beyondLimit: 14, compound: null },
  {
    kind: 'flare-crosses-shy-line',
    ...{ at: 40, insideLimit: 26, beyondLimit: 14, compound: { lengthOfNeed: 120, lateralAtEnd: 12 } },
  },
  { kind: 'flare-not-reached', lengthOfNeed: 20, parallelLength: 25 },
  { kind: 'flare-on-curve' },
  { kind: 'barrier-covers-lateral-extent', offset: 20, lateralExtent: 18 },
  ...(['outside', 'inside', 'mixed'] as const).flatMap((side) =>
    (['path', 'edge'] as const).map((reading): Note => ({ kind: 'on-curve', reading, side, straightFormula: 120 })),
  ),
  { kind: 'later-hazard-governs', hazard: 'pier 9', behindFirst: 30 },
  { kind: 'crashworthy-end', why: 'barrier inside opposing clear zone' },
  { kind: 'anchor-only', why: 'no opposing traffic' },
  { kind: 'anchor-only', why: 'barrier outside opposing clear zone' },
  { kind: 'opposing-traffic-not-judged', why: 'no median width' },
  { kind: 'opposing-traffic-not-judged', why: 'hazards in the median' },
  { kind: 'centre-of-odd-lanes', lanes: 3 },
  { kind: 'driveway-cuts-run', driveway: 'gate 7', available: 80, shortfall: 20, alternatives: [] },
  {
    kind: 'driveway-cuts-run',
    ...{ driveway: 'gate 7', available: 80, shortfall: 20 },
    alternatives: [
      { change: 'flare', rate: 12, steeperThanLimit: 14 },
      { change: 'flare', rate: 16, steeperThanLimit: null },
      { change: 'barrier offset', to: 12 },
      { change: 'far side of hazard', to: 18 },
      { change: 'accept runout length', to: 180 },
    ],
  },
]

const refusals: readonly NeedRefusal[] = [
  { kind: 'speed-above-table', table: 'RDG 2011 Table 5-10(b)', speed: 85, highest: 80, instead: 'runoutLength' },
  { kind: 'slope-not-tabulated', slope: 'foreslope', run: 3, steepest: 4 },
  { kind: 'curve-factor-outside-table', table: 'RDG 2011 Table 3-2', radius: 100, speed: 60, smallest: 250 },
  { kind: 'curve-factor-outside-table', table: 'RDG 2011 Table 3-2', radius: 100, speed: 80, smallest: null },
  { kind: 'alignment-broken', station: 100, distance: 50, kink: 0.1 },
  { kind: 'curve-tighter-than-offset', radius: 6, offset: 8 },
  { kind: 'alignment-too-short', missing: 'before its start', needed: -20, limit: 0 },
  { kind: 'alignment-too-short', missing: 'past its end', needed: 220, limit: 200 },
  { kind: 'hazard-off-alignment', hazard: 'pier 9', from: 0, to: 300 },
  { kind: 'runout-too-short', runoutLength: 6, lateralExtent: 7 },
  { kind: 'longer-than-one-run', length: 20_000, most: 16_093.44 },
  { kind: 'not-finite', value: 'approach.station' },
  { kind: 'runout-wraps-curve', radius: 15, runoutLength: 64 },
]

export const sayingsOfNotes = (): Saying[] =>
  (['us', 'metric'] as const).flatMap((units) =>
    notes.map((note): Saying => ({ kind: 'note on need', note, units, direction: null })),
  )

/** Why a need cannot be computed. */
export const noNeeds = (): readonly InputProblem[] =>
  (['us', 'metric'] as const).flatMap((units) => refusals.map((refusal) => needProblem('site', refusal, units)))

const inches = (value: number) => exactLength(value, 'in')
const feet = (value: number) => exactLength(value, 'ft')

const ground = {
  behindPostOne: feet(3),
  recoveryLength: feet(40),
  recoveryWidth: feet(10),
  breakBehindPost: feet(0.5),
}
const [flat, steep] = [
  { ...ground, platformSlope: 20, besideSlope: 6, slopeBehind: 2 },
  { ...ground, platformSlope: 6, besideSlope: 1.5, slopeBehind: 1 },
]
const unsaid = {
  ...{ platformSlope: null, behindPostOne: null, recoveryLength: null, recoveryWidth: null },
  ...{ besideSlope: null, breakBehindPost: null, slopeBehind: 2 },
}

const [low, high] = [inches(4), inches(6)]
const curbs: readonly FitFacts['curb'][] = [
  ...[null, 'none' as const],
  { height: high, face: 'vertical', faceSlope: null, toRail: feet(5) },
  { height: high, face: 'sloping', faceSlope: null, toRail: 0 },
  { height: low, face: 'sloping', faceSlope: null, toRail: 0 },
  { height: low, face: 'sloping', faceSlope: 2, toRail: feet(13) },
  { height: low, face: 'sloping', faceSlope: 3, toRail: 0 },
  { height: inches(8), face: 'vertical', faceSlope: null, toRail: inches(100) },
]

/** Facts that bring every check to each of its answers. */
export const sayingsOfChecks = (): Saying[] => checksOfEveryKind().flatMap(sayingsOfCheck)

export function checksOfEveryKind(): readonly FitCheck[] {
  const systems = shippedSheets.filter((one) => one.kind === 'longitudinal') as readonly LongitudinalSheet[]
  const ends = shippedSheets.filter((one) => one.kind !== 'longitudinal') as readonly EndSheet[]
  const facts: FitFacts[] = []
  for (const system of [...systems, null])
    for (const approach of ends)
      for (const departure of ends)
        for (const i of [0, 1, 2, 3]) {
          facts.push({
            ...{ system, approach, departure },
            speed: { value: [25, 45, 65, 110][i]!, unit: i === 3 ? 'km/h' : 'mi/h' },
            work: [null, 'new', 'standing', 'new'][i] as FitFacts['work'],
            letting: [null, '2016-01-15', null, '2020-01-15'][i]!,
            spacing: (['full', 'half', 'quarter', 'full'] as const)[i]!,
            nearest: { hazard: 'pier 9', clear: inches([30, 38, 30, 50][i]!), length: feet(4) },
            twoWay: i % 2 === 0,
            opposingReaches: [true, false, null, true][i]!,
            adjoining: [
              null,
              { railHeight: inches(27.75), splice: 'post' as const },
              { railHeight: inches(31), splice: null },
              { railHeight: inches(31), splice: 'midspan' as const },
            ][i]!,
            ground: [flat, steep, unsaid, { ...flat, slopeBehind: 1 }][i]!,
            curb: curbs[((facts.length / 4) % curbs.length) | 0]!,
            runLength: [feet(40), feet(200), null, feet(62.5)][i]!,
          })
        }
  return facts.flatMap(checkFit)
}
