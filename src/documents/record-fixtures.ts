import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { solveLayout } from '../core/layout/solve-layout.ts'
import { instruments } from '../core/measurement/instruments.ts'
import { isOffset } from '../core/measurement/offset-side.ts'
import type { Answer, Reading } from '../core/measurement/reading.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { judgeRun } from '../core/verdicts/judge-run.ts'
import { type RunFile, readRun } from '../formats/run/run-file.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from '../words/english.ts'
import type { RecordInput } from './record-input.ts'

const cited = { source: 'practice', confirmation: 'common practice' } as const

/** A shipped sheet of which what has these topics may be set aside. */
function sheetOf<T extends HardwareSheet>(id: string, maySetAside: readonly string[]): T {
  const sheet = shippedSheets.find((one) => one.id === id) as T
  return { ...sheet, maySetAside: maySetAside.map((topic) => ({ topic, ...cited })) }
}

/** An invented run with a flared terminal and a trailing anchor, 27 3/4 in high. */
export const sampleRun = (changes: object = {}): RunFile => {
  const file = {
    format: 'lapwise-run/1',
    name: 'Birch Hollow fill',
    road: {
      route: 'County Road 22',
      side: 'right',
      datumStation: '208+40',
      speed: 55,
      traffic: 'two-way',
      opposingReaches: false,
    },
    work: 'standing',
    system: 'w-beam-post-splice-27-3-4',
    first: { sheet: 'flared-terminal-27-3-4' },
    second: { sheet: 'trailing-anchor-27-3-4' },
    need: { from: 0, to: '50 ft' },
    ...changes,
  }
  const read = readRun('run.json', JSON.stringify(file))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return read.value
}

/** The run with its best layout, judged by the readings that `readingsOf` takes of it. */
export function sampleInput(
  readingsOf: (requirements: readonly Requirement[]) => readonly Reading[],
  run = sampleRun(),
  maySetAside: readonly string[] = [],
): RecordInput {
  const system = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4', maySetAside)
  const first = {
    kind: 'unit',
    sheet: sheetOf<EndSheet>('flared-terminal-27-3-4', maySetAside),
    atInches: null,
  } as const
  const second = {
    kind: 'unit',
    sheet: sheetOf<EndSheet>('trailing-anchor-27-3-4', maySetAside),
    atInches: null,
  } as const
  const { need, stock, obstructions, reduced, standing, mayExtendInches, work, letting } = run
  const { opposingReaches } = run.road
  const speed = run.road.speed === null ? null : ({ value: run.road.speed, unit: 'mi/h' } as const)
  const solved = solveLayout({
    system,
    first,
    second,
    need,
    stock,
    obstructions,
    reduced,
    standing,
    mayExtendInches,
  })
  const layout = solved.ok ? [...solved.value.runs][0] : undefined
  if (layout === undefined) throw new Error('the sample run cannot be laid out')
  const model: RunModel = { layout, system, first, second, flare: run.flare, work, letting, speed, opposingReaches }
  const requirements = deriveRequirements(model)
  const readings = readingsOf(requirements)
  const judgement = judgeRun(model, requirements, readings, { rule: run.decisionRule, instruments })
  return { run, model, requirements, readings, judgement, unusual: [], instruments, print: english(null) }
}

/** One reading of each requirement, all of them right; measured lengths at the nominal, else well inside the limit. */
export const soundReadings = (requirements: readonly Requirement[]): readonly Reading[] =>
  requirements.flatMap((requirement, i) => {
    const answer = soundAnswer(requirement)
    if (answer === null) return []
    const isSided = isOffset(requirement.id) && answer.kind === 'length'
    return [sampleReading(`r${i + 1}`, requirement.id, isSided ? { ...answer, side: 'away' } : answer)]
  })

export const sampleReading = (id: string, of: string, answer: Answer, more: Partial<Reading> = {}): Reading => ({
  id,
  of,
  answer,
  instrument: answer.kind === 'length' ? 'tape' : null,
  uncertainty: null,
  by: 'J. Okafor',
  at: '2016-05-12T10:05:00-06:00',
  where: null,
  photos: [],
  corrects: null,
  rechecks: null,
  together: null,
  ...more,
})

export const inches = (value: number): Answer => ({
  kind: 'length',
  value: exactLength(value, 'in'),
  unit: 'in',
  resolution: null,
})

function soundAnswer({ look }: Requirement): Answer | null {
  switch (look.kind) {
    case 'record':
      return null
    case 'confirm':
      return { kind: 'confirmed', yes: true }
    case 'choose':
      return { kind: 'choice', choice: look.choices.find(({ right }) => right)!.id }
    case 'measure': {
      const { nominal, low, high } = look.limits
      if (nominal !== 'notStated') return inches(low === nominal ? nominal + 1 : nominal)
      if (high === 'notStated') return inches((low as number) + 1)
      return inches(low === 'notStated' ? high / 2 : (low + high) / 2)
    }
  }
}
