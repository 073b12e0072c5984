import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hardwareNotSaid } from '../../../test/fixtures/hardware-not-said.ts'
import type { Site } from '../site/site.ts'
import { feet, metres } from '../units/quantity.ts'
import { findNeed, type Need } from './need.ts'
import { alternativesTo } from './shortfall.ts'

/** Lengths are written in whole hundredths of a foot or in whole millimetres and added as doubles, as a reader does. */
const systems = [
  { units: 'us', long: feet, step: 0.01, speed: 60, lane: 12 },
  { units: 'metric', long: metres, step: 0.001, speed: 100, lane: 3.6 },
] as const
type Units = (typeof systems)[number]

function needOf({ units, long, speed, lane }: Units, site: Partial<Site>): Need {
  const need = findNeed({
    units,
    edition: 'rdg-2011',
    interpolateSpeeds: false,
    runoutOnCurves: 'edge',
    road: {
      speed,
      adt: 3000,
      traffic: 'two-way',
      lanes: 2,
      laneWidth: long(lane),
      shoulderWidth: long(2),
      medianWidth: null,
      alignment: { kind: 'straight' },
    },
    clearZone: { kind: 'width', width: long(90) },
    runoutLength: long(200),
    shyLine: long(8),
    flareLimits: { inside: 26, beyond: 14 },
    side: 'right',
    hazards: [{ name: 'pier', from: 500, to: 510, near: long(30), far: long(40), beyondClearZone: false }],
    barrier: { offset: long(4), flare: null, approachEnd: null, departureEnd: null },
    driveways: [],
    hardware: hardwareNotSaid,
    sheets: [],
    ...site,
  })
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  return need.value
}

/** Whole steps from 1 to `most` of the unit. */
const round = ({ step }: Units, most: number) => fc.integer({ min: 1, max: Math.round(most / step) })
const seed = { seed: 20260112, numRuns: 500 }

describe.each(systems)('round numbers on a limit are on it, one step beyond is beyond, in $units units', (system) => {
  const { long, step, lane } = system
  const written = (steps: number) => long(Number((steps * step).toFixed(4)))

  it('of the shy line', () => {
    fc.assert(
      fc.property(round(system, 25), (steps) => {
        const notesAt = (offset: number) =>
          needOf(system, {
            shyLine: written(steps),
            barrier: { offset: written(offset), flare: null, approachEnd: null, departureEnd: null },
          }).approach.notes.map(({ kind }) => kind)
        expect(notesAt(steps)).not.toContain('inside-shy-line')
        expect(notesAt(steps - 1)).toContain('inside-shy-line')
      }),
      seed,
    )
  })

  it('of the clear zone of opposing traffic, which lies a lane farther off', () => {
    fc.assert(
      fc.property(round(system, 25), (offset) => {
        const barrier = { offset: written(offset), flare: null, approachEnd: null, departureEnd: null }
        const endWith = (width: number) =>
          needOf(system, { barrier, clearZone: { kind: 'width', width: written(width) } }).departure!.notes
        const limit = offset + Math.round(lane / step)
        expect(endWith(limit)).toContainEqual(expect.objectContaining({ kind: 'crashworthy-end' }))
        expect(endWith(limit)).toContainEqual(expect.objectContaining({ kind: 'at-clear-zone-limit', what: 'barrier' }))
        expect(endWith(limit - 1)).toContainEqual(expect.objectContaining({ kind: 'anchor-only' }))
      }),
      seed,
    )
  })

  it('of a flare', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), (tenths) => {
        const rate = tenths / 10
        const tooSteep = (drawn: number) =>
          needOf(system, {
            shyLine: long(100),
            flareLimits: { inside: rate, beyond: 1 },
            barrier: {
              ...{ offset: long(4), approachEnd: null, departureEnd: null },
              flare: { rate: drawn, parallelLength: 0, ends: 'approach' },
            },
          }).approach.notes.some(({ kind }) => kind === 'flare-too-steep')
        expect(tooSteep(rate)).toBe(false)
        expect(tooSteep(Number((rate - 0.05).toFixed(2)))).toBe(true)
      }),
      seed,
    )
  })

  it('of the flare that would close a shortfall', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 30 }), round(system, 20), (rate, across) => {
        // 100 along leave half of L_A = 2 (offset + across) to the path, so the flare gains `across` on the way.
        const offset = 4
        const available = written(rate * across)
        const exposure = {
          lateralExtent: 2 * (long(offset) + written(across)),
          barrierOffset: long(offset),
          runout: 2 * available,
          parallelLength: 0,
          flareSlope: 0,
          reading: 'edge',
        } as const
        const broken = (inside: number) =>
          alternativesTo({
            ...{ exposure, available, near: long(1000), shyLine: long(1000) },
            flareLimits: { inside, beyond: 1 },
          }).flatMap((one) => (one.change === 'flare' ? [one.steeperThanLimit] : []))
        expect(broken(rate)).toEqual([null])
        expect(broken(rate + 0.001)).toEqual([rate + 0.001])
      }),
      seed,
    )
  })
})
