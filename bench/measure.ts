/** One line of the printed table. */
export interface BenchRow {
  readonly what: string
  readonly figure: string
  /** What the project wants of it; empty where it only wants to know. */
  readonly aim: string
}

/** The time of one call, ms: the median of `times` calls after `warmUp` calls that are not counted. */
export function medianMilliseconds(call: () => void, warmUp: number, times: number): number {
  for (let i = 0; i < warmUp; i++) call()
  return median(Array.from({ length: times }, () => milliseconds(call)))
}

export function milliseconds(call: () => void): number {
  const start = performance.now()
  call()
  return performance.now() - start
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}

/** The value that nine of ten do not exceed. */
export const nineOfTen = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.ceil(values.length * 0.9) - 1]!

/** Three significant figures, with commas between thousands. */
export const figure = (value: number): string =>
  Number(value.toPrecision(3)).toLocaleString('en-US', { maximumFractionDigits: 6 })
