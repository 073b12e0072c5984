import type { Metres } from '../units/quantity.ts'

/**
 * Cross slopes at one station. Each is the rise per metre going outwards from the line on its side, so a normal crown
 * has two negative values and a fully superelevated right turn is positive on the left and negative on the right.
 */
export interface CrossSlope {
  readonly station: Metres
  readonly left: number
  readonly right: number
}

/** Cross slope by station, rising; between rows it changes evenly, before the first and after the last it stays. */
export type CrossSlopeTable = readonly CrossSlope[]

/** Left and right cross slope at `station`. */
export function crossSlopeAt(table: CrossSlopeTable, station: Metres): Omit<CrossSlope, 'station'> {
  const next = table.findIndex((row) => row.station >= station)
  const after = table[next < 0 ? table.length - 1 : next]
  if (after === undefined) throw new RangeError('a cross-slope table has at least one row')
  const before = next > 0 ? table[next - 1]! : after
  const share = before === after ? 0 : (station - before.station) / (after.station - before.station)
  return {
    left: before.left + share * (after.left - before.left),
    right: before.right + share * (after.right - before.right),
  }
}

/** How much the paved surface lies above the profile line at `station` and `offset` (m, positive right). */
export function riseAt(table: CrossSlopeTable, station: Metres, offset: Metres): Metres {
  const slope = crossSlopeAt(table, station)
  return Math.abs(offset) * (offset < 0 ? slope.left : slope.right)
}
