/**
 * Where `f` is zero between `a` and `b`, at which it has opposite signs (or is zero at one of them).
 * Ridders' method: it never leaves the bracket.
 * @throws RangeError when the signs are alike
 */
export function rootBetween(f: (x: number) => number, a: number, b: number, tolerance: number): number {
  let [low, high] = [a, b]
  let [fLow, fHigh] = [f(low), f(high)]
  if (fLow === 0) return low
  if (fHigh === 0) return high
  if (fLow > 0 === fHigh > 0) throw new RangeError(`no change of sign between ${a} and ${b}`)
  let best = low
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2
    const fMiddle = f(middle)
    const scale = Math.sqrt(fMiddle * fMiddle - fLow * fHigh)
    if (fMiddle === 0 || scale === 0) return middle
    const next = middle + ((middle - low) * (fLow > fHigh ? fMiddle : -fMiddle)) / scale
    if (Math.abs(next - best) <= tolerance) return next
    best = next
    const fNext = f(next)
    if (fNext === 0) return next
    if (fMiddle > 0 !== fNext > 0) {
      ;[low, fLow, high, fHigh] = [middle, fMiddle, next, fNext]
    } else if (fLow > 0 !== fNext > 0) {
      ;[high, fHigh] = [next, fNext]
    } else {
      ;[low, fLow] = [next, fNext]
    }
    if (Math.abs(high - low) <= tolerance) return best
  }
  return best
}

/**
 * The first zero of `f` met when going from `from` to `to` in `steps` equal steps, or null where the sign never changes.
 * A pair of zeros inside one step is not seen.
 */
export function firstRoot(
  f: (x: number) => number,
  from: number,
  to: number,
  steps: number,
  tolerance: number,
): number | null {
  let before = from
  let fBefore = f(from)
  for (let i = 1; i <= steps; i++) {
    const next = from + ((to - from) * i) / steps
    const fNext = f(next)
    if (fBefore === 0) return before
    if (fNext === 0 || fBefore > 0 !== fNext > 0) return rootBetween(f, before, next, tolerance)
    before = next
    fBefore = fNext
  }
  return null
}
