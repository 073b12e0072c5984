import type { Reading } from '../core/measurement/reading.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { err, ok, type Result } from '../core/result.ts'
import { judgeRun } from '../core/verdicts/judge-run.ts'
import type { Judgement } from '../core/verdicts/verdict.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { type Unusual, unusualInReadings, unusualInRun } from '../formats/range/unusual.ts'
import { instrumentsOf } from './instruments-of.ts'
import { readingCheck } from './reading-problems.ts'
import type { RequiredRun } from './require-run.ts'

export interface JudgedRun extends RequiredRun {
  readonly readings: readonly Reading[]
  readonly judgement: Judgement
  /** Requirements judged by a limit that nobody confirmed against a document. */
  readonly unconfirmed: readonly Requirement[]
  /** What of the run file and the readings is seldom right. */
  readonly unusual: readonly Unusual[]
}

/**
 * The judged run; or what is wrong with the readings: one that answers nothing of this run, a choice that is not on
 * offer, an instrument that nobody described, a correction or recheck of something else.
 */
export function judgeReadings(
  file: string,
  required: RequiredRun,
  readings: readonly Reading[],
): Result<JudgedRun, readonly InputProblem[]> {
  const check = readingCheck(required)
  const earlier = new Map<string, string>()
  const problems = readings.flatMap((reading, i) => {
    const found = check(file, `readings[${i}]`, reading, earlier)
    earlier.set(reading.id, reading.of)
    return found
  })
  return problems.length > 0 ? err(problems) : ok(judgeKnown(required, readings))
}

/** The same for readings that were checked when they were taken in. */
export function judgeKnown(required: RequiredRun, readings: readonly Reading[]): JudgedRun {
  const { run, model, requirements } = required
  const judgement = judgeRun(model, requirements, readings, {
    rule: run.decisionRule,
    instruments: instrumentsOf(run),
  })
  return {
    ...required,
    readings,
    judgement,
    unconfirmed: requirements.filter(({ confirmation }) => confirmation === 'from memory'),
    unusual: [...unusualInRun(run), ...unusualInReadings(readings, requirements)],
  }
}
