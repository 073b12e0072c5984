import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkFit } from '../core/fit/check-fit.ts'
import type { FitCheck } from '../core/fit/fit-check.ts'
import type { FitTopic } from '../core/fit/fit-saying.ts'
import { findNeed } from '../core/need/need.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { siteFromValue } from '../formats/site/read-site.ts'
import { fitFacts } from './fit-facts.ts'

/** Every length below is written in decimals, as in a file; `plus` adds them without the noise of doubles. */
const plus = (a: number, b: number): number => Number((a + b).toFixed(4))

const systems = [
  { units: 'us', foot: 1, inch: 1, step: 0.01, small: 0.01 },
  // 1 ft = 0.3048 m and 1 in = 25.4 mm, both exact; a step is 1 mm
  { units: 'metric', foot: 0.3048, inch: 25.4, step: 0.001, small: 0.1 },
] as const
type Units = (typeof systems)[number]

interface Parts {
  readonly offset?: number
  readonly near?: number
  readonly hardware: object
}

function checksOf({ units }: Units, { offset = 2, near = 30, hardware }: Parts): readonly FitCheck[] {
  const read = siteFromValue('site', {
    format: 'lapwise-site/1',
    units,
    road: {
      speed: units === 'us' ? 55 : 90,
      ...{ adt: 4000, traffic: 'two-way', lanes: 2, laneWidth: 3.6, shoulderWidth: 2 },
    },
    clearZone: 60,
    hazards: [{ name: 'wall', from: 1000, to: 1020, near, far: 200 }],
    barrier: { offset, approachEnd: 'flared-terminal-31', departureEnd: 'flared-terminal-31' },
    hardware: { system: 'w-beam-midspan-31', ...hardware },
  })
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const need = findNeed(read.value)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  return checkFit(fitFacts(read.value, need.value, null))
}

const verdictOf = (checks: readonly FitCheck[], kind: FitTopic['kind'], extent?: string): string | undefined =>
  checks.find(({ what }) => what.kind === kind && (what.kind !== 'clear area' || what.extent === extent))?.verdict

/** Round offsets of the rail, in hundredths of a foot or whole millimetres. */
const offsets = ({ step, foot }: Units) =>
  fc.integer({ min: 1, max: Math.round((30 * foot) / step) }).map((n) => Number((n * step).toFixed(4)))

const seed = { seed: 20260112, numRuns: 300 }

describe.each(systems)('judged in exact lengths, in $units units', (system) => {
  const { foot, inch, step, small } = system
  // 60 in at full spacing, where MASH governs
  const room = Number((5 * foot).toFixed(4))

  it('a wall on the limit meets, and one step nearer fails, wherever the rail stands', () => {
    fc.assert(
      fc.property(offsets(system), (offset) => {
        const check = (near: number) => verdictOf(checksOf(system, { offset, near, hardware: {} }), 'room behind rail')
        expect(check(plus(offset, room))).toBe('meets')
        expect(check(plus(offset, room - step))).toBe('fails')
        expect(check(plus(offset, room + step))).toBe('meets')
      }),
      seed,
    )
  })

  it.each([
    ['behindPostOne', 'level ground behind post 1', undefined, 5],
    ['recoveryLength', 'clear area', 'length', 75],
    ['recoveryWidth', 'clear area', 'width', 20],
  ] as const)('%s on its limit meets, one step less fails', (field, kind, extent, feet) => {
    const limit = Number((feet * foot).toFixed(4))
    const check = (value: number) =>
      verdictOf(checksOf(system, { hardware: { ground: { [field]: value } } }), kind, extent)
    expect(check(limit)).toBe('meets')
    expect(check(plus(limit, -step))).toBe('fails')
  })

  it('posts on the least distance to a slope break meet, one step nearer fails', () => {
    const check = (slopeBehind: number, breakBehindPost: number) =>
      verdictOf(checksOf(system, { hardware: { ground: { slopeBehind, breakBehindPost } } }), 'ground to slope break')
    expect(check(2, foot)).toBe('meets')
    expect(check(2, plus(foot, -step))).toBe('fails')
    expect(check(1, 2 * foot)).toBe('meets')
    expect(check(1, plus(2 * foot, -step))).toBe('fails')
  })

  it('a standing rail one inch higher or lower meets, one step more fails', () => {
    const check = (railHeight: number) =>
      verdictOf(
        checksOf(system, { hardware: { adjoining: { railHeight, splice: 'midspan' } } }),
        'against adjoining run',
      )
    for (const [limit, away] of [
      [30 * inch, -small],
      [32 * inch, small],
    ] as const) {
      expect(check(Number(limit.toFixed(4)))).toBe('meets')
      expect(check(plus(limit, away))).toBe('fails')
    }
  })
})

it('a wall 14 ft off and a rail at 9 ft leave 5 ft', () => {
  const [us] = systems
  const room = checksOf(us, { offset: 9, near: 14, hardware: {} }).find(({ what }) => what.kind === 'room behind rail')
  expect(room).toMatchObject({ verdict: 'meets', value: { kind: 'length there is', length: exactLength(5, 'ft') } })
})
