import { endStation, type HorizontalAlignment } from '../alignment/horizontal-alignment.ts'
import { offsetLength } from '../alignment/offset-line.ts'
import { rootBetween } from '../geometry/root.ts'
import { err, ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'
import type { RailLine } from './rail-line.ts'
import { outwardSign, type StakingFrame } from './staking-frame.ts'

export interface OffAlignment {
  readonly kind: 'off-alignment'
  /** Where the rail leaves it, m along the rail from post 1. */
  readonly rail: Metres
  readonly from: Metres
  readonly to: Metres
}

/** Longest stretch of a flare that is taken at one offset, m; a joint of two curves inside it then errs below 1 µm. */
const step = 0.1

/**
 * The stations of places along the rail, found by following it from the datum, m.
 *
 * The rail has the offset of the straight-road flare at every distance along it; the station follows from its length:
 * the line at that offset is longer or shorter than the alignment by the offset times the turning.
 * @param datum  distance of the run's datum along the rail from post 1
 * @param rails  rising
 */
export function stationsAlong(
  frame: StakingFrame,
  line: RailLine,
  datum: Metres,
  rails: readonly Metres[],
): Result<readonly Metres[], OffAlignment> {
  const behind = walk(frame, line, datum, rails.filter((rail) => rail < datum).reverse())
  if (!behind.ok) return behind
  const ahead = walk(
    frame,
    line,
    datum,
    rails.filter((rail) => rail >= datum),
  )
  if (!ahead.ok) return ahead
  return ok([...behind.value.toReversed(), ...ahead.value])
}

function walk(
  frame: StakingFrame,
  line: RailLine,
  datum: Metres,
  rails: readonly Metres[],
): Result<readonly Metres[], OffAlignment> {
  let [rail, station] = [datum, frame.datumStation]
  const stations: Metres[] = []
  for (const next of rails) {
    const reached = follow(frame, line, rail, station, next)
    if (!reached.ok) return reached
    rail = next
    station = reached.value
    stations.push(station)
  }
  return ok(stations)
}

function follow(
  frame: StakingFrame,
  line: RailLine,
  from: Metres,
  start: Metres,
  to: Metres,
): Result<Metres, OffAlignment> {
  let station = start
  let rail = from
  for (const next of nodesBetween(line, from, to)) {
    const offset = frame.offset + outwardSign(frame.side) * line.awayAt((rail + next) / 2)
    const length = frame.direction * (line.alongAt(next) - line.alongAt(rail))
    const moved = stationAfter(frame.alignment, station, offset, length)
    if (moved === null) {
      const { alignment } = frame
      return err({ kind: 'off-alignment', rail: next, from: alignment.startStation, to: endStation(alignment) })
    }
    station = moved
    rail = next
  }
  return ok(station)
}

/** Places from `from` (left out) to `to`: where the rail bends, and inside a flare short steps. */
export function nodesBetween({ flat, corners: inFlare }: RailLine, from: Metres, to: Metres): readonly Metres[] {
  const [low, high] = from < to ? [from, to] : [to, from]
  const bends = rising([flat.from, flat.to, ...inFlare]).filter((bend) => bend > low && bend < high)
  const corners = [low, ...bends, high]
  const nodes = corners.slice(1).flatMap((corner, i) => {
    const before = corners[i]!
    const isFlat = before >= flat.from && corner <= flat.to
    const pieces = isFlat ? 1 : Math.max(1, Math.ceil((corner - before) / step))
    return Array.from({ length: pieces }, (_, k) =>
      k === pieces - 1 ? corner : before + ((corner - before) * (k + 1)) / pieces,
    )
  })
  return from < to ? nodes : [low, ...nodes].reverse().slice(1)
}

const rising = (places: readonly Metres[]): readonly Metres[] => [...new Set(places)].sort((a, b) => a - b)

/** The station reached by going `length` m (negative: down-station) along the line at `offset`; null beyond the ends. */
function stationAfter(alignment: HorizontalAlignment, from: Metres, offset: Metres, length: Metres): Metres | null {
  if (length === 0) return from
  const limit = length > 0 ? endStation(alignment) : alignment.startStation
  const missing = (station: Metres): number => offsetLength(alignment, from, station, offset) - length
  const toward = Math.sign(length)
  const reached = (station: Metres): boolean => toward * missing(station) >= 0
  const near = toward * (from + 2 * length - limit) > 0 ? limit : from + 2 * length
  const bracket = reached(near) ? near : limit
  if (!reached(bracket)) return Math.abs(missing(limit)) < 1e-6 ? limit : null
  return rootBetween(missing, from, bracket, 1e-11)
}
