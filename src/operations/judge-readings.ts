import { instruments } from '../core/measurement/instruments.ts'
import type { Reading } from '../core/measurement/reading.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { err, ok, type Result } from '../core/result.ts'
import { judgeRun } from '../core/verdicts/judge-run.ts'
import type { Judgement } from '../core/verdicts/verdict.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RequiredRun } from './require-run.ts'

export interface JudgedRun extends RequiredRun {
  readonly readings: readonly Reading[]
  readonly judgement: Judgement
  /** Requirements judged by a limit that nobody confirmed against a document. */
  readonly unconfirmed: readonly Requirement[]
}

/**
 * The judged run; or what is wrong with the readings: one that answers nothing of this run, a choice that is not on
 * offer, an instrument that nobody described.
 */
export function judgeReadings(
  file: string,
  required: RequiredRun,
  readings: readonly Reading[],
): Result<JudgedRun, readonly InputProblem[]> {
  const problems = readings.flatMap((reading, i) => problemsOf(file, `readings[${i}]`, reading, required.requirements))
  if (problems.length > 0) return err(problems)
  return ok(judgeKnown(required, readings))
}

/** The same for readings that were checked when they were taken. */
export function judgeKnown(required: RequiredRun, readings: readonly Reading[]): JudgedRun {
  const { run, model, requirements } = required
  const judgement = judgeRun(model, requirements, readings, {
    rule: run.decisionRule,
    instruments,
    work: run.work,
    letting: run.letting,
  })
  return {
    ...required,
    readings,
    judgement,
    unconfirmed: requirements.filter(({ confirmation }) => confirmation === 'from memory'),
  }
}

function problemsOf(
  file: string,
  place: string,
  reading: Reading,
  requirements: readonly Requirement[],
): InputProblem[] {
  const problems: InputProblem[] = []
  const requirement = requirements.find(({ id }) => id === reading.of)
  if (requirement === undefined && !measurables(requirements).has(reading.of)) {
    problems.push({
      file,
      place: `${place}.of`,
      expected: 'the id of a requirement of this run (see the requirements command)',
      found: JSON.stringify(reading.of),
    })
  }
  const { answer } = reading
  if (
    requirement?.look.kind === 'choose' &&
    answer.kind === 'choice' &&
    !requirement.look.choices.some(({ id }) => id === answer.choice)
  ) {
    const offered = requirement.look.choices.map(({ id }) => JSON.stringify(id)).join(' or ')
    problems.push({ file, place: `${place}.choice`, expected: offered, found: JSON.stringify(answer.choice) })
  }
  const kinds = { length: 'measure', choice: 'choose', confirmed: 'confirm' } as const
  if (
    requirement !== undefined &&
    answer.kind in kinds &&
    kinds[answer.kind as keyof typeof kinds] !== requirement.look.kind
  ) {
    problems.push({
      file,
      place,
      expected: answerFor(requirement),
      found: `a ${answer.kind === 'length' ? 'length' : answer.kind === 'choice' ? 'choice' : 'confirmation'}`,
    })
  }
  if (reading.instrument !== null && !instruments.some(({ id }) => id === reading.instrument)) {
    const known = instruments.map(({ id }) => id).join(', ')
    problems.push({
      file,
      place: `${place}.instrument`,
      expected: `one of ${known}`,
      found: JSON.stringify(reading.instrument),
    })
  }
  return problems
}

function answerFor(requirement: Requirement): string {
  switch (requirement.look.kind) {
    case 'measure':
      return 'a length as "value"'
    case 'choose':
      return 'one of its choices as "choice"'
    case 'confirm':
      return 'true or false as "confirmed"'
    case 'record':
      return 'no reading: it is decided from the run file'
  }
}

/** What can be read besides the requirements themselves: offsets and positions from which others are computed. */
export function measurables(requirements: readonly Requirement[]): ReadonlySet<string> {
  const ids = new Set<string>()
  for (const { look } of requirements) {
    if (look.kind !== 'measure' || look.orFrom === null) continue
    const from = look.orFrom
    if (from.kind === 'difference') ids.add(from.from).add(from.to)
    else if (from.kind === 'middle ordinate') for (const { reading } of from.points) ids.add(reading)
    else for (const { reading } of [from.point, ...from.line]) ids.add(reading)
  }
  return ids
}
