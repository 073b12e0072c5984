import type { Dimension, Stated } from '../../core/hardware/hardware-sheet.ts'
import { type Doubt, doubtAt } from '../../core/measurement/doubt.ts'
import { exactValue, type Steps, type Unit } from '../../core/units/quantity-kinds.ts'
import { doubtfulBands } from '../../core/verdicts/doubtful-bands.ts'
import type { DecisionRule, VerdictWord } from '../../core/verdicts/verdict.ts'

/** Shares of the width of the gauge, from its left end. */
export interface GaugeScale {
  readonly stretches: readonly {
    readonly verdict: Extract<VerdictWord, 'meets' | 'fails' | 'too close'>
    readonly from: number
    readonly to: number
  }[]
  readonly limits: readonly { readonly value: number; readonly at: number }[]
  /** The value and its expanded doubt (k = 2); held at an end where it lies beyond it. */
  readonly value: { readonly at: number; readonly from: number; readonly to: number } | null
}

/** A value seen against its limits; null where none is stated. */
export function gaugeScale(
  limits: Dimension<Unit>,
  doubt: Doubt,
  rule: DecisionRule,
  value: Steps | null,
): GaugeScale | null {
  const { low, high } = doubtfulBands(limits, doubt, rule)
  const stated = [limits.low, limits.high].filter((limit: Stated<number>) => limit !== 'notStated')
  const [first, last] = [stated[0], stated.at(-1)]
  if (first === undefined || last === undefined) return null
  const [lowest, highest] = [exactValue(first, limits.unit), exactValue(last, limits.unit)]
  const band = Math.max((low?.to ?? 0) - (low?.from ?? 0), (high?.to ?? 0) - (high?.from ?? 0))
  // Beside the limits there is room for what fails, and for as much as is too close.
  const room = Math.max(band * 1.5, (highest - lowest) / 2, Math.abs(highest) / 20, 1)
  const [start, end] = [lowest - room, highest + room]
  const at = (steps: Steps): number => Math.min(1, Math.max(0, (steps - start) / (end - start)))
  const isNarrow = low !== null && high !== null && low.to > high.from
  const edges: readonly (readonly [Steps, GaugeScale['stretches'][number]['verdict']])[] = [
    ...(low === null ? [] : ([[low.from, 'fails']] as const)),
    ...(isNarrow
      ? []
      : ([...(low === null ? [] : [[low.to, 'too close'] as const]), [high?.from ?? end, 'meets']] as const)),
    ...(high === null
      ? []
      : ([
          [high.to, 'too close'],
          [end, 'fails'],
        ] as const)),
  ]
  let from = 0
  const stretches = edges.map(([until, verdict]) => {
    const stretch = { verdict, from, to: at(until) }
    from = stretch.to
    return stretch
  })
  const expanded = value === null ? 0 : 2 * doubtAt(doubt, value)
  return {
    stretches: stretches.filter((one) => one.to > one.from),
    limits: [...new Set(stated)].map((limit) => ({ value: limit, at: at(exactValue(limit, limits.unit)) })),
    value: value === null ? null : { at: at(value), from: at(value - expanded), to: at(value + expanded) },
  }
}
