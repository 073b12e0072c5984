interface Props {
  readonly value: number
  readonly unit: 'in' | 'mm'
  /** What it shows, for who hears the page. */
  readonly said: string
}

/** Width of the piece of tape that is drawn, and of one step on it, points. */
const [width, height] = [320, 72]
const scales = {
  in: { step: 10, perUnit: 8, numberedEach: 1, long: [8, 4, 2] },
  mm: { step: 6, perUnit: 1, numberedEach: 10, long: [10, 5, 5] },
} as const

/** A piece of a tape about what it shows, drawn step by step; the mark lies where it is read. */
export function Tape({ value, unit, said }: Props) {
  const { step, perUnit, numberedEach, long } = scales[unit]
  const middle = Math.round(value * perUnit)
  const most = Math.ceil(width / 2 / step) + 1
  const ticks = Array.from({ length: 2 * most + 1 }, (_, i) => middle - most + i).filter((tick) => tick >= 0)
  const x = (tick: number): number => width / 2 + (tick - middle) * step
  const lengthOf = (tick: number): number =>
    tick % long[0] === 0 ? 34 : tick % long[1] === 0 ? 24 : tick % long[2] === 0 ? 16 : 10
  return (
    <svg class="tape" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={said}>
      <rect width={width} height={height} />
      {ticks.map((tick) => (
        <path key={tick} d={`M${x(tick)} 0v${lengthOf(tick)}`} />
      ))}
      {ticks
        .filter((tick) => tick % (numberedEach * perUnit) === 0)
        .map((tick) => (
          <text key={tick} x={x(tick)} y={54}>
            {tick / perUnit}
          </text>
        ))}
      <path class="tape-mark" d={`M${width / 2} 0V${height}`} />
    </svg>
  )
}
