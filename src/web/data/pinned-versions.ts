import { ok } from '../../core/result.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { pinsOf } from '../../operations/pin-entry.ts'
import { landedSheets } from '../../sheets/landed-sheets.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import type { DeviceEntry } from './merge-entries.ts'
import type { Answer } from './run-source.ts'
import { sha256Of } from './sha256.ts'
import { fromStore } from './store-trouble.ts'

/**
 * The versions of a run with the one that pins it, where it was recorded here before runs held their layout: a phone
 * that is offline judges it by that from then on, whatever has come to its shelf. The server makes the same entry of it.
 * A run that can no longer be laid out stays as it is.
 */
export async function pinnedVersions(
  store: DeviceStore,
  run: string,
  versions: readonly DeviceEntry[],
): Answer<readonly DeviceEntry[]> {
  const pins = await pinsHere(versions.map(withoutPlace))
  if (pins.length === 0) return ok(versions)
  const { project } = versions.find(({ id }) => id === run)!
  const added = await store.add(pins.map((pin) => ({ ...pin, project })))
  if (!added.ok) return fromStore(added.error)
  const all = await store.entries('run', run)
  return all.ok ? all : fromStore(all.error)
}

/** The entries that pin those of `entries` that brought a run without a layout. */
export const pinsHere = (entries: readonly Entry[]): Promise<readonly Entry[]> =>
  pinsOf(entries, landedSheets, (text) => sha256Of(new TextEncoder().encode(text).buffer))
