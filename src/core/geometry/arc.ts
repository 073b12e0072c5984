import type { Metres } from '../units/quantity.ts'

/** Straight distance between the ends of an arc, m: 2R sin(s/2R). */
export const chordOf = (radius: Metres, arc: Metres): Metres => 2 * radius * Math.sin(arc / (2 * radius))

/** Largest distance from the chord to the arc, m: R(1 - cos(s/2R)), written so that flat arcs keep their digits. */
export function middleOrdinate(radius: Metres, arc: Metres): Metres {
  const half = Math.sin(arc / (4 * radius))
  return 2 * radius * half * half
}
