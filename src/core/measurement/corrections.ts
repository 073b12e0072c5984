import type { Reading } from './reading.ts'

/**
 * By id of a reading, those that correct it, in the order of the log. A correction counts only for an earlier reading
 * of the same thing: one that names a reading of something else would take away what was found there.
 *
 * @param readings  a log, in the order that counts
 */
export function correctionsIn(
  readings: readonly Pick<Reading, 'id' | 'of' | 'corrects'>[],
): ReadonlyMap<string, readonly string[]> {
  const read = new Map<string, string>()
  const corrections = new Map<string, string[]>()
  for (const { id, of, corrects } of readings) {
    if (corrects !== null && read.get(corrects) === of)
      corrections.set(corrects, [...(corrections.get(corrects) ?? []), id])
    read.set(id, of)
  }
  return corrections
}
