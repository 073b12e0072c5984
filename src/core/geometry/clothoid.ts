import type { Metres, Radians } from '../units/quantity.ts'
import { fresnel } from './fresnel.ts'
import { movedBy, type Point } from './point.ts'

/**
 * A line whose curvature changes evenly from one end to the other. A segment (curvature 0 to 0) and an arc (the same
 * curvature at both ends) are clothoids too, so one shape serves for every element of an alignment.
 */
export interface Clothoid {
  readonly start: Point
  /** Direction at the start, clockwise from north. */
  readonly azimuth: Radians
  /** More than 0. */
  readonly length: Metres
  /** 1/m, positive where the line turns right, 0 where it is straight. */
  readonly curvatureStart: number
  readonly curvatureEnd: number
}

/** Curvature at `along` m from the start, 1/m, positive to the right. */
export const curvatureAlong = (line: Clothoid, along: Metres): number =>
  line.curvatureStart + ((line.curvatureEnd - line.curvatureStart) * along) / line.length

/** Azimuth at `along` m from the start; not brought into one turn, so differences are the true turning. */
export const azimuthAlong = (line: Clothoid, along: Metres): Radians =>
  line.azimuth + along * (line.curvatureStart + ((line.curvatureEnd - line.curvatureStart) * along) / (2 * line.length))

/** The point at `along` m from the start (0 to length), to about 1e-12 of the length. */
export function pointAlong(line: Clothoid, along: Metres): Point {
  const k = line.curvatureStart
  const change = line.curvatureEnd - k
  if (change === 0) {
    const turn = k * along
    if (turn === 0) return movedBy(line.start, line.azimuth, along, 0)
    const half = Math.sin(turn / 2)
    return movedBy(line.start, line.azimuth, Math.sin(turn) / k, (2 * half * half) / k)
  }
  const sharpness = change / line.length
  return Math.abs(change) * line.length < nearlyCircular
    ? byQuadrature(line, k, sharpness, along)
    : byFresnel(line, k, sharpness, along)
}

export const endOf = (line: Clothoid): Point => pointAlong(line, line.length)

/** Turning by change of curvature (rad·2) below which the Fresnel form would lose digits to cancellation. */
const nearlyCircular = 1e-2

// Direction against the start, θ(s) = k s + c s²/2 = ±π t²/2 + φ with t = (s + k/c)/a, a = √(π/|c|), φ = -k²/(2c).
function byFresnel(line: Clothoid, k: number, c: number, along: Metres): Point {
  const a = Math.sqrt(Math.PI / Math.abs(c))
  const before = k / c / a
  const from = fresnel(before)
  const to = fresnel(before + along / a)
  const sign = c > 0 ? 1 : -1
  const phase = (-k * k) / (2 * c)
  const cos = Math.cos(phase)
  const sin = Math.sin(phase)
  const dc = to.c - from.c
  const ds = sign * (to.s - from.s)
  return movedBy(line.start, line.azimuth, a * (cos * dc - sin * ds), a * (cos * ds + sin * dc))
}

// Gauss-Legendre with 10 points on pieces that turn less than 2 rad: the error is below 1e-16 of the length.
function byQuadrature(line: Clothoid, k: number, c: number, along: Metres): Point {
  const pieces = Math.max(1, Math.ceil(Math.abs(k * along) / 2))
  const half = along / pieces / 2
  let ahead = 0
  let right = 0
  for (let piece = 0; piece < pieces; piece++) {
    const middle = (2 * piece + 1) * half
    for (let i = 0; i < 5; i++) {
      const reach = nodes[i]! * half
      const first = (middle - reach) * (k + (c * (middle - reach)) / 2)
      const second = (middle + reach) * (k + (c * (middle + reach)) / 2)
      ahead += weights[i]! * (Math.cos(first) + Math.cos(second))
      right += weights[i]! * (Math.sin(first) + Math.sin(second))
    }
  }
  return movedBy(line.start, line.azimuth, ahead * half, right * half)
}

/** @source Abramowitz & Stegun, Table 25.4, n = 10 */
const nodes = [0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717]
const weights = [0.2955242247147529, 0.2692667193099963, 0.219086362515982, 0.1494513491505806, 0.0666713443086881]
