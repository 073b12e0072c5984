/** The Fresnel integrals C(x) = ∫ cos(πt²/2) dt and S(x) = ∫ sin(πt²/2) dt, both from 0 to x. */
export interface Fresnel {
  readonly c: number
  readonly s: number
}

/** Below this the power series is used, above it the continued fraction: both are good to about 1e-15 here. */
const seriesLimit = 1.6

/**
 * C(x) and S(x) for any finite x, to about 1e-14; both are odd in x and tend to ±1/2.
 *
 * @source Abramowitz & Stegun, Handbook of Mathematical Functions, 7.3.11 and 7.3.13 (power series), 7.3.22 with
 *         7.1.14 (continued fraction of the complementary error function of a complex argument)
 */
export function fresnel(x: number): Fresnel {
  const size = Math.abs(x)
  const { c, s } = size < seriesLimit ? bySeries(size) : byContinuedFraction(size)
  return x < 0 ? { c: -c, s: -s } : { c, s }
}

// With u = πx²/2: C = x Σ (-1)ⁿ u²ⁿ / ((2n)! (4n+1)),  S = x Σ (-1)ⁿ u²ⁿ⁺¹ / ((2n+1)! (4n+3)).
function bySeries(x: number): Fresnel {
  const u = (Math.PI / 2) * x * x
  let term = x
  let c = x
  let s = 0
  for (let n = 1; Math.abs(term) > 1e-18 * x; n++) {
    term *= u / n
    const part = (n & 2 ? -term : term) / (2 * n + 1)
    if (n & 1) s += part
    else c += part
  }
  return { c, s }
}

// C + iS = (1+i)/2 · (1 - erfc(z)), z = √π/2 (1-i) x, and erfc(z) e^{z²} √π = 2z / (2z²+1 - 1·2/(2z²+5 - 3·4/(2z²+9 - …))).
// Lentz's method; 2z² = -iπx².
function byContinuedFraction(x: number): Fresnel {
  const p = Math.PI * x * x
  let [br, bi] = [1, -p]
  let [dr, di] = inverse(br, bi)
  let [cr, ci] = [1e300, 0]
  let [hr, hi] = [dr, di]
  for (let n = 1; n < 200; n++) {
    const a = -(2 * n - 1) * (2 * n)
    br += 4
    ;[dr, di] = inverse(a * dr + br, a * di + bi)
    const [ir, ii] = inverse(cr, ci)
    cr = br + a * ir
    ci = bi + a * ii
    const er = cr * dr - ci * di
    const ei = cr * di + ci * dr
    ;[hr, hi] = [hr * er - hi * ei, hr * ei + hi * er]
    if (Math.abs(er - 1) + Math.abs(ei) < 1e-16) break
  }
  // multiply by x(1-i), then by cos(πx²/2) + i sin(πx²/2), take from 1, and turn by (1+i)/2
  ;[hr, hi] = [x * (hr + hi), x * (hi - hr)]
  bi = Math.sin(p / 2)
  br = Math.cos(p / 2)
  const re = 1 - (br * hr - bi * hi)
  const im = -(br * hi + bi * hr)
  return { c: (re - im) / 2, s: (re + im) / 2 }
}

function inverse(re: number, im: number): [number, number] {
  const size = re * re + im * im
  return [re / size, -im / size]
}
