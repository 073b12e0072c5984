import { describe, expect, test } from 'vitest'
import { demoRun } from '../../test/fixtures/roadside.ts'
import { soundReading } from '../../test/fixtures/sound-reading.ts'
import type { Reading } from '../core/measurement/reading.ts'
import type { Acceptance } from '../core/verdicts/verdict.ts'
import { printProblem } from '../formats/input-problem.ts'
import { readRun } from '../formats/run/run-file.ts'
import { english } from '../words/english.ts'
import { demoProject } from './demo-project.ts'
import { judgeKnown, judgeReadings } from './judge-readings.ts'
import type { RequiredRun } from './require-by.ts'
import { requireRun } from './require-run.ts'

const strict = demoRun().required
const [template] = demoRun().readings
const every = [...new Set(strict.requirements.filter(({ look }) => look.kind !== 'record').map(({ topic }) => topic))]
const hold = strict.requirements.find((one) => one.hold)!

const aside = (of: string, changes: Partial<Reading> = {}): Reading => ({
  ...{ ...template!, id: `aside ${of}`, of, instrument: null, by: 'R. Quist', photos: [] },
  answer: { kind: 'does not apply', because: 'by order' },
  ...changes,
})

/** Everything read and right, but for what the readings given say instead. */
function judged(required: RequiredRun, ...instead: readonly Reading[]) {
  const named = new Set(instead.map(({ of }) => of))
  const rest = required.requirements.filter(({ id }) => !named.has(id)).flatMap(soundReading)
  return judgeKnown(required, [...rest, ...instead]).judgement
}
const acceptance = (required: RequiredRun, ...instead: readonly Reading[]): Acceptance =>
  judged(required, ...instead).acceptance
const verdictOn = (of: string, required: RequiredRun, ...instead: readonly Reading[]) =>
  judged(required, ...instead).verdicts.find(({ requirement }) => requirement === of)!

describe('what is set aside', () => {
  test('is nothing of a run that is read and right', () => {
    expect(judged(strict).unproven).toEqual([])
    expect(acceptance(strict)).toEqual({ kind: 'acceptable' })
  })

  test('is an exception of the acceptance, with every name once, where the sheet allows it', () => {
    const { required } = demoRun(['block'])
    const names = ['R. Quist', 'M. Reyes', 'R. Quist']
    const said = names.map((by, i) => aside(`post-${i + 9}/block`, { by }))
    expect(acceptance(required, ...said)).toEqual({
      kind: 'acceptable except',
      setAside: 3,
      by: ['R. Quist', 'M. Reyes'],
    })
    expect(english(null).say(acceptance(required, ...said))).toBe(
      'acceptable except for 3 set aside by R. Quist, M. Reyes',
    )
    // What fails beside it, or is not proven, is not made good by that.
    const low = {
      ...aside('post-9/rail-height'),
      answer: soundReading(strict.requirements.find(({ topic }) => topic === 'lap')!)[0]!.answer,
    }
    expect(acceptance(required, ...said, low)).toEqual({ kind: 'not yet known' })
    const loose = { ...aside('post-9/rail-bolt'), answer: { kind: 'choice', choice: 'not-bolted' } } as const
    expect(acceptance(required, ...said, loose)).toEqual({ kind: 'not acceptable' })
  })

  test.each([
    ['a usual requirement', 'post-9/block'],
    ['a hold point', hold.id],
  ])('is nothing where the sheet does not say so: %s is unread then', (_, of) => {
    expect(acceptance(strict, aside(of))).toEqual({ kind: 'not yet known' })
    expect(verdictOn(of, strict, aside(of))).toMatchObject({
      verdict: 'unread',
      because: { kind: 'may not be set aside', because: 'by order', by: 'R. Quist' },
    })
    expect(judged(strict, aside(of)).withoutEffect).toEqual([
      { reading: `aside ${of}`, kind: 'setting aside', names: of },
    ])
    // A sheet that lets another thing be set aside lets not this one.
    expect(acceptance(demoRun(['lap']).required, aside(of))).toEqual({ kind: 'not yet known' })
    const [, topic = ''] = of.split('/')
    expect(acceptance(demoRun([topic]).required, aside(of))).toMatchObject({ kind: 'acceptable except', setAside: 1 })
  })

  test('does not stand beside what was read before: that no longer counts either', () => {
    const [right] = strict.requirements.filter(({ id }) => id === 'post-9/block').flatMap(soundReading)
    expect(verdictOn('post-9/block', strict, right!, aside('post-9/block')).verdict).toBe('unread')
  })

  test('is never what the run file decides: hardware of older criteria fails in new work all the same', () => {
    const older = strict.requirements.map((one) => {
      if (one.id !== 'first/criteria' || one.look.kind !== 'record' || one.look.rule.kind !== 'criteria') return one
      const at = { ...one.look.rule.at, work: 'new', letting: '2025-01-01' } as const
      const criteria = one.look.rule.hardware.criteria.map((test) => ({
        ...test,
        standard: 'NCHRP 350',
        edition: 1993,
      }))
      return {
        ...one,
        look: { ...one.look, rule: { ...one.look.rule, at, hardware: { ...one.look.rule.hardware, criteria } } },
      }
    })
    const required = { ...strict, requirements: older } as RequiredRun
    expect(verdictOn('first/criteria', required).verdict).toBe('fails')
    expect(verdictOn('first/criteria', required, aside('first/criteria')).verdict).toBe('fails')
    expect(acceptance(required, aside('first/criteria', { rechecks: 'first/criteria' }))).toEqual({
      kind: 'not acceptable',
    })
  })

  test('may not be all: at least one reading has to meet', () => {
    const { required } = demoRun(every)
    const all = required.requirements.filter(({ look }) => look.kind !== 'record').map(({ id }) => aside(id))
    expect(judged(required, ...all).verdicts.filter(({ verdict }) => verdict === 'meets').length).toBeGreaterThan(0)
    expect(acceptance(required, ...all)).toEqual({ kind: 'not yet known' })
    expect(acceptance(required, ...all.slice(1))).toMatchObject({ kind: 'acceptable except', setAside: all.length - 1 })
    expect(acceptance(strict, ...all.slice(1))).toEqual({ kind: 'not yet known' })
  })

  test('is not what the run file decides of standing work: that is acceptable without an exception', () => {
    const standing = readRun('run', demoProject().run.replace('"new"', '"standing"'))
    if (!standing.ok || standing.value.work !== 'standing') throw new Error('the demo is no new work')
    const required = requireRun('run', standing.value)
    if (!required.ok) throw new Error('the demo cannot be laid out')
    expect(verdictOn('first/criteria', required.value, aside('first/criteria')).verdict).toBe('meets')
    expect(acceptance(required.value)).toEqual({ kind: 'acceptable' })
  })

  test('puts a failure right only where the sheet allows it and the finding is named', () => {
    const of = 'post-9/block'
    const failed = { ...aside(of, { id: 'failed' }), answer: { kind: 'choice', choice: 'no-block' } } as const
    const { required } = demoRun(['block'])
    expect(acceptance(required, failed, aside(of, { rechecks: of }))).toMatchObject({ kind: 'acceptable except' })
    expect(acceptance(required, failed, aside(of))).toEqual({ kind: 'not acceptable' })
    expect(acceptance(strict, failed, aside(of, { rechecks: of }))).toEqual({ kind: 'not acceptable' })
  })
})

describe('setting aside is taken in', () => {
  const problemsOf = (required: RequiredRun, of: string): readonly string[] => {
    const taken = judgeReadings('r.json', required, [aside(of)])
    return taken.ok ? [] : taken.error.map((one) => printProblem(one, english(null)))
  }

  test('where the sheet allows it', () => {
    expect(problemsOf(demoRun(['block']).required, 'post-9/block')).toEqual([])
  })

  test.each([
    ['post-9/block', 'another answer: no sheet says that this may be set aside'],
    [hold.id, 'another answer: no sheet says that this may be set aside'],
    ['post-9/lateral-offset', 'another answer: no sheet says that this may be set aside'],
    ['first/criteria', 'no reading: it is decided from the run file'],
    ['run/criteria', 'no reading: it is decided from the run file'],
  ])('and not else: %s', (of, expected) => {
    const problem = `r.json: readings[0].doesNotApply: expected ${expected}, found "by order"`
    expect(problemsOf(strict, of)).toEqual([problem])
    expect(problemsOf(demoRun(every.filter((topic) => !of.endsWith(`/${topic}`))).required, of)).toEqual([problem])
  })
})
