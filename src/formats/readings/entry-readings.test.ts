import { expect, test } from 'vitest'
import { entryReadings } from './entry-readings.ts'
import { readingsFromValue } from './readings-file.ts'

/** Nanometres are what a length is kept in: 706 mm are 706,000,000 of them, 27.75 in are 704,850,000. */
test.each([
  ['metric', 706, 706_000_000],
  ['us', 27.75, 704_850_000],
] as const)('the value of an entry without a unit has that of a %s run', (units, value, nanometres) => {
  const body = { id: 'r1', of: 'post-3/rail-height', value, by: 'R. Quist', at: '2026-05-04T15:30:00.000Z' }
  const read = readingsFromValue('stored', entryReadings({ name: 'Ditch', units }, [{ schemaVersion: 3, body }]))
  expect(read).toMatchObject({ ok: true, value: { readings: [{ answer: { value: nanometres } }] } })
})
