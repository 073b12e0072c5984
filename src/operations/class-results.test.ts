import { expect, test } from 'vitest'
import { type PracticeResults, readResults, writeResults } from '../formats/drill/results-file.ts'
import { classResults } from './class-results.ts'

type Result = PracticeResults['results'][number]
const drill = (changes: Partial<Result> = {}): Result => ({
  ...{ number: '1000 1000 0246', beganAt: '2026-05-12T10:05:00Z', endedAt: '2026-05-12T10:07:00Z', minutes: null },
  ...{ found: 1, faults: 2, falseAlarms: 1, sound: 40, kinds: [{ kind: 'lap', there: 2, found: 1 }] },
  ...{ verdicts: { 'splice-1/lap': 'fails', 'splice-2/lap': 'meets' } },
  ...changes,
})
const fileOf = (person: string, ...results: Result[]): PracticeResults => ({
  ...{ format: 'lapwise-practice-results/1', person, results },
})

test('a file of results is read as it was written, and one that says something else is refused with its place', () => {
  const file = fileOf('R. Quist', drill())
  expect(readResults('results.json', writeResults(file))).toEqual({ ok: true, value: file })
  const broken = readResults('results.json', writeResults(fileOf('R. Quist', drill({ found: -1 }))))
  expect(broken.ok || broken.error.map(({ place }) => place)).toEqual(['results[0].found'])
})

test('a class is added up by person and by kind, and the same drill in two files counts once', () => {
  const other = drill({ found: 2, falseAlarms: 0, kinds: [{ kind: 'stub-height', there: 1, found: 1 }] })
  const { people, kinds } = classResults([fileOf('A', drill()), fileOf('A', drill()), fileOf('B', other)])
  expect(people.map(({ person, drills, found }) => [person, drills, found.times, found.of])).toEqual([
    ['A', 1, 1, 2],
    ['B', 1, 2, 2],
  ])
  expect(kinds.map(({ kind }) => kind)).toEqual(['lap', 'stub-height'])
})

test('people who did one drill agree fully where all said the same, and less than chance where they said the opposite', () => {
  const opposite = drill({ verdicts: { 'splice-1/lap': 'meets', 'splice-2/lap': 'fails' } })
  const alpha = (second: Result) => classResults([fileOf('A', drill()), fileOf('B', second)]).agreements
  expect(alpha(drill())).toEqual([{ number: '1000 1000 0246', people: 2, alpha: 1 }])
  // Two things, each said otherwise by both: Do = 1, De = 2 * 2 * 2 / (4 * 3) = 2/3, alpha = 1 - 3/2.
  expect(alpha(opposite)[0]!.alpha).toBeCloseTo(-0.5, 12)
  expect(alpha(drill({ number: '1000 1000 0253' }))).toEqual([])
})
