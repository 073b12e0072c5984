import { describe, expect, it } from 'vitest'
import type { Reading } from '../../../src/core/measurement/reading.ts'
import { remedyOf } from '../../../src/core/verdicts/saying.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun, runFromValue } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'

function sound<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

const demo = demoProject()
const required = sound(requireRun('run', sound(readRun('run', demo.run))))
const { readings } = sound(readReadings('readings', demo.readings))
const judge = (list: readonly Reading[]) => sound(judgeReadings('readings', required, list)).judgement

/** The planted faults, each by one requirement that has to be among those of its finding. */
const planted = ['post-1/stub-height', 'post-1/bearing-plate', 'splice-2/lap', 'panel-3/panel-length']

function putRight(id: string, i: number): Reading {
  const requirement = required.requirements.find((one) => one.id === id)!
  const before = readings.find(({ of }) => of === id)!
  const { look } = requirement
  const answer =
    look.kind === 'choose'
      ? ({ kind: 'choice', choice: look.choices.find(({ right }) => right)!.id } as const)
      : ({ kind: 'measured', value: 3.25 * 25_400_000, unit: 'in', resolution: null } as const)
  return { ...before, id: `again-${i}`, answer, rechecks: id }
}

describe('the demo project', () => {
  it('has its four planted faults found, and no others', () => {
    const judged = judge(readings)
    expect(judged.acceptance).toEqual({ kind: 'not acceptable' })
    expect(judged.findings.map(({ requirements }) => planted.filter((id) => requirements.includes(id)))).toEqual(
      planted.map((id) => [id]),
    )
    expect(judged.unproven).toEqual([])
  })

  it('is acceptable once they are put right, one after another and not before', () => {
    const wrong = judge(readings).findings.flatMap(({ requirements }) => requirements)
    for (let done = 0; done <= wrong.length; done++) {
      const log = [...readings, ...wrong.slice(0, done).map(putRight)]
      expect(judge(log).acceptance.kind).toBe(done === wrong.length ? 'acceptable' : 'not acceptable')
    }
  })

  it('is not acceptable while a fault was only read again, and nobody said and proved that it was put right', () => {
    const wrong = judge(readings).findings.flatMap(({ requirements }) => requirements)
    const unnamed = wrong.map((id, i) => ({ ...putRight(id, i), rechecks: i === 0 ? null : id }))
    const judged = judge([...readings, ...unnamed])
    expect(judged.findings).toEqual([])
    expect(judged.acceptance).toEqual({ kind: 'not acceptable' })
    expect(judged.unproven).toMatchObject([{ requirement: wrong[0], because: { kind: 'not rechecked' } }])
    expect(english(null).say(judged.unproven[0]!.because)).toContain('not as a recheck of the finding')
  })

  it('is acceptable when what was wrong was an entry, and each was corrected: it never was so', () => {
    const wrong = judge(readings).findings.flatMap(({ requirements }) => requirements)
    const corrections = wrong.map((id, i) => ({
      ...putRight(id, i),
      rechecks: null,
      corrects: readings.find(({ of }) => of === id)!.id,
    }))
    expect(judge([...readings, ...corrections])).toMatchObject({
      acceptance: { kind: 'acceptable' },
      unproven: [],
    })
  })

  it('is not yet known, never acceptable, as soon as one reading is missing', () => {
    const log = [
      ...readings,
      ...judge(readings)
        .findings.flatMap(({ requirements }) => requirements)
        .map(putRight),
    ]
    for (const left of [
      'post-1/bearing-plate',
      'post-9/rail-height',
      'space-4/spacing',
      'post-2/lower-post-seen',
      'first/manual',
      'post-1/lateral-offset',
    ]) {
      const without = judge(log.filter(({ of }) => of !== left))
      expect(without.acceptance, left).toEqual({ kind: 'not yet known' })
      expect(without.unproven.length, left).toBeGreaterThan(0)
    }
  })

  it('has nothing proven without readings but what the run file itself decides', () => {
    const none = judge([])
    expect(none.acceptance).toEqual({ kind: 'not yet known' })
    expect(none.verdicts.filter(({ verdict }) => verdict === 'meets').map(({ because }) => because.kind)).toEqual([
      'criteria',
      'crashworthy',
      'criteria',
      'criteria',
      'crashworthy',
    ])
  })

  it('works out which two panels to exchange', () => {
    const panels = judge(readings).findings.find(({ id }) => id === 'panel-3/panel-length')
    expect(english(null).say(remedyOf(panels!))).toBe(
      'Exchange panel 3 (12 ft 6 in) for a 9 ft 4 1/2 in panel; exchange panel 7 (12 ft 6 in) for a 15 ft 7 1/2 in panel. Every splice then lies where it belongs.',
    )
  })

  it('goes by the latest reading, and by none that a later one corrects', () => {
    const wrong = {
      ...readings.find(({ of }) => of === 'post-9/rail-height')!,
      id: 'slip',
      answer: { kind: 'measured', value: 25 * 25_400_000, unit: 'in', resolution: null },
    } as const
    const verdict = (log: readonly Reading[]) =>
      judge(log).verdicts.find(({ requirement }) => requirement === 'post-9/rail-height')!
    expect(verdict([...readings, wrong]).verdict).toBe('fails')
    const mended = {
      ...wrong,
      id: 'mended',
      corrects: 'slip',
      answer: { ...wrong.answer, value: 31 * 25_400_000 },
    } as const
    expect(verdict([...readings, wrong, mended]).verdict).toBe('meets')
    expect(verdict([...readings, wrong, mended]).readings).toEqual(['mended'])
    // What a reading corrects stands before it.
    expect(() => verdict([...readings, mended, wrong])).toThrow('.corrects","expected":{"kind":"earlier reading"}')
  })
})

describe('criteria and letting date (joint implementation agreement, W-beam terminals: 30 June 2018)', () => {
  const terminal = (changes: object) => {
    const run = sound(runFromValue('run', { ...JSON.parse(demo.run), ...changes }))
    const judged = sound(judgeReadings('readings', sound(requireRun('run', run)), readings)).judgement
    return {
      verdict: judged.verdicts.find(({ requirement }) => requirement === 'first/criteria')!.verdict,
      findings: judged.findings,
    }
  }

  it.each([
    [{ work: 'new', letting: '2018-06-30' }, 'meets'],
    [{ work: 'new', letting: '2018-07-01' }, 'fails'],
    [{ work: 'standing', letting: '2018-07-01' }, 'meets'],
    [{ work: 'new', letting: null }, 'unread'],
    [{ work: null, letting: '2018-07-01' }, 'unread'],
  ] as const)('%o: %s', (changes, word) => {
    expect(terminal(changes).verdict).toBe(word)
  })

  it('says that hardware tested to NCHRP 350 only is not for new work let later', () => {
    const finding = terminal({ work: 'new', letting: '2026-01-15' }).findings.find(({ id }) => id === 'first/criteria')
    expect(english(null).say(finding!.what)).toMatch(
      /tested to NCHRP 350, test level 3; .* after 2018-06-30 .*exceptions by memorandum exist/,
    )
    expect(english(null).say(remedyOf(finding!))).toContain('MASH 2016 or later at level 3 or higher')
  })
})
