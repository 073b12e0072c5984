import { endStation } from '../alignment/horizontal-alignment.ts'
import { err, ok, type Result } from '../result.ts'
import type { Hazard, Site } from '../site/site.ts'
import { isShorter } from '../units/exact-length.ts'
import { findNotFinite } from '../units/find-not-finite.ts'
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
  const value = findNotFinite(need)
  if (value !== null) return err({ kind: 'not-finite', value })
  const stations = [
    ...site.hazards.flatMap(({ from, to }) => [from, to]),
    need.approach.station,
    ...(need.departure === null ? [] : [need.departure.station]),
  ]
  const length = Math.max(...stations) - Math.min(...stations)
  return length > longestRun + numericTolerance
    ? err({ kind: 'longer-than-one-run', length, most: longestRun })
    : ok(need)
}

function hazardOffAlignment(site: Site): NeedRefusal | null {
  const { alignment } = site.road
  if (alignment.kind !== 'elements') return null
  const [from, to] = [alignment.horizontal.startStation, endStation(alignment.horizontal)]
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
