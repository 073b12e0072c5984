import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import { layAlignment } from '../alignment/horizontal-alignment.ts'
import { distance } from '../geometry/point.ts'
import type { Flare } from '../hardware/hardware-sheet.ts'
import { feet, inches } from '../units/quantity.ts'
import { parabolaLength, parabolicFlare } from './flare-curve.ts'
import { type Staking, stakeRun } from './stake-run.ts'
import { type StakingFrame, straightFrame } from './staking-frame.ts'

const flared = shippedEnd('flared-terminal-27-3-4')
const anchor = shippedEnd('trailing-anchor-27-3-4')
const barrier = laidBarrier('w-beam-post-splice-27-3-4', flared, anchor, [0, 1200])
const twoFlares = laidBarrier('w-beam-post-splice-27-3-4', flared, flared, [0, 1200])

const straight = straightFrame({ datumStation: 3000, offset: feet(12), side: 'right', direction: 1 })

function staked(run: Parameters<typeof stakeRun>[0], frame: StakingFrame): Staking {
  const found = stakeRun(run, frame)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

/** A spiralled curve of radius `radius` m (positive right) between tangents, datum on the first tangent's end. */
function curvedFrame(radius: number, more: Partial<StakingFrame> = {}): StakingFrame {
  const alignment = layAlignment({ point: { easting: 600_000, northing: 240_000 }, azimuth: 1.1, station: 1000 }, [
    { length: 60, curvatureStart: 0, curvatureEnd: 0 },
    { length: 40, curvatureStart: 0, curvatureEnd: 1 / radius },
    { length: 60, curvatureStart: 1 / radius, curvatureEnd: 1 / radius },
    { length: 40, curvatureStart: 1 / radius, curvatureEnd: 0 },
    { length: 200, curvatureStart: 0, curvatureEnd: 0 },
  ])
  return { ...straight, alignment, datumStation: 1075, offset: feet(12), ...more }
}

describe('a straight road', () => {
  it('gives posts behind the flare multiples of 6 ft 3 in, and the flare 4 ft over 37.286 ft of road', () => {
    const { stakes } = staked(barrier, straight)
    const seventh = stakes[6]!
    expect(barrier.layout.posts[6]!.alongInches).toBe(450)
    // facts of the trade: sqrt(37.5² - 4²) = 37.286 ft along the road
    expect((seventh.station - stakes[0]!.station) / 0.3048).toBeCloseTo(37.286, 3)
    expect((stakes[0]!.offset - seventh.offset) / 0.3048).toBeCloseTo(4, 9)
    expect(seventh.offset).toBeCloseTo(feet(12), 9)
    // the offset falls evenly along the rail: post 4 is half way
    expect(stakes[3]!.offset - seventh.offset).toBeCloseTo(feet(2), 9)
    expect(stakes[7]!.station - seventh.station).toBeCloseTo(feet(6.25), 9)
  })

  it('shows the same distance along the rail and straight', () => {
    for (const { fromLast } of staked(barrier, straight).stakes.slice(1))
      expect(fromLast!.chord).toBeCloseTo(inches(fromLast!.railInches), 9)
  })

  it('gives the datum its own station, and northing along the road from it', () => {
    const run = laidBarrier('w-beam-post-splice-27-3-4', flared, anchor, [-600, 600])
    expect(-run.layout.postOneAtInches, 'the datum lies behind the flare').toBeGreaterThan(450)
    const { stakes } = staked(run, straight)
    const last = stakes.at(-1)!
    const afterDatum = inches(last.alongInches + run.layout.postOneAtInches)
    expect(last.station - straight.datumStation).toBeCloseTo(afterDatum, 9)
    expect(last.position.northing).toBeCloseTo(afterDatum, 9)
    expect(last.position.easting).toBeCloseTo(feet(12), 9)
    expect(last.elevation).toBeNull()
  })
})

describe('a parabolic flare', () => {
  it('has 37.78 ft of rail over 37.5 ft of road at an offset of 4 ft', () => {
    // design-value tables of the trade, calculated there: 37.78 ft
    expect(parabolaLength(37.5, 4, 37.5)).toBeCloseTo(37.78, 2)
  })

  it.each([
    // x and y in ft, the same tables
    [6.25, 0.1111],
    [12.5, 0.4444],
    [18.75, 1],
    [25, 1.7778],
    [31.25, 2.7778],
    [37.5, 4],
  ])('stands %f ft along the road %f ft away', (x, y) => {
    const curve = parabolicFlare(parabolaLength(37.5, 4, 37.5), 4)
    const q = parabolaLength(37.5, 4, x)
    expect(curve.along(q)).toBeCloseTo(x, 9)
    expect(curve.away(q)).toBeCloseTo(y, 4)
  })

  it('leaves at L/2E, 4.69 to 1, at the head', () => {
    const curve = parabolicFlare(parabolaLength(37.5, 4, 37.5), 4)
    const sine = curve.slope(curve.length)
    expect(Math.sqrt(1 - sine * sine) / sine).toBeCloseTo(4.69, 2)
  })

  it('closes like a straight one', () => {
    const flare = flared.flare as Flare
    const curved = { ...flared, flare: { ...flare, shape: 'parabola' as const } }
    const run = { ...barrier, first: { kind: 'unit', sheet: curved, atInches: null } as const }
    const { stakes, closure } = staked(run, straight)
    expect(stakes[0]!.offset - feet(12)).toBeCloseTo(feet(4), 9)
    expect(closure.largest).toBeLessThan(1e-6)
    for (const { fromLast } of stakes.slice(1))
      expect(fromLast!.chord).toBeLessThan(inches(fromLast!.railInches) + 1e-9)
  })
})

describe('a curve', () => {
  it('shows the arc longer than the chord by s³/24R² on a circle', () => {
    const radius = 100
    const circle = layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: 0 }, [
      { length: 500, curvatureStart: -1 / radius, curvatureEnd: -1 / radius },
    ])
    const run = laidBarrier('w-beam-post-splice-27-3-4', anchor, anchor, [0, 600])
    const frame = { ...straight, alignment: circle, datumStation: 100, offset: 4 }
    const arc = feet(6.25)
    for (const { fromLast } of staked(run, frame).stakes.slice(1)) {
      // c = 2 R sin(s/2R), R that of the rail
      expect(fromLast!.chord).toBeCloseTo(2 * 104 * Math.sin(arc / 208), 9)
    }
  })

  it('closes on tangent, spiral, arc and spiral to within a hundredth of a millimetre, flares included', () => {
    for (const radius of [60, -60, 300, -300])
      expect(staked(twoFlares, curvedFrame(radius)).closure.largest).toBeLessThan(1e-5)
  })

  it('keeps the line of an outer rail longer than the road', () => {
    const { stakes } = staked(barrier, curvedFrame(-100))
    const last = stakes.at(-1)!
    expect(last.station - stakes[6]!.station).toBeLessThan(inches(last.alongInches - 450))
  })
})

describe('laws', () => {
  it('mirrors a mirrored road', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.constantFrom<1 | -1>(1, -1),
        (radius, offset, direction) => {
          const datum = direction === 1 ? 1075 : 1180
          const right = curvedFrame(radius, { offset, direction, datumStation: datum })
          const left = curvedFrame(-radius, { offset: -offset, side: 'left', direction, datumStation: datum })
          const [a, b] = [staked(twoFlares, right), staked(twoFlares, left)]
          a.stakes.forEach((stake, i) => {
            const other = b.stakes[i]!
            expect(other.station).toBeCloseTo(stake.station, 7)
            expect(other.offset).toBeCloseTo(-stake.offset, 9)
            expect(other.fromLast?.chord ?? 0).toBeCloseTo(stake.fromLast?.chord ?? 0, 7)
          })
        },
      ),
      { seed: 5, numRuns: 20 },
    )
  })

  it('closes for any curve that the rail can follow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 5000, noNaN: true }),
        fc.double({ min: -8, max: 8, noNaN: true }),
        fc.boolean(),
        (radius, offset, isLeft) => {
          const { stakes, closure } = staked(twoFlares, curvedFrame(isLeft ? -radius : radius, { offset }))
          expect(closure.largest).toBeLessThan(2e-5)
          const chords = stakes.reduce((sum, { fromLast }) => sum + (fromLast?.chord ?? 0), 0)
          expect(chords).toBeLessThanOrEqual(inches(stakes.at(-1)!.alongInches) + 1e-9)
          expect(chords).toBeGreaterThanOrEqual(distance(stakes[0]!.position, stakes.at(-1)!.position))
        },
      ),
      { seed: 6, numRuns: 20 },
    )
  })
})

describe('heights', () => {
  it('come from profile and cross slope, and stay unknown without them', () => {
    const surface = {
      profile: {
        intersections: [
          { station: 0, elevation: 100, curveLength: 0 },
          { station: 10_000, elevation: 200, curveLength: 0 },
        ],
      },
      crossSlopes: [{ station: 0, left: -0.02, right: -0.02 }],
    }
    const { stakes } = staked(barrier, { ...straight, surface })
    const stake = stakes[10]!
    expect(stake.elevation).toBeCloseTo(100 + stake.station / 100 - 0.02 * feet(12), 9)
  })
})

describe('refusals', () => {
  it('says where the road ends', () => {
    const short = layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0, station: 2990 }, [
      { length: 20, curvatureStart: 0, curvatureEnd: 0 },
    ])
    const found = stakeRun(barrier, { ...straight, alignment: short })
    expect(found.ok).toBe(false)
    if (!found.ok) expect(found.error).toMatchObject({ kind: 'off-alignment', from: 2990, to: 3010 })
  })

  it('does not fold the rail back inside a sharp curve', () => {
    const found = stakeRun(barrier, curvedFrame(10, { offset: 9.5 }))
    expect(found.ok).toBe(false)
    if (!found.ok) expect(found.error.kind).toBe('tighter-than-offset')
  })

  it('does not guess a flare that the sheet does not state', () => {
    const flare = flared.flare as Flare
    const unstated = { ...flared, flare: { ...flare, offset: { ...flare.offset, nominal: 'notStated' as const } } }
    const found = stakeRun({ ...barrier, first: { kind: 'unit', sheet: unstated, atInches: null } }, straight)
    expect(found).toEqual({ ok: false, error: { kind: 'flare-not-stated', sheet: flared.id } })
  })
})
