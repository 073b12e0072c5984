import type { Site } from '../site/site.ts'
import { isSameLength, isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Exposure } from './crossing.ts'
import type { DesignValues } from './design-values.ts'
import { checkFlare } from './flare-check.ts'
import type { Alternative, Note } from './note.ts'
import { flaredLength, parallelLength } from './on-straight.ts'
import type { Reach } from './reach.ts'
import { alternativesTo } from './shortfall.ts'
import { barrierLength, curveSides, type TrafficView } from './traffic-view.ts'

/** What has to be said of the hazard that governs, in the order of the checks. */
export function noteReach(
  site: Site,
  values: DesignValues,
  view: TrafficView,
  reach: Reach,
  flareFrom: Metres,
  notes: Note[],
): void {
  const { exposure, crossing, hazard, front } = reach
  if (reach.isCut)
    notes.push({
      kind: 'hazard-cut-at-clear-zone',
      hazard: hazard.name,
      far: hazard.far === null ? null : hazard.far + view.shift,
      clearZone: values.clearZone,
    })
  if (isSameLength(hazard.near, site.barrier.offset))
    notes.push({ kind: 'no-room-behind-barrier', hazard: hazard.name })
  const shy = values.shyLine
  if (shy !== null && isShorter(exposure.barrierOffset, shy))
    notes.push({ kind: 'inside-shy-line', offset: exposure.barrierOffset, shyLine: shy })
  if (crossing.rule === 'nothing to shield') {
    const { barrierOffset: offset, lateralExtent } = exposure
    notes.push({ kind: 'barrier-covers-lateral-extent', offset, lateralExtent })
    return
  }
  if (!isSameLength(front, flareFrom))
    notes.push({ kind: 'later-hazard-governs', hazard: hazard.name, behindFirst: Math.abs(front - flareFrom) })
  const leaves = front - view.direction * crossing.leavesUpstream
  const isStraight = noteCurve(site, exposure, leaves, front, notes)
  if (exposure.flareSlope > 0) {
    if (!isShorter(exposure.parallelLength, crossing.length))
      notes.push({ kind: 'flare-not-reached', lengthOfNeed: crossing.length, parallelLength: exposure.parallelLength })
    else notes.push(...checkFlare(exposure, crossing.lateral, shy, values.flareLimits, isStraight))
  }
  noteDriveways(site, values, view, reach, isStraight, notes)
}

function noteCurve(site: Site, exposure: Exposure, leaves: Metres, front: Metres, notes: Note[]): boolean {
  const { outside, inside } = curveSides(site, leaves, front)
  if (outside === null && inside === null) return true
  notes.push({
    kind: 'on-curve',
    reading: exposure.reading,
    side: outside === null ? 'inside' : inside === null ? 'outside' : 'mixed',
    straightFormula: straightFormula(exposure),
  })
  if (exposure.flareSlope > 0) notes.push({ kind: 'flare-on-curve' })
  return false
}

function straightFormula(exposure: Exposure): Metres {
  const parallel = parallelLength(exposure.lateralExtent, exposure.barrierOffset, exposure.runout)
  return exposure.flareSlope === 0 || !isShorter(exposure.parallelLength, parallel) ? parallel : flaredLength(exposure)
}

function noteDriveways(
  site: Site,
  values: DesignValues,
  view: TrafficView,
  reach: Reach,
  isStraight: boolean,
  notes: Note[],
): void {
  // distance upstream of the hazard, along the stations
  const upstream = (station: Metres) => view.direction * (reach.front - station)
  for (const driveway of site.driveways) {
    const [first, last] = view.direction === 1 ? [driveway.from, driveway.to] : [driveway.to, driveway.from]
    const isInNeed = isShorter(0, upstream(first)) && isShorter(upstream(last), reach.crossing.upstream)
    if (!isInNeed) continue
    const available = upstream(last) > 0 ? barrierLength(site, last, reach.front) : 0
    const { exposure } = reach
    const [shyLine, flareLimits] = [values.shyLine, values.flareLimits]
    const near = reach.hazard.near + view.shift
    const alternatives = isStraight ? alternativesTo({ exposure, available, near, shyLine, flareLimits }) : []
    notes.push({
      kind: 'driveway-cuts-run',
      driveway: driveway.name,
      available,
      shortfall: reach.crossing.length - available,
      alternatives: alternatives.map((alternative) => fromNearEdge(alternative, view.shift)),
    })
  }
}

const fromNearEdge = (alternative: Alternative, shift: Metres): Alternative =>
  alternative.change === 'barrier offset' || alternative.change === 'far side of hazard'
    ? { ...alternative, to: alternative.to - shift }
    : alternative
