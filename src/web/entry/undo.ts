import type { Reading } from '../../core/measurement/reading.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'

/**
 * The reading that undoes `undone`: a correction that gives again what was in force before, or says that it could not
 * be seen when nothing was. Nothing is taken away.
 */
export function undoing(undone: Reading, readings: readonly Reading[], id: string, at: string, by: string): Reading {
  const earlier = readings.slice(
    0,
    readings.findIndex((reading) => reading.id === undone.id),
  )
  const before = currentReadings(earlier).get(undone.of)
  return {
    id,
    of: undone.of,
    answer: before?.answer ?? { kind: 'cannot see' },
    instrument: before?.instrument ?? null,
    uncertainty: before?.uncertainty ?? null,
    by,
    at,
    where: before?.where ?? null,
    photos: before?.photos ?? [],
    corrects: undone.id,
    rechecks: null,
    together: null,
  }
}
