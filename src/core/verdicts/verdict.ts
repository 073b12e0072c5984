import type { LengthUnit } from '../units/exact-length.ts'
import type { Place } from '../requirements/requirement.ts'

export type VerdictWord = 'meets' | 'fails' | 'too close' | 'unread' | 'does not apply'

/** What a reading means for a requirement. */
export interface Verdict {
  readonly requirement: string
  readonly place: Place
  readonly verdict: VerdictWord
  /** Distance from the nearest limit, positive inside, in the limit's unit; null when nothing was measured. */
  readonly margin: number | null
  readonly unit: LengthUnit | null
  /** The value judged, in the limit's unit; null when nothing was measured. */
  readonly value: number | null
  /** Standard uncertainty of that value, in the limit's unit. */
  readonly uncertainty: number | null
  /** Probability that the true value lies within the limits (JCGM 106:2012, 7.2); null when nothing was measured. */
  readonly probability: number | null
  readonly reason: string
  /** Ids of the readings it rests on. */
  readonly readings: readonly string[]
  readonly sheet: string
  readonly sheetVersion: string
}

/** JCGM 106:2012: acceptance with a guard band of `multiple` times U = 2u, or simple acceptance. */
export type DecisionRule = { readonly kind: 'guard band'; readonly multiple: number } | { readonly kind: 'simple' }

export interface Finding {
  /** Stable: the first requirement it stands on. */
  readonly id: string
  readonly place: Place
  readonly what: string
  readonly remedy: string
  readonly requirements: readonly string[]
}

export type Acceptance = 'acceptable' | 'not acceptable' | 'not yet known'

/** Something that the record does not prove. */
export interface Unproven {
  readonly requirement: string
  readonly place: Place
  readonly why: string
}

export interface Judgement {
  readonly acceptance: Acceptance
  readonly verdicts: readonly Verdict[]
  readonly findings: readonly Finding[]
  readonly unproven: readonly Unproven[]
  /** Limits in use that nobody confirmed against a document, with how often they were used. */
  readonly unconfirmed: readonly string[]
}
