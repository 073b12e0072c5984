import { describe, expect, it } from 'vitest'
import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import type { EndSheet, LongitudinalSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import type { Layout, LayoutPanel, RunEnd } from '../../../src/core/layout/layout.ts'
import { solveLayout } from '../../../src/core/layout/solve-layout.ts'
import { deriveRequirements } from '../../../src/core/requirements/derive-requirements.ts'
import type { Barrier } from '../../../src/core/staking/barrier.ts'
import { locatePanels } from '../../../src/core/staking/locate-panels.ts'
import { type Stake, stakeRun } from '../../../src/core/staking/stake-run.ts'
import { type StakingFrame, straightFrame } from '../../../src/core/staking/staking-frame.ts'
import { feet } from '../../../src/core/units/quantity.ts'
import { computeValue } from '../../../src/core/verdicts/compute-value.ts'
import { shippedSheets } from '../../../src/sheets/shipped-sheets.ts'

const systems = shippedSheets.filter((sheet): sheet is LongitudinalSheet => sheet.kind === 'longitudinal')
const ends = shippedSheets.filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal')

type Run = Barrier & { readonly system: LongitudinalSheet }

const closing = (sheet: EndSheet, atInches: number): RunEnd => ({
  kind: 'unit',
  sheet,
  atInches: sheet.kind === 'bridge end' ? atInches : null,
})

/** Lawful runs between each two shipped end units, two of every way to join both; `change` makes sheets of them. */
function runs(
  change: (sheet: EndSheet) => EndSheet = (sheet) => sheet,
): { readonly name: string; readonly run: Run }[] {
  return systems.flatMap((system) => {
    const joining = ends.filter(({ joins }) => joins.includes(system.id)).map(change)
    return joining.flatMap((one) =>
      joining.flatMap((other) => {
        const [first, second] = [closing(one, 0), closing(other, 1500)]
        const request = { need: { fromInches: 300, toInches: 1200 }, stock: null, obstructions: [], reduced: [] }
        const fixed = first.atInches !== null && second.atInches !== null ? { need: null } : {}
        const solved = solveLayout({
          system,
          first,
          second,
          ...request,
          standing: null,
          mayExtendInches: 450,
          ...fixed,
        })
        if (!solved.ok) throw new Error(solved.error.kind)
        const kept = new Map<string, number>()
        const found: { name: string; run: Run }[] = []
        let looked = 0
        for (const layout of solved.value.runs) {
          if (looked++ === 150) break
          const adapters = layout.panels.filter(({ role }) => role === 'adapter').map(({ inches }) => inches)
          const name = `${one.id} to ${other.id} with ${adapters.join(' and ') || 'no adapter'}`
          kept.set(name, (kept.get(name) ?? 0) + 1)
          if (kept.get(name)! <= 2) found.push({ name, run: { layout, system, first, second, flare: null } })
        }
        return found
      }),
    )
  })
}

const shipped = runs()

const straight = straightFrame({ datumStation: 3000, offset: feet(12), side: 'right', direction: 1 })

/** A circle of radius `radius` m, positive to the right. */
function circle(radius: number, side: StakingFrame['side'] = 'right'): StakingFrame {
  const alignment = layAlignment({ point: { easting: 0, northing: 0 }, azimuth: 0.3, station: 2900 }, [
    { length: 50, curvatureStart: 0, curvatureEnd: 1 / radius },
    { length: 150, curvatureStart: 1 / radius, curvatureEnd: 1 / radius },
  ])
  return { ...straight, alignment, datumStation: 2960, side, offset: side === 'right' ? feet(12) : -feet(12) }
}

const sound = <T>(
  found: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T => {
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

/** Where a string from `a` to `b` misses `point`, in. */
function fromString(a: Point, b: Point, point: Point): number {
  const [east, north] = [b.easting - a.easting, b.northing - a.northing]
  const across = (point.easting - a.easting) * north - (point.northing - a.northing) * east
  return Math.abs(across) / Math.hypot(east, north) / 0.0254
}

/** How far the middle of a panel, or a post on it, lies from the string between its ends, inches. */
function middleOrdinate(run: Run, frame: StakingFrame, stakes: readonly Stake[], panel: LayoutPanel): number {
  const { fromInches, toInches } = panel
  const places = sound(locatePanels(run, frame, [fromInches, (fromInches + toInches) / 2, toInches]))
  const [from, middle, to] = places.map(({ position }) => position)
  const onPanel = stakes.filter(({ alongInches }) => alongInches > fromInches && alongInches < toInches)
  return Math.max(...[middle!, ...onPanel.map(({ position }) => position)].map((one) => fromString(from!, to!, one)))
}

const strictPanels = ({ layout, first, second }: Run): LayoutPanel[] =>
  layout.panels.filter(({ unit }) => {
    const end = unit === 'first' ? first : unit === 'second' ? second : null
    return end?.kind === 'unit' && end.sheet.straightness !== 'notStated'
  })

function worst(all: readonly { readonly name: string; readonly run: Run }[], frame: StakingFrame): number {
  return Math.max(
    ...all.map(({ run }) => {
      const { stakes } = sound(stakeRun(run, frame))
      return Math.max(0, ...strictPanels(run).map((panel) => middleOrdinate(run, frame, stakes, panel)))
    }),
  )
}

describe('every panel that its sheet wants straight is staked straight, by string', () => {
  it('looks at all end units, at both ends, with each of their adapters', () => {
    const names = new Set(shipped.map(({ name }) => name))
    for (const joined of ['112.5 and 112.5', '112.5 and 187.5', '187.5 and 112.5', '187.5 and 187.5'])
      expect(names).toContain(`flared-terminal-31 to flared-terminal-31 with ${joined}`)
    for (const { id } of ends) {
      expect(
        [...names].some((name) => name.startsWith(`${id} to`)),
        id,
      ).toBe(true)
      expect(
        [...names].some((name) => name.includes(`to ${id} with`)),
        id,
      ).toBe(true)
    }
    expect(shipped.flatMap(({ run }) => strictPanels(run)).length).toBeGreaterThan(200)
  })

  // The shipped limit is 1/2 in; panels drawn panel by panel are straight, so no more than arithmetic is left.
  it('on a straight road', () => expect(worst(shipped, straight)).toBeLessThan(1e-6))

  it.each([
    // A 15 ft 7 1/2 in panel bent to 60 m would lie (187.5 x 0.0254)² / 8 / 60 / 0.0254 = 1.86 in off its string.
    { radius: 60, side: 'right' },
    { radius: -60, side: 'right' },
    { radius: 60, side: 'left' },
    { radius: 300, side: 'right' },
    { radius: -1000, side: 'left' },
  ] as const)('on a curve of $radius m, on the $side', ({ radius, side }) =>
    expect(worst(shipped, circle(radius, side))).toBeLessThan(1e-6),
  )

  it('with parabolic flares too, a chord for each panel', () => {
    const parabolic = runs((sheet) =>
      sheet.flare === 'none' ? sheet : { ...sheet, flare: { ...sheet.flare, shape: 'parabola' } },
    )
    expect(worst(parabolic, straight)).toBeLessThan(1e-6)
    expect(worst(parabolic, circle(-200))).toBeLessThan(1e-6)
  })
})

describe('where the flare runs out', () => {
  const offsets = (run: Run): number[] =>
    sound(stakeRun(run, straight)).stakes.map(({ offset }) => (offset - feet(12)) / 0.0254)
  const named = (name: string): Run => shipped.find((one) => one.name === name)!.run

  it.each([
    // 48 in at post 1, nothing at the splice after the adapter: 48 (412.5 - 75 k) / 412.5, and 48 (487.5 - 75 k) / 487.5.
    { adapter: 112.5, flared: [48, 39.2727, 30.5455, 21.8182, 13.0909, 4.3636, 0, 0] },
    { adapter: 187.5, flared: [48, 40.6154, 33.2308, 25.8462, 18.4615, 11.0769, 3.6923, 0] },
  ])('is the splice after the $adapter in adapter of the 31 in terminal', ({ adapter, flared }) => {
    const run = named(`flared-terminal-31 to bridge-end-31 with ${adapter}`)
    const mirrored = named(`bridge-end-31 to flared-terminal-31 with ${adapter}`)
    for (const found of [offsets(run), offsets(mirrored).toReversed()])
      for (const [i, offset] of flared.entries()) expect(found[i], `post ${i + 1}`).toBeCloseTo(offset, 4)
  })

  it('is 37 ft 6 in on at 27 3/4 in, where a splice lies', () => {
    const run = named('flared-terminal-27-3-4 to trailing-anchor-27-3-4 with no adapter')
    for (const [i, offset] of [48, 40, 32, 24, 16, 8, 0, 0].entries()) expect(offsets(run)[i]).toBeCloseTo(offset, 6)
  })
})

describe('what is staked meets what is required', () => {
  /** Offsets of the stakes from the line of the run, as nm that somebody reads without any doubt. */
  const lookup = (stakes: readonly Stake[]) => (of: string) => {
    const stake = stakes.find(({ point }) => of === `post-${point}/lateral-offset`)
    return stake === undefined
      ? null
      : { id: of, value: Math.round((stake.offset - feet(12)) * 1e9), u: 0, hasSide: true }
  }

  it('straightness and flare offset, computed from the posts', () => {
    let compared = 0
    for (const { name, run } of shipped) {
      const { stakes } = sound(stakeRun(run, straight))
      for (const { look, topic, id } of deriveRequirements({
        ...run,
        work: null,
        letting: null,
        speed: null,
        opposingReaches: null,
      })) {
        if (look.kind !== 'measure' || (topic !== 'straightness' && topic !== 'flare-offset') || !look.orFrom) continue
        const computed = computeValue(look.orFrom, lookup(stakes))
        if (!('value' in computed)) throw new Error(`${name}: ${id} cannot be computed`)
        const value = computed.value / 25_400_000
        // The lateral offset is square to the line, so a straight panel has none of it and post 1 its nominal.
        if (topic === 'straightness') expect(value, `${name}: ${id}`).toBeLessThan(1e-5)
        else expect(value, `${name}: ${id}`).toBeCloseTo(look.limits.nominal as number, 4)
        compared++
      }
    }
    expect(compared).toBeGreaterThan(150)
  })
})

/** The layouts differ by more than their names. */
it('meets more than one layout of each pair', () => {
  const different = new Set(shipped.map(({ run }) => JSON.stringify((run.layout as Layout).panels)))
  expect(different.size).toBeGreaterThan(60)
})
