import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import { endSides } from './end-side.ts'
import { inchesOf } from './sixteenths.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const at31 = sheetOf<LongitudinalSheet>('w-beam-midspan-31')
const at27 = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
const sidesOf = (id: string, system: LongitudinalSheet) =>
  endSides({ kind: 'unit', sheet: sheetOf<EndSheet>(id), atInches: null }, system)

describe('an end unit joined to a run', () => {
  // 31 in: own panels to 300 in, posts to 375 in, then every 75 in. 300 + 112.5 = 412.5 and 300 + 187.5 = 487.5 lie
  // midway between posts; 300 + 150 = 450 is post 7, 300 + 300 = 600 post 9.
  it('at 31 in takes either adapter, and says on which post a standard panel would bring the splice', () => {
    const { sides, refused } = sidesOf('flared-terminal-31', at31)
    expect(sides.map(({ adapter, joint }) => [inchesOf(adapter!), inchesOf(joint)])).toEqual([
      [112.5, 412.5],
      [187.5, 487.5],
    ])
    for (const { own, posts, countsFrom } of sides) {
      expect(own.map(inchesOf)).toEqual([150, 150])
      expect(posts.map(inchesOf)).toEqual([0, 75, 150, 225, 300, 375])
      expect(inchesOf(countsFrom!)).toBe(150)
    }
    expect(refused).toEqual(
      [
        [150, 7],
        [300, 9],
      ].map(([panel, post]) => ({
        ...{ kind: 'splice position', panel, post, at: 'post', wanted: 'midspan' },
        unit: nameOf(sheetOf<EndSheet>('flared-terminal-31')),
      })),
    )
  })

  it('at 27 3/4 in takes none, and refuses those that would bring the splice midway between posts', () => {
    const { sides, refused } = sidesOf('flared-terminal-27-3-4', at27)
    expect(sides.map(({ adapter, joint }) => [adapter, inchesOf(joint)])).toEqual([[null, 450]])
    expect(refused).toMatchObject([
      { kind: 'splice position', panel: 112.5, at: 'midspan', post: 8, wanted: 'post' },
      { kind: 'splice position', panel: 187.5, at: 'midspan', post: 9, wanted: 'post' },
    ])
  })

  it('refuses a converting panel that would fit and is not its own, and says nothing of a standard one', () => {
    const flared = sheetOf<EndSheet>('flared-terminal-31')
    const [short] = flared.panels.adapters
    const onlyShort: EndSheet = { ...flared, panels: { ...flared.panels, adapters: [short!] } }
    const { sides, refused } = endSides({ kind: 'unit', sheet: onlyShort, atInches: null }, at31)
    expect(sides.map(({ adapter }) => inchesOf(adapter!))).toEqual([112.5])
    expect(refused.filter(({ kind }) => kind === 'panel not of this unit')).toMatchObject([{ panel: 187.5 }])
  })
})

describe('an end unit whose rail ends before its last post', () => {
  // Posts of the flared terminal every 75 in from 0 to 375 in.
  const flared = sheetOf<EndSheet>('flared-terminal-31')
  const joined = (own: readonly number[], adapters: readonly number[], system = at31) => {
    const panel = flared.panels.own[0]!
    const of = (lengths: readonly number[]) => lengths.map((inches) => ({ ...panel, inches }))
    const sheet: EndSheet = { ...flared, panels: { ...flared.panels, own: of(own), adapters: of(adapters) } }
    return endSides({ kind: 'unit', sheet, atInches: null }, system)
  }
  const refusalsOf = (own: readonly number[], adapters: readonly number[] = []) =>
    joined(own, adapters).refused.map((one) =>
      one.kind === 'splice position' ? [one.panel, one.at, one.post] : one.kind,
    )

  it('has its splice at the post where the rail ends, or after the post before it', () => {
    // 150 is post 3, 150 + 150 = 300 post 5, 150 + 300 = 450 one space past the last. 262.5 and 337.5 lie midway between posts,
    // where converting panels would bring it that the unit does not have.
    const found = refusalsOf([150])
    expect(found).toHaveLength(5)
    expect(found.filter((one) => one === 'panel not of this unit')).toHaveLength(2)
    expect(found).toEqual(
      expect.arrayContaining([
        [null, 'post', 3],
        [150, 'post', 5],
        [300, 'post', 7],
      ]),
    )
    // 100 lies between posts 2 and 3 and not midway; neither does 287.5 between posts 4 and 5.
    expect(refusalsOf([100]).at(0)).toEqual([null, 'midspan', 2])
    expect(refusalsOf([100], [187.5])).toContainEqual([187.5, 'midspan', 4])
    // 400 lies a third of a space past the last post, 6.
    expect(refusalsOf([400]).at(0)).toEqual([null, 'midspan', 6])
  })

  it('is joined midway between two of its posts, and midway to the first from where its rail begins', () => {
    expect(joined([112.5], []).sides.map(({ adapter, joint }) => [adapter, inchesOf(joint)])).toEqual([[null, 112.5]])
    const bridge = sheetOf<EndSheet>('bridge-end-31')
    const short: EndSheet = {
      ...bridge,
      panels: { ...bridge.panels, own: [{ ...bridge.panels.own[0]!, inches: 9.375 }] },
    }
    const { sides, refused } = endSides({ kind: 'unit', sheet: short, atInches: null }, at31)
    expect(sides.map(({ joint }) => inchesOf(joint))).toEqual([9.375])
    // 9.375 + 112.5 = 121.875 lies after post 6, at 112.5 in, and not midway to post 7.
    expect(refused).toContainEqual(expect.objectContaining({ panel: 112.5, at: 'midspan', post: 6 }))
  })

  it('takes its adapters in order of their length, however its sheet has them', () => {
    const { sides } = joined([150, 150], [187.5, 112.5])
    expect(sides.map(({ adapter }) => inchesOf(adapter!))).toEqual([112.5, 187.5])
  })
})

describe('a run that goes on from one that stands', () => {
  it.each([
    ['midspan', 37.5],
    ['post', 0],
  ] as const)('with its splice at %s has its nearest post %d in behind', (position, back) => {
    const { sides, refused } = endSides({ kind: 'standing splice', atInches: 0, position }, at31)
    expect(refused).toEqual([])
    expect(sides).toHaveLength(1)
    const [{ own, adapter, joint, countsFrom, posts }] = sides as [(typeof sides)[number]]
    expect([own, adapter, joint, countsFrom]).toEqual([[], null, 0, null])
    expect(posts.map((at) => Math.abs(inchesOf(at)))).toEqual([back])
    expect(posts[0]).toBeLessThanOrEqual(0)
  })
})
