import { describe, expect, test } from 'vitest'
import { demoJudged, demoRun } from '../../test/fixtures/roadside.ts'
import { severityOf } from '../core/hardware/severity.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { judgeKnown } from './judge-readings.ts'
import { punchList } from './punch-list.ts'

const stub = 'post-1/stub-height'

const later = (changes: Partial<Reading>): Reading => ({
  ...demoRun().readings.find(({ of }) => of === stub)!,
  id: 'later',
  answer: { kind: 'measured', value: exactLength(3, 'in'), unit: 'in', resolution: null },
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

  test('has the worst first, and what is as bad along the rail', () => {
    const items = punchList(demoJudged())
    expect(items.map(({ id, severity }) => [id, severityOf(severity)])).toEqual([
      ['post-1/bearing-plate', 'lets it fail'],
      ['panel-3/panel-length', 'lets it fail'],
      ['post-1/stub-height', 'weakens it'],
      ['splice-2/lap', 'weakens it'],
    ])
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

  test('keeps it closed when it is read once more without naming it', () => {
    const { id } = itemAt([])!
    expect(itemAt([later({ rechecks: id }), later({ id: 'again', rechecks: null })])!.state).toBe('closed')
  })

  test('does not close it by a recheck that could not see it', () => {
    const { id } = itemAt([])!
    expect(itemAt([later({ rechecks: id, answer: { kind: 'cannot see' } })])!.state).toBe('not rechecked')
  })

  test('does not close it by a recheck that names another finding, and says that this counts for nothing', () => {
    for (const rechecks of ['splice-2/lap', 'post-1/bearing-plate', 'post-2/stub-height', 'no-such']) {
      const astray = later({ rechecks })
      expect(itemAt([astray])).toMatchObject({ id: stub, state: 'not rechecked' })
      const { acceptance, withoutEffect } = demoJudged([astray]).judgement
      expect(acceptance).toEqual({ kind: 'not acceptable' })
      expect(withoutEffect).toEqual([{ reading: 'later', kind: 'recheck', names: rechecks }])
      // Named rightly afterwards it is closed all the same.
      expect(itemAt([astray, later({ id: 'again', rechecks: stub })])!.state).toBe('closed')
    }
  })

  test('keeps a failure that a reading of another place or requirement says it corrects', () => {
    const { id } = demoRun().readings.find(({ of }) => of === stub)!
    for (const of of ['post-2/stub-height', 'post-1/rail-height']) {
      const astray = later({ of, corrects: id })
      expect(itemAt([astray])!.state).toBe('open')
      // Nor does it help to read the place again, without naming the finding.
      expect(itemAt([astray, later({ id: 'again', rechecks: null })])!.state).toBe('not rechecked')
      const { withoutEffect, verdicts } = demoJudged([astray]).judgement
      expect(withoutEffect).toEqual([{ reading: 'later', kind: 'correction', names: id }])
      expect(verdicts.find(({ requirement }) => requirement === of)!.readings).toEqual(['later'])
    }
  })

  test('opens it again when it fails again', () => {
    const { id } = itemAt([])!
    const high = later({
      id: 'high',
      answer: { kind: 'measured', value: exactLength(5, 'in'), unit: 'in', resolution: null },
    })
    expect(itemAt([later({ rechecks: id }), high])!.state).toBe('open')
  })

  test('has nothing of a reading that was corrected: it was never so', () => {
    const wrong = demoRun().readings.find(({ of }) => of === stub)!
    expect(itemAt([later({ corrects: wrong.id })])).toBeUndefined()
  })
})

describe('punchList of a value computed from several posts', () => {
  const { required } = demoRun()
  const along = (post: number, inches: number, changes: Partial<Reading> = {}): Reading => ({
    ...later({ id: `along-${post}-${inches}`, of: `post-${post}/along` }),
    answer: { kind: 'measured', value: exactLength(inches, 'in'), unit: 'in', resolution: null },
    ...changes,
  })
  // Posts 3 and 4 of the demo stand apart by what the sheet says; the second is driven 10 in too far.
  const spacing = required.requirements.find(({ id }) => id === 'space-3/spacing')!
  const far = [along(3, 100), along(4, 100 + 75 + 10)]
  const states = (more: readonly Reading[]) =>
    punchList(judgeKnown(required, more))
      .filter(({ readings }) => readings.some(({ requirement }) => requirement === spacing.id))
      .map(({ state }) => state)

  test('is open, then not rechecked, and closed only by a reading that names it', () => {
    expect(states(far)).toEqual(['open'])
    expect(states([...far, along(4, 175)])).toEqual(['not rechecked'])
    expect(states([...far, along(4, 175, { rechecks: spacing.id })])).toEqual(['closed'])
  })

  test('has nothing of a value that was off only as long as its line was not yet read', () => {
    const flare = required.requirements.find(({ id }) => id === 'post-1/flare-offset')!
    const lateral = (post: number, inches: number) =>
      along(post, inches, {
        id: `lateral-${post}`,
        of: `post-${post}/lateral-offset`,
        answer: { kind: 'measured', value: exactLength(inches, 'in'), unit: 'in', resolution: null, side: 'away' },
      })
    const begun = [lateral(1, 48), lateral(7, 0), lateral(8, 1.2)]
    const whole = [...begun, ...[9, 10, 11, 12, 13, 14, 15, 16].map((post) => lateral(post, 0))]
    const verdictOf = (log: readonly Reading[]) =>
      judgeKnown(required, log).judgement.verdicts.find(({ requirement }) => requirement === flare.id)!.verdict
    expect([verdictOf(begun), verdictOf(whole)]).toEqual(['fails', 'meets'])
    // The last is read twice, so that the log is looked at reading by reading.
    const twice = [...whole, { ...lateral(16, 0), id: 'again' }]
    const items = punchList(judgeKnown(required, twice))
    expect(items.flatMap(({ readings }) => readings.map(({ requirement }) => requirement))).not.toContain(flare.id)
  })
})
