import { describe, expect, it } from 'vitest'
import { facts, feet, inches, noGround, sheet } from '../../../test/fixtures/fit-facts.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { checkFit } from './check-fit.ts'
import { checkGround } from './check-ground.ts'
import { checkWorkingWidth } from './check-working-width.ts'
import type { FitFacts, Ground } from './fit.ts'

/** At, just inside and just outside each limit, by the order in which a designer asks. */
const flared = sheet('flared-terminal-31') as EndSheet
const hair = 1

describe('ground at a flared terminal', () => {
  // The sheet: platform 1V:10H, 5 ft behind post 1, 75 ft by 20 ft behind the gating end; answer 441: 1V:3H beside it.
  const right: Ground = {
    ...{ platformSlope: 10, behindPostOne: feet(5), recoveryLength: feet(75), recoveryWidth: feet(20) },
    ...{ besideSlope: 3, breakBehindPost: feet(1), slopeBehind: 2 },
  }
  const verdicts = (ground: Ground, changes: Partial<FitFacts> = {}) =>
    checkGround({ ...facts, ...changes, ground }).map(({ verdict }) => verdict)

  it('meets on every limit', () => {
    expect(verdicts(right)).toEqual(['meets', 'meets', 'meets', 'meets', 'meets', 'meets'])
  })

  it('is not told where nobody said it, and is not asked where no slope breaks', () => {
    expect(verdicts(noGround)).toEqual(['unread', 'unread', 'unread', 'unread', 'unread'])
    expect(verdicts({ ...right, breakBehindPost: null })[5]).toBe('unread')
  })

  it.each([
    [0, { platformSlope: 9.99 }],
    [1, { behindPostOne: feet(5) - hair }],
    [2, { recoveryLength: feet(75) - hair }],
    [3, { recoveryWidth: feet(20) - hair }],
    [4, { besideSlope: 2.99 }],
    [5, { breakBehindPost: feet(1) - hair }],
  ] as const)('fails in check %d alone just outside its limit: %o', (at, changes) => {
    const expected = Array(6).fill('meets')
    expected[at] = 'fails'
    expect(verdicts({ ...right, ...changes })).toEqual(expected)
  })

  // report 325 and answer 1257: 1 ft to the break, 2 ft where the slope beyond is 1V:1H
  it.each([
    [2, 1, 'meets'],
    [1.99, 1, 'fails'],
    [1.99, 2, 'meets'],
    [1, 2, 'meets'],
    [9.99, 1, 'meets'],
  ] as const)('behind the posts, before a break to 1V:%dH, %d ft: %s', (slopeBehind, have, verdict) => {
    expect(verdicts({ ...right, slopeBehind, breakBehindPost: feet(have) })[5]).toBe(verdict)
    if (verdict === 'meets')
      expect(verdicts({ ...right, slopeBehind, breakBehindPost: feet(have) - hair })[5]).toBe('fails')
  })

  it('of 1V:10H or flatter is no break, and without a system or an end nothing is asked', () => {
    expect(verdicts({ ...right, slopeBehind: 10, breakBehindPost: feet(0) })).toHaveLength(5)
    expect(verdicts({ ...right, breakBehindPost: feet(0) }, { system: null })).toHaveLength(5)
    expect(verdicts(right, { approach: null })).toEqual(['meets'])
    expect(verdicts(right, { approach: sheet('buried-end-31') as EndSheet })).toEqual(['meets'])
  })

  it('needs no clear area behind an end that does not gate', () => {
    expect(verdicts(right, { approach: { ...flared, gating: false } })).toEqual(['meets', 'meets', 'meets', 'meets'])
  })
})

/** Three crash tests, two joins, the adjoining run where there is one, two ends, then the transition where there is one. */
const checks = (changes: Partial<FitFacts>) => checkFit({ ...facts, ...changes })
const verdictsOf = (changes: Partial<FitFacts>) => checks(changes).map(({ verdict }) => verdict)

describe('an end on a system', () => {
  it('meets only where its sheet names the system, and is not told without one', () => {
    expect(verdictsOf({}).slice(3, 5)).toEqual(['meets', 'meets'])
    const other = sheet('w-beam-post-splice-27-3-4') as LongitudinalSheet
    expect(verdictsOf({ system: other }).slice(3, 5)).toEqual(['fails', 'fails'])
    // Without a system there are two crash tests only.
    expect(verdictsOf({ system: null }).slice(2, 4)).toEqual(['unread', 'unread'])
  })
})

describe('an adjoining run', () => {
  // the system's rail is at 31 in, its splices midway between posts; 1 in apart is borne
  it.each([
    [30, 'midspan', 'meets'],
    [32, 'midspan', 'meets'],
    [32, null, 'meets'],
    [31, 'post', 'fails'],
  ] as const)('with its rail at %d in and splices %s: %s', (height, splice, verdict) => {
    expect(verdictsOf({ adjoining: { railHeight: inches(height), splice } })[5]).toBe(verdict)
  })

  it('just over 1 in apart, either way, does not meet', () => {
    for (const railHeight of [inches(30) - hair, inches(32) + hair])
      expect(verdictsOf({ adjoining: { railHeight, splice: 'midspan' } })[5]).toBe('fails')
  })

  it('of a floor is met by the floor', () => {
    const system = sheet('w-beam-post-splice-27-3-4') as LongitudinalSheet
    const at = (railHeight: number) => verdictsOf({ system, adjoining: { railHeight, splice: 'post' } })[5]
    expect([inches(27.75), inches(26.75), inches(26.75) - hair].map(at)).toEqual(['meets', 'meets', 'fails'])
  })
})

describe('barrier before a transition', () => {
  // answer 1277: at least 46 ft 10 1/2 in (562.5 in), the terminal and 12 ft 6 in of plain rail, and the stroke. The
  // transition itself is 300 in long.
  const departure = sheet('bridge-end-31') as EndSheet
  const of = (listed: number, stroke: number | 'notStated'): EndSheet => ({
    ...flared,
    listedLength: { ...flared.listedLength, inches: listed },
    stroke: stroke === 'notStated' ? stroke : { ...flared.listedLength, inches: stroke },
  })
  it.each([
    ['the terminal and 150 in', flared, 600],
    ['46 ft 10 1/2 in', of(300, 'notStated'), 562.5],
    ['the stroke', of(300, 606), 606],
    ['the terminal and 150 in, longer than its stroke', of(562.5, 606), 712.5],
  ] as const)('is at least %s', (_, approach, needed) => {
    const at = (runLength: number | null) => verdictsOf({ approach, departure, runLength })[7]
    expect(at(inches(needed + 300))).toBe('meets')
    expect(at(inches(needed + 300) - hair)).toBe('fails')
    expect(at(null)).toBe('unread')
  })

  it('is asked only between a terminal and a transition', () => {
    const length = checks({ departure }).length
    expect(checks({ departure, approach: null }).length).toBeLessThan(length)
    expect(checks({}).length).toBe(length - 1)
  })
})

describe('room behind the rail', () => {
  it('is not asked without a system or a hazard', () => {
    expect(checkWorkingWidth({ ...facts, system: null })).toEqual([])
    expect(checkWorkingWidth({ ...facts, nearest: null })).toEqual([])
    expect(checkWorkingWidth(facts)).toHaveLength(1)
  })
})
