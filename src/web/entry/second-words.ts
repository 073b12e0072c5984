import { doubt, doubtAt } from '../../core/measurement/doubt.ts'
import { type Instrument, instrumentsReading } from '../../core/measurement/instruments.ts'
import { printValue } from '../../core/units/print-value.ts'
import { exactValue, isLengthUnit, kindOf, stepsPer, type Unit, valueIn } from '../../core/units/quantity-kinds.ts'
import type { SecondReading } from '../../core/verdicts/second-reading.ts'
import { unitIn } from '../../words/in-units.ts'
import { m, printIn, say } from '../messages.ts'

/** What a second reading would settle, a sentence each; `fine` names the instruments that are fine enough. */
export function secondWords(
  second: SecondReading,
  instruments: readonly Instrument[],
  units: 'us' | 'metric',
): readonly string[] {
  const { unit, value, meets, fails, finer } = second
  const here = exactValue(value, unit)
  const text = (value: number): string => printIn(units).quantity(value, unit)
  const range =
    meets === null
      ? m.second.noneMeets
      : m.second.meets(meets.from === null ? null : text(meets.from), meets.to === null ? null : text(meets.to))
  const failing = m.second.fails(
    fails.atMost === null ? null : text(fails.atMost),
    fails.atLeast === null ? null : text(fails.atLeast),
  )
  if (finer === null) return [range, failing, m.second.onLimit]
  const enough = finer.uncertainty * stepsPer(unit)
  const fine = instrumentsReading(instruments, kindOf(unit))
    .filter((one) => doubtAt(doubt(one, { uncertainty: null, resolution: null }), here) <= enough)
    .map(({ name }) => say(name))
  const inOurs = unitIn(unit, units) ?? unit
  const size = doubtText(valueIn(enough, inOurs), inOurs)
  return [range, failing, m.second.finer(m.verdict[finer.verdict], size, fine.join(', '))]
}

/** Rounded down, so that an instrument of that doubt is fine enough. */
function doubtText(value: number, unit: Unit): string {
  const digits = digitsOf[unit]
  const size = Math.floor(value * 10 ** digits) / 10 ** digits
  return isLengthUnit(unit) ? `${size.toFixed(digits)} ${unit}` : printValue(size, unit, digits)
}

const digitsOf = { in: 3, ft: 4, mm: 1, m: 4, '%': 2, '°': 2, lbf·ft: 1, N·m: 1, lbf: 0, kN: 2, count: 0 } as const
