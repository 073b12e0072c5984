import type { SeenKind, Severity, Stated } from '../hardware/hardware-sheet.ts'
import type { Rated } from '../hardware/severity.ts'
import type { Side } from '../measurement/reading.ts'
import type { Place } from '../requirements/requirement.ts'
import type { RemedyStep } from './remedy.ts'
import type {
  Acceptance,
  Finding,
  Found,
  Measured,
  NotRechecked,
  VerdictReason,
  VerdictWord,
  WithoutEffect,
} from './verdict.ts'

/** What is said of verdicts and findings. */
export type VerdictSaying =
  | VerdictReason
  | NotRechecked
  | Acceptance
  | WithoutEffect
  | Found
  | Remedy
  | RemedyStep
  | MeasuredValue
  | { readonly kind: 'side'; readonly side: Side }
  | VerdictsAtPlace
  | { readonly kind: 'verdict'; readonly word: VerdictWord }
  | WhatWasFound
  | WhatMustBe
  | { readonly kind: 'seen'; readonly what: SeenKind }
  | { readonly kind: 'severity'; readonly rated: Stated<Rated> }
  | { readonly kind: 'how bad'; readonly severity: Severity }
  | { readonly kind: 'fails at'; readonly places: readonly Place[] }

/** What came out at one place: the worst, how many are as bad, and of how many that apply at all. */
interface VerdictsAtPlace {
  readonly kind: 'verdicts at place'
  readonly place: Place
  readonly worst: VerdictWord
  readonly count: number
  readonly applying: number
}

/** Of what is found, what it is; and what it must be: told apart wherever both are shown. */
export interface WhatWasFound extends Pick<Found, 'parts'> {
  readonly kind: 'what was found'
}
export interface WhatMustBe extends Pick<Found, 'parts'> {
  readonly kind: 'what must be'
}

export const whatWasFound = ({ parts }: Found): WhatWasFound => ({ kind: 'what was found', parts })
export const whatMustBe = ({ parts }: Found): WhatMustBe => ({ kind: 'what must be', parts })

/** The steps of a remedy, in their order. */
export interface Remedy {
  readonly kind: 'remedy'
  readonly steps: readonly RemedyStep[]
}

export const remedyOf = ({ steps }: Pick<Finding, 'steps'>): Remedy => ({ kind: 'remedy', steps })

/** A measured value with its unit; of an offset with its side. */
export interface MeasuredValue extends Pick<Measured, 'value' | 'unit' | 'side'> {
  readonly kind: 'measured value'
}

export const measuredValue = ({ value, unit, side }: Pick<Measured, 'value' | 'unit' | 'side'>): MeasuredValue => ({
  kind: 'measured value',
  value,
  unit,
  ...(side === undefined ? {} : { side }),
})
