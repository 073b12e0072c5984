import type { Metres, Radians } from '../units/quantity.ts'

/** A place in plan, m. Azimuths are radians clockwise from north, so a turn to the right is positive. */
export interface Point {
  readonly easting: Metres
  readonly northing: Metres
}

/** Straight distance between two points, m. */
export const distance = (a: Point, b: Point): Metres => Math.hypot(b.easting - a.easting, b.northing - a.northing)

/** The point on the straight line from `a` to `b` at `share` of the way, 0 to 1. */
export const pointBetween = (a: Point, b: Point, share: number): Point => ({
  easting: a.easting + share * (b.easting - a.easting),
  northing: a.northing + share * (b.northing - a.northing),
})

/** Azimuth of the straight line from `a` to `b`, in (-π, π]. */
export const azimuthFrom = (a: Point, b: Point): Radians => Math.atan2(b.easting - a.easting, b.northing - a.northing)

/** The point reached from `from` by going `ahead` along `azimuth` and then `right` square to it (left is negative), m. */
export function movedBy(from: Point, azimuth: Radians, ahead: Metres, right: Metres): Point {
  const sin = Math.sin(azimuth)
  const cos = Math.cos(azimuth)
  return { easting: from.easting + ahead * sin + right * cos, northing: from.northing + ahead * cos - right * sin }
}

/** How far `to` lies ahead of `from` along `azimuth`, and how far to the right of that line, m. */
export function seenFrom(from: Point, azimuth: Radians, to: Point): { readonly ahead: Metres; readonly right: Metres } {
  const east = to.easting - from.easting
  const north = to.northing - from.northing
  const sin = Math.sin(azimuth)
  const cos = Math.cos(azimuth)
  return { ahead: east * sin + north * cos, right: east * cos - north * sin }
}

/** `angle` brought into (-π, π]. */
export function turned(angle: Radians): Radians {
  const rest = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))
  return rest <= -Math.PI ? rest + 2 * Math.PI : rest
}
