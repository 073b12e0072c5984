import { azimuthAlong, curvatureAlong, endOf, pointAlong } from '../geometry/clothoid.ts'
import { feetOn, seenFromPlace } from '../geometry/nearest.ts'
import { movedBy, type Point } from '../geometry/point.ts'
import { err, ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'
import {
  type AlignmentElement,
  elementAt,
  endStation,
  type HorizontalAlignment,
  reachesStation,
} from './horizontal-alignment.ts'

/** A place by the road: its station (continuous, m) and its offset square to the line, m, positive to the right looking up-station. */
export interface StationOffset {
  readonly station: Metres
  readonly offset: Metres
}

export type NoPoint =
  | { readonly kind: 'off-alignment'; readonly station: Metres; readonly from: Metres; readonly to: Metres }
  /** The line turns towards the offset side so sharply that the offset reaches past the centre of curvature. */
  | { readonly kind: 'past-centre'; readonly station: Metres; readonly offset: Metres; readonly radius: Metres }

/** The point at a station and offset; the other way round is {@link pointToStationOffset}. */
export function stationOffsetToPoint(alignment: HorizontalAlignment, place: StationOffset): Result<Point, NoPoint> {
  const { station, offset } = place
  if (!Number.isFinite(station) || !Number.isFinite(offset))
    throw new RangeError(`station and offset must be finite, got ${station} and ${offset}`)
  if (!reachesStation(alignment, station))
    return err({ kind: 'off-alignment', station, from: alignment.startStation, to: endStation(alignment) })
  const element = elementAt(alignment, station)
  const along = Math.min(Math.max(station - element.station, 0), element.length)
  const curvature = curvatureAlong(element, along)
  if (curvature * offset > 1 + 1e-9)
    return err({ kind: 'past-centre', station, offset, radius: Math.abs(1 / curvature) })
  return ok(movedBy(pointAlong(element, along), azimuthAlong(element, along), 0, offset))
}

/** One answer to "where along the road is this point". */
export type Answer =
  /** The point lies square to the line at this station. */
  | ({ readonly kind: 'square' } & StationOffset)
  /** The point is the centre of a circular curve: it lies square to every station from `station` to `toStation`. */
  | ({ readonly kind: 'curve centre'; readonly toStation: Metres } & StationOffset)
  /** The line has a kink here and the point lies in its outer wedge: the kink is the nearest place, but not square. */
  | ({ readonly kind: 'kink' } & StationOffset)

/**
 * Every station from which `point` is seen square to the line and nearer than from the stations beside it: the nearest
 * one first, more than one for a point inside a bend, none for a point beyond the ends.
 */
export function pointToStationOffset(alignment: HorizontalAlignment, point: Point): readonly Answer[] {
  const answers: Answer[] = []
  alignment.elements.forEach((element, i) => {
    for (const foot of feetOn(element, point)) {
      const answer = { station: element.station + foot.from, offset: foot.offset }
      if (foot.to > foot.from) answers.push({ kind: 'curve centre', ...answer, toStation: element.station + foot.to })
      else answers.push({ kind: 'square', ...answer })
    }
    const next = alignment.elements[i + 1]
    if (next !== undefined) answers.push(...kinkBetween(element, next, point))
  })
  return withoutTwins(answers).sort((a, b) => nearness(a) - nearness(b) || a.station - b.station)
}

/** Distance to the line in whole tenths of a micrometre, so that answers equally near stand in order of station. */
const nearness = (answer: Answer): number => Math.round(Math.abs(answer.offset) * 1e7)

/** Below this the wedge of a kink is thinner than the tolerance within which both elements answer themselves, m. */
const wedgeTolerance = 1e-7

function kinkBetween(before: AlignmentElement, after: AlignmentElement, point: Point): readonly Answer[] {
  if (seenFromPlace(before, before.length, point).ahead <= wedgeTolerance) return []
  const seen = seenFromPlace(after, 0, point)
  if (seen.ahead >= -wedgeTolerance) return []
  const away = Math.hypot(point.easting - endOf(before).easting, point.northing - endOf(before).northing)
  return [{ kind: 'kink', station: after.station, offset: Math.sign(seen.right) * away }]
}

/** A foot on a joint is found on both elements; it is one answer, and part of a curve's when it is the curve's centre. */
function withoutTwins(answers: readonly Answer[]): Answer[] {
  const kept: Answer[] = []
  for (const answer of answers) {
    const twin = kept.findIndex(
      (other) => Math.abs(lastStation(other) - answer.station) < 1e-6 && Math.abs(other.offset - answer.offset) < 1e-6,
    )
    if (twin < 0) kept.push(answer)
    else if (answer.kind === 'curve centre' && kept[twin]!.kind !== 'curve centre') kept[twin] = answer
  }
  return kept
}

const lastStation = (answer: Answer): Metres => (answer.kind === 'curve centre' ? answer.toStation : answer.station)
