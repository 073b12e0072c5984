import { type Instrument, instruments as shippedInstruments } from '../core/measurement/instruments.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { measurableTopics } from '../core/requirements/derived-topics.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { err, ok, type Result } from '../core/result.ts'
import { judgeRun } from '../core/verdicts/judge-run.ts'
import type { Judgement } from '../core/verdicts/verdict.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
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
  const known = {
    requirements: new Map(required.requirements.map((requirement) => [requirement.id, requirement])),
    measurables: measurables(required.model),
    instruments: instrumentsOf(required.run).map(({ id }) => id),
  }
  const problems = readings.flatMap((reading, i) => problemsOf(file, `readings[${i}]`, reading, known))
  if (problems.length > 0) return err(problems)
  return ok(judgeKnown(required, readings))
}

/** The same for readings that were checked when they were taken. */
export function judgeKnown(required: RequiredRun, readings: readonly Reading[]): JudgedRun {
  const { run, model, requirements } = required
  const judgement = judgeRun(model, requirements, readings, {
    rule: run.decisionRule,
    instruments: instrumentsOf(run),
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

/** The instruments in use: those that ship, replaced or joined by the run's own. */
export const instrumentsOf = (run: RunFile): readonly Instrument[] => [
  ...new Map([...shippedInstruments, ...run.instruments].map((instrument) => [instrument.id, instrument])).values(),
]

interface Known {
  readonly requirements: ReadonlyMap<string, Requirement>
  readonly measurables: ReadonlySet<string>
  readonly instruments: readonly string[]
}

function problemsOf(file: string, place: string, reading: Reading, known: Known): InputProblem[] {
  const problems: InputProblem[] = []
  const requirement = known.requirements.get(reading.of)
  if (requirement === undefined && !known.measurables.has(reading.of)) {
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
  if (reading.rechecks !== null && !known.requirements.has(reading.rechecks)) {
    problems.push({
      file,
      place: `${place}.rechecks`,
      expected: 'the id of a finding: that of a requirement of this run',
      found: JSON.stringify(reading.rechecks),
    })
  }
  if (reading.instrument !== null && !known.instruments.includes(reading.instrument)) {
    problems.push({
      file,
      place: `${place}.instrument`,
      expected: `one of ${known.instruments.join(', ')}`,
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

/** What can be read besides the requirements themselves: where each post stands, from which spacing, flare and straightness are computed. */
const measurables = ({ layout }: RunModel): ReadonlySet<string> =>
  new Set(layout.posts.flatMap(({ number }) => measurableTopics.map((topic) => `post-${number}/${topic}`)))
