import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { brokenReadings, fullReadings, shortReadings } from '../../../test/fixtures/readings-files.ts'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import { nanometresPer } from '../../core/units/exact-length.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { type ReadingsFile, readingToValue, readReadings, writeReadings } from './readings-file.ts'

const readingsOf = (raw: unknown): readonly Reading[] => {
  const read = readReadings('readings.json', JSON.stringify(raw))
  if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
  return read.value.readings
}

const answerTo = (reading: object, units: 'us' | 'metric' = 'us') =>
  readingsOf({ ...shortReadings, units, readings: [{ of: 'post-1/x', ...reading }] })[0]?.answer

describe('readReadings', () => {
  test('fills in what a short file leaves out', () => {
    expect(readReadings('readings.json', JSON.stringify(shortReadings))).toEqual({
      ok: true,
      value: {
        findings: [],
        photoStrokes: [],
        run: 'County Road 7, culvert',
        readings: [
          {
            id: 'r1',
            of: 'post-3/rail-height',
            // 30.75 x 25.4 mm = 781.05 mm
            answer: { kind: 'measured', value: 781_050_000, unit: 'in', resolution: null },
            instrument: null,
            uncertainty: null,
            by: 'J. Doe',
            at: '2026-05-04T10:30',
            where: null,
            photos: [],
            corrects: null,
            rechecks: null,
            together: null,
          },
        ],
      },
    })
  })

  test('reads every kind of answer', () => {
    expect(readingsOf(fullReadings).map(({ answer }) => answer)).toEqual([
      { kind: 'measured', value: 781_000_000, unit: 'mm', resolution: null },
      { kind: 'measured', value: 781_050_000, unit: 'in', resolution: 1_587_500 },
      { kind: 'measured', value: -76_200_000, unit: 'ft', resolution: null },
      { kind: 'choice', choice: 'upstream' },
      { kind: 'confirmed', yes: false },
      { kind: 'confirmed', yes: true },
      { kind: 'cannot see' },
      { kind: 'does not apply', because: 'the post was left out' },
    ])
  })

  test('takes a note with the reading that says one, and leaves it out of all others', () => {
    const notes = readingsOf(fullReadings).map((reading) => ('note' in reading ? reading.note : null))
    expect(notes).toEqual([null, null, null, 'bolt rusted', null, null, null, null])
  })

  test('takes from the visit what a reading does not say, and nothing where it says null', () => {
    const readings = readingsOf(fullReadings)
    expect(readings.map(({ id }) => id)).toEqual(['r1', 'r2', 'r3', 'hinge', 'r5', 'r6', 'r7', 'r8'])
    expect(readings.map(({ by }) => by).filter((by) => by !== 'J. Doe')).toEqual(['R. Roe'])
    expect(readings[4]?.at).toBe('2026-05-05T08:00:15.5-05:00')
    expect(readings[6]).toMatchObject({ at: '2026-05-04T10:30', instrument: 'tape', where: 'face of rail' })
    expect(readings[3]).toMatchObject({ instrument: null, where: null, photos: ['p1', 'p2'] })
    expect(readings[1]).toMatchObject({ corrects: 'r1', uncertainty: { value: 2, unit: 'mm' } })
    expect(readings[2]?.uncertainty).toEqual({ value: 0.0577, unit: 'in' })
    expect(readings[5]).toMatchObject({ rechecks: 'post-1/bolt', together: 'walk-2' })
  })

  test('takes a bare value in inches in a us file and in millimetres in a metric one, unless unit says otherwise', () => {
    expect(answerTo({ value: '31' })).toMatchObject({ value: 787_400_000, unit: 'in' })
    expect(answerTo({ value: '31' }, 'metric')).toMatchObject({ value: 31_000_000, unit: 'mm' })
    expect(answerTo({ value: 31 }, 'metric')).toMatchObject({ value: 31_000_000, unit: 'mm' })
    expect(answerTo({ value: '31', unit: 'in' }, 'metric')).toMatchObject({ value: 787_400_000, unit: 'in' })
    expect(answerTo({ value: '31 in', unit: 'mm' }, 'metric')).toMatchObject({ value: 787_400_000, unit: 'in' })
  })

  test('rounds a computed number to nanometres and says that it is that fine', () => {
    expect(answerTo({ value: 30.751234567891 })).toEqual({
      kind: 'measured',
      value: 781_081_358,
      unit: 'in',
      resolution: null,
    })
    expect(answerTo({ value: 1e-7, unit: 'm' })).toMatchObject({ value: 100, resolution: null })
  })

  test.each(brokenReadings.map((broken) => [broken.title, broken] as const))('refuses %s', (_, { raw, problems }) => {
    const read = readReadings('readings.json', JSON.stringify(raw))
    expect(read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))).toEqual(
      problems.map((problem) => `readings.json: ${problem}`),
    )
  })
})

const words = fc.string({ minLength: 1 })
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null })
const unit = fc.constantFrom('in' as const, 'ft' as const, 'mm' as const, 'm' as const)
const moment = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2060-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString())

/** Nanometres: anything up to 1 km, and what tapes show: 16ths and 64ths of an inch, hundredths of a foot. */
const nanometres = fc.oneof(
  fc.integer({ min: -1e12, max: 1e12 }),
  fc.integer({ min: -9600, max: 9600 }).map((sixteenths) => sixteenths * 1_587_500),
  fc.integer({ min: -9600, max: 9600 }).map((sixtyFourths) => sixtyFourths * 396_875),
  fc.integer({ min: -9600, max: 9600 }).map((hundredths) => hundredths * 3_048_000),
)
const resolution = fc.oneof(
  fc.constant(null),
  fc.integer({ min: 1000, max: 1e9 }),
  fc.constantFrom(25_400_000, 12_700_000, 6_350_000, 1_587_500, 1_000_000, 3_048_000, 10_000_000),
)
const length: fc.Arbitrary<Answer> = fc.record({
  kind: fc.constant('measured' as const),
  value: nanometres.map((value) => value + 0),
  unit,
  resolution,
})
const seen: fc.Arbitrary<Answer> = fc.oneof(
  fc.record({ kind: fc.constant('choice' as const), choice: words }),
  fc.record({ kind: fc.constant('confirmed' as const), yes: fc.boolean() }),
  fc.constant({ kind: 'cannot see' as const }),
  fc.record({ kind: fc.constant('does not apply' as const), because: words }),
)
/** From a micrometre to 2 m, in any unit. */
const uncertainty = unit.chain((unit) => {
  const perMetre = 1e9 / nanometresPer[unit]
  return fc.record({
    value: fc.double({ min: 1e-5 * perMetre, max: 2 * perMetre, noNaN: true }),
    unit: fc.constant(unit),
  })
})

const reading = fc
  .record({
    of: words,
    answer: fc.oneof(length, seen),
    instrument: orNull(words),
    uncertainty: orNull(uncertainty),
    by: words,
    at: moment,
    where: orNull(words),
    photos: fc.array(words),
    correctsOneOf: orNull(fc.nat()),
    rechecks: orNull(words),
    together: orNull(words),
  })
  .map(({ uncertainty, ...rest }) => ({ ...rest, uncertainty: rest.answer.kind === 'measured' ? uncertainty : null }))

const file: fc.Arbitrary<ReadingsFile> = fc
  .record({ run: words, ids: fc.uniqueArray(words, { maxLength: 8 }), all: fc.array(reading, { minLength: 8 }) })
  .map(({ run, ids, all }) => ({
    run,
    readings: ids.map((id, i) => {
      const { correctsOneOf, ...rest } = all[i] as (typeof all)[number]
      return { id, ...rest, corrects: correctsOneOf === null ? null : (ids[correctsOneOf % (i || 1)] ?? null) }
    }),
  }))
  .map(({ run, readings }) => ({
    run,
    readings: readings.map((one, i) => (i === 0 ? { ...one, corrects: null } : one)),
    findings: [],
    photoStrokes: [],
  }))

test('readings written and read again are the same readings', () => {
  fc.assert(
    fc.property(file, (written) => {
      expect(readReadings('readings.json', writeReadings(written))).toEqual({ ok: true, value: written })
    }),
    { seed: 2, numRuns: 300 },
  )
})

test('what was drawn on photos stands in the file and comes back from it, under ids that stand once', () => {
  const strokes = [
    {
      kind: 'circle',
      points: [
        [0.5, 0.5],
        [0.75, 0.5],
      ],
    },
    {
      kind: 'line',
      points: [
        [0, 0],
        [0.25, 1],
        [1, 1],
      ],
    },
  ] as const
  const drawn = {
    id: 's1',
    photo: 'a'.repeat(64),
    width: 40,
    height: 30,
    strokes,
    by: 'M. Reyes',
    at: '2026-05-04T10:30Z',
  }
  const file = { run: 'x', readings: [], findings: [], photoStrokes: [drawn] }
  expect(readReadings('readings.json', writeReadings(file))).toEqual({ ok: true, value: file })
  expect(readReadings('readings.json', writeReadings({ ...file, photoStrokes: [drawn, drawn] }))).toMatchObject({
    error: [{ place: 'photoStrokes[1].id' }],
  })
})

test('a reading as a value is what the file says of it, nothing more', () => {
  fc.assert(
    fc.property(file, (written) => {
      const { readings } = JSON.parse(writeReadings(written))
      expect(structuredClone(written.readings.map(readingToValue))).toStrictEqual(readings)
    }),
    { seed: 3, numRuns: 300 },
  )
})

test('a fraction of an inch is written as it is said', () => {
  const [sample] = readingsOf(shortReadings)
  expect(writeReadings({ run: 'x', readings: sample ? [sample] : [], findings: [], photoStrokes: [] })).toContain(
    '"value": "30 3/4 in"',
  )
})
