import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { brokenRuns, fullRun, shortRun } from '../../../test/fixtures/run-files.ts'
import { inventedEnd, inventedSystem } from '../../../test/fixtures/sheet-files.ts'
import { english } from '../../words/english.ts'
import { printProblem } from '../input-problem.ts'
import { type RunFile, readRun, runFromValue } from './run-file.ts'
import { runToValue, writeRun } from './write-run.ts'

const readsAs = (raw: unknown, run: RunFile) =>
  expect(readRun('run.json', JSON.stringify(raw))).toEqual({ ok: true, value: run })

describe('readRun', () => {
  test('fills in what a short file leaves out', () => {
    readsAs(shortRun, {
      name: 'County Road 7, culvert',
      units: 'us',
      road: { route: null, side: null, datumStation: null, speed: null, traffic: null, opposingReaches: null },
      work: null,
      letting: null,
      system: 'invented-system',
      first: { kind: 'unit', sheet: 'invented-end', atInches: null },
      second: { kind: 'unit', sheet: 'invented-end', atInches: null },
      need: null,
      flare: null,
      stock: null,
      obstructions: [],
      reduced: [],
      standing: null,
      mayExtendInches: 600,
      decision: null,
      decisionRule: { kind: 'guard band', multiple: 1 },
      instruments: [],
      sheets: [],
    })
  })

  // 76.2 m = 3000 in, 12.5 ft = 150 in, 15 ft 7 1/2 in = 187.5 in, by 1 in = 25.4 mm and 1 ft = 12 in
  test('reads every field, lengths as inches', () => {
    // What is no length stands as it is said.
    const { name, units, road, work, letting, system, curb, decisionRule, instruments, sheets } =
      fullRun as unknown as RunFile
    readsAs(fullRun, {
      ...{ name, units, road, work, letting, system, curb, decisionRule, instruments, sheets },
      first: { kind: 'standing splice', atInches: -75, position: 'midspan' },
      second: { kind: 'unit', sheet: 'invented-end', atInches: 3000 },
      need: { fromInches: 0, toInches: 1200 },
      flare: { rate: 15, firstFromInches: -300, secondFromInches: 1500 },
      stock: [
        { inches: 150, count: null },
        { inches: 112.5, count: 2 },
        { inches: 187.5, count: null },
      ],
      obstructions: [{ name: 'culvert', fromInches: 480, toInches: 540 }],
      reduced: [
        { fromInches: 300, toInches: 600, spacing: 'half', nested: false },
        { fromInches: 600, toInches: 700.0625, spacing: 'quarter', nested: true },
      ],
      standing: { postOneAtInches: 0, panels: [150, 150], postsDriven: 5 },
      mayExtendInches: 300,
      decision: { postOneAtInches: -75, panels: [112.5, 150] },
    })
  })

  test.each(brokenRuns.map((broken) => [broken.title, broken] as const))('refuses %s', (_, { raw, problems }) => {
    const read = readRun('run.json', JSON.stringify(raw))
    expect(read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))).toEqual(
      problems.map((problem) => `run.json: ${problem}`),
    )
  })
})

/** Sixteenths from -1 mile to 1 mile. */
const inches = fc.integer({ min: -1_013_760, max: 1_013_760 }).map((sixteenths) => sixteenths / 16)
const length = fc.integer({ min: 192, max: 9_600 }).map((sixteenths) => sixteenths / 16)
const words = fc.string({ minLength: 1 })
const position = { latitude: 44.0523, longitude: -92.9117, accuracy: 8, fixedAt: '2026-04-03T10:00:00Z' }
const count = fc.nat({ max: 500 })
const orNull = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null })
const stretch = fc.record({ fromInches: inches, length }).map(({ fromInches, length }) => ({
  fromInches,
  toInches: fromInches + length,
}))
const flare = fc
  .record({ rate: fc.integer({ min: 1, max: 30 }), stretch, ends: fc.constantFrom('first', 'second', 'both') })
  .map(({ rate, stretch, ends }) => ({
    rate,
    firstFromInches: ends === 'second' ? null : stretch.fromInches,
    secondFromInches: ends === 'first' ? null : stretch.toInches,
  }))
const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2060-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10))
const end = (at: fc.Arbitrary<number>) =>
  fc.oneof(
    fc.record({ kind: fc.constant('unit' as const), sheet: words, atInches: orNull(at) }),
    fc.record({
      kind: fc.constant('standing splice' as const),
      atInches: at,
      position: fc.constantFrom('post' as const, 'midspan' as const),
    }),
  )

const run: fc.Arbitrary<RunFile> = fc.record(
  {
    name: words,
    units: fc.constantFrom('us', 'metric'),
    road: fc
      .record({
        route: orNull(words),
        side: orNull(fc.constantFrom('right', 'left')),
        datumStation: orNull(fc.nat({ max: 999 }).map((stations) => `${stations}00.25`)),
        speed: orNull(fc.integer({ min: 5, max: 130 })),
        traffic: orNull(fc.constantFrom('two-way', 'one-way', 'divided')),
        opposingReaches: orNull(fc.boolean()),
      })
      .filter(({ traffic, opposingReaches }) => traffic !== 'one-way' || opposingReaches !== true)
      .chain((road) => fc.constantFrom(road, { ...road, position })),
    work: orNull(fc.constantFrom('new', 'standing')),
    letting: orNull(day),
    system: words,
    first: end(inches.map((at) => at - 200_000)),
    second: end(inches.map((at) => at + 200_000)),
    need: orNull(stretch),
    flare: orNull(flare),
    stock: orNull(
      fc.uniqueArray(fc.record({ inches: length, count: orNull(count) }), {
        minLength: 1,
        selector: (panel) => panel.inches,
      }),
    ),
    obstructions: fc.uniqueArray(
      fc.record({ name: words, stretch }).map(({ name, stretch }) => ({ name, ...stretch })),
      { selector: ({ name }) => name.trim().toLowerCase() },
    ),
    reduced: fc.array(
      fc
        .record({ stretch, spacing: fc.constantFrom('half', 'quarter', 'full'), nested: fc.boolean() })
        .map(({ stretch, ...part }) => ({ ...stretch, ...part })),
    ),
    standing: orNull(fc.record({ postOneAtInches: inches, panels: fc.array(length), postsDriven: count })),
    mayExtendInches: length,
    decision: orNull(fc.record({ postOneAtInches: inches, panels: fc.array(length, { minLength: 1 }) })),
    decisionRule: fc.oneof(
      fc.record({
        kind: fc.constant('guard band' as const),
        multiple: fc.integer({ min: 1, max: 40 }).map((n) => n / 10),
      }),
      fc.record({ kind: fc.constant('simple' as const) }),
    ),
    instruments: fc.constant([]),
    sheets: fc.subarray([inventedSystem, inventedEnd]),
  },
  { noNullPrototype: true },
)

test('a title block is written as it was read, and left out where there is none', () => {
  const titleBlock = {
    ...{ agency: 'County of Alder', contract: 'C-14', drawn: 'R. Quist', checked: 'J. Okafor', approved: 'M. Reyes' },
    seal: true,
    revisions: [{ date: '2016-05-12', what: 'as built', replacedDate: '2016-05-04', replacedHash: '719ca09a' }],
  }
  fc.assert(
    fc.property(run, (plain) => {
      const written = { ...plain, titleBlock }
      expect(readRun('run.json', writeRun(written))).toEqual({ ok: true, value: written })
      expect(writeRun(plain)).not.toContain('titleBlock')
    }),
    { seed: 7, numRuns: 20 },
  )
})

test('a run written and read again is the same run', () => {
  fc.assert(
    fc.property(run, (written) => {
      expect(readRun('run.json', writeRun(written))).toEqual({ ok: true, value: written })
    }),
    { seed: 2, numRuns: 300 },
  )
})

test('a run as a value is what the file says of it, nothing more', () => {
  fc.assert(
    fc.property(run, (written) => {
      expect(structuredClone(runToValue(written))).toStrictEqual(JSON.parse(writeRun(written)))
      expect(runFromValue('run.json', runToValue(written))).toEqual({ ok: true, value: written })
    }),
    { seed: 4, numRuns: 100 },
  )
})

test('a post is left out in what stands only where something is in its way', () => {
  const file = (leftOut: readonly string[]) => ({
    ...{ format: 'lapwise-run/1', name: 'run', system: 'w-beam-midspan-31', need: { from: 0, to: '100 ft' } },
    ...{ first: { sheet: 'flared-terminal-31' }, second: { sheet: 'trailing-anchor-31' } },
    obstructions: [{ name: 'pipe', from: '20 ft', to: '22 ft' }],
    standing: { postOneAt: 0, panels: [], postsDriven: 4, leftOut },
  })
  const read = runFromValue('run', file(['21 ft']))
  expect(read.ok && read.value.standing).toEqual({
    ...{ postOneAtInches: 0, panels: [], postsDriven: 4, leftOutAtInches: [252] },
  })
  expect(read.ok && runFromValue('run', runToValue(read.value))).toEqual(read)
  // Nearer than half a post of 3 in and the usual 6 in beside it.
  expect(runFromValue('run', file(['19 ft 4 in', '22 ft 8 in'])).ok).toBe(true)
  for (const edge of ['19 ft 3 in', '22 ft 9 in', '30 ft'])
    expect(runFromValue('run', file([edge]))).toMatchObject({
      error: [{ place: 'standing.leftOut[0]', expected: { kind: 'within obstruction' } }],
    })
})
