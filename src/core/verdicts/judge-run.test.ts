import { describe, expect, it } from 'vitest'
import { plainRequirement } from '../../../test/fixtures/plain-requirement.ts'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { instruments } from '../measurement/instruments.ts'
import type { Answer, Reading } from '../measurement/reading.ts'
import { deriveRequirements } from '../requirements/derive-requirements.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { exactLength } from '../units/exact-length.ts'
import { exactValue, type Unit } from '../units/quantity-kinds.ts'
import type { FreeFinding } from './free-findings.ts'
import { judgeRun } from './judge-run.ts'
import { secondReading } from './second-reading.ts'
import type { DecisionRule, Measured } from './verdict.ts'
import { withoutEffect } from './without-effect.ts'

const cited = { measured: '', source: 'test', confirmation: 'published' } as const
const limits = (low: number, high: number, unit: Unit = 'in') =>
  ({ nominal: (low + high) / 2, low, high, unit, role: 'centre', ...cited }) as Dimension<Unit>
const measured = (of: Dimension<Unit>) => ({ kind: 'measure', limits: of, orFrom: null }) as const
const height = plainRequirement('height', measured(limits(30, 32)))
const confirmed = plainRequirement('seen', { kind: 'confirm' })
const rule: DecisionRule = { kind: 'guard band', multiple: 1 }

const reading = (id: string, of: string, answer: Answer, changes: Partial<Reading> = {}): Reading => ({
  ...{ id, of, answer, instrument: null, uncertainty: null, by: 'J. Okafor', at: '2016-05-12T10:05:00Z' },
  ...{ where: null, photos: [], corrects: null, rechecks: null, together: null, ...changes },
})
const value = (number: number, unit: Unit = 'in'): Answer => ({
  ...{ kind: 'measured', value: exactValue(number, unit), unit, resolution: null },
})
const judged = (requirements: readonly Requirement[], readings: readonly Reading[], by: DecisionRule = rule) =>
  judgeRun(modelFrom('flared-terminal-31', 1000), requirements, readings, { rule: by, instruments })

describe('whether a run is acceptable', () => {
  /** Decided by the run file alone: its rail covers the need. */
  const covers = plainRequirement('need', {
    kind: 'record',
    rule: { kind: 'need of run', shortAtFirst: 0, shortAtSecond: 0 },
  })
  const [seen, other] = ['seen', 'other'].map((topic) => ({
    ...plainRequirement(topic, { kind: 'confirm' }),
    maySetAside: true,
  })) as [Requirement, Requirement]
  const yes = (id: string, of: Requirement, changes: Partial<Reading> = {}) =>
    reading(id, of.id, { kind: 'confirmed', yes: true }, changes)
  const no = (id: string, of: Requirement) => reading(id, of.id, { kind: 'confirmed', yes: false })
  const aside = (id: string, of: Requirement, by: string) =>
    reading(id, of.id, { kind: 'does not apply', because: 'none here' }, { by })
  const acceptance = (requirements: readonly Requirement[], ...readings: readonly Reading[]) =>
    judged(requirements, readings).acceptance

  it('takes a reading that meets: the run file alone accepts nothing, nor does nobody', () => {
    expect(acceptance([covers])).toEqual({ kind: 'not yet known' })
    expect(acceptance([])).toEqual({ kind: 'not yet known' })
    expect(acceptance([covers, seen])).toEqual({ kind: 'not yet known' })
    expect(acceptance([covers, seen], yes('r1', seen))).toEqual({ kind: 'acceptable' })
    // What does not apply has a reading too, and nothing meets by it.
    expect(acceptance([covers, seen], aside('r1', seen, 'A. Ruiz'))).toEqual({ kind: 'not yet known' })
  })

  it('names what was set aside, how much and by whom, each person once', () => {
    const two = aside('r2', other, 'A. Ruiz')
    expect(acceptance([seen, other], yes('r1', seen), two)).toEqual({
      ...{ kind: 'acceptable except', setAside: 1, by: ['A. Ruiz'] },
    })
    const third = { ...plainRequirement('third', { kind: 'confirm' }), maySetAside: true }
    const requirements = [height, seen, other, third]
    const read = reading('r0', height.id, value(31))
    const both = [aside('r1', seen, 'A. Ruiz'), two]
    expect(acceptance(requirements, read, ...both, aside('r3', third, 'J. Okafor'))).toEqual({
      ...{ kind: 'acceptable except', setAside: 3, by: ['A. Ruiz', 'J. Okafor'] },
    })
    const { unproven } = judged([seen, other], [yes('r1', seen), two])
    expect(unproven.map(({ requirement, because }) => [requirement, because.kind])).toEqual([[other.id, 'set aside']])
  })

  it('is not, as long as a failure waits for its recheck: what meets by another reading is not proven', () => {
    const again = judged([seen], [no('r1', seen), yes('r2', seen)])
    expect(again.acceptance).toEqual({ kind: 'not acceptable' })
    expect(again.unproven.map(({ requirement, because }) => [requirement, because])).toEqual([
      [seen.id, { kind: 'not rechecked' }],
    ])
    const rechecked = judged([seen], [no('r1', seen), yes('r2', seen, { rechecks: seen.id })])
    expect([rechecked.acceptance, rechecked.unproven]).toEqual([{ kind: 'acceptable' }, []])
  })

  it('hangs on what was seen besides where that can let it fail, or nobody says that it cannot; the rest is counted', () => {
    const free = (id: string, changes: Partial<FreeFinding>): FreeFinding => ({
      ...{ id, what: 'other', of: 'run', note: null, photos: [], by: 'J. Okafor', at: '2016-05-12T10:05:00Z' },
      ...{ closed: null, ...changes },
    })
    const upkeep = free('f1', { severity: 'upkeep' })
    const weakens = free('f2', { severity: 'weakens it' })
    const grave = free('f3', { severity: 'lets it fail' })
    const unsaid = free('f4', {})
    const closed = {
      id: 'c1',
      note: null,
      photos: [],
      by: 'A. Ruiz',
      at: '2016-05-13T10:05:00Z',
      as: 'put right',
    } as const
    const model = modelFrom('flared-terminal-31', 1000)
    const by = (...found: readonly FreeFinding[]) =>
      judgeRun(model, [seen], [yes('r1', seen)], { rule, instruments }, found).acceptance
    expect(by(upkeep, weakens)).toEqual({ kind: 'acceptable', freeFindings: 2 })
    expect(by(grave)).toEqual({ kind: 'not acceptable', freeFindings: 1 })
    expect(by(unsaid)).toEqual({ kind: 'not acceptable', freeFindings: 1 })
    expect(by(upkeep, grave, weakens)).toEqual({ kind: 'not acceptable', freeFindings: 3 })
    expect(by({ ...grave, closed })).toEqual({ kind: 'acceptable' })
    expect(by({ ...grave, closed }, upkeep)).toEqual({ kind: 'acceptable', freeFindings: 1 })
  })
})

describe('what is not proven', () => {
  // A tape: u = 1.36 mm, guard band 2.7 mm, about 0.107 in.
  const model = modelFrom('flared-terminal-31', 1000)
  const of = 'post-4/rail-height'
  const at = (inches: number | null) => {
    const read = inches === null ? [] : [reading('r1', of, value(inches), { instrument: 'tape' })]
    const { unproven, acceptance } = judgeRun(model, deriveRequirements(model), read, { rule, instruments })
    return [unproven.find(({ requirement }) => requirement === of)?.because.kind, acceptance.kind]
  }

  it('is what nobody read and what is too close to a limit, and neither what meets nor what fails', () => {
    expect(at(null)).toEqual(['nobody looked', 'not yet known'])
    expect(at(31)).toEqual([undefined, 'not yet known'])
    expect(at(32.0625)).toEqual(['measured', 'not yet known'])
    expect(at(32.125)).toEqual([undefined, 'not acceptable'])
  })

  it('is what was answered in a way that is not asked; the reading is named', () => {
    const answers = judged(
      [height, confirmed],
      [reading('r1', confirmed.id, value(3)), reading('r2', height.id, value(3, '%'))],
    )
    expect(answers.verdicts.map(({ verdict, because, readings }) => [verdict, because, readings])).toEqual([
      ['unread', { kind: 'answer of another kind', expected: 'length' }, ['r2']],
      ['unread', { kind: 'answer of another kind', expected: 'confirmation' }, ['r1']],
    ])
  })

  it('names each reading that is missing for a computed value, of which post and what', () => {
    const points = [0, 75, 150].map((alongInches, i) => ({ reading: `post-${i + 1}/lateral-offset`, alongInches }))
    const straight = {
      ...plainRequirement('straightness', { ...measured(limits(0, 1)), orFrom: { kind: 'middle ordinate', points } }),
    } as Requirement
    const space = plainRequirement('spacing', {
      ...measured(limits(74, 76)),
      orFrom: { kind: 'difference', from: 'post-1/along', to: 'post-2/along' },
    } as Requirement['look'])
    const missing = judged([straight, space], [reading('r1', 'post-2/lateral-offset', value(1))]).verdicts.map(
      ({ because }) => because,
    )
    // Only post 1 has a requirement here, so that the number of the others is not known.
    expect(missing).toEqual([
      {
        kind: 'readings missing',
        missing: [
          { of: 'post-1/lateral-offset', post: 1, what: 'offset' },
          { of: 'post-3/lateral-offset', post: null, what: 'offset' },
        ],
      },
      {
        kind: 'readings missing',
        missing: [
          { of: 'post-1/along', post: 1, what: 'along' },
          { of: 'post-2/along', post: null, what: 'along' },
        ],
      },
    ])
  })
})

describe('a torque, whose doubt grows with it', () => {
  // A wrench within 4 %: u = 2.3094 % of 100, together with a step of 1: sqrt(2.3094² + 1/12) = 2.3274 lbf·ft.
  const torque = plainRequirement('torque', measured(limits(90, 120, 'lbf·ft')))
  const wrench = { instrument: 'torque-wrench' }
  const because = judged([torque], [reading('r1', torque.id, value(92, 'lbf·ft'), wrench)]).verdicts[0]!
    .because as Measured

  it('is told with both parts of it', () => {
    expect(because.doubt).toEqual({ fixed: expect.closeTo(1 / Math.sqrt(12), 9), relative: 0.04 / Math.sqrt(3) })
    expect(because.uncertainty).toBeCloseTo(Math.hypot(92 * (0.04 / Math.sqrt(3)), 1 / Math.sqrt(12)), 9)
  })

  it('and a length with one', () => {
    const plain = judged([height], [reading('r1', height.id, value(31))]).verdicts[0]!.because
    expect(plain).not.toHaveProperty('doubt')
  })
})

describe('how finely the same value has to be read', () => {
  it('is its margin as so many times two uncertainties as the run asks for (JCGM 106:2012, 8.3)', () => {
    const of = limits(30, 32)
    const finer = (multiple: number) => {
      const by: DecisionRule = { kind: 'guard band', multiple }
      const { because } = judged([height], [reading('r1', height.id, value(32.0625))], by).verdicts[0]!
      return secondReading(because as Measured, of, by)?.finer?.uncertainty
    }
    // 1/16 in beyond: with a guard band of 2u it is decided from u = 1/32 in on, with one of 4u from 1/64.
    expect(finer(1)).toBeCloseTo(1 / 32, 12)
    expect(finer(2)).toBeCloseTo(1 / 64, 12)
  })
})

describe('what counts for nothing', () => {
  const effects = (...readings: readonly Reading[]) =>
    withoutEffect([height, confirmed], readings).map(({ reading, kind, names }) => [reading, kind, names])
  const first = reading('r1', height.id, value(33))

  it('is a recheck of what the reading cannot prove, and no other', () => {
    const recheck = (of: string, rechecks: string) => reading('r2', of, value(31), { rechecks })
    expect(effects(first, recheck(height.id, height.id))).toEqual([])
    expect(effects(first, recheck(confirmed.id, height.id))).toEqual([['r2', 'recheck', height.id]])
    expect(effects(first, recheck('post-9/elsewhere', height.id))).toEqual([['r2', 'recheck', height.id]])
    expect(effects(first, recheck(height.id, 'post-9/elsewhere'))).toEqual([['r2', 'recheck', 'post-9/elsewhere']])
    // One that counts beside one that does not.
    expect(effects(first, recheck(height.id, height.id), { ...recheck(confirmed.id, height.id), id: 'r3' })).toEqual([
      ['r3', 'recheck', height.id],
    ])
  })

  it('is a correction of something else, and setting aside what may not be', () => {
    expect(effects(first, reading('r2', height.id, value(31), { corrects: 'r1' }))).toEqual([])
    expect(effects(first, reading('r2', confirmed.id, value(31), { corrects: 'r1' }))).toEqual([
      ['r2', 'correction', 'r1'],
    ])
    const aside: Answer = { kind: 'does not apply', because: 'no such part' }
    expect(effects(reading('r1', height.id, aside))).toEqual([['r1', 'setting aside', height.id]])
    const allowed = [{ ...height, maySetAside: true }]
    expect(withoutEffect(allowed, [reading('r1', height.id, aside)])).toEqual([])
  })
})

it('a value is the nearest nanometre of what it is computed from', () => {
  // A third of the way from 0 to 2 nm the chord lies at 2/3 nm: 0 is 1 nm off it, and 5 nm is 4.
  const points = [0, 75, 225].map((alongInches, i) => ({ reading: `p${i}`, alongInches }))
  const look = { ...measured(limits(0, 1)), orFrom: { kind: 'middle ordinate', points } } as Requirement['look']
  const at = (middle: number) => {
    const nanometres = (of: string, steps: number) =>
      reading(of, of, { kind: 'measured', value: steps, unit: 'mm', resolution: null, side: 'away' } as Answer)
    const read = [nanometres('p0', 0), nanometres('p1', middle), nanometres('p2', 2)]
    const { because } = judged([plainRequirement('straightness', look)], read).verdicts[0]!
    return Math.round((because as Measured).value * exactLength(1, 'in'))
  }
  expect([at(0), at(5)]).toEqual([1, 4])
})
