import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Reading } from '../../../src/core/measurement/reading.ts'
import type { Requirement } from '../../../src/core/requirements/requirement.ts'
import type { DecisionRule, Judgement } from '../../../src/core/verdicts/verdict.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'

// What has to hold of judging whatever was read; a mirrored run has its own test (test/referee/mirrored-remedies).

const seed = 106
const demo = demoProject()
const run = readRun('run.json', demo.run)
const required = run.ok ? requireRun('run.json', run.value) : run
const read = readReadings('readings.json', demo.readings)
if (!required.ok || !read.ok) throw new Error('the demo project is not sound')
const { value: known } = required
const demoReadings = read.value.readings

/** Whatever is measured directly, with limits. */
const measured = known.requirements.filter(({ look }) => look.kind === 'measure')

const judge = (readings: readonly Reading[], rule: DecisionRule): Judgement =>
  judgeKnown({ ...known, run: { ...known.run, decisionRule: rule } }, readings).judgement

const rules = fc.oneof(
  fc.constant<DecisionRule>({ kind: 'simple' }),
  fc.constantFrom(0.5, 1, 1.5, 3).map((multiple): DecisionRule => ({ kind: 'guard band', multiple })),
)

/** A length about the limits of what is measured, in whole 64ths of an inch, so that limits and guard bands are met exactly. */
const aLength = ({ look }: Requirement) => {
  if (look.kind !== 'measure') throw new Error('not measured')
  const ends = [look.limits.low, look.limits.high].filter((end) => end !== 'notStated')
  return fc
    .tuple(fc.constantFrom(...ends), fc.integer({ min: -64, max: 64 }))
    .map(([end, by]) => Math.max(0, end + by / 64) * 25_400_000)
}

const readingOf = (of: string, value: number, u: number): Reading => ({
  ...{ id: `read-${of}`, of, instrument: 'tape', by: 'R. Quist', at: '2026-05-04T10:30' },
  ...{ where: null, photos: [], corrects: null, rechecks: null, together: null },
  answer: { kind: 'measured', value, unit: 'in', resolution: null, ...(value === 0 ? {} : { side: 'away' as const }) },
  uncertainty: { value: u, unit: 'mm' },
})

/** Standard uncertainties in whole 128ths of an inch, millimetres. */
const doubts = fc.integer({ min: 0, max: 64 }).map((n) => (n * 25.4) / 128)

describe('more doubt', () => {
  const asked = fc
    .constantFrom(...measured)
    .chain((one) => fc.tuple(fc.constant(one), aLength(one), doubts, doubts, rules))

  it('never turns fails or too close into meets, nor meets or too close into fails', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(asked, ([{ id }, value, one, other, rule]) => {
        const [less, more] = [one, other]
          .sort((a, b) => a - b)
          .map((u) => {
            const { verdicts } = judge([readingOf(id, value, u)], rule)
            return verdicts.find(({ requirement }) => requirement === id)!.verdict
          })
        seen.add(`${less}, then ${more}`)
        expect(more === less || more === 'too close').toBe(true)
      }),
      { seed, numRuns: 400 },
    )
    // The law is tried where something changes.
    expect([...seen].toSorted()).toEqual([
      ...['fails, then fails', 'fails, then too close'],
      ...['meets, then meets', 'meets, then too close'],
      'too close, then too close',
    ])
  })

  it('never adds a finding, and never makes a run acceptable', () => {
    const some = fc.uniqueArray(fc.constantFrom(...measured), { minLength: 1, maxLength: 12, selector: ({ id }) => id })
    const readings = some.chain((list) =>
      fc.tuple(...list.map((one) => fc.tuple(fc.constant(one), aLength(one), doubts, doubts))),
    )
    fc.assert(
      fc.property(readings, rules, (list, rule) => {
        const [less, more] = [Math.min, Math.max].map((pick) =>
          judge(
            list.map(([{ id }, value, one, other]) => readingOf(id, value, pick(one, other))),
            rule,
          ),
        ) as [Judgement, Judgement]
        const failing = ({ verdicts }: Judgement) =>
          verdicts.filter(({ verdict }) => verdict === 'fails').map(({ requirement }) => requirement)
        expect(failing(less)).toEqual(expect.arrayContaining(failing(more)))
        if (more.acceptance.kind === 'acceptable') expect(less.acceptance.kind).toBe('acceptable')
      }),
      { seed, numRuns: 60 },
    )
  })
})

/** What a reading is one of: several of these are worth what they are worth in their order. */
const groupOf = ({ of }: Reading): string => (/\/(lateral-offset|along)$/.test(of) ? 'points' : of)

/** The same readings, those of one group in the order in which they were. */
function shuffled(readings: readonly Reading[], order: readonly number[]): readonly Reading[] {
  const places = readings.map((reading, i) => ({ group: groupOf(reading), at: order[i]! })).sort((a, b) => a.at - b.at)
  const next = new Map<string, number>()
  return places.map(({ group }) => {
    const n = next.get(group) ?? 0
    next.set(group, n + 1)
    return readings.filter((reading) => groupOf(reading) === group)[n]!
  })
}

describe('the order in which things of different places were read', () => {
  it('does not matter', () => {
    const more = fc
      .uniqueArray(fc.constantFrom(...measured), { maxLength: 6, selector: ({ id }) => id })
      .chain((list) => fc.tuple(...list.map((one) => aLength(one).map((value) => readingOf(one.id, value, 2)))))
    const asked = more.chain((added) => {
      const readings = [...demoReadings, ...added]
      const one = fc.double({ noNaN: true, min: 0, max: 1 })
      return fc.tuple(fc.constant(readings), fc.array(one, { minLength: readings.length, maxLength: readings.length }))
    })
    fc.assert(
      fc.property(asked, rules, ([readings, order], rule) => {
        const again = shuffled(readings, order)
        expect(again).toHaveLength(readings.length)
        const [one, other] = [judge(readings, rule), judge(again, rule)]
        expect(other.verdicts).toEqual(one.verdicts)
        expect(other.findings).toEqual(one.findings)
        expect(other.unproven).toEqual(one.unproven)
        expect(other.acceptance).toEqual(one.acceptance)
      }),
      { seed, numRuns: 60 },
    )
  })
})
