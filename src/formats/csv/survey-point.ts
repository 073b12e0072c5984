import type { Point } from '../../core/geometry/point.ts'
import type { Stake } from '../../core/staking/stake-run.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { Print } from '../../words/print.ts'

/** A point as surveyors pass it on; lengths in m, whatever the file's unit. */
export interface SurveyPoint {
  readonly name: string
  readonly position: Point
  readonly elevation: Metres | null
  readonly code: string
  readonly description: string
}

export const surveyPointOf = ({ point, position, elevation, code, purpose }: Stake, print: Print): SurveyPoint => ({
  name: String(point),
  position,
  elevation,
  code,
  description: print.say(purpose),
})
