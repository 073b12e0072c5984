import { describe, expect, test } from 'vitest'
import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import { exactValue, type Unit } from '../../core/units/quantity-kinds.ts'
import { judgeMeasured } from '../../core/verdicts/judge-measured.ts'
import type { DecisionRule } from '../../core/verdicts/verdict.ts'
import { type GaugeScale, gaugeScale } from './gauge-scale.ts'

const limits = (low: number | 'notStated', high: number | 'notStated', unit: Unit = 'in'): Dimension<Unit> =>
  ({ nominal: 'notStated', low, high, unit }) as Dimension<Unit>
const guarded: DecisionRule = { kind: 'guard band', multiple: 1 }
const doubt = (inches: number) => ({ fixed: exactValue(inches, 'in'), relative: 0 })
const verdictsOf = (scale: GaugeScale | null) => scale?.stretches.map(({ verdict }) => verdict)

describe('the gauge', () => {
  test('says at every value what the judging says', () => {
    for (const rule of [guarded, { kind: 'simple' } as const])
      for (const asked of [limits(30, 32), limits('notStated', 4), limits(27.75, 'notStated'), limits(3, 3.25)])
        for (let value = 0; value < 40; value += 1 / 16) {
          const steps = exactValue(value, 'in')
          const scale = gaugeScale(asked, doubt(0.125), rule, steps)!
          const { at } = scale.value!
          const there = scale.stretches.filter(({ from, to }) => from <= at && at <= to).map(({ verdict }) => verdict)
          expect(there, `${value} of ${JSON.stringify(asked)}`).toContain(
            judgeMeasured(steps, doubt(0.125), asked, rule, false)!.verdict,
          )
        }
  })

  test('shows what is too close on either side of each limit', () => {
    expect(verdictsOf(gaugeScale(limits(30, 32), doubt(0.125), guarded, null))).toEqual([
      'fails',
      'too close',
      'meets',
      'too close',
      'fails',
    ])
    expect(verdictsOf(gaugeScale(limits(30, 32), doubt(0.125), { kind: 'simple' }, null))).toEqual([
      'fails',
      'meets',
      'fails',
    ])
    expect(verdictsOf(gaugeScale(limits('notStated', 4), doubt(0.125), guarded, null))).toEqual([
      'meets',
      'too close',
      'fails',
    ])
  })

  test('shows nothing that meets where the limits lie closer together than what is doubtful', () => {
    expect(verdictsOf(gaugeScale(limits(3, 3.25), doubt(0.5), guarded, null))).toEqual(['fails', 'too close', 'fails'])
  })

  test('spreads a value by what is doubtful at it, twice its standard uncertainty to either side', () => {
    const { value, limits: marked } = gaugeScale(limits(30, 32), doubt(0.125), guarded, exactValue(31, 'in'))!
    const inch = (marked[1]!.at - marked[0]!.at) / 2
    expect(value!.to - value!.at).toBeCloseTo(0.25 * inch, 9)
    expect(value!.at - value!.from).toBeCloseTo(0.25 * inch, 9)
  })

  test('is none where no limit is stated', () => {
    expect(gaugeScale(limits('notStated', 'notStated'), doubt(0.125), guarded, null)).toBeNull()
  })
})
