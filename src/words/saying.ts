import type { FitSaying } from '../core/fit/fit-saying.ts'
import type { HardwareSaying } from '../core/hardware/hardware-saying.ts'
import type { LayoutSaying } from '../core/layout/layout-saying.ts'
import type { NeedSaying } from '../core/need/need-saying.ts'
import type { QuantitySaying } from '../core/quantities/quantity-saying.ts'
import type { RecordSaying } from '../core/record/record-saying.ts'
import type { Place } from '../core/requirements/requirement.ts'
import type { StakeSaying } from '../core/staking/stake-saying.ts'
import type { Theirs } from '../core/theirs.ts'
import type { VerdictSaying } from '../core/verdicts/saying.ts'
import type { Answer, Rejection } from './answers.ts'
import type { ProblemSaying } from './problems/problem-saying.ts'

/** Everything that is said to a person, as data. The union of each part's own; a kind belongs to one part. */
export type Saying =
  | FitSaying
  | HardwareSaying
  | LayoutSaying
  | NeedSaying
  | Place
  | QuantitySaying
  | RecordSaying
  | StakeSaying
  | Theirs
  | VerdictSaying
  | ProblemSaying
  | Answer
  | Rejection
