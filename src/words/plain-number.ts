/** Written out: 0.000001, not 1e-6. */
export const plainNumber = (value: number): string =>
  Math.abs(value) < 1e-5 && value !== 0 ? value.toFixed(6) : String(value)
