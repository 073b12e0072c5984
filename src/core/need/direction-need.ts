import { ok, type Result } from '../result.ts'
import type { Hazard, Site } from '../site/site.ts'
import { isSameLength, isShorter } from '../units/exact-length.ts'
import type { Metres } from '../units/quantity.ts'
import type { Rule } from './crossing.ts'
import type { DesignValues } from './design-values.ts'
import type { Note } from './note.ts'
import { firstFront, type Reach, reachFor } from './reach.ts'
import { noteReach } from './reach-notes.ts'
import type { NeedRefusal } from './refusal.ts'
import type { TableValue } from './tables/table.ts'
import type { TrafficView } from './traffic-view.ts'

/** A place by the road: continuous station and lateral distance from the edge beside the hazards, m. */
interface RoadPlace {
  readonly station: Metres
  readonly lateral: Metres
}

/** The need of one direction of traffic. */
export interface DirectionNeed {
  /** X, from the upstream edge of the hazard that governs, parallel to the road, without the terminal's own part. */
  readonly lengthOfNeed: Metres
  /** The barrier there: its station and Y, its lateral distance from the edge beside the hazards. */
  readonly station: Metres
  readonly lateralAtEnd: Metres
  readonly runoutLength: Metres
  readonly clearZone: Metres
  readonly governs: Governs
  /** Corners of the path, straight in plan: leaves the edge, meets the end of need, reaches the hazard's outer limit. */
  readonly path: readonly RoadPlace[]
  readonly notes: readonly Note[]
  readonly sources: readonly TableValue[]
}

/** Which hazard needs the longest barrier, by which rule, and what its lateral extent is. */
interface Governs {
  readonly hazard: string | null
  readonly rule: Rule
  /** L_A, from the edge of this direction's travelled way; null with nothing to shield. */
  readonly lateralExtent: Metres | null
  readonly extentBy: 'far side' | 'clear zone' | null
}

/** The need of the traffic of `view`: the hazard that requires the barrier to reach furthest upstream governs. */
export function needOfDirection(
  site: Site,
  values: DesignValues,
  view: TrafficView,
): Result<DirectionNeed, NeedRefusal> {
  const { clearZone } = values
  const notes = values.notes.slice()
  const flareFrom = firstFront(site.hazards, view, clearZone)
  let governing: Reach | null = null
  for (const hazard of site.hazards) {
    if (!isWithinClearZone(hazard, view, clearZone, notes)) continue
    const reach = reachFor(site, values, view, hazard, flareFrom)
    if (!reach.ok) return reach
    if (governing === null || isShorter(0, view.direction * (governing.station - reach.value.station)))
      governing = reach.value
  }
  if (view.shift > 0) noteEnd(site, view, clearZone, notes)
  if (governing !== null) noteReach(site, values, view, governing, flareFrom, notes)
  return ok({
    lengthOfNeed: governing === null ? 0 : governing.crossing.length,
    station: governing === null ? firstFront(site.hazards, view, Number.POSITIVE_INFINITY) : governing.station,
    lateralAtEnd: governing === null ? site.barrier.offset : governing.crossing.lateral - view.shift,
    runoutLength: values.runout,
    clearZone,
    governs: governing === null ? nothing : governsOf(governing),
    path: governing === null ? [] : pathOf(governing, view),
    notes,
    sources: values.found,
  })
}

const nothing: Governs = { hazard: null, rule: 'nothing to shield', lateralExtent: null, extentBy: null }

const governsOf = (reach: Reach): Governs => ({
  hazard: reach.hazard.name,
  rule: reach.crossing.rule,
  lateralExtent: reach.exposure.lateralExtent,
  extentBy: reach.isCut ? 'clear zone' : 'far side',
})

/**
 * Whether the hazard begins inside the clear zone of this traffic. One that begins exactly at its limit does: on the
 * boundary the safe side is to shield.
 */
function isWithinClearZone(hazard: Hazard, view: TrafficView, clearZone: Metres, notes: Note[]): boolean {
  const near = hazard.near + view.shift
  if (isShorter(clearZone, near)) {
    notes.push({ kind: 'hazard-outside-clear-zone', hazard: hazard.name, near, clearZone })
    return false
  }
  if (isSameLength(near, clearZone)) notes.push({ kind: 'at-clear-zone-limit', what: 'hazard', clearZone })
  return true
}

function pathOf(reach: Reach, view: TrafficView): readonly RoadPlace[] {
  if (reach.crossing.rule === 'nothing to shield') return []
  return [
    { station: reach.front - view.direction * reach.crossing.leavesUpstream, lateral: -view.shift },
    { station: reach.station, lateral: reach.crossing.lateral - view.shift },
    { station: reach.front, lateral: reach.exposure.lateralExtent - view.shift },
  ]
}

/**
 * What the end that opposing traffic meets has to be. A barrier exactly at the limit of the clear zone counts as
 * inside it: on the boundary the safe side is a crashworthy end.
 */
function noteEnd(site: Site, view: TrafficView, clearZone: Metres, notes: Note[]): void {
  if (site.road.traffic === 'two-way' && site.road.lanes % 2 === 1)
    notes.push({ kind: 'centre-of-odd-lanes', lanes: site.road.lanes })
  const offset = site.barrier.offset + view.shift
  if (isSameLength(offset, clearZone)) notes.push({ kind: 'at-clear-zone-limit', what: 'barrier', clearZone })
  if (isShorter(clearZone, offset)) notes.push({ kind: 'anchor-only', why: 'barrier outside opposing clear zone' })
  else notes.push({ kind: 'crashworthy-end', why: 'barrier inside opposing clear zone' })
}
