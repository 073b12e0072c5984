import { isOffset } from '../../core/measurement/offset-side.ts'
import type { RunFile } from '../run/run-file.ts'

interface ReadingEntry {
  readonly schemaVersion: number
  readonly body: unknown
}

/** The version of the readings format in which the body of a reading's entry of that version is written. */
export const readingsFormat = (schemaVersion: number): string => `lapwise-readings/${schemaVersion}`

/**
 * The readings of entries, whichever version each was written in, as one file in the version of today. A value without
 * a unit has that of its run, as when it was taken in.
 */
export const entryReadings = ({ name, units }: Pick<RunFile, 'name' | 'units'>, entries: readonly ReadingEntry[]) => ({
  format: readingsFormat(3),
  run: name,
  units,
  readings: entries.map(bodyNow),
})

/** The body as it is written today: the first version asked for no side, so an offset of it says that none is stated. */
function bodyNow({ schemaVersion, body }: ReadingEntry): unknown {
  if (schemaVersion > 1 || typeof body !== 'object' || body === null) return body
  const { of, value } = body as { readonly of?: unknown; readonly value?: unknown }
  return typeof of === 'string' && isOffset(of) && value !== undefined ? { ...body, side: 'not stated' } : body
}
