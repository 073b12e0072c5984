import { type BrokenFile, changed } from '../fixtures.ts'

const visit = { by: 'J. Doe', at: '2026-05-04T10:30' }

/** A readings file with one reading. */
export const shortReadings = {
  format: 'lapwise-readings/1',
  run: 'County Road 7, culvert',
  visit,
  readings: [{ of: 'post-3/rail-height', value: '30 3/4 in' }],
}

/** A readings file with every kind of answer, and everything that can be said of a reading. */
export const fullReadings = {
  ...shortReadings,
  units: 'metric',
  visit: { ...visit, instrument: 'tape', where: 'face of rail' },
  readings: [
    { of: 'post-3/rail-height', value: '781' },
    { of: 'post-3/rail-height', value: 30.75, unit: 'in', resolution: '1/16 in', uncertainty: '2 mm', corrects: 'r1' },
    { of: 'post-4/lateral-offset', value: '-0.25', unit: 'ft', uncertainty: { value: 0.0577, unit: 'in' } },
    { id: 'hinge', of: 'post-1/hinge-side', choice: 'upstream', instrument: null, where: null, photos: ['p1', 'p2'] },
    { of: 'post-1/bolt', confirmed: false, by: 'R. Roe', at: '2026-05-05T08:00:15.5-05:00' },
    { of: 'post-1/bolt', confirmed: true, rechecks: 'post-1/bolt', together: 'walk-2', at: '2026-05-06T08:00Z' },
    { of: 'post-2/soil-tube', cannotSee: true },
    { of: 'post-6/block', doesNotApply: 'the post was left out' },
  ],
}

export const validReadings: readonly unknown[] = [shortReadings, fullReadings]

const withReading = (reading: object) => changed(shortReadings, ['readings'], [{ of: 'post-1/x', ...reading }])

/** One readings file for each thing that can be wrong with it. */
export const brokenReadings: readonly BrokenFile[] = [
  {
    title: 'no list of readings',
    raw: changed(shortReadings, ['readings'], undefined),
    problems: ['readings: expected a list, found nothing'],
    inSchema: true,
  },
  {
    title: 'a field that does not exist',
    raw: withReading({ value: '30', units: 'in' }),
    problems: ['readings[0].units: expected no field named "units", found "in"'],
    inSchema: true,
  },
  {
    title: 'a reading of nothing',
    raw: withReading({ of: undefined, value: '30' }),
    problems: ['readings[0].of: expected a text, found nothing'],
    inSchema: true,
  },
  {
    title: 'a unit that is not read',
    raw: withReading({ value: 30, unit: 'cm' }),
    problems: ['readings[0].unit: expected "in" or "ft" or "mm" or "m", found "cm"'],
    inSchema: true,
  },
  {
    title: 'a value that is neither text nor number',
    raw: withReading({ value: ['30'] }),
    problems: ['readings[0].value: expected a number or a text, found a list of 1'],
    inSchema: true,
  },
  {
    title: 'a day that does not exist',
    raw: changed(shortReadings, ['visit', 'at'], '2026-06-31T10:30'),
    problems: ['visit.at: expected a date and time such as 2026-05-04T10:30 (ISO 8601), found "2026-06-31T10:30"'],
    inSchema: true,
  },
  {
    title: 'a day without its time',
    raw: withReading({ value: '30', at: '2026-05-04' }),
    problems: ['readings[0].at: expected a date and time such as 2026-05-04T10:30 (ISO 8601), found "2026-05-04"'],
    inSchema: true,
  },
  {
    title: 'a thing that could be seen after all',
    raw: withReading({ cannotSee: false }),
    problems: ['readings[0].cannotSee: expected true, found false'],
    inSchema: true,
  },
  {
    title: 'an uncertainty of zero',
    raw: withReading({ value: '30', uncertainty: { value: 0, unit: 'in' } }),
    problems: ['readings[0].uncertainty.value: expected a value of at least 0.000001, found 0'],
    inSchema: true,
  },
  {
    title: 'a reading without an answer',
    raw: withReading({}),
    problems: [
      'readings[0]: expected one answer (value, choice, confirmed, cannotSee, doesNotApply), found an object with of',
    ],
    inSchema: true,
  },
  {
    title: 'a reading with two answers',
    raw: withReading({ value: '30', confirmed: true }),
    problems: [
      'readings[0]: expected one answer (value, choice, confirmed, cannotSee, doesNotApply), not value and confirmed, found an object with of, value, confirmed',
    ],
    inSchema: true,
  },
  {
    title: 'a value that is no length',
    raw: withReading({ value: '30,75' }),
    problems: [
      'readings[0].value: expected a length (at character 3, “,”: a comma can mean decimals or thousands, write a decimal point and no thousands mark), found "30,75"',
    ],
    inSchema: false,
  },
  {
    title: 'a value longer than is kept exactly',
    raw: withReading({ value: 1e12 }),
    problems: ['readings[0].value: expected a value of at most 20000000, found 1000000000000'],
    inSchema: true,
  },
  {
    title: 'a value beyond every run, in its unit',
    raw: withReading({ value: '20001 m' }),
    problems: ['readings[0].value: expected a length of -20000 m to 20000 m, found "20001 m"'],
    inSchema: false,
  },
  {
    title: 'a resolution of 1,000 ft',
    raw: withReading({ value: '30', resolution: '1000 ft' }),
    problems: ['readings[0].resolution: expected a length of 0.000001 m to 1 m, found "1000 ft"'],
    inSchema: false,
  },
  {
    title: 'a moment in the year 9999',
    raw: withReading({ value: '30', at: '9999-05-04T10:30' }),
    problems: ['readings[0].at: expected a date and time in the years 1950 to 2100, found "9999-05-04T10:30"'],
    inSchema: true,
  },
  {
    title: 'a resolution of zero',
    raw: withReading({ value: '30', resolution: '0 in' }),
    problems: ['readings[0].resolution: expected a length of more than 0, found "0 in"'],
    inSchema: false,
  },
  {
    title: 'an uncertainty below zero',
    raw: withReading({ value: '30', uncertainty: '-1/8' }),
    problems: ['readings[0].uncertainty: expected a length of more than 0, found "-1/8"'],
    inSchema: false,
  },
  {
    title: 'the unit and uncertainty of a choice',
    raw: withReading({ choice: 'upstream', unit: 'in', uncertainty: '1/8' }),
    problems: [
      'readings[0].unit: expected nothing, it belongs to a value, found "in"',
      'readings[0].uncertainty: expected nothing, it belongs to a value, found "1/8"',
    ],
    inSchema: false,
  },
  {
    title: 'a reading that nobody took at no time',
    raw: changed(shortReadings, ['visit'], undefined),
    problems: [
      'readings[0].by: expected who took it, here or in visit.by, found nothing',
      'readings[0].at: expected when it was taken, here or in visit.at, found nothing',
    ],
    inSchema: false,
  },
  {
    title: 'two readings of one id',
    raw: changed(
      shortReadings,
      ['readings'],
      [
        { of: 'post-1/x', confirmed: true },
        { id: 'r1', of: 'post-2/x', confirmed: true },
      ],
    ),
    problems: ['readings[1].id: expected something not listed before, found "r1"'],
    inSchema: false,
  },
]
