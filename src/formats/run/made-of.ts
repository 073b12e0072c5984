import * as z from 'zod/mini'
import type { FitCheck } from '../../core/fit/fit-check.ts'
import type { DirectionNeed } from '../../core/need/direction-need.ts'
import { listOf, ranged } from '../range/ranged.ts'
import { siteCheckShape } from './site-check-shape.ts'

/** The site that a run was made of, what it needed and what was checked of it, as all that was when the run was made. */
export interface MadeOf {
  /** The site's file, word for word; it is looked at only where somebody opens it. */
  readonly site: { readonly format: 'lapwise-site/1'; readonly name?: unknown; readonly [field: string]: unknown }
  readonly need: FoundNeed
  /** Each once, in the order in which a designer asks. */
  readonly checks: readonly FitCheck[]
}

/** Where the barrier had to begin and end. */
interface FoundNeed {
  readonly unit: 'ft' | 'm'
  readonly approach: FoundDirection
  /** Null where no opposing traffic could reach the hazards. */
  readonly departure: FoundDirection | null
}

/** Lengths in the need's unit, as the report of a need has them. */
export type FoundDirection = Pick<
  DirectionNeed,
  'station' | 'lengthOfNeed' | 'lateralAtEnd' | 'runoutLength' | 'clearZone' | 'governs'
>

const length = ranged('neededLength')

const direction = z.strictObject({
  ...{ station: ranged('station'), lengthOfNeed: length, lateralAtEnd: length, runoutLength: length },
  clearZone: length,
  governs: z.strictObject({
    hazard: z.nullable(z.string()),
    rule: z.enum(['parallel', 'flared', 'tangent path', 'runout path', 'nothing to shield']),
    lateralExtent: z.nullable(length),
    extentBy: z.nullable(z.enum(['far side', 'clear zone'])),
  }),
})

export const madeOfShape = z.strictObject({
  site: z.looseObject({ format: z.literal('lapwise-site/1') }),
  need: z.strictObject({ unit: z.enum(['ft', 'm']), approach: direction, departure: z.nullable(direction) }),
  checks: listOf(z.lazy(siteCheckShape), 'siteChecks'),
})
