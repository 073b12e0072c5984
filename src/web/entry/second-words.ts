import { lengthText } from '../../core/hardware/dimension-text.ts'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { LengthUnit } from '../../core/units/exact-length.ts'
import { nanometresPer } from '../../core/units/exact-length.ts'
import type { SecondReading } from '../../core/verdicts/second-reading.ts'
import { inBothUnits } from '../../words/in-both-units.ts'
import { m, say } from '../messages.ts'

/** What a second reading would settle, a sentence each; `fine` names the instruments that are fine enough. */
export function secondWords(
  second: SecondReading,
  instruments: readonly Instrument[],
  units: 'us' | 'metric',
): readonly string[] {
  const { unit, meets, fails, finer } = second
  const text = (value: number): string => inBothUnits(lengthText(value, unit), units)
  const range =
    meets === null
      ? m.second.noneMeets
      : m.second.meets(meets.from === null ? null : text(meets.from), meets.to === null ? null : text(meets.to))
  const failing = m.second.fails(
    fails.atMost === null ? null : text(fails.atMost),
    fails.atLeast === null ? null : text(fails.atLeast),
  )
  if (finer === null) return [range, failing, m.second.onLimit]
  const fine = instruments
    .filter((instrument) => doubtOf(instrument) <= finer.uncertainty * nanometresPer[unit])
    .map(({ name }) => say(name))
  const size = inBothUnits(doubtText(finer.uncertainty, unit), units)
  return [range, failing, m.second.finer(m.verdict[finer.verdict], size, fine.join(', '))]
}

/** Standard uncertainty of one reading, nm: the instrument's own and the rounding to its step (JCGM 100:2008, F.2.2.1). */
function doubtOf({ standardUncertainty, readTo, unit }: Instrument): number {
  return Math.sqrt(standardUncertainty ** 2 + readTo ** 2 / 12) * nanometresPer[unit]
}

/** Rounded down, so that an instrument of that doubt is fine enough. */
function doubtText(value: number, unit: LengthUnit): string {
  const digits = { in: 3, ft: 4, mm: 1, m: 4 }[unit]
  return `${(Math.floor(value * 10 ** digits) / 10 ** digits).toFixed(digits)} ${unit}`
}
