// What `lapwise/core` offers to programs of others. Within this project the file that owns a thing is imported instead.
export {
  type HorizontalAlignment,
  layAlignment,
} from './alignment/horizontal-alignment.ts'
export {
  type NoPoint,
  pointToStationOffset,
  type StationOffset,
  stationOffsetToPoint,
} from './alignment/station-offset.ts'
export { checkFit } from './fit/check-fit.ts'
export type { FitFacts } from './fit/fit.ts'
export type { FitCheck } from './fit/fit-check.ts'
export type { Point } from './geometry/point.ts'
export type { EndSheet, HardwareSheet, LongitudinalSheet } from './hardware/hardware-sheet.ts'
export type { Layout, LayoutRequest, RunEnd } from './layout/layout.ts'
export type { Refusal } from './layout/refusal.ts'
export { type LayoutProblem, type LayoutSearch, solveLayout } from './layout/solve-layout.ts'
export { type Instrument, instruments } from './measurement/instruments.ts'
export type { Answer, Reading } from './measurement/reading.ts'
export type { DirectionNeed } from './need/direction-need.ts'
export { findNeed, type Need } from './need/need.ts'
export type { NeedRefusal } from './need/refusal.ts'
export { type Quantities, type QuantityRule, takeQuantities } from './quantities/take-quantities.ts'
export { deriveRequirements } from './requirements/derive-requirements.ts'
export type { Place, Requirement } from './requirements/requirement.ts'
export type { RunModel } from './requirements/run-model.ts'
export { err, ok, type Result } from './result.ts'
export type { Site } from './site/site.ts'
export type { Barrier } from './staking/barrier.ts'
export { type Stake, type Staking, stakeRun } from './staking/stake-run.ts'
export { type StakingFrame, straightFrame } from './staking/staking-frame.ts'
export { type ParsedLength, parseLength } from './units/length-text.ts'
export { type LengthPrintOptions, type LengthStyle, printLength } from './units/print-length.ts'
export { degrees, feet, inches, type Metres, metres, type Radians, usSurveyFeet } from './units/quantity.ts'
export { parseStation, printStation } from './units/station.ts'
export type { FreeFinding } from './verdicts/free-findings.ts'
export { defaultRule, type JudgingRules } from './verdicts/judge-requirements.ts'
export { judgeRun } from './verdicts/judge-run.ts'
export type { DecisionRule, Finding, Judgement, Verdict } from './verdicts/verdict.ts'
