// The first inputs of `npm run soak`, which goes on for minutes.
import { describe, expect, test } from 'vitest'
import { isFull } from '../full.ts'
import { inputOf } from './input-of.ts'
import { subjects } from './subjects.ts'

const times: Readonly<Record<string, number>> = { site: 30, run: 30, readings: 20, sheet: 20, road: 20, packet: 1 }

describe.each(subjects)('a mutated $name', (subject) => {
  test('is refused in words or goes through, with finite results and without a trace', {
    timeout: isFull ? 600_000 : 60_000,
  }, async () => {
    const outcomes = new Set<string>()
    for (const seed of subject.seeds) outcomes.add(await subject.exercise(seed))
    // What it is made from is sound, or the test would try nothing.
    expect(outcomes).toContain('through')
    for (let n = 0; n < (isFull ? 20 : 1) * (times[subject.name] ?? 150); n++) {
      const before = performance.now()
      const outcome = await Promise.resolve(subject.exercise(inputOf(subject, 20261127, n))).catch((cause: unknown) => {
        throw new Error(`input ${n} of ${subject.name} ends with a trace`, { cause })
      })
      expect(['refused', 'through']).toContain(outcome)
      expect(performance.now() - before).toBeLessThan(10_000)
    }
  })

  test('is the same for the same seed and number, and another for another', () => {
    const [one, again, other] = [inputOf(subject, 1, 7), inputOf(subject, 1, 7), inputOf(subject, 1, 8)]
    expect(again).toEqual(one)
    expect(other).not.toEqual(one)
  })
})
