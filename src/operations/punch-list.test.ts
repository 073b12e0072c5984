import { describe, expect, test } from 'vitest'
import type { Reading } from '../core/measurement/reading.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { punchList } from './punch-list.ts'
import { demoJudged, demoRun } from './roadside-fixtures.ts'

const stub = 'post-1/stub-height'

const later = (changes: Partial<Reading>): Reading => ({
  ...demoRun().readings.find(({ of }) => of === stub)!,
  id: 'later',
  answer: { kind: 'length', value: exactLength(3, 'in'), unit: 'in', resolution: null },
  ...changes,
})

const itemAt = (more: readonly Reading[]) =>
  punchList(demoJudged(more)).find(({ readings }) => readings.some(({ requirement }) => requirement === stub))

describe('punchList', () => {
  test('has the four planted faults, each open, with what was read when it failed', () => {
    const items = punchList(demoJudged())
    expect(items.map(({ state }) => state)).toEqual(['open', 'open', 'open', 'open'])
    const old = itemAt([])!.readings.find(({ requirement }) => requirement === stub)!.old!
    // 4 3/4 in is what the demo project plants.
    expect(old.reading.answer).toMatchObject({ value: exactLength(4.75, 'in') })
    expect(old.verdict.verdict).toBe('fails')
  })

  test('closes a finding by a reading that names it, and keeps old and new', () => {
    const { id } = itemAt([])!
    const item = itemAt([later({ rechecks: id })])!
    expect(item).toMatchObject({ id, state: 'closed', finding: null })
    expect(item.readings[0]!.old!.reading.answer).toMatchObject({ value: exactLength(4.75, 'in') })
    expect(item.readings[0]!.new!.reading.id).toBe('later')
  })

  test('does not close it by a reading that names no finding', () => {
    expect(itemAt([later({ rechecks: null })])!.state).toBe('not rechecked')
  })

  test('closes it when such a reading is followed by one that names it', () => {
    const { id } = itemAt([])!
    expect(itemAt([later({ rechecks: null }), later({ id: 'again', rechecks: id })])!.state).toBe('closed')
  })

  test('opens it again when it fails again', () => {
    const { id } = itemAt([])!
    const high = later({
      id: 'high',
      answer: { kind: 'length', value: exactLength(5, 'in'), unit: 'in', resolution: null },
    })
    expect(itemAt([later({ rechecks: id }), high])!.state).toBe('open')
  })

  test('has nothing of a reading that was corrected: it was never so', () => {
    const wrong = demoRun().readings.find(({ of }) => of === stub)!
    expect(itemAt([later({ corrects: wrong.id })])).toBeUndefined()
  })
})
