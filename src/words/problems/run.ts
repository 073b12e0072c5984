import type { HardwareAtHeight } from '../../core/hardware/hardware-saying.ts'
import type { Refusal } from '../../core/layout/refusal.ts'
import type { GroundUnit } from '../../core/units/ground-unit.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { Kinds } from '../kinds.ts'

/** What a run has to be so that it can be read, laid out and placed on its road. */
export type RunProblem =
  | Kinds<'no opposing traffic' | 'start of flare' | 'stretch to shield' | 'from before to' | 'place of bridge'>
  | Kinds<'beyond start' | 'beyond first flare' | 'beyond first end', { readonly inches: number }>
  | Kinds<'at most inches' | 'longest run' | 'inches', { readonly inches: number }>
  | { readonly kind: 'stretch'; readonly fromInches: number; readonly toInches: number }
  | Kinds<'posts at most' | 'posts', { readonly posts: number }>
  | { readonly kind: 'sheet id'; readonly ids: readonly string[] }
  /** @property unit  name of the end unit by its sheet; @property systems  ids of the sheets that it joins */
  | { readonly kind: 'joined system'; readonly unit: HardwareAtHeight; readonly systems: readonly string[] }
  | { readonly kind: 'system named'; readonly system: HardwareAtHeight }
  // What was counted.
  | Kinds<'counted run' | 'nothing where counted' | 'end where counted' | 'end looked at'>
  | { readonly kind: 'at most counted'; readonly pieces: number }
  // The layout.
  | Kinds<'lawful run' | 'lawful layout' | 'within obstruction'>
  | { readonly kind: 'no lawful run'; readonly reasons: readonly Refusal[] }
  | {
      readonly kind: 'decided layout'
      readonly panels: readonly number[]
      readonly fromInches: number
      readonly reasons: readonly Refusal[]
    }
  // Its place on the road.
  | Kinds<'side of road' | 'traffic of left side' | 'station of alignment' | 'station with one meaning'>
  | { readonly kind: 'run within stations'; readonly from: Metres; readonly to: Metres }
  | { readonly kind: 'rail beyond stations'; readonly along: Metres }
  | { readonly kind: 'units of its road'; readonly road: GroundUnit }
  | { readonly kind: 'units of run'; readonly units: 'us' | 'metric' }
  | Kinds<'road without breaks'>
  | RoadBreak
  | Kinds<'radius beyond offset' | 'radius in metres', { readonly metres: Metres }>
  | Kinds<
      'stated flare offset' | 'flare to free end' | 'flare to bridge' | 'flare to standing run' | 'flare on straight'
    >
  | { readonly kind: 'flare clear of unit'; readonly sheet: string }
  | { readonly kind: 'bend inside unit'; readonly flareInches: number; readonly unitInches: number }
  | { readonly kind: 'area of reference'; readonly name: string; readonly code: number }
  | { readonly kind: 'outside area'; readonly of: string; readonly easting: number; readonly northing: number }
  // Where it begins and ends for pay.
  | Kinds<'run between boundaries'>
  | { readonly kind: 'boundary at post'; readonly end: 'first' | 'second'; readonly posts: number }
  | { readonly kind: 'post numbered'; readonly number: number }
  | { readonly kind: 'crossed boundaries'; readonly inches: number }

/** A place where a road does not go on as it ends; the station as it is written on stakes. */
export interface RoadBreak {
  readonly kind: 'break of road'
  readonly station: string
  readonly metres: Metres
  readonly degrees: number
}
