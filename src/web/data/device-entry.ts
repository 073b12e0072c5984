import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { DeviceEntry } from './merge-entries.ts'

/** The fact alone, without where it stands on this device and on the server. */
export function withoutPlace(entry: DeviceEntry): Entry {
  const { id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body } = entry
  return { id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body }
}
