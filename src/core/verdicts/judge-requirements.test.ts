import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { sourceSaying } from '../hardware/hardware-saying.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Instrument, instruments } from '../measurement/instruments.ts'
import type { Answer, Reading } from '../measurement/reading.ts'
import type { Requirement, RequirementLook } from '../requirements/requirement.ts'
import { theirs } from '../theirs.ts'
import { exactLength } from '../units/exact-length.ts'
import { exactValue } from '../units/quantity-kinds.ts'
import { currentReadings, judgeRequirements } from './judge-requirements.ts'
import type { DecisionRule } from './verdict.ts'

const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const
const rail: Dimension = { nominal: 31, low: 30, high: 32, role: 'centre', ...cited }
const measure = { kind: 'measure', limits: rail, orFrom: null } as const
const choose = {
  kind: 'choose',
  choices: [
    { id: 'in-front', label: byHand('in front'), right: true },
    { id: 'behind', label: byHand('behind'), right: false },
  ],
} as const

const requirement = (look: RequirementLook, changes: Partial<Requirement> = {}): Requirement => ({
  ...{
    id: 'post-1/thing',
    topic: 'thing',
    must: byHand(''),
    how: byHand(''),
    why: byHand(''),
    remedy: byHand(''),
    hold: false,
    figure: null,
  },
  place: { id: 'post-1', kind: 'post', number: 1, alongInches: 0, own: null },
  ...{
    look,
    maySetAside: false,
    severity: 'notStated',
    sheet: 'test',
    sheetVersion: '1',
    source: sourceSaying({ title: '', edition: '' }),
  },
  ...{ confirmation: 'published', ...changes },
})
const reading = (id: string, answer: Answer, changes: Partial<Reading> = {}): Reading => ({
  ...{ id, of: 'post-1/thing', answer, instrument: 'tape', uncertainty: null, by: 'J. Okafor' },
  ...{ at: '2016-05-12T10:05:00Z', where: null, photos: [], corrects: null, rechecks: null, together: null },
  ...changes,
})
const length = (inches: number, side?: 'away' | 'toward'): Answer => ({
  ...{ kind: 'measured', value: exactLength(inches, 'in'), unit: 'in', resolution: null },
  ...(side === undefined ? {} : { side }),
})
const simple: DecisionRule = { kind: 'simple' }

function judge(
  one: Requirement,
  readings: readonly Reading[],
  rule = simple,
  list: readonly Instrument[] = instruments,
) {
  const [verdict] = judgeRequirements([one], readings, { rule, instruments: list })
  return verdict!
}

describe('a requirement without an answer is unread', () => {
  const unread = (look: RequirementLook, ...readings: readonly Reading[]) => {
    const { verdict, because, readings: ids } = judge(requirement(look), readings)
    expect(verdict).toBe('unread')
    return [because, ids]
  }

  it('where nobody looked', () => {
    for (const look of [measure, choose, { kind: 'confirm' }] as const)
      expect(unread(look)).toEqual([{ kind: 'nobody looked' }, []])
  })

  it('where it could not be seen, by the reading that says so', () => {
    for (const look of [measure, choose, { kind: 'confirm' }] as const)
      expect(unread(look, reading('r', { kind: 'cannot see' }))).toEqual([{ kind: 'could not be seen' }, ['r']])
  })

  it('where the answer is of another kind than what was asked', () => {
    const other = (expected: string) => [{ kind: 'answer of another kind', expected }, ['r']]
    expect(unread(measure, reading('r', { kind: 'confirmed', yes: true }))).toEqual(other('length'))
    expect(unread(choose, reading('r', { kind: 'confirmed', yes: true }))).toEqual(other('choice'))
    expect(unread(choose, reading('r', { kind: 'choice', choice: 'beside' }))).toEqual(other('choice'))
    expect(unread({ kind: 'confirm' }, reading('r', length(31)))).toEqual(other('confirmation'))
  })

  it('where the sheet states no limit', () => {
    const limits = { ...rail, low: 'notStated', high: 'notStated' } as const
    expect(unread({ ...measure, limits }, reading('r', length(31)))).toEqual([{ kind: 'no limit stated' }, ['r']])
  })

  it('where somebody sets aside what may not be', () => {
    const aside = reading('r', { kind: 'does not apply', because: 'no such post' })
    expect(unread(choose, aside)).toEqual([
      { kind: 'may not be set aside', because: 'no such post', by: 'J. Okafor' },
      ['r'],
    ])
    expect(judge(requirement(choose, { maySetAside: true }), [aside])).toMatchObject({
      ...{ verdict: 'does not apply', because: { kind: 'set aside', by: 'J. Okafor' }, readings: ['r'] },
    })
  })
})

describe('a requirement with an answer', () => {
  it('that is chosen meets only by the right choice', () => {
    const chosen = (choice: string) => judge(requirement(choose), [reading('r', { kind: 'choice', choice })])
    expect(chosen('in-front')).toMatchObject({ verdict: 'meets', because: { label: byHand('in front'), right: true } })
    expect(chosen('behind')).toMatchObject({ verdict: 'fails', because: { label: byHand('behind'), right: false } })
  })

  it('that is confirmed meets only by yes', () => {
    const confirmed = (yes: boolean) =>
      judge(requirement({ kind: 'confirm' }), [reading('r', { kind: 'confirmed', yes })])
    expect([confirmed(true).verdict, confirmed(false).verdict]).toEqual(['meets', 'fails'])
  })

  it('that is measured meets between its limits, and says that it was not computed', () => {
    const at = (inches: number) => judge(requirement(measure), [reading('r', length(inches))])
    expect([29.99, 30, 32, 32.01].map((inches) => at(inches).verdict)).toEqual(['fails', 'meets', 'meets', 'fails'])
    expect(at(31).because).toMatchObject({ kind: 'measured', computed: false })
    expect(at(31).because).not.toHaveProperty('side')
    expect(at(31)).toMatchObject({ requirement: 'post-1/thing', readings: ['r'], sheet: 'test', sheetVersion: '1' })
  })
})

describe('the instrument of a reading', () => {
  const band: DecisionRule = { kind: 'guard band', multiple: 1 }
  const of = (id: string, own: number): Instrument => ({
    ...{
      id,
      name: theirs(id),
      standardUncertainty: own,
      unit: 'in',
      readTo: 0,
      source: theirs(''),
      confirmation: 'from memory',
    },
  })
  const uncertainty = (used: string | null, list: readonly Instrument[]) => {
    const { because } = judge(requirement(measure), [reading('r', length(31), { instrument: used })], band, list)
    return because.kind === 'measured' ? because.uncertainty : null
  }

  it('gives the doubt; none, or one that is not known, is taken as not stated', () => {
    const list = [of('tape', 0.1), of('not-stated', 0.4), of('rod', 0.2)]
    expect(['tape', 'rod', 'unknown', null].map((used) => uncertainty(used, list))).toEqual([0.1, 0.2, 0.4, 0.4])
  })

  it('is the shipped one for what is not stated where the list has none: sqrt(6 x 6 + 6.35 x 6.35 / 12) = 6.274 mm', () => {
    expect(uncertainty(null, [of('tape', 0.1), of('rod', 0.2)])).toBeCloseTo(6.2738 / 25.4, 5)
  })
})

describe('the reading in force', () => {
  it('is the latest that nobody corrects', () => {
    const log = [
      reading('a', length(31)),
      reading('b', length(33)),
      reading('c', length(34), { corrects: 'b' }),
      reading('d', length(31), { of: 'post-2/thing' }),
    ]
    const ids = (readings: readonly Reading[]) => [...currentReadings(readings)].map(([of, { id }]) => [of, id])
    expect(ids(log)).toEqual([
      ['post-1/thing', 'c'],
      ['post-2/thing', 'd'],
    ])
    expect(
      ids([
        ...log.slice(0, 2),
        reading('e', length(31), { corrects: 'b' }),
        reading('f', length(30), { corrects: 'e' }),
      ]),
    ).toEqual([['post-1/thing', 'f']])
    expect(judge(requirement(measure), log).readings).toEqual(['c'])
  })
})

describe('an offset', () => {
  const id = 'post-1/flare-offset'
  const limits: Dimension = { ...rail, nominal: 48, low: 45, high: 51 }
  const at = (answer: Answer, within = limits) =>
    judge(requirement({ ...measure, limits: within }, { id }), [reading('r', answer, { of: id })])

  it('toward traffic is less than nothing', () => {
    expect(at(length(48, 'away'))).toMatchObject({ verdict: 'meets', because: { value: 48, side: 'stated' } })
    expect(at(length(48, 'toward'))).toMatchObject({ verdict: 'fails', because: { value: -48, margin: -93 } })
  })

  it('whose side nobody said is decided only where it fails on either, by the side that fails less', () => {
    expect(at(length(48))).toMatchObject({ verdict: 'unread', because: { kind: 'side not stated' }, readings: ['r'] })
    expect(at(length(44))).toMatchObject({ verdict: 'fails', because: { value: 44, margin: -1, side: 'not stated' } })
    const nearer: Dimension = { ...limits, nominal: -48, low: -51, high: -45 }
    expect(at(length(44), nearer)).toMatchObject({ because: { value: -44, margin: -1, side: 'not stated' } })
    expect(at(length(48), nearer).verdict).toBe('unread')
  })

  it('is computed from the posts where nobody measured it, and is unread where only some of them say their side', () => {
    const point = (post: number, alongInches: number) => ({ reading: `post-${post}/lateral-offset`, alongInches })
    const orFrom = { kind: 'offset from line', point: point(1, 0), line: [point(7, 450), point(8, 525)] } as const
    const one = requirement({ kind: 'measure', limits, orFrom }, { id })
    const read = (post: number, answer: Answer) => reading(`r${post}`, answer, { of: `post-${post}/lateral-offset` })
    const line = [read(7, length(0)), read(8, length(0))]
    expect(judge(one, [read(1, length(48, 'away')), ...line])).toMatchObject({
      ...{ verdict: 'meets', because: { value: 48, computed: true }, readings: ['r1', 'r7', 'r8'] },
    })
    expect(judge(one, [read(1, length(58, 'away')), read(7, length(10)), read(8, length(10, 'away'))])).toMatchObject({
      ...{ verdict: 'unread', because: { kind: 'side not stated' }, readings: ['r1', 'r7', 'r8'] },
    })
    expect(judge(one, [read(1, length(48, 'away')), read(7, length(0))])).toMatchObject({
      because: { kind: 'readings missing', missing: [{ of: 'post-8/lateral-offset', what: 'offset' }] },
    })
    // Measured directly besides: that counts.
    expect(
      judge(one, [read(1, length(48, 'away')), ...line, reading('own', length(60, 'away'), { of: id })]),
    ).toMatchObject({ verdict: 'fails', because: { computed: false }, readings: ['own'] })
  })
})

describe('a space that was measured, and whose posts were', () => {
  const spacing: Dimension = { nominal: 75, low: 74, high: 76, role: 'centre', ...cited }
  const from = { kind: 'difference', from: 'post-1/along', to: 'post-2/along' } as const
  const space = requirement({ kind: 'measure', limits: spacing, orFrom: from })
  const wide = { direct: reading('wide', length(77)), right: reading('right', length(75)) }
  const along = (post: number, inches: number) => reading(`post ${post}`, length(inches), { of: `post-${post}/along` })
  /** The verdict, and the readings that it stands on. */
  const by = (...readings: readonly Reading[]) => {
    const [verdict] = judgeRequirements([space], readings, { rule: simple, instruments })
    return [verdict!.verdict, ...verdict!.readings]
  }

  it('is judged as it was measured, whenever the posts were, as long as they show no fault', () => {
    expect(by(wide.right)).toEqual(['meets', 'right'])
    expect(by(wide.right, along(1, 0), along(2, 75))).toEqual(['meets', 'right'])
    expect(by(wide.direct, along(1, 0), along(2, 75))).toEqual(['fails', 'wide'])
    expect(by(along(1, 0), along(2, 77), wide.right)).toEqual(['meets', 'right'])
  })

  it('fails by its posts where one of them was read since, and both were', () => {
    expect(by(wide.right, along(1, 0), along(2, 77))).toEqual(['fails', 'post 1', 'post 2'])
    expect(by(along(1, 0), wide.right, along(2, 77))).toEqual(['fails', 'post 1', 'post 2'])
    expect(by(along(2, 77), wide.right, along(1, 0))).toEqual(['fails', 'post 1', 'post 2'])
    expect(by(wide.right, along(2, 77))).toEqual(['meets', 'right'])
    const slope = reading('post 2', { kind: 'measured', value: exactValue(77, '%'), unit: '%', resolution: null })
    expect(by(wide.right, along(1, 0), { ...slope, of: 'post-2/along' })).toEqual(['meets', 'right'])
    expect(by(along(1, 0), { ...slope, of: 'post-2/along' })).toEqual(['unread'])
    expect(by(wide.right, along(1, 0), reading('post 2', { kind: 'cannot see' }, { of: 'post-2/along' }))).toEqual([
      ...['meets', 'right'],
    ])
  })
})

describe('a space that was counted', () => {
  const limits = (low: number | 'notStated', high: number | 'notStated'): Dimension => ({
    ...{ nominal: 75, low, high, role: 'centre', ...cited },
  })
  const counted = (of: Dimension, at: number | undefined, ...readings: readonly Reading[]) => {
    const look = { kind: 'measure', limits: of, orFrom: null } as const
    const verdict = judge(requirement(at === undefined ? look : { ...look, counted: at }), readings)
    return [verdict.verdict, verdict.because.kind]
  }

  it('shows a fault outside its limits, and on them or inside proves nothing', () => {
    const both = limits(74, 76)
    for (const at of [undefined, 74, 75, 76]) expect(counted(both, at)).toEqual(['unread', 'nobody looked'])
    for (const at of [73.9375, 76.0625]) expect(counted(both, at)).toEqual(['fails', 'measured at the count'])
    expect(counted(limits('notStated', 76), 10)).toEqual(['unread', 'nobody looked'])
    expect(counted(limits('notStated', 76), 77)).toEqual(['fails', 'measured at the count'])
    expect(counted(limits(74, 'notStated'), 100)).toEqual(['unread', 'nobody looked'])
    expect(counted(limits(74, 'notStated'), 73)).toEqual(['fails', 'measured at the count'])
  })

  it('is judged by whoever measured it since', () => {
    expect(counted(limits(74, 76), 80, reading('r1', length(75)))).toEqual(['meets', 'measured'])
  })
})

describe('an answer that was counted', () => {
  const counted = (is: string | undefined, ...readings: readonly Reading[]) => {
    const {
      verdict,
      because,
      readings: by,
    } = judge(requirement(is === undefined ? choose : { ...choose, counted: is }), readings)
    return [verdict, because.kind, by]
  }

  it('shows a fault where it is a wrong one, and proves nothing where it is right or none', () => {
    expect(counted('behind')).toEqual(['fails', 'counted', []])
    for (const is of [undefined, 'in-front', 'elsewhere']) expect(counted(is)).toEqual(['unread', 'nobody looked', []])
  })

  it('is judged by whoever looked since', () => {
    const looked = (choice: string) => reading('r1', { kind: 'choice', choice })
    expect(counted('behind', looked('in-front'))).toEqual(['meets', 'chosen', ['r1']])
    expect(counted('in-front', looked('behind'))).toEqual(['fails', 'chosen', ['r1']])
  })
})

describe('what the run file decides', () => {
  const need = (short: number | null, maySetAside: boolean) =>
    requirement(
      { kind: 'record', rule: { kind: 'need of run', shortAtFirst: short, shortAtSecond: 0 } },
      { maySetAside },
    )
  const aside = reading('r1', { kind: 'does not apply', because: 'none' })
  const by = (one: Requirement, ...readings: readonly Reading[]) => {
    const { verdict, because, readings: read } = judge(one, readings)
    return [verdict, because.kind, read]
  }

  it('no reading decides, and it may be set aside only where its sheet says so', () => {
    for (const maySetAside of [false, true]) {
      expect(by(need(0, maySetAside))).toEqual(['meets', 'need of run', []])
      expect(by(need(1, maySetAside))).toEqual(['fails', 'need of run', []])
      expect(by(need(null, maySetAside))).toEqual(['unread', 'need of run', []])
      expect(by(need(1, maySetAside), reading('r1', { kind: 'confirmed', yes: true }))).toEqual([
        ...['fails', 'need of run', []],
      ])
    }
    expect(by(need(1, false), aside)).toEqual(['fails', 'need of run', []])
    expect(by(need(1, true), aside)).toEqual(['does not apply', 'set aside', ['r1']])
  })
})

it('what is confirmed stands on the reading that confirms it', () => {
  for (const yes of [true, false])
    expect(judge(requirement({ kind: 'confirm' }), [reading('r1', { kind: 'confirmed', yes })])).toMatchObject({
      ...{ verdict: yes ? 'meets' : 'fails', readings: ['r1'] },
    })
})
