import { ok, type Result } from '../core/result.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { pinsOf } from '../operations/pin-entry.ts'
import { landedSheets } from '../sheets/landed-sheets.ts'
import type { NewEntry, StoredEntry } from '../store/entry.ts'
import { sha256 } from '../store/sha256.ts'
import type { Store } from '../store/store.ts'
import { type Refusal, unavailable } from './refusal.ts'
import { everyEntry } from './stored-runs.ts'

/**
 * Pins every run that was recorded without a layout, by an entry that supersedes it. One that can no longer be laid out
 * stays as it is, and is shown as that. Doing it twice changes nothing.
 */
export async function pinStoredRuns(store: Store): Promise<Result<void, Refusal>> {
  const entries = await everyEntry(store, { kinds: ['run'] })
  return entries.ok ? pinRuns(store, entries.value) : entries
}

/** The same for some entries of runs, with all versions of each. */
export async function pinRuns(
  store: Store,
  entries: readonly (NewEntry | StoredEntry)[],
): Promise<Result<void, Refusal>> {
  const known = entries.map(({ id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body }) => {
    return { id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body } as Entry
  })
  const projects = new Map(entries.map(({ id, project }) => [id, project]))
  const pins = await pinsOf(known, landedSheets, sha256)
  const appended = await store.append(pins.map((pin) => ({ ...pin, project: projects.get(pin.run)! })))
  if (!appended.ok) return { ok: false, error: unavailable(appended.error.reason) }
  return ok(undefined)
}
