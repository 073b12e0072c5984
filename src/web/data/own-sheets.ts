import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { err, ok } from '../../core/result.ts'
import { canonicalJson } from '../../formats/canonical-json.ts'
import { sheetFromValue } from '../../formats/sheet/sheet-file.ts'
import { shippedShelf } from '../../operations/sheet-shelf.ts'
import { now } from './device.ts'
import type { DeviceStore } from './device-store.ts'
import { d } from './messages.ts'
import type { Answer } from './run-source.ts'
import type { OwnSheet } from './shelf-of.ts'
import { fromStore } from './store-trouble.ts'

/** Every edition that was put on the shelf here, in the order of adding. */
export async function ownSheets(store: DeviceStore): Answer<readonly OwnSheet[]> {
  const rows = await store.sheets()
  if (!rows.ok) return fromStore(rows.error)
  const inOrder = rows.value.toSorted((a, b) => a.addedAt.localeCompare(b.addedAt))
  return ok(
    inOrder.map(({ id, version, addedAt, body }) => ({ id, version, addedAt, sheet: sheetFromValue(id, body) })),
  )
}

/**
 * Puts a sheet on the shelf of this device; or says what is wrong with it, place by place. One edition says one thing:
 * another content under an id and version that are taken is refused, also where a shipped sheet has them.
 * @param file  name shown in problems
 */
export async function addSheet(store: DeviceStore, file: string, value: unknown): Answer<'stored' | 'already'> {
  const read = sheetFromValue(file, value)
  if (!read.ok) return err({ kind: 'refused', message: d.trouble.notSheetFile(file), problems: read.error })
  const { id, version } = read.value
  const isSame = (other: HardwareSheet): boolean => canonicalJson(other) === canonicalJson(read.value)
  const taken = err({ kind: 'refused', message: d.trouble.editionTaken(id, version), problems: [] } as const)
  const shipped = shippedShelf.get(id)
  if (shipped?.version === version) return isSame(shipped) ? ok('already') : taken
  const row = { id, version, addedAt: now(), body: value }
  const kept = await store.addSheet(row)
  if (!kept.ok) return fromStore(kept.error)
  if (kept.value === row) return ok('stored')
  const known = sheetFromValue(file, kept.value.body)
  return known.ok && isSame(known.value) ? ok('already') : taken
}
