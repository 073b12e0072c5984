import { describe, expect, test } from 'vitest'
import { practiceReadings } from '../../../test/fixtures/practice-reading.ts'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import { instruments } from '../measurement/instruments.ts'
import { deriveRequirements } from '../requirements/derive-requirements.ts'
import { defaultRule, judgeRequirements } from '../verdicts/judge-requirements.ts'
import type { Verdict } from '../verdicts/verdict.ts'
import { checkDigit, printDrillNumber, readDrillNumber } from './drill-number.ts'
import { rateOf } from './intervals.ts'
import { type Drill, type DrillWish, makeDrill } from './make-drill.ts'
import { type KindRecord, nextSeed } from './next-drill.ts'
import { randomFrom } from './random.ts'
import { readingError } from './reading-error.ts'
import { scoreDrill } from './score.ts'
import { truthOf } from './truth.ts'

const model = modelFrom('flared-terminal-31', 600)
const requirements = deriveRequirements(model)
const drillOf = (wish: Partial<DrillWish>): Drill =>
  makeDrill(model, requirements, { faults: 6, size: 'mixed', decoys: 3, seed: 1, ...wish })
const seeds = Array.from({ length: 40 }, (_, seed) => seed)

describe('a drill', () => {
  test('has as many faults and decoys as wished, at places of their own, and no decoy is wrong', () => {
    for (const seed of seeds) {
      const { faults, decoys } = drillOf({ seed })
      expect([faults.length, decoys.length], String(seed)).toEqual([6, 3])
      const places = [...faults.map(({ requirement }) => requirement), ...decoys].map((id) => id.split('/')[0])
      expect(new Set(places).size).toBe(9)
      const wrong = new Set(faults.flatMap(({ shows }) => shows))
      expect(decoys.filter((id) => wrong.has(id))).toEqual([])
    }
  })

  test('comes back from its seed, and another seed gives another', () => {
    const told = (seed: number): string => JSON.stringify(drillOf({ seed }).faults)
    expect(told(7)).toBe(told(7))
    expect(new Set(seeds.map(told)).size).toBe(seeds.length)
  })

  test('has no decoy that is wrong beside its place where a sheet allows less to one side', () => {
    const postSpacing = { ...model.system.postSpacing, high: 75.5 }
    const narrow = { ...model, system: { ...model.system, postSpacing } }
    const asked = deriveRequirements(narrow)
    for (const seed of seeds) {
      const drill = makeDrill(narrow, asked, { faults: 0, size: 'clear', decoys: 9, seed })
      expect(drill.decoys.length).toBeGreaterThan(3)
      expect(asked.filter((one) => truthOf(drill.site, one)?.isRight === false)).toEqual([])
    }
  })

  test('keeps its faults whatever the number of decoys', () => {
    expect(drillOf({ decoys: 0 }).faults).toEqual(drillOf({ decoys: 5 }).faults)
  })
})

describe('a trainee', () => {
  test('who looks everywhere with the usual instrument finds all and calls nothing wrong', () => {
    for (const seed of seeds) {
      const drill = drillOf({ seed })
      const score = scoreDrill(drill, verdictsOf(drill, seed), new Map(), instruments)
      const outcomes = score.faults.filter(({ fault }) => fault.size !== 'borderline').map(({ outcome }) => outcome)
      expect(new Set(outcomes), String(seed)).toEqual(new Set(['found']))
      expect(score.falseAlarms).toEqual([])
      expect(score.sound).toBeGreaterThan(80)
    }
  })

  test('who reads without an error scores all of borderline drills too', () => {
    for (const seed of seeds) {
      const drill = drillOf({ seed, size: 'borderline', decoys: 2, faults: 4 })
      const { faults, falseAlarms } = scoreDrill(drill, verdictsOf(drill, null), new Map(), instruments)
      expect([faults.every(({ outcome }) => outcome === 'found'), falseAlarms.length]).toEqual([true, 0])
    }
  })

  test('who tosses a coin at every place does no better than chance: d prime about nothing', () => {
    let [hits, faults, alarms, sound] = [0, 0, 0, 0]
    for (const seed of seeds) {
      const drill = drillOf({ seed, size: 'clear' })
      // One requirement of each fault alone, so that a fault with two has no second chance.
      const single = { ...drill, faults: drill.faults.map((fault) => ({ ...fault, shows: [fault.requirement] })) }
      const looked = verdictsOf(drill, 0)
      for (const trainee of [1, 2, 3, 4, 5, 6, 7, 8]) {
        const coin = randomFrom(seed, trainee)
        const verdicts = looked.map(
          (one): Verdict =>
            one.verdict === 'unread' ? one : { ...one, verdict: coin.below(2) === 0 ? 'fails' : 'meets' },
        )
        const score = scoreDrill(single, verdicts, new Map(), instruments)
        hits += score.faults.filter(({ outcome }) => outcome === 'found').length
        faults += score.faults.length
        alarms += score.falseAlarms.length
        sound += score.sound
      }
    }
    const [hit, alarm] = [rateOf(hits, faults), rateOf(alarms, sound)]
    expect(hit.low < 0.5 && hit.high > 0.5).toBe(true)
    expect(alarm.low < 0.5 && alarm.high > 0.5).toBe(true)
  })

  test('who reads too coarsely to tell a clear fault has left it open, not found it', () => {
    const drill = drillOf({ size: 'clear' })
    const open = verdictsOf(drill, 0).map(
      (one): Verdict => (one.verdict === 'fails' ? { ...one, verdict: 'too close' } : one),
    )
    const { faults } = scoreDrill(drill, open, new Map(), instruments)
    expect(faults.map(({ outcome }) => outcome)).toEqual(Array(6).fill('left open'))
  })

  test('who says how bad it is and what it needs is told whether that is right', () => {
    const drill = drillOf({ size: 'gross' })
    const asked = new Map(requirements.map((one) => [one.id, one]))
    const said = new Map(
      drill.faults.map(({ requirement }, i) => {
        const { severity, topic } = asked.get(requirement)!
        const right = severity === 'notStated' ? null : severity.severity
        return [requirement, { severity: right, remedy: i === 0 ? 'another' : topic }]
      }),
    )
    const { faults } = scoreDrill(drill, verdictsOf(drill, 0), said, instruments)
    expect(faults.map(({ remedy }) => remedy)).toEqual([false, true, true, true, true, true])
    expect(new Set(faults.map(({ severity }) => severity)).has(false)).toBe(false)
    expect(faults.some(({ severity }) => severity)).toBe(true)
  })

  test('who looks nowhere finds nothing and raises no alarm', () => {
    const drill = drillOf({})
    const score = scoreDrill(
      drill,
      judgeRequirements(requirements, [], { rule: defaultRule, instruments }),
      new Map(),
      instruments,
    )
    expect(score.faults.map(({ outcome }) => outcome)).toEqual(Array(6).fill('not looked at'))
    expect([score.falseAlarms, score.detection]).toEqual([[], null])
  })
})

describe('the number of a drill', () => {
  test('says all of it, in groups, and gives it back', () => {
    for (const site of [0, 7, 99])
      for (const size of ['gross', 'clear', 'borderline', 'mixed'] as const) {
        const drill = { site, faults: 12, size, decoys: 4, seed: 307 }
        expect(readDrillNumber(printDrillNumber(drill))).toEqual({ ok: true, value: drill })
      }
  })

  /** ISO/IEC 7812-1, annex B: the number 7992739871 has the check digit 3 in the example that is taught everywhere. */
  test('has the published check digit, and a wrong digit is noticed', () => {
    expect(checkDigit('7992739871')).toBe('3')
    const number = printDrillNumber({ site: 3, faults: 6, size: 'mixed', decoys: 2, seed: 4821 }).replace(/ /g, '')
    for (let i = 0; i < number.length; i++) {
      const other = (Number(number[i]) + 1) % 10
      expect(readDrillNumber(number.slice(0, i) + other + number.slice(i + 1)).ok).toBe(false)
    }
    expect(readDrillNumber('12')).toEqual({ ok: false, error: { kind: 'not a drill number' } })
  })
})

/** A made-up trainee finds 19 of 20 faults of any kind, and 1 of 5 of one kind that drills have now and then. */
test('drills weighted to what was missed show a weakness sooner than drills at random', () => {
  const kinds = Array.from({ length: 24 }, (_, i) => `kind-${i}`)
  const weak = 'kind-17'
  const kindsOf = (seed: number): readonly string[] => randomFrom(seed, 5).shuffled(kinds).slice(0, 4)
  const drillsUntilShown = (person: number, isWeighted: boolean): number => {
    const random = randomFrom(person, isWeighted ? 11 : 12)
    const records = new Map<string, KindRecord>()
    for (let drills = 1; drills < 400; drills++) {
      const seed = isWeighted ? nextSeed([...records.values()], kindsOf, 10_000, random) : random.below(10_000)
      for (const kind of kindsOf(seed)) {
        const { there, found } = records.get(kind) ?? { there: 0, found: 0 }
        const isFound = random.below(100) < (kind === weak ? 20 : 95)
        records.set(kind, { kind, there: there + 1, found: found + Number(isFound) })
      }
      const { there = 0, found = 0 } = records.get(weak) ?? {}
      if (there > 0 && rateOf(found, there).high < 0.7) return drills
    }
    return 400
  }
  const mean = (isWeighted: boolean): number =>
    Array.from({ length: 30 }, (_, person) => drillsUntilShown(person, isWeighted)).reduce((sum, one) => sum + one, 0) /
    30
  const [weighted, random] = [mean(true), mean(false)]
  expect(weighted).toBeLessThan(0.6 * random)
})

/** @param seed  of the errors of readings; null for readings without one */
function verdictsOf(drill: Drill, seed: number | null): readonly Verdict[] {
  const readings = requirements.flatMap((requirement) =>
    practiceReadings(drill.site, requirement, ({ id }) =>
      seed === null ? 0 : readingError(seed, requirement.id, id, 0),
    ),
  )
  return judgeRequirements(requirements, readings, { rule: defaultRule, instruments })
}
