import type { Reading } from '../../core/measurement/reading.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'

/**
 * The reading, without its id and time, that takes `taken` back: a correction that gives again what was in force before,
 * or says that it could not be seen when nothing was. Nothing is taken away.
 */
export function takingBack(
  taken: Reading,
  readings: readonly Reading[],
  by: string,
  reason: string,
): Omit<Reading, 'id' | 'at'> {
  const earlier = readings.slice(
    0,
    readings.findIndex((reading) => reading.id === taken.id),
  )
  const before = currentReadings(earlier).get(taken.of)
  return {
    of: taken.of,
    answer: before?.answer ?? { kind: 'cannot see' },
    instrument: before?.instrument ?? null,
    uncertainty: before?.uncertainty ?? null,
    by,
    where: before?.where ?? null,
    note: reason,
    photos: before?.photos ?? [],
    corrects: taken.id,
    rechecks: null,
    together: null,
  }
}
