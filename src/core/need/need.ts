import { roadLine } from '../alignment/road-line.ts'
import { err, ok, type Result } from '../result.ts'
import type { Hazard, Site } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import { longestRun } from '../units/longest-run.ts'
import { numericTolerance } from './crossing.ts'
import { designValues } from './design-values.ts'
import { type DirectionNeed, needOfDirection } from './direction-need.ts'
import type { Note } from './note.ts'
import type { NeedRefusal } from './refusal.ts'
import { adjacentView, opposingView } from './traffic-view.ts'

/** Where the barrier must begin and end. */
export interface Need {
  /** For the traffic beside the hazards. */
  readonly approach: DirectionNeed
  /** For opposing traffic; null where there is none that could reach the hazards. */
  readonly departure: DirectionNeed | null
}

/**
 * The length of need of a site, for both directions of traffic.
 *
 * @source AASHTO Roadside Design Guide, 2011, chapters 3 and 5 (sec. 5.6.4), or the older edition the site names
 */
export function findNeed(site: Site): Result<Need, NeedRefusal> {
  const off = hazardOffAlignment(site)
  if (off !== null) return err(off)
  const values = designValues(site)
  if (!values.ok) return values
  const adjacent = adjacentView(site)
  const opposing = opposingView(site)
  const approach = needOfDirection(site, values.value, adjacent)
  if (!approach.ok) return approach
  if (opposing === null)
    return sound(site, {
      approach: { ...approach.value, notes: [...approach.value.notes, noteWithoutOpposing(site)] },
      departure: null,
    })
  const departure = needOfDirection(site, values.value, opposing)
  return departure.ok ? sound(site, { approach: approach.value, departure: departure.value }) : departure
}

/** A need that one run can answer, all of its numbers finite. */
function sound(site: Site, need: Need): Result<Need, NeedRefusal> {
  const { approach, departure } = need
  const value = notFinite('approach', approach) ?? (departure === null ? null : notFinite('departure', departure))
  if (value !== null) return err({ kind: 'not-finite', value })
  let first = Math.min(approach.station, departure?.station ?? approach.station)
  let last = Math.max(approach.station, departure?.station ?? approach.station)
  for (const { from, to } of site.hazards) {
    first = Math.min(first, from)
    last = Math.max(last, to)
  }
  const length = last - first
  return length > longestRun + numericTolerance
    ? err({ kind: 'longer-than-one-run', length, most: longestRun })
    : ok(need)
}

/** Where the first number that is none stands in what was computed of one direction; all else is taken from these. */
function notFinite(direction: string, need: DirectionNeed): string | null {
  const { lengthOfNeed, station, lateralAtEnd, runoutLength, clearZone, path } = need
  if (!Number.isFinite(lengthOfNeed + station + lateralAtEnd + runoutLength + clearZone)) return direction
  return path.every((place) => Number.isFinite(place.station + place.lateral)) ? null : `${direction}.path`
}

function hazardOffAlignment(site: Site): NeedRefusal | null {
  const { reach } = roadLine(site.road.alignment)
  if (reach === null) return null
  const { from, to } = reach
  const beyond = (hazard: Hazard) => isShorter(hazard.from, from) || isShorter(to, hazard.to)
  const hazard = site.hazards.find(beyond)
  return hazard === undefined ? null : { kind: 'hazard-off-alignment', hazard: hazard.name, from, to }
}

function noteWithoutOpposing(site: Site): Note {
  if (site.road.traffic === 'one-way') return { kind: 'anchor-only', why: 'no opposing traffic' }
  return {
    kind: 'opposing-traffic-not-judged',
    why: site.side === 'left' ? 'hazards in the median' : 'no median width',
  }
}
