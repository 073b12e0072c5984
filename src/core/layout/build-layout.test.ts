import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet, SplicePosition } from '../hardware/hardware-sheet.ts'
import { runPanelRole } from './build-layout.ts'
import type { Layout, LayoutRequest, RunEnd } from './layout.ts'
import { solveLayout } from './solve-layout.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-midspan-31')
const unit = (id: string, atInches: number): RunEnd => ({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches })
const standingSplice = (atInches: number, position: SplicePosition = 'midspan'): RunEnd => ({
  kind: 'standing splice',
  atInches,
  position,
})

function best(first: RunEnd, second: RunEnd, changes: Partial<LayoutRequest> = {}): Layout {
  const solved = solveLayout({
    ...{ system, first, second, need: null, stock: null, obstructions: [], reduced: [], standing: null },
    ...{ mayExtendInches: 0, ...changes },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  return layout!
}

/** Worked by hand from the pieces of the sheets; posts every 75 in, splices midway between them. */
describe('a run between a flared terminal and a trailing anchor, 975 in from post to post, post 1 at -75 in', () => {
  // Terminal: panels of 150 and 150 in and an adapter; anchor: an adapter. With both adapters of 187.5 in
  // 975 - 487.5 - 187.5 = 300 in are left, one panel; with any shorter one there are more pieces.
  const layout = best(unit('flared-terminal-31', -75), unit('trailing-anchor-31', 900))

  it('hangs 150, 150, 187.5, 300 and 187.5 in of rail, each from where the one before it ends', () => {
    expect(
      layout.panels.map((one) => [one.fromInches, one.toInches, one.inches, one.unit, one.role, one.ownNumber]),
    ).toEqual([
      [0, 150, 150, 'first', 'own', 1],
      [150, 300, 150, 'first', 'own', 2],
      [300, 487.5, 187.5, 'first', 'adapter', 3],
      [487.5, 787.5, 300, 'run', 'standard', null],
      [787.5, 975, 187.5, 'second', 'adapter', 1],
    ])
    expect(layout.panels.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5])
    expect(layout.panels.some(({ nested }) => nested)).toBe(false)
  })

  it('splices inside the terminal at posts 3 and 5, at its joints midway between two posts', () => {
    expect(layout.splices.map((one) => [one.number, one.alongInches, one.position, one.unit])).toEqual([
      [1, 150, 'post', 'first'],
      [2, 300, 'post', 'first'],
      [3, 487.5, 'midspan', 'run'],
      [4, 787.5, 'midspan', 'run'],
    ])
  })

  it('stands fourteen posts every 75 in: six of the terminal, six of the run, two of the anchor, each in its own count', () => {
    expect(layout.posts.map((one) => [one.alongInches, one.kind, one.block, one.unit, one.ownNumber])).toEqual([
      [0, 'hinged breakaway post', false, 'first', 1],
      [75, 'hinged breakaway post', false, 'first', 2],
      [150, 'standard post', true, 'first', 3],
      [225, 'standard post', true, 'first', 4],
      [300, 'standard post', true, 'first', 5],
      [375, 'standard post', true, 'first', 6],
      [450, 'standard post', true, 'run', null],
      [525, 'standard post', true, 'run', null],
      [600, 'standard post', true, 'run', null],
      [675, 'standard post', true, 'run', null],
      [750, 'standard post', true, 'run', null],
      [825, 'standard post', true, 'run', null],
      [900, 'breakaway wood post', false, 'second', 2],
      [975, 'breakaway wood post', false, 'second', 1],
    ])
    expect(layout.posts.map(({ number }) => number)).toEqual(Array.from({ length: 14 }, (_, i) => i + 1))
    expect(new Set(layout.posts.map(({ state }) => state))).toEqual(new Set(['regular']))
  })

  it('counts for length of need from 150 in after post 1 to 450 in before the last post', () => {
    expect(layout.postOneAtInches).toBe(-75)
    expect(layout.countsFromInches).toBe(150)
    expect(layout.countsToInches).toBe(525)
  })

  it('has a score of its two adapters as odd panels, 975 in and five pieces', () => {
    expect(layout.score).toEqual({ changedPosts: 0, oddPanels: 2, railInches: 975, pieces: 5 })
  })
})

describe('a run between two standing splices, midway between posts', () => {
  it('is measured from the standing post before it, half a space back, and counts from nowhere', () => {
    const layout = best(standingSplice(0), standingSplice(600))
    expect(layout.postOneAtInches).toBe(-37.5)
    expect(layout.posts.map(({ alongInches }) => alongInches)).toEqual([0, 75, 150, 225, 300, 375, 450, 525, 600, 675])
    expect(layout.posts[0]).toMatchObject({
      ...{ kind: 'standing post', block: true, unit: 'first', ownNumber: null, state: 'standing' },
    })
    expect(layout.posts.at(-1)).toMatchObject({ kind: 'standing post', unit: 'second', state: 'standing' })
    expect(layout.posts.slice(1, -1).every(({ state, unit }) => state === 'regular' && unit === 'run')).toBe(true)
    expect(layout.panels.map((one) => [one.fromInches, one.toInches])).toEqual([
      [37.5, 337.5],
      [337.5, 637.5],
    ])
    expect([layout.countsFromInches, layout.countsToInches]).toEqual([null, null])
  })

  it('has three breakaway wood posts on each side of a long span, in the places of ordinary ones', () => {
    // Posts at 37.5 + 75k in; those at 712.5 and 787.5 are in the culvert. From the standing post at -37.5: 750 and 825.
    const obstructions = [{ name: 'the culvert', fromInches: 700, toInches: 800 }]
    const layout = best(standingSplice(0), standingSplice(1500), { obstructions })
    expect(layout.omitted.map(({ alongInches, rule }) => [alongInches, rule])).toEqual([
      [750, 'long span'],
      [825, 'long span'],
    ])
    const special = layout.posts.filter(({ state }) => state === 'special')
    expect(special.map(({ alongInches }) => alongInches)).toEqual([525, 600, 675, 900, 975, 1050])
    expect(new Set(special.map(({ kind }) => kind))).toEqual(new Set(['breakaway wood post']))
    expect(layout.posts.filter(({ state }) => state === 'regular').every(({ kind }) => kind === 'standard post')).toBe(
      true,
    )
  })

  it('doubles the panel in a doubled part, and not its neighbours that only touch it', () => {
    const reduced = [{ fromInches: 300, toInches: 600, spacing: 'full', nested: true }] as const
    const { panels } = best(standingSplice(0), standingSplice(900), { reduced })
    expect(panels.map(({ inches, nested }) => [inches, nested])).toEqual([
      [300, false],
      [300, true],
      [300, false],
    ])
  })

  it('calls what hangs in the run hung, and the rest by its length', () => {
    const standing = { postOneAtInches: -37.5, panels: [150, 150], postsDriven: 0 }
    const { panels } = best(standingSplice(0), standingSplice(600), { standing })
    expect(panels.map(({ inches, role }) => [inches, role])).toEqual([
      [150, 'hung'],
      [150, 'hung'],
      [300, 'standard'],
    ])
  })
})

/**
 * Worked by hand. Posts of the bridge end at 18.75 in from the connection, every 18.75 in to 112.5 in, at 150 in and then
 * every 37.5 in to 262.5 in; its rail of 300 in ends midway to the next post. 637.5 in to the anchor's last post leave one
 * panel of 150 in and the adapter of 187.5 in.
 */
describe('a run from a bridge to a trailing anchor, whose rail begins 18.75 in before post 1', () => {
  const layout = best(unit('bridge-end-31', 100), unit('trailing-anchor-31', 737.5))

  it('has its posts from post 1 on, which stands 18.75 in beyond the connection', () => {
    expect(layout.postOneAtInches).toBe(118.75)
    expect(layout.posts.map(({ alongInches, unit, ownNumber }) => [alongInches, unit, ownNumber])).toEqual([
      ...[0, 18.75, 37.5, 56.25, 75, 93.75, 131.25, 168.75, 206.25, 243.75].map((at, i) => [at, 'first', i + 1]),
      ...[318.75, 393.75, 468.75].map((at) => [at, 'run', null]),
      [543.75, 'second', 2],
      [618.75, 'second', 1],
    ])
  })

  it('has its rail from 18.75 in before post 1 on, all of which counts but the last 450 in', () => {
    expect(layout.panels.map(({ fromInches, toInches, unit }) => [fromInches, toInches, unit])).toEqual([
      [-18.75, 131.25, 'first'],
      [131.25, 206.25, 'first'],
      [206.25, 281.25, 'first'],
      [281.25, 431.25, 'run'],
      [431.25, 618.75, 'second'],
    ])
    expect([layout.countsFromInches, layout.countsToInches]).toEqual([-18.75, 168.75])
  })

  it('has splices at the posts of the bridge end where its panels end there, and midway between posts in the run', () => {
    expect(layout.splices.map(({ alongInches, position, unit }) => [alongInches, position, unit])).toEqual([
      [131.25, 'post', 'first'],
      [206.25, 'post', 'first'],
      [281.25, 'midspan', 'run'],
      [431.25, 'midspan', 'run'],
    ])
  })
})

describe('a run from a standing splice to a trailing anchor', () => {
  it('counts from the standing post on, half a space before the splice, to 450 in before the last post', () => {
    // Posts at 37.5 + 75k in from the splice: the last at 637.5 in, 675 in from the standing post.
    const layout = best(standingSplice(0), unit('trailing-anchor-31', 637.5))
    expect(layout.posts.map(({ alongInches }) => alongInches)).toEqual([0, 75, 150, 225, 300, 375, 450, 525, 600, 675])
    expect([layout.countsFromInches, layout.countsToInches]).toEqual([null, 225])
  })
})

it('a panel of the run is standard, converting or for an end by its length', () => {
  const roles = [150, 300, 112.5, 187.5, 75].map((inches) => runPanelRole(system, inches))
  expect(roles).toEqual(['standard', 'standard', 'converting', 'converting', 'end only'])
})

describe('a terminal at the second end', () => {
  // The tangent terminal: 150, 150, 150 and 112.5 in from its outermost post inward. 1,537.5 - 562.5 in are the run's.
  const layout = best(standingSplice(0), unit('tangent-terminal-31', 1537.5))

  it('hangs the other way about: its outermost panel is the last of the run', () => {
    expect(
      layout.panels.filter(({ unit }) => unit === 'second').map(({ inches, ownNumber }) => [inches, ownNumber]),
    ).toEqual([
      [112.5, 4],
      [150, 3],
      [150, 2],
      [150, 1],
    ])
    expect(layout.panels.at(-1)!.toInches - layout.panels[0]!.fromInches).toBe(1537.5)
    expect(layout.posts.slice(-8).map(({ ownNumber }) => ownNumber)).toEqual([8, 7, 6, 5, 4, 3, 2, 1])
  })

  it('has splices of its own between its panels, and one of the run at its joint', () => {
    expect(layout.splices.slice(-4).map(({ unit, position }) => [unit, position])).toEqual([
      ['run', 'midspan'],
      ['second', 'post'],
      ['second', 'post'],
      ['second', 'post'],
    ])
  })

  it('has its own splices where its sheet puts them, though those of the run lie at posts', () => {
    const low = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
    const plain = sheetOf<EndSheet>('flared-terminal-27-3-4')
    const own = [112.5, 187.5, 150].map((inches, i) => ({ ...plain.panels.own[i]!, inches }))
    const second: RunEnd = { kind: 'unit', sheet: { ...plain, panels: { ...plain.panels, own } }, atInches: 1500 }
    const { splices } = best(standingSplice(0, 'post'), second, { system: low })
    expect(splices.slice(-3).map(({ position }) => position)).toEqual(['post', 'post', 'midspan'])
  })
})
