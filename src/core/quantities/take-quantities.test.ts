import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import type { EndSheet } from '../hardware/hardware-sheet.ts'
import { contentOf } from '../hardware/sheet-text.ts'
import { payLength, payRoundings } from './pay-length.ts'
import type { Quantity } from './quantity.ts'
import type { QuantityName } from './quantity-saying.ts'
import type { Boundary } from './run-length.ts'
import { type Quantities, type QuantityRule, takeQuantities } from './take-quantities.ts'

const terminal = shippedEnd('flared-terminal-27-3-4')
const anchor27 = shippedEnd('trailing-anchor-27-3-4')
const terminal31 = shippedEnd('flared-terminal-31')
const anchor31 = shippedEnd('trailing-anchor-31')
const bridge31 = shippedEnd('bridge-end-31')

/** Handbook case B1: a terminal of 50 ft and a transition of 25 ft. */
function endsOfB1(): readonly [EndSheet, EndSheet] {
  const plain = terminal.posts[2]!
  const posts = [3, 4, 5, 6, 7, 8, 9].map((number) => ({ ...plain, number, along: (number - 1) * 75 }))
  return [
    {
      ...terminal,
      flare: 'none',
      posts: [...terminal.posts.slice(0, 2), ...posts],
      panels: { own: [...terminal.panels.own, terminal.panels.own[2]!], adapters: [] },
      listedLength: { ...terminal.listedLength, inches: 600 },
    },
    {
      ...bridge31,
      joins: ['w-beam-post-splice-27-3-4'],
      posts: bridge31.posts.map((post) => (post.number === 10 ? { ...post, along: 300 } : post)),
    },
  ]
}

const atSplices = { first: { kind: 'splice' }, second: { kind: 'splice' } } as const
const rule: QuantityRule = { boundaries: atSplices, rounding: '0.1 ft', postsDriven: 0 }

function taken(...[barrier, more]: [Parameters<typeof takeQuantities>[0], Partial<QuantityRule>?]): Quantities {
  const found = takeQuantities(barrier, { ...rule, ...more })
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

/** Amount of the one quantity whose name has all of `wanted`. */
function amountOf(quantities: readonly Quantity[], wanted: Partial<QuantityName>): number | undefined {
  const isWanted = ({ name }: Quantity): boolean =>
    Object.entries(wanted).every(([field, value]) => contentOf(name[field as 'kind']) === contentOf(value))
  return quantities.find(isWanted)?.amount
}

describe('case B1 of the worked examples', () => {
  // 25 ft transition, 7 plain panels of 12 ft 6 in = 87.5 ft, 50 ft terminal: 162.5 ft installed
  const [first, second] = endsOfB1()
  // 141.4706 ft of need end at the bridge; the terminal counts from 12.5 ft on
  const barrier = laidBarrier('w-beam-post-splice-27-3-4', first, second, [-141.4375 * 12, 0], {
    second: { kind: 'unit', sheet: second, atInches: 0 },
  })
  const quantities = taken(barrier)

  it('installs 162.5 ft and pays 87.5 ft of run between terminal and transition', () => {
    expect(quantities.installed.amount / 12).toBe(162.5)
    expect(quantities.run.length.amount / 12).toBe(87.5)
    expect(quantities.paidFeet).toBe(87.5)
    expect(quantities.ends.map(({ amount }) => amount)).toEqual([1, 1])
  })

  it('leaves no rail between run, terminal and transition out and counts none twice', () => {
    expect(600 + quantities.run.length.amount + 300).toBe(quantities.installed.amount)
  })

  it('finds the 10-gauge piece, doubles the nested panel, and leaves its thrie-beam splice to the drawing', () => {
    const { panels, bolts } = quantities
    expect(amountOf(panels, { of: byHand('W-to-thrie piece'), inches: 75, gauge: 10 })).toBe(1)
    expect(amountOf(panels, { of: byHand('thrie-beam panel, nested'), inches: 150, gauge: 12 })).toBe(2)
    expect(amountOf(bolts, { kind: 'thrie-beam splices' })).toBe(1)
  })
})

describe('a run between a flared terminal and an anchor, 31 in', () => {
  const barrier = laidBarrier('w-beam-midspan-31', terminal31, anchor31, [0, 1200])
  const quantities = taken(barrier)
  const { layout } = barrier

  it('counts every post once, by kind', () => {
    expect(quantities.posts.reduce((sum, { amount }) => sum + amount, 0)).toBe(layout.posts.length)
    const of = (kind: string, place: EndSheet['kind']) =>
      amountOf(quantities.posts, { kind: 'posts of kind', of: byHand(kind), place, stand: false })
    expect(of('hinged breakaway post', 'terminal')).toBe(2)
    expect(of('standard post', 'terminal')).toBe(4)
    expect(of('breakaway wood post', 'trailing anchor')).toBe(2)
  })

  it('counts no block at the hinged posts and the anchor', () => {
    expect(quantities.blocks.amount).toBe(layout.posts.length - 4)
  })

  it('needs 8 splice bolts to a splice', () => {
    // FHWA-SA-08-002, appendix A
    const [splice] = quantities.bolts
    expect(splice).toMatchObject({ id: 'bolts/splice', amount: 8 * layout.splices.length })
  })

  it('does not guess what the sheet does not say of bolts', () => {
    // post 1 is not bolted, of post 2 the sheet does not say
    expect(amountOf(quantities.bolts, { kind: 'posts not said to be bolted' })).toBe(1)
    expect(amountOf(quantities.bolts, { kind: 'post bolts', through: 'block' })).toBe(quantities.blocks.amount)
  })

  it('moves the boundary by 3 ft 1 1/2 in between splice and listed length', () => {
    // handbook 5c: half a space, the usual dispute
    const listed: Boundary = { kind: 'listed length' }
    const other = taken(barrier, { boundaries: { first: listed, second: { kind: 'splice' } } })
    expect(Math.abs(other.run.length.amount - quantities.run.length.amount)).toBe(37.5)
  })

  it('measures from centre to centre of the end posts when that is the rule', () => {
    const ends: Boundary = { kind: 'post', number: 1 }
    const other = taken(barrier, { boundaries: { first: ends, second: ends } })
    expect(other.run.length.amount).toBe(layout.posts.at(-1)!.alongInches)
  })

  it('refuses a boundary at a post that the unit does not have', () => {
    const found = takeQuantities(barrier, { ...rule, boundaries: { ...atSplices, first: { kind: 'post', number: 9 } } })
    expect(found).toEqual({ ok: false, error: { kind: 'no-such-post', end: 'first', number: 9, posts: 6 } })
  })

  it('marks spares as a habit without a document', () => {
    expect(quantities.spares.length).toBeGreaterThan(0)
    for (const spare of quantities.spares) {
      expect(spare.source?.confirmation).toBe('common practice')
      expect(spare.amount).toBeGreaterThan(0)
    }
  })
})

describe('what stands already', () => {
  it('is counted apart, and the splice to the standing run needs its bolts', () => {
    const barrier = laidBarrier('w-beam-post-splice-27-3-4', terminal, anchor27, [0, 600], {
      first: { kind: 'standing splice', atInches: 0, position: 'post' },
    })
    const quantities = taken(barrier, { postsDriven: 3 })
    const standing = quantities.posts.filter(({ id }) => id.includes('/standing/'))
    expect(standing.reduce((sum, { amount }) => sum + amount, 0)).toBe(3)
    const bolts = quantities.bolts.find(({ id }) => id === 'bolts/splice')!
    expect(bolts.pieces[0]).toEqual({ what: { kind: 'splice to standing run' }, amount: 8 })
    expect(bolts.amount).toBe(8 * (barrier.layout.splices.length + 1))
  })
})

describe('laws', () => {
  it.each([0, 3, 8])('adds every total up from its pieces, and leaves no panel out (%i spaces more)', (spaces) => {
    const barrier = laidBarrier('w-beam-midspan-31', terminal31, anchor31, [0, 600 + spaces * 75])
    for (const kind of ['splice', 'listed length'] as const) {
      const found = taken(barrier, { boundaries: { first: { kind }, second: { kind } } })
      const counts = [...found.posts, found.blocks, ...found.panels, ...found.bolts, ...found.spares]
      for (const { amount, pieces } of [found.run.length, found.installed, ...found.ends, ...counts])
        expect(pieces.reduce((sum, piece) => sum + piece.amount, 0)).toBe(amount)
      expect(found.panels.reduce((sum, { amount }) => sum + amount, 0)).toBe(barrier.layout.panels.length)
      expect(found.run.length.amount).toBe(found.run.toInches - found.run.fromInches)
    }
  })
})

describe('pay', () => {
  it.each([
    // 0.05 ft = 0.6 in lies between the sixteenths; 0.05 ft above 10 ft is 120.6 in
    [120.5625, '0.1 ft', 10],
    [120.625, '0.1 ft', 10.1],
    [126, '1 ft', 11],
    [125.9375, '1 ft', 10],
    [1050, '12.5 ft', 87.5],
    [1050 + 75, '12.5 ft', 100],
    [1050 + 74.9375, '12.5 ft', 87.5],
    [0, '1 ft', 0],
  ] as const)('rounds %f in to %s as %f ft', (inches, rounding, feet) => {
    expect(payLength(inches, rounding)).toBe(feet)
  })

  it('never moves a length by more than half a step', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000 }), fc.constantFrom(...payRoundings), (sixteenths, rounding) => {
        const inches = sixteenths / 16
        const step = Number.parseFloat(rounding)
        expect(Math.abs(payLength(inches, rounding) - inches / 12)).toBeLessThanOrEqual(step / 2 + 1e-9)
      }),
      { seed: 8 },
    )
  })
})
