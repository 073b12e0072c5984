import { riseAt } from '../alignment/cross-slope.ts'
import { checkOffset, type TighterThanOffset } from '../alignment/offset-line.ts'
import { stationOffsetToPoint } from '../alignment/station-offset.ts'
import { profileAt } from '../alignment/vertical-alignment.ts'
import type { Point } from '../geometry/point.ts'
import { err, ok, type Result } from '../result.ts'
import { inches, type Metres } from '../units/quantity.ts'
import type { Barrier } from './barrier.ts'
import { checkFlareGround, type FlareOnCurve } from './check-flare-ground.ts'
import { type RailLine, type RailLineRefusal, railLine } from './rail-line.ts'
import { outwardSign, type StakingFrame } from './staking-frame.ts'
import { type OffAlignment, stationsAlong } from './stations-along.ts'

/** A place of the face of rail on the ground. */
export interface RailPlace {
  /** Along the rail from the centre of post 1. */
  readonly alongInches: number
  /** Continuous. */
  readonly station: Metres
  /** From the alignment, positive right looking up-station. */
  readonly offset: Metres
  readonly position: Point
  /** Of the road's surface, extended with its cross slope; null where the road's heights are not known. */
  readonly elevation: Metres | null
}

export type StakingRefusal = OffAlignment | TighterThanOffset | RailLineRefusal | FlareOnCurve

/** Where places of the rail's line lie, by station and offset. @param alongInches rising */
export function locateRail(
  barrier: Barrier,
  frame: StakingFrame,
  alongInches: readonly number[],
): Result<readonly RailPlace[], StakingRefusal> {
  const line = railLine(barrier)
  if (!line.ok) return line
  if (alongInches.length === 0) return ok([])
  const ground = checkFlareGround(barrier, frame, line.value, datumOf(barrier))
  if (!ground.ok) return ground
  const rails = alongInches.map(inches)
  const stations = stationsAlong(frame, line.value, datumOf(barrier), rails)
  if (!stations.ok) return stations
  const tight = checkTightness(frame, line.value, stations.value)
  if (tight !== null) return err(tight)
  return ok(
    alongInches.map((along, i) => {
      const station = stations.value[i]!
      const offset = frame.offset + outwardSign(frame.side) * line.value.awayAt(rails[i]!)
      return {
        alongInches: along,
        station,
        offset,
        position: pointAt(frame, station, offset),
        elevation: elevationAt(frame, station, offset),
      }
    }),
  )
}

/** The run's datum along the rail from post 1, m. */
export const datumOf = ({ layout }: Barrier): Metres => inches(-layout.postOneAtInches)

function checkTightness(frame: StakingFrame, line: RailLine, stations: readonly Metres[]): TighterThanOffset | null {
  const [from, to] = [Math.min(...stations), Math.max(...stations)]
  const outermost = frame.offset + outwardSign(frame.side) * line.farthest
  return checkOffset(frame.alignment, from, to, frame.offset) ?? checkOffset(frame.alignment, from, to, outermost)
}

function pointAt(frame: StakingFrame, station: Metres, offset: Metres): Point {
  const point = stationOffsetToPoint(frame.alignment, { station, offset })
  if (!point.ok) throw new RangeError(`station ${station} was found on the alignment: ${point.error.kind}`)
  return point.value
}

/** Height of the road's surface, extended; null where it is not known. */
export function elevationAt({ surface }: StakingFrame, station: Metres, offset: Metres): Metres | null {
  const profile = surface === null ? null : profileAt(surface.profile, station)
  return surface === null || profile === null ? null : profile.elevation + riseAt(surface.crossSlopes, station, offset)
}
