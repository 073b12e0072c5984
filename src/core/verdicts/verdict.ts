import type { Stated } from '../hardware/hardware-sheet.ts'
import type { Rated } from '../hardware/severity.ts'
import type { TestAnswer } from '../hardware/tested-criteria.ts'
import type { Doubt } from '../measurement/doubt.ts'
import type { Reading } from '../measurement/reading.ts'
import type { Place, RecordRule, RequirementChoice } from '../requirements/requirement.ts'
import type { RequirementText } from '../requirements/requirement-saying.ts'
import type { LengthUnit } from '../units/exact-length.ts'
import type { QuantityKind, Unit } from '../units/quantity-kinds.ts'
import type { PlacedFreeFinding } from './free-findings.ts'
import type { RemedyStep } from './remedy.ts'

export type VerdictWord = 'meets' | 'fails' | 'too close' | 'unread' | 'does not apply'

/** What a reading means for a requirement. */
export interface Verdict {
  readonly requirement: string
  readonly place: Place
  readonly verdict: VerdictWord
  readonly because: VerdictReason
  /** Ids of the readings it rests on. */
  readonly readings: readonly string[]
  readonly sheet: string
  readonly sheetVersion: string
}

/** What is decided on one requirement. */
export type Decided = Pick<Verdict, 'verdict' | 'because' | 'readings'>

/** Why; numbers in the limit's own unit. */
export type VerdictReason =
  | Measured
  | ({ readonly kind: 'chosen'; readonly choice: string } & Pick<RequirementChoice, 'label' | 'right'>)
  | { readonly kind: 'confirmed'; readonly yes: boolean }
  | { readonly kind: 'nobody looked' }
  | { readonly kind: 'could not be seen' }
  | { readonly kind: 'set aside'; readonly because: string; readonly by: string }
  | { readonly kind: 'may not be set aside'; readonly because: string; readonly by: string }
  | { readonly kind: 'readings missing'; readonly missing: readonly MissingReading[] }
  | { readonly kind: 'answer of another kind'; readonly expected: QuantityKind | 'choice' | 'confirmation' }
  | { readonly kind: 'no limit stated' }
  | { readonly kind: 'side not stated' }
  | (Extract<RecordRule, { kind: 'criteria' }> & { readonly answer: TestAnswer })
  | Exclude<RecordRule, { kind: 'criteria' }>
  | Counted

/** What the count of a standing run says, where nobody read it; it is told of only where it is wrong. */
export type Counted =
  | ({ readonly kind: 'counted' } & Pick<RequirementChoice, 'id' | 'label'>)
  | ({ readonly kind: 'measured at the count' } & Pick<Measured, 'value' | 'unit'>)

/** What nobody read of those that a value is computed from. */
export interface MissingReading {
  /** As a reading names it, `post-3/along`. */
  readonly of: string
  /** Number of the post; null where the run has none of that name. */
  readonly post: number | null
  /** Its distance along the rail, or its offset from the line. */
  readonly what: 'along' | 'offset'
}

export interface Measured {
  readonly kind: 'measured'
  /** An offset is positive away from traffic. */
  readonly value: number
  readonly unit: Unit
  /** Distance from the nearest limit, positive inside. */
  readonly margin: number
  /** Standard uncertainty (k = 1) at this value. */
  readonly uncertainty: number
  /** The two parts of it, in `unit`, where it grows with the value; left out where every value is as doubtful. */
  readonly doubt?: Doubt
  /** Guard band: how far inside the limit the value has to lie to be accepted. */
  readonly guard: number
  /** Probability that the true value lies within the limits (JCGM 106:2012, 7.2 to 7.4). */
  readonly probability: number
  readonly computed: boolean
  /** Of an offset: whether its side is known; one without it fails on either. Left out for what is no offset. */
  readonly side?: 'stated' | 'not stated'
}

/** JCGM 106:2012: acceptance with a guard band of `multiple` times U = 2u, or simple acceptance. */
export type DecisionRule = { readonly kind: 'guard band'; readonly multiple: number } | { readonly kind: 'simple' }

/** What is wrong at one place from one cause. */
export interface Finding {
  /** Of the cause and its place: the first requirement it stands on. Mending another cause does not change it. */
  readonly id: string
  readonly place: Place
  readonly what: Found
  /** What to do about it. */
  readonly steps: readonly RemedyStep[]
  /** Those that the cause keeps from being met. */
  readonly requirements: readonly string[]
  /** The worst of theirs. */
  readonly severity: Stated<Rated>
}

/** What is wrong at one place from one cause, part by part. */
export interface Found {
  readonly kind: 'found'
  readonly parts: readonly FoundPart[]
}

export type FoundPart =
  /** A rule that is not met, and what was read. */
  | { readonly kind: 'against a rule'; readonly because: VerdictReason; readonly must: RequirementText }
  | {
      readonly kind: 'posts out of place'
      readonly from: number
      readonly to: number
      /** How far, either way. */
      readonly by: number
      readonly unit: LengthUnit
      /** What was read of the spaces at their ends. */
      readonly because: readonly VerdictReason[]
    }
  | {
      readonly kind: 'panels and splices'
      readonly panels: readonly { readonly place: Place; readonly because: VerdictReason }[]
      /** Numbers of the splices that are out of place. */
      readonly splices: readonly number[]
    }

export type Acceptance = (
  | { readonly kind: 'acceptable' }
  /** All that was not set aside is acceptable; `by` are the names of those who set the rest aside, each once. */
  | { readonly kind: 'acceptable except'; readonly setAside: number; readonly by: readonly string[] }
  | { readonly kind: 'not acceptable' }
  | { readonly kind: 'not yet known' }
) & {
  /** How many free findings stand; left out for none. */
  readonly freeFindings?: number | undefined
}

/** A reading with the verdict that the requirement had once it was taken. */
export interface ReadVerdict {
  readonly reading: Reading
  readonly verdict: Verdict
}

/** How a requirement stands that failed once. */
export interface FailureHistory {
  readonly requirement: string
  /** The last reading by which it failed; null where it failed by the count of what stands. */
  readonly failed: ReadVerdict | null
  /** The last reading since, by which it no longer fails; null while it fails. */
  readonly since: ReadVerdict | null
  /** The last reading since that named the finding and proved that it was put right, or set it aside with a reason. */
  readonly closedBy: ReadVerdict | null
}

/** Something that the record does not prove. */
export interface Unproven {
  readonly requirement: string
  readonly place: Place
  readonly because: VerdictReason | NotRechecked
}

/** It failed and was read again, but no reading that names the finding proves that it was put right. */
export interface NotRechecked {
  readonly kind: 'not rechecked'
}

/**
 * Something that a reading says beside its answer and that counts for nothing. New readings that say such a thing are
 * refused; what a log holds already stays in it and is shown as what it is.
 */
export interface WithoutEffect {
  /** Id of the reading that says it. */
  readonly reading: string
  readonly kind: 'correction' | 'recheck' | 'setting aside'
  /** Id of the reading that it says it corrects, of the finding, or of what it says does not apply. */
  readonly names: string
}

export interface Judgement {
  readonly acceptance: Acceptance
  readonly verdicts: readonly Verdict[]
  readonly findings: readonly Finding[]
  readonly freeFindings: readonly PlacedFreeFinding[]
  readonly unproven: readonly Unproven[]
  /** Every requirement that fails or once failed, by its id. */
  readonly failures: ReadonlyMap<string, FailureHistory>
  /** What readings say beside their answers and counts for nothing. */
  readonly withoutEffect: readonly WithoutEffect[]
}
