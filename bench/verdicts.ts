import type { Dimension } from '../src/core/hardware/hardware-sheet.ts'
import { instruments } from '../src/core/measurement/instruments.ts'
import type { Answer, Reading } from '../src/core/measurement/reading.ts'
import { deriveRequirements } from '../src/core/requirements/derive-requirements.ts'
import type { Requirement } from '../src/core/requirements/requirement.ts'
import type { RunModel } from '../src/core/requirements/run-model.ts'
import { exactValue, type Unit } from '../src/core/units/quantity-kinds.ts'
import { defaultRule, judgeRequirements } from '../src/core/verdicts/judge-requirements.ts'
import { benchRequest, bestLayout } from './layouts.ts'
import { type BenchRow, figure, medianMilliseconds } from './measure.ts'

const wanted = 1_000_000

/** How fast one core judges the readings of a fully read 1,000 ft run: the median pass of those that make a million. */
export function benchVerdicts(): readonly BenchRow[] {
  const request = benchRequest(1000)
  const model: RunModel = {
    layout: bestLayout(request),
    system: request.system,
    first: request.first,
    second: request.second,
    flare: null,
    work: 'new',
    letting: '2024-01-01',
    speed: null,
    opposingReaches: false,
  }
  const requirements = deriveRequirements(model)
  const readings = readEverything(model, requirements)
  const rules = { rule: defaultRule, instruments }
  const judge = () => judgeRequirements(requirements, readings, rules)
  const unread = judge().filter(({ verdict }) => verdict === 'unread').length
  const passes = Math.ceil(wanted / readings.length)
  const pass = medianMilliseconds(judge, Math.ceil(passes / 5), passes)
  const perSecond = (judged: number): string => `${figure((1000 * judged) / pass)} a second`
  return [
    {
      what: `readings judged, ${figure(readings.length)} in a pass of ${figure(pass)} ms (${unread} unread)`,
      figure: perSecond(readings.length),
      aim: 'over 1,000,000',
    },
    {
      what: `verdicts given, ${figure(requirements.length)} in a pass`,
      figure: perSecond(requirements.length),
      aim: '',
    },
  ]
}

/** A good reading for each requirement; where a value is computed, the places of the posts it is computed from. */
export function readEverything(model: RunModel, requirements: readonly Requirement[]): readonly Reading[] {
  const places = model.layout.posts.flatMap(({ number, alongInches }) => [
    readingOf(`post-${number}/along`, measuredAnswer(alongInches, 'in')),
    readingOf(`post-${number}/lateral-offset`, measuredAnswer(0, 'in')),
  ])
  return [...places, ...requirements.flatMap(goodReading)]
}

/** One that meets the requirement; none where other readings or the run file decide it. */
export function goodReading({ id, look }: Requirement): Reading[] {
  switch (look.kind) {
    case 'measure':
      return look.orFrom === null ? [readingOf(id, measuredAnswer(within(look.limits), look.limits.unit))] : []
    case 'choose':
      return [readingOf(id, { kind: 'choice', choice: look.choices.find(({ right }) => right)!.id })]
    case 'confirm':
      return [readingOf(id, { kind: 'confirmed', yes: true })]
    case 'record':
      return []
  }
}

function within({ nominal, low, high }: Dimension<Unit>): number {
  if (low !== 'notStated' && high !== 'notStated') return (low + high) / 2
  if (nominal !== 'notStated') return nominal
  return low !== 'notStated' ? low + 1 : high !== 'notStated' ? high / 2 : 0
}

const measuredAnswer = (value: number, unit: Unit): Answer => ({
  kind: 'measured',
  value: exactValue(value, unit),
  unit,
  resolution: null,
})

const readingOf = (of: string, answer: Answer): Reading => ({
  id: `reading of ${of}`,
  of,
  answer,
  instrument: 'tape-and-level',
  uncertainty: null,
  by: 'bench',
  at: '2024-01-01T08:00:00Z',
  where: null,
  photos: [],
  corrects: null,
  rechecks: null,
  together: null,
})
