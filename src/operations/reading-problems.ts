import { instrumentsReading } from '../core/measurement/instruments.ts'
import type { MeasuredAnswer, Reading } from '../core/measurement/reading.ts'
import { measurableTopics } from '../core/requirements/derived-topics.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { printDecimal } from '../core/units/decimal-text.ts'
import { isLengthUnit, kindOf, valueIn } from '../core/units/quantity-kinds.ts'
import { recheckedFinding } from '../core/verdicts/rechecks.ts'
import { provenBy } from '../core/verdicts/without-effect.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { aKind } from '../formats/range/quantity-range.ts'
import { readingFault } from '../formats/range/reading-range.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { RequiredRun } from './require-run.ts'

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
    const problem = (field: string, expected: string, found: string): InputProblem => {
      const at = [place, field].filter((part) => part !== '').join('.')
      return { file, place: at, expected, found }
    }
    const { of, answer, corrects, rechecks, instrument } = reading
    const requirement = byId.get(of)
    const problems: InputProblem[] = []
    if (answer.kind === 'does not apply' && requirement?.maySetAside !== true)
      problems.push(problem('doesNotApply', noSettingAside(requirement), JSON.stringify(answer.because)))
    if (requirement !== undefined) problems.push(...inAnswer(reading, requirement, problem))
    else if (!readable.has(of))
      problems.push(
        problem('of', 'the id of a requirement of this run (see the requirements command)', JSON.stringify(of)),
      )
    else if (answer.kind === 'measured' && !isLengthUnit(answer.unit))
      problems.push(problem('value', 'a length as "value"', aKind(kindOf(answer.unit))))
    if (corrects !== null && earlier.get(corrects) !== of)
      problems.push(problem('corrects', 'the id of an earlier reading of the same thing', JSON.stringify(corrects)))
    const provable = proven.get(of) ?? []
    if (rechecks !== null && provable.every((one) => recheckedFinding(reading, one, byId) === null))
      problems.push(problem('rechecks', recheckable(of, provable), JSON.stringify(rechecks)))
    const fitting = answer.kind === 'measured' ? instrumentsReading(all, kindOf(answer.unit)) : all
    const instruments = fitting.map(({ id }) => id)
    if (instrument !== null && !instruments.includes(instrument))
      problems.push(problem('instrument', `one of ${instruments.join(', ')}`, JSON.stringify(instrument)))
    return problems
  }
}

const noSettingAside = (requirement: Requirement | undefined): string =>
  requirement?.look.kind === 'record'
    ? answerFor(requirement)
    : 'another answer: no sheet says that this may be set aside'

type Problem = (field: string, expected: string, found: string) => InputProblem

function inAnswer({ answer }: Reading, requirement: Requirement, problem: Problem): InputProblem[] {
  const { look } = requirement
  if (look.kind === 'choose' && answer.kind === 'choice' && !look.choices.some(({ id }) => id === answer.choice)) {
    const offered = look.choices.map(({ id }) => JSON.stringify(id)).join(' or ')
    return [problem('choice', offered, JSON.stringify(answer.choice))]
  }
  const kinds = { measured: 'measure', choice: 'choose', confirmed: 'confirm' } as const
  if (answer.kind in kinds && kinds[answer.kind as keyof typeof kinds] !== look.kind) {
    const found =
      answer.kind === 'measured' ? kindOf(answer.unit) : answer.kind === 'choice' ? 'choice' : 'confirmation'
    return [problem('', answerFor(requirement), `a ${found}`)]
  }
  if (answer.kind !== 'measured' || look.kind !== 'measure') return []
  const [given, wanted] = [kindOf(answer.unit), kindOf(look.limits.unit)]
  if (given !== wanted) return [problem('value', answerFor(requirement), aKind(given))]
  const beyond = readingFault(requirement, answer.value)
  return beyond === null ? [] : [problem('value', beyond, foundText(answer))]
}

const foundText = ({ value, unit }: MeasuredAnswer): string =>
  `${isLengthUnit(unit) ? printDecimal(value, unit, 3) : valueIn(value, unit)} ${unit}`

function answerFor({ look }: Requirement): string {
  switch (look.kind) {
    case 'measure':
      return `${aKind(kindOf(look.limits.unit))} as "value"`
    case 'choose':
      return 'one of its choices as "choice"'
    case 'confirm':
      return 'true or false as "confirmed"'
    case 'record':
      return 'no reading: it is decided from the run file'
  }
}

const recheckable = (of: string, provable: readonly Requirement[]): string =>
  provable.length === 0
    ? `null, because a reading of ${of} proves no finding put right`
    : `a finding that a reading of ${of} can prove put right: ${provable.map(({ id }) => id).join(', ')}`

/** Ids of everything of a run that can be read. */
export const readableIn = ({ model, requirements }: Pick<RequiredRun, 'model' | 'requirements'>): ReadonlySet<string> =>
  new Set([...requirements.map(({ id }) => id), ...measurables(model)])

/** What can be read besides the requirements themselves: where each post stands, from which spacing, flare and straightness are computed. */
const measurables = ({ layout }: RunModel): readonly string[] =>
  layout.posts.flatMap(({ id }) => measurableTopics.map((topic) => `${id}/${topic}`))
