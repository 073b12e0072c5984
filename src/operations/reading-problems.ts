import { instrumentsReading } from '../core/measurement/instruments.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { readableIn } from '../core/requirements/readable-in.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { isLengthUnit, kindOf } from '../core/units/quantity-kinds.ts'
import { recheckedFinding } from '../core/verdicts/rechecks.ts'
import { provenBy } from '../core/verdicts/without-effect.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import { readingFault } from '../formats/range/reading-range.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { RequiredRun } from './require-by.ts'

/** What an earlier reading was read of, by its id. */
export type Earlier = ReadonlyMap<string, string>

/**
 * What is wrong with one reading of the run; empty when it can be taken in.
 * @param place    of the reading in `file`; empty when it is the whole file
 * @param earlier  what stands in the log before it
 */
export type ReadingCheck = (file: string, place: string, reading: Reading, earlier: Earlier) => readonly InputProblem[]

/**
 * The check that every reading passes before it is taken in, wherever it comes from: that it answers something of this
 * run in a way that is on offer, with an instrument that somebody described, and that what it corrects and rechecks is
 * for it to correct and recheck.
 */
export function readingCheck({ run, model, requirements }: RequiredRun): ReadingCheck {
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  const readable = readableIn({ model, requirements })
  const proven = provenBy(requirements)
  const all = instrumentsOf(run)
  return (file, place, reading, earlier) => {
    const problem: Problem = (field, expected, found) => {
      const at = [place, field].filter((part) => part !== '').join('.')
      return { file, place: at, expected, found }
    }
    const { of, answer, corrects, rechecks, instrument } = reading
    const requirement = byId.get(of)
    const problems: InputProblem[] = []
    if (answer.kind === 'does not apply' && requirement?.maySetAside !== true)
      problems.push(problem('doesNotApply', noSettingAside(requirement), written(answer.because)))
    if (requirement !== undefined) problems.push(...inAnswer(reading, requirement, problem))
    else if (!readable.has(of)) problems.push(problem('of', { kind: 'requirement of run' }, written(of)))
    else if (answer.kind === 'measured' && !isLengthUnit(answer.unit))
      problems.push(
        problem(
          'value',
          { kind: 'measured answer', quantity: 'length' },
          { kind: 'quantity', quantity: kindOf(answer.unit) },
        ),
      )
    if (corrects !== null && earlier.get(corrects) !== of)
      problems.push(problem('corrects', { kind: 'earlier reading' }, written(corrects)))
    const provable = proven.get(of) ?? []
    if (rechecks !== null && provable.every((one) => recheckedFinding(reading, one, byId) === null))
      problems.push(problem('rechecks', recheckable(of, provable), written(rechecks)))
    const fitting = answer.kind === 'measured' ? instrumentsReading(all, kindOf(answer.unit)) : all
    const instruments = fitting.map(({ id }) => id)
    if (instrument !== null && !instruments.includes(instrument))
      problems.push(problem('instrument', { kind: 'one of names', names: instruments }, written(instrument)))
    return problems
  }
}

const noSettingAside = (requirement: Requirement | undefined): ProblemSaying =>
  requirement?.look.kind === 'record' ? { kind: 'answer to', look: 'record' } : { kind: 'no setting aside' }

type Problem = (field: string, expected: ProblemSaying, found: InputProblem['found']) => InputProblem

function inAnswer({ answer }: Reading, requirement: Requirement, problem: Problem): InputProblem[] {
  const { look } = requirement
  if (look.kind === 'choose' && answer.kind === 'choice' && !look.choices.some(({ id }) => id === answer.choice)) {
    const values = look.choices.map(({ id }) => JSON.stringify(id))
    return [problem('choice', { kind: 'one of values', values }, written(answer.choice))]
  }
  const given = givenBy(answer)
  if (given !== null && given.look !== look.kind) return [problem('', answerTo(look), given.found)]
  if (answer.kind !== 'measured' || look.kind !== 'measure') return []
  const quantity = kindOf(answer.unit)
  if (quantity !== kindOf(look.limits.unit)) return [problem('value', answerTo(look), { kind: 'quantity', quantity })]
  const beyond = readingFault(requirement, answer.value)
  const { value, unit } = answer
  return beyond === null ? [] : [problem('value', beyond, { kind: 'value read', value, unit })]
}

/** What an answer gives, and to what it can be one; null for one that is none of what is asked. */
function givenBy(answer: Reading['answer']): { readonly look: string; readonly found: ProblemSaying } | null {
  switch (answer.kind) {
    case 'measured':
      return { look: 'measure', found: { kind: 'quantity', quantity: kindOf(answer.unit) } }
    case 'choice':
      return { look: 'choose', found: { kind: 'choice given' } }
    case 'confirmed':
      return { look: 'confirm', found: { kind: 'confirmation given' } }
    default:
      return null
  }
}

const answerTo = (look: Requirement['look']): ProblemSaying =>
  look.kind === 'measure'
    ? { kind: 'measured answer', quantity: kindOf(look.limits.unit) }
    : { kind: 'answer to', look: look.kind }

const recheckable = (of: string, provable: readonly Requirement[]): ProblemSaying =>
  provable.length === 0
    ? { kind: 'no recheck', of }
    : { kind: 'finding to recheck', of, findings: provable.map(({ id }) => id) }
