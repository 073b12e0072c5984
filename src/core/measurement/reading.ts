import type { Steps, Unit } from '../units/quantity-kinds.ts'

/** What someone measured or saw. Never changed; a correction is another reading that names this one. */
export interface Reading {
  readonly id: string
  /** The requirement it answers, or what it measures, as `post-3/lateral-offset`. */
  readonly of: string
  readonly answer: Answer
  readonly instrument: string | null
  /** Standard uncertainty (k = 1) stated by the reader, in `unit`; null to take the instrument's. */
  readonly uncertainty: { readonly value: number; readonly unit: Unit } | null
  readonly by: string
  /** ISO 8601 date and time. */
  readonly at: string
  /** Where it was taken or from which surface, in words; null when not said. */
  readonly where: string | null
  /** What its person says beside the answer, in words; left out when nothing. Nothing is decided by it. */
  readonly note?: string
  readonly photos: readonly string[]
  readonly corrects: string | null
  /** The finding that this reading rechecks; null for a first look. */
  readonly rechecks: string | null
  /** Id of the version of the run that its person saw; left out where it was the first. */
  readonly version?: string
  /** A name that readings taken in one go for several places share; null for a reading taken by itself. */
  readonly together: string | null
}

/** On which side of the line that it is read from something stands: farther from traffic, or nearer. */
export type Side = 'away' | 'toward'

/** A value of any kind of quantity, which its unit tells. */
export interface MeasuredAnswer {
  readonly kind: 'measured'
  readonly value: Steps
  readonly unit: Unit
  /** Smallest step read, when the reader states it; null for the step to which the instrument is read. */
  readonly resolution: Steps | null
  /** Of an offset, on which side of the line; `value` is then not negative. Left out where nobody said it. */
  readonly side?: Side
}

export type Answer =
  | MeasuredAnswer
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'confirmed'; readonly yes: boolean }
  | { readonly kind: 'cannot see' }
  | { readonly kind: 'does not apply'; readonly because: string }
