import type { FitSaying } from '../core/fit/fit-saying.ts'
import type { HardwareSaying } from '../core/hardware/hardware-saying.ts'
import type { KeySaying } from '../core/hardware/key-saying.ts'
import type { LimitsSaying } from '../core/hardware/limits-saying.ts'
import type { SheetText } from '../core/hardware/sheet-text.ts'
import type { LayoutSaying } from '../core/layout/layout-saying.ts'
import type { ShippedInstrumentSaying } from '../core/measurement/instrument-saying.ts'
import type { NeedSaying } from '../core/need/need-saying.ts'
import type { QuantitySaying } from '../core/quantities/quantity-saying.ts'
import type { RecordSaying } from '../core/record/record-saying.ts'
import type { Place } from '../core/requirements/requirement.ts'
import type { RequirementSaying } from '../core/requirements/requirement-saying.ts'
import type { StakeSaying } from '../core/staking/stake-saying.ts'
import type { Theirs } from '../core/theirs.ts'
import type { VerdictSaying } from '../core/verdicts/saying.ts'
import type { Answer, Rejection } from './answers.ts'
import type { ProblemSaying } from './problems/problem-saying.ts'

/** Everything that is said to a person, as data. The union of each part's own; a kind belongs to one part. */
export type Saying =
  | FitSaying
  | HardwareSaying
  | KeySaying
  | LayoutSaying
  | LimitsSaying
  | NeedSaying
  | Place
  | QuantitySaying
  | RecordSaying
  | RequirementSaying
  | SheetText
  | ShippedInstrumentSaying
  | StakeSaying
  | Theirs
  | VerdictSaying
  | ProblemSaying
  | Answer
  | Rejection
