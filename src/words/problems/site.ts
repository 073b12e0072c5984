import type { LengthUnit } from '../../core/units/exact-length.ts'
import type { Kinds } from '../kinds.ts'
import type { ShapeProblem } from './shape.ts'

/** What a site has to say so that its parts go together. Numbers in the unit of its file. */
export type SiteProblem =
  | Kinds<'outside travelled way' | 'far side' | 'no slope of vertical face' | 'no median' | 'width of median'>
  | Kinds<'flare rate' | 'slope' | 'station beyond equation'>
  | { readonly kind: 'beyond near side'; readonly value: number; readonly unit: LengthUnit }
  | { readonly kind: 'side of first hazard'; readonly side: string }
  | {
      readonly kind: 'barrier in front'
      readonly hazard: string
      readonly bound: 'at most' | 'less than'
      readonly value: number
      readonly unit: LengthUnit
    }
  /** @property from  as it stands in the file */
  | { readonly kind: 'station after'; readonly from: string }
  | { readonly kind: 'station on alignment'; readonly from: number; readonly to: number }
  | { readonly kind: 'one place'; readonly places: readonly number[] }
  | { readonly kind: 'alignment to'; readonly end: ShapeProblem }
  | { readonly kind: 'elements'; readonly count: number }
