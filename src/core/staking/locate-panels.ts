import { pointToStationOffset } from '../alignment/station-offset.ts'
import { type Point, pointBetween } from '../geometry/point.ts'
import { ok, type Result } from '../result.ts'
import type { Barrier } from './barrier.ts'
import { elevationAt, locateRail, type RailPlace, type StakingRefusal } from './locate-rail.ts'
import { panelChords } from './panel-chords.ts'
import type { StakingFrame } from './staking-frame.ts'

/**
 * Where places of the rail lie as its panels hang: on the line of the rail, and within a panel that its sheet wants
 * straight on the chord between the panel's splices, which on a curve the line leaves.
 *
 * Splices keep their distance along the line, so the chord is shorter than the panel by s³/24R²: 0.6 mm for 12 ft 6 in at
 * R = 60 m, which the slots of a splice take up.
 * @param alongInches rising
 */
export function locatePanels(
  barrier: Barrier,
  frame: StakingFrame,
  alongInches: readonly number[],
): Result<readonly RailPlace[], StakingRefusal> {
  const chords = panelChords(barrier, alongInches)
  const located = locateRail(barrier, frame, chords.along)
  if (!located.ok) return located
  const places = located.value
  return ok(
    chords.places.map(({ at, within }) => {
      const onLine = places[at]!
      if (within === null) return onLine
      const position = pointBetween(places[within.from]!.position, places[within.to]!.position, within.share)
      return { ...onLine, ...placeOf(frame, position, onLine), position }
    }),
  )
}

/** Station and offset of a point near a place whose station is known, with its height. */
function placeOf(frame: StakingFrame, position: Point, near: RailPlace) {
  const away = ({ station }: { readonly station: number }): number => Math.abs(station - near.station)
  const [foot] = [...pointToStationOffset(frame.alignment, position)].sort((a, b) => away(a) - away(b))
  if (foot === undefined) throw new RangeError(`no station beside the panel at station ${near.station}`)
  const { station, offset } = foot
  return { station, offset, elevation: elevationAt(frame, station, offset) }
}
