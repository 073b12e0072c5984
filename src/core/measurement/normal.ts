const SQRT_HALF = Math.SQRT1_2
const TWO_OVER_SQRT_PI = 2 / Math.sqrt(Math.PI)

/**
 * The standard normal distribution function, relative error below 1e-13 in the lower tail.
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 7.1.6 (series) and 7.1.14 (continued fraction)
 */
export const normalDistribution = (z: number): number => 0.5 * complementaryError(-z * SQRT_HALF)

function complementaryError(x: number): number {
  if (x < 0) return 2 - complementaryError(-x)
  return x < 2 ? 1 - errorSeries(x) : x > 27 ? 0 : errorFraction(x)
}

/** erf x = 2/sqrt(pi) exp(-x^2) sum of 2^n x^(2n+1) / (1 3 … (2n+1)) */
function errorSeries(x: number): number {
  const square = 2 * x * x
  let term = x
  let sum = x
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= square / (2 * n + 1)
    sum += term
  }
  return TWO_OVER_SQRT_PI * Math.exp(-x * x) * sum
}

/** erfc x = exp(-x^2) / (sqrt(pi) (x + (1/2)/(x + (2/2)/(x + (3/2)/(x + …))))), evaluated backwards */
function errorFraction(x: number): number {
  let rest = x
  for (let n = 60; n >= 1; n--) rest = x + n / 2 / rest
  return (TWO_OVER_SQRT_PI / 2) * (Math.exp(-x * x) / rest)
}
