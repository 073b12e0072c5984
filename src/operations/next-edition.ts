import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { shippedShelf } from './sheet-shelf.ts'

/**
 * The version that follows one when a sheet is changed: of a shipped sheet a number more behind it, so that it is never that of a
 * later shipped one; of one's own the last number one higher.
 * @example nextEdition({ id: 'county-anchor', version: '1.9' })  // '1.10'
 */
export function nextEdition({ id, version }: Pick<HardwareSheet, 'id' | 'version'>): string {
  const last = /^(.*?)(\d+)$/.exec(version)
  return shippedShelf.get(id)?.version === version || last === null
    ? `${version}.1`
    : `${last[1]}${Number(last[2]) + 1}`
}
