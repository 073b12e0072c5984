import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { plainRequirement } from '../../../test/fixtures/plain-requirement.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { instruments } from '../measurement/instruments.ts'
import type { Answer, Reading } from '../measurement/reading.ts'
import type { RequirementLook } from '../requirements/requirement.ts'
import { exactLength } from '../units/exact-length.ts'
import { exactValue, type Unit } from '../units/quantity-kinds.ts'
import { judgeRequirements } from './judge-requirements.ts'
import { plainFault } from './plain-faults.ts'
import { proofOf } from './proof.ts'

/** The steps as data. A tape leaves a doubt of 0.107 in and is read to 1/8 in; worked by hand in inches. */
const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in', role: 'centre' } as const
const limits = (nominal: number | null, low: number | null, high: number | null): Dimension => ({
  ...{ ...cited, nominal: nominal ?? 'notStated', low: low ?? 'notStated', high: high ?? 'notStated' },
})
const measure = (within: Dimension): RequirementLook => ({ kind: 'measure', limits: within, orFrom: null })
const length = (inches: number, side?: 'away' | 'toward'): Answer => ({
  ...{ kind: 'measured', value: exactLength(inches, 'in'), unit: 'in', resolution: null },
  ...(side === undefined ? {} : { side }),
})

function steps(topic: string, look: RequirementLook, answer: Answer, instrument = 'tape') {
  const requirement = plainRequirement(topic, look)
  const reading: Reading = {
    ...{ id: 'r1', of: requirement.id, answer, instrument, uncertainty: null, by: 'J. Okafor' },
    ...{ at: '2016-05-12T10:05:00Z', where: null, photos: [], corrects: null, rechecks: null, together: null },
  }
  const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
  const [verdict] = judgeRequirements([requirement], [reading], rules)
  expect(verdict!.verdict).toBe('fails')
  return plainFault({ requirement, verdict: verdict! }, proofOf([reading], rules)).steps
}

describe('an end post that stands off at the wrong distance', () => {
  const moved = (within: Dimension, inches: number) =>
    steps('flare-offset', measure(within), length(Math.abs(inches), inches < 0 ? 'toward' : 'away'))

  it('is moved to the nominal distance, though that is not the middle of its limits', () => {
    expect(moved(limits(46, 45, 51), 43.5)).toEqual([
      {
        ...{ kind: 'move end', post: 1, by: 2.5, unit: 'in', standsAt: 46, holds: { from: 45.125, to: 50.875 } },
      },
    ])
    expect(moved(limits(46, 45, 51), 53)).toMatchObject([{ by: -7, standsAt: 46 }])
    expect(moved(limits(46, 45, 51), -12)).toMatchObject([{ by: 58, standsAt: 46 }])
  })

  it('is moved to the middle of limits without a nominal distance, a ceiling alone beginning at nothing', () => {
    expect(moved(limits(null, 45, 50), 40)).toMatchObject([{ by: 7.5, standsAt: 47.5 }])
    expect(moved(limits(null, null, 1), 2)).toMatchObject([{ by: -1.5, standsAt: 0.5 }])
    // Past the only limit by its doubt and a step of the reading: 5 + 0.107 + 0.125 in, to the next eighth.
    expect(moved(limits(null, 45, null), 40)).toMatchObject([{ by: 5.25, standsAt: 45.25, holds: { to: null } }])
  })

  it('has its side looked at first where nobody said it', () => {
    expect(steps('flare-offset', measure(limits(48, 45, 51)), length(40))).toEqual([
      ...[{ kind: 'measure first', what: 'side', requirements: ['post-1/flare-offset'], from: 1, to: 1, using: null }],
    ])
  })
})

describe('what is put right as its rule says', () => {
  const right = { kind: 'set right', requirement: 'post-1/cable-play', how: byHand('Tighten it.') }

  it('is then read within what a reading like the one at hand proves', () => {
    expect(steps('cable-play', measure(limits(null, null, 1)), length(2))).toEqual([
      { ...right, to: { kind: 'value', span: { from: null, to: 0.875 }, unit: 'in' } },
    ])
  })

  // Doubts by hand, twice sqrt(own^2 + step^2/12): tape 2.7 mm, string line 4.4, tape and level 6.3, total station 8.0;
  // the receiver's 40 mm is more than the inch that the ceiling leaves.
  it('names the instruments that would prove it, the least doubtful first, where this one does not', () => {
    expect(steps('cable-play', measure(limits(null, null, 1)), length(4), 'gnss')).toEqual([
      { ...right, to: { kind: 'value', span: { from: null, to: 0.875 }, unit: 'in' } },
      {
        ...{ kind: 'not provable', requirements: ['post-1/cable-play'] },
        would: (['steel tape', 'string line and tape', 'tape and level', 'total station'] as const).map((is) => ({
          ...{ kind: 'instrument', is },
        })),
      },
    ])
    expect(steps('cable-play', measure(limits(null, null, 0.05)), length(4))).toEqual([
      { ...right, to: { kind: 'value', span: { from: null, to: 0 }, unit: 'in' } },
      { kind: 'not provable', requirements: ['post-1/cable-play'], would: [] },
    ])
  })

  it('is chosen right or confirmed', () => {
    const choices = [
      { id: 'behind', label: byHand('behind'), right: false },
      { id: 'in-front', label: byHand('in front'), right: true },
    ]
    expect(steps('lap', { kind: 'choose', choices }, { kind: 'choice', choice: 'behind' })).toEqual([
      { ...right, requirement: 'post-1/lap', to: { kind: 'choice', choice: 'in-front' } },
    ])
    expect(steps('manual', { kind: 'confirm' }, { kind: 'confirmed', yes: false })).toEqual([
      { ...right, requirement: 'post-1/manual', to: { kind: 'confirmed' } },
    ])
  })
})

describe('what no reading decides', () => {
  const fault = (look: RequirementLook) => {
    const requirement = plainRequirement('thing', look)
    const rules = { rule: { kind: 'guard band', multiple: 1 }, instruments } as const
    const [verdict] = judgeRequirements([requirement], [], rules)
    return plainFault({ requirement, verdict: verdict! }, proofOf([], rules)).steps
  }

  it('is mended as its rule says: what the run file decides, and a length that was only counted', () => {
    const asSaid = [{ kind: 'as the rule says', how: byHand('Tighten it.') }]
    expect(fault({ kind: 'record', rule: { kind: 'need of run', shortAtFirst: 1, shortAtSecond: 0 } })).toEqual(asSaid)
    expect(fault({ kind: 'measure', limits: limits(75, 74, 76), orFrom: null, counted: 80 })).toEqual(asSaid)
  })
})

/** Every kind of quantity, not lengths alone: carried out and read again with the same instrument it meets. */
describe('a value that is put right', () => {
  it.each([
    ['%', 0, 10, 'digital-level', [14, -3]],
    ['°', 40, 50, 'angle-gauge', [55, 30]],
    ['lbf·ft', 100, 150, 'torque-wrench', [60, 220]],
    ['N·m', 140, 200, 'torque-wrench', [80, 300]],
    ['lbf', 500, 2000, 'tension-gauge', [100, 3000]],
    ['kN', 2, 9, 'tension-gauge', [0.5, 14]],
    ['count', 4, 8, 'count-not-stated', [2, 12]],
    ['in', 10, 20, 'tape', [8, 30]],
    ['mm', 250, 500, 'tape', [200, 700]],
  ] as const)(
    'in %s meets at both ends of what it says, and these lie inside the limits',
    (unit, low, high, id, read) => {
      const within = { ...cited, unit, low, high, nominal: 'notStated' } as Dimension<Unit>
      const look = { kind: 'measure', limits: within, orFrom: null } as const
      const answer = (value: number): Answer => ({
        ...{ kind: 'measured', value: exactValue(value, unit), unit, resolution: null },
      })
      for (const wrong of read) {
        const found = steps('thing', look, answer(wrong), id)
        expect(found.map(({ kind }) => kind)).toEqual(['set right'])
        const [step] = found
        if (step?.kind !== 'set right' || step.to.kind !== 'value') throw new Error('no value')
        const { from, to } = step.to.span
        expect([from! >= low, to! <= high, from! < to!]).toEqual([true, true, true])
        for (const value of [from!, to!]) {
          const requirement = plainRequirement('thing', look)
          const again: Reading = {
            ...{
              id: 'r2',
              of: requirement.id,
              answer: answer(value),
              instrument: id,
              uncertainty: null,
              by: 'A. Ruiz',
            },
            ...{ at: '2016-05-13T10:05:00Z', where: null, photos: [], corrects: null, rechecks: null, together: null },
          }
          const rule = { kind: 'guard band', multiple: 1 } as const
          expect([value, judgeRequirements([requirement], [again], { rule, instruments })[0]!.verdict]).toEqual([
            ...[value, 'meets'],
          ])
        }
      }
    },
  )
})
