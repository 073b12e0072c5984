import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import type { Doubt } from '../../core/measurement/doubt.ts'
import { exactValue, isLengthUnit, type Unit } from '../../core/units/quantity-kinds.ts'
import type { DecisionRule } from '../../core/verdicts/verdict.ts'
import { printIn } from '../messages.ts'
import { className } from '../parts/verdict-sign.tsx'
import { gaugeScale } from './gauge-scale.ts'

interface Props {
  readonly limits: Dimension<Unit>
  readonly units: 'us' | 'metric'
  /** Of the value, or of a reading that is not there yet. */
  readonly doubt: Doubt
  readonly rule: DecisionRule
  /** In the unit of the limits; null while there is none. */
  readonly value: number | null
}

const [width, height, middle] = [340, 35, 12]
/** A verdict is told by how high its stretch is, and not by its colour alone. */
const heights = { meets: 14, 'too close': 8, fails: 3 } as const

/** A value seen against its limits, with its doubt as a bar. The verdict beside it says the same in words. */
export function Gauge({ limits, units, doubt, rule, value }: Props) {
  const scale = gaugeScale(limits, doubt, rule, value === null ? null : exactValue(value, limits.unit))
  if (scale === null) return null
  const print = printIn(units)
  const limitText = (limit: number): string =>
    isLengthUnit(limits.unit) ? print.short.length(limit, limits.unit) : print.quantity(limit, limits.unit)
  const x = (share: number): number => 8 + share * (width - 16)
  return (
    <svg class="gauge" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {scale.stretches.map(({ verdict, from, to }) => (
        <rect
          key={from}
          class={className(verdict)}
          x={x(from)}
          y={middle - heights[verdict] / 2}
          width={x(to) - x(from)}
          height={heights[verdict]}
        />
      ))}
      {scale.limits.map((limit) => (
        <g key={limit.value}>
          <path class="gauge-limit" d={`M${x(limit.at)} ${middle - 10}v20`} />
          <text x={x(limit.at)} y={height - 2} text-anchor="middle" font-size={12}>
            {limitText(limit.value)}
          </text>
        </g>
      ))}
      {scale.value !== null && (
        <g class="gauge-value">
          <path d={`M${x(scale.value.from)} ${middle}H${x(scale.value.to)}`} />
          <path d={`M${x(scale.value.at)} ${middle - 1}l-6-11h12z`} />
        </g>
      )}
    </svg>
  )
}
