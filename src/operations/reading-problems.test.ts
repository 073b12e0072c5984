import { describe, expect, test } from 'vitest'
import { demoRun } from '../../test/fixtures/roadside.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { printProblem } from '../formats/input-problem.ts'
import { english } from '../words/english.ts'
import { judgeReadings } from './judge-readings.ts'

const { required, readings } = demoRun()
const stub = 'post-1/stub-height'
const failed = readings.find(({ of }) => of === stub)!

const later = (changes: Partial<Reading>): Reading => ({
  ...failed,
  id: 'later',
  answer: { kind: 'measured', value: exactLength(3, 'in'), unit: 'in', resolution: null },
  ...changes,
})

function problemsWith(...more: readonly Reading[]): readonly string[] {
  const judged = judgeReadings('r.json', required, [...readings, ...more])
  const at = `r.json: readings[${readings.length}].`
  return judged.ok
    ? []
    : judged.error.map((one) => printProblem(one, english(null))).map((text) => text.replace(at, ''))
}

describe('readings are taken in', () => {
  test('that correct an earlier one of the same thing, or recheck a finding that they can prove put right', () => {
    expect(problemsWith(later({ corrects: failed.id }))).toEqual([])
    expect(problemsWith(later({ rechecks: stub }))).toEqual([])
    // One cause, one finding: rail and stub of a post; the space between two posts, from where they stand.
    expect(problemsWith(later({ rechecks: 'post-1/rail-height' }))).toEqual([])
    expect(problemsWith(later({ of: 'post-4/along', rechecks: 'space-3/spacing' }))).toEqual([])
    expect(problemsWith(later({ of: 'post-4/along', rechecks: 'space-4/spacing' }))).toEqual([])
  })

  test('but not with a correction of another place or requirement, of a later one, itself or none', () => {
    const expected = 'corrects: expected the id of an earlier reading of the same thing, found'
    for (const of of ['post-2/stub-height', 'post-1/rail-height'])
      expect(problemsWith(later({ of, corrects: failed.id }))).toEqual([`${expected} "${failed.id}"`])
    for (const corrects of ['later', 'last', 'elsewhere'])
      expect(problemsWith(later({ corrects }), later({ id: 'last' }))).toEqual([`${expected} "${corrects}"`])
  })

  test('nor with a recheck of another finding', () => {
    const proves = (of: string, ids: string, found: string) =>
      `rechecks: expected a finding that a reading of ${of} can prove put right: ${ids}, found "${found}"`
    for (const rechecks of ['splice-2/lap', 'post-2/stub-height', 'space-1/spacing', 'no-such'])
      expect(problemsWith(later({ rechecks }))).toEqual([proves(stub, stub, rechecks)])
    expect(problemsWith(later({ of: 'post-4/along', rechecks: stub }))).toEqual([
      proves('post-4/along', 'space-3/spacing, space-4/spacing', stub),
    ])
  })
})
