import { describe, expect, test } from 'vitest'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import { inputsOf } from '../../core/requirements/rests-on.ts'
import { readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { judgeReadings } from '../../operations/judge-readings.ts'
import { requireRun } from '../../operations/require-run.ts'
import { visitsOf } from './visits.ts'

const demo = demoProject()
const run = readRun('run', demo.run)
const file = readReadings('readings', demo.readings)
if (!run.ok || !file.ok) throw new Error('the demo is not sound')
const laidOut = requireRun('run', run.value)
if (!laidOut.ok) throw new Error('the demo cannot be laid out')
const required = laidOut.value
const [like] = file.value.readings

const height: Answer = { kind: 'measured', value: 787_400_000, unit: 'mm', resolution: null }
const reading = (id: string, of: string, by: string, at: string, more: Partial<Reading> = {}): Reading => ({
  ...like!,
  ...{ id, of, by, at, answer: height, corrects: null, rechecks: null, ...more },
})
function judgedWith(readings: readonly Reading[]) {
  const judged = judgeReadings('readings', required, readings)
  if (!judged.ok) throw new Error('refused', { cause: judged.error })
  return judged.value
}

describe('readings by visit', () => {
  const readings = [
    reading('1', 'post-7/rail-height', 'R. Quist', '2026-05-04T15:30:00.000Z'),
    reading('2', 'post-8/rail-height', 'R. Quist', '2026-05-05T09:00:00.000Z'),
    reading('3', 'post-9/rail-height', 'A. Lund', '2026-05-05T09:10:00.000Z'),
    reading('4', 'post-8/rail-height', 'R. Quist', '2026-05-05T09:20:00.000Z', {
      answer: { ...height, value: 500_000_000 },
      corrects: '2',
    }),
  ]

  test('are of one person on one day, the latest first', () => {
    const visits = visitsOf(judgedWith(readings))
    expect(visits.map(({ by, day, rows }) => [by, day, rows.map((row) => row.reading.id)])).toEqual([
      ['R. Quist', '2026-05-05', ['4', '2']],
      ['A. Lund', '2026-05-05', ['3']],
      ['R. Quist', '2026-05-04', ['1']],
    ])
  })

  test('show the verdict of what counts, and none of what was corrected', () => {
    const [{ rows } = { rows: [] }] = visitsOf(judgedWith(readings))
    expect(rows.map(({ verdict, isCorrected }) => [verdict, isCorrected])).toEqual([
      ['fails', false],
      [null, true],
    ])
  })

  test('of a value that others are computed from stand with what is computed from it', () => {
    const computed = required.requirements.find((one) => inputsOf(one).length > 0)!
    const [of] = inputsOf(computed)
    const [visit] = visitsOf(judgedWith([reading('1', of!, 'R. Quist', '2026-05-04T15:30:00.000Z')]))
    expect(visit?.rows.map((row) => inputsOf(row.requirement).includes(of!))).toEqual([true])
  })
})
