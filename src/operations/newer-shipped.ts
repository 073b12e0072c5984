import { confirmStatement } from '../core/hardware/confirm-statement.ts'
import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { unconfirmedThere } from './compare-sheets.ts'
import { isLaterEdition } from './later-edition.ts'
import { type Shelf, shippedShelf } from './sheet-shelf.ts'

/** The shipped edition that a sheet is or began from; null for one that came from elsewhere. */
export function shippedBaseOf(
  { id, version, basedOn }: HardwareSheet,
  shipped: Shelf = shippedShelf,
): HardwareSheet['basedOn'] | null {
  return shipped.get(id)?.version === version ? { id, version } : (basedOn ?? null)
}

/** The edition that ships now, where it is newer than the one that an own sheet began from; else null. */
export function newerShipped(sheet: HardwareSheet, shipped: Shelf = shippedShelf): HardwareSheet | null {
  // Own editions of before do not note what they began from; their version counts on from it.
  const base = shippedBaseOf(sheet, shipped) ?? sheet
  const now = shipped.get(base.id)
  return now !== undefined && isLaterEdition(now.version, base.version) ? now : null
}

/**
 * The newer edition with everything confirmed that was confirmed in the own one and is stated alike in both; the rest is as it
 * ships.
 */
export function withConfirmationsOf(own: HardwareSheet, newer: HardwareSheet): HardwareSheet {
  const based: HardwareSheet = { ...newer, basedOn: { id: newer.id, version: newer.version } }
  return unconfirmedThere(own, newer).reduce((into, { place, one, what }) => {
    const { checked, source } = one!.cited
    const isAlike = what === 'source'
    return isAlike ? confirmStatement(into, place, { document: own.sources[source]!, ...checked! }) : into
  }, based)
}
