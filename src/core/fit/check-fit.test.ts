import { describe, expect, it } from 'vitest'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { shippedSheets } from '../hardware/shipped-sheets.ts'
import { exactLength } from '../units/exact-length.ts'
import { checkFit } from './check-fit.ts'
import type { FitCheck, FitFacts } from './fit.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const inches = (value: number) => exactLength(value, 'in')
const feet = (value: number) => exactLength(value, 'ft')

const noGround = {
  platformSlope: null,
  behindPostOne: null,
  recoveryLength: null,
  recoveryWidth: null,
  besideSlope: null,
  breakBehindPost: null,
  slopeBehind: null,
}

const facts: FitFacts = {
  speed: { value: 55, unit: 'mi/h' },
  system: sheet('w-beam-midspan-31') as LongitudinalSheet,
  approach: sheet('flared-terminal-31') as EndSheet,
  departure: sheet('trailing-anchor-31') as EndSheet,
  work: 'new',
  letting: '2016-01-15',
  spacing: 'full',
  nearest: { hazard: 'the pier', clear: inches(72), length: feet(4) },
  twoWay: true,
  opposingReaches: false,
  adjoining: null,
  ground: noGround,
  curb: null,
  runLength: feet(200),
}

function check(what: RegExp, changes: Partial<FitFacts>): FitCheck {
  const found = checkFit({ ...facts, ...changes }).find((one) => what.test(one.what))
  if (found === undefined) throw new Error(`no check of ${what}`)
  return found
}

describe('checkFit', () => {
  it('says where nothing is said, and never meets by default', () => {
    const silent = checkFit({ ...facts, work: null, letting: null, opposingReaches: null, runLength: null })
    for (const what of [
      /criteria of Flared/,
      /departure end/,
      /length of the run/,
      /platform before/,
      /level ground/,
      /clear area/,
    ]) {
      expect(silent.filter((one) => what.test(one.what)).map(({ verdict }) => verdict)).not.toContain('meets')
    }
    for (const one of silent) expect(one.source.length).toBeGreaterThan(5)
  })

  it.each([
    ['2018-06-30', 'meets'],
    ['2018-07-01', 'fails'],
  ] as const)(
    'judges a terminal tested to NCHRP 350 for new work let %s: %s (agreement, W-beam terminals)',
    (letting, verdict) => {
      expect(check(/criteria of Flared/, { letting })).toMatchObject({
        verdict,
        smallestChange: verdict === 'fails' ? 'a terminal tested to MASH 2016' : null,
      })
    },
  )

  // public answers 2043 and 346: 60 in at full spacing as agencies plan, 44 in at half, 35 in at quarter
  it.each([
    [60, 'meets', null],
    [59, 'fails', /^half spacing for 56 ft 3 in: needs 3 ft 8 in/],
    [44, 'fails', /^half spacing/],
    [
      43,
      'fails',
      /^quarter spacing for 56 ft 3 in: needs 2 ft 11 in, with 12 ft 6 in of half spacing before and after it/,
    ],
    [34, 'fails', /^move the rail 2 ft 2 in farther from the pier/],
  ] as const)('with %d in behind the rail: %s', (clear, verdict, change) => {
    const found = check(/room behind the rail/, { nearest: { ...facts.nearest!, clear: inches(clear) } })
    expect(found.verdict).toBe(verdict)
    if (change === null) expect(found.smallestChange).toBeNull()
    else expect(found.smallestChange).toMatch(change)
  })

  // AASHTO Roadside Design Guide 2011, 5.6.2.1.1, as quoted in public answer 1074
  it.each([
    [40, { height: inches(6), face: 'sloping', toRail: inches(0) }, 'meets'],
    [40, { height: inches(6), face: 'sloping', toRail: inches(96) }, 'meets'],
    [40, { height: inches(6), face: 'sloping', toRail: inches(60) }, 'fails'],
    [45, { height: inches(4), face: 'sloping', toRail: inches(156) }, 'meets'],
    [45, { height: inches(4), face: 'sloping', toRail: inches(150) }, 'fails'],
    [50, { height: inches(6), face: 'sloping', toRail: inches(0) }, 'fails'],
    [55, { height: inches(4), face: 'vertical', toRail: inches(6) }, 'meets'],
    [55, { height: inches(4), face: 'sloping', toRail: inches(160) }, 'fails'],
    [65, { height: inches(4), face: 'vertical', toRail: inches(0) }, 'fails'],
    [65, { height: inches(4), face: 'sloping', toRail: inches(0) }, 'meets'],
  ] as const)('judges a curb at %d mi/h, %o: %s', (value, curb, verdict) => {
    expect(check(/curb/, { speed: { value, unit: 'mi/h' }, curb }).verdict).toBe(verdict)
  })

  it('wants a crashworthy terminal where opposing traffic can reach the departure end', () => {
    expect(check(/departure end/, { opposingReaches: true })).toMatchObject({
      verdict: 'fails',
      smallestChange: 'a crashworthy terminal at this end',
    })
    expect(check(/departure end/, { opposingReaches: false }).verdict).toBe('meets')
  })

  it('says how to meet a run of the other height family', () => {
    const found = check(/adjoining/, { adjoining: { railHeight: inches(27.75), splice: 'post' } })
    expect(found.verdict).toBe('fails')
    expect(found.smallestChange).toContain('change height by 3 1/4 in over 25 ft to 50 ft')
    expect(found.smallestChange).toContain('one odd panel')
  })

  // public answer 1277: at least 46 ft 10 1/2 in before the W-to-thrie piece, more when the stroke is longer (50.5 ft seen)
  it('keeps a terminal with a long stroke clear of the transition', () => {
    const bridge = { approach: sheet('tangent-terminal-31') as EndSheet, departure: sheet('bridge-end-31') as EndSheet }
    expect(check(/before the transition/, { ...bridge, runLength: feet(25 + 50) })).toMatchObject({
      verdict: 'fails',
      smallestChange: '12 ft 6 in more plain rail between terminal and transition',
    })
    expect(check(/before the transition/, { ...bridge, runLength: feet(25 + 62.5) }).verdict).toBe('meets')
  })

  // public answer 42020: 75 ft anchor to anchor
  it('knows the shortest tested run', () => {
    expect(check(/length of the run/, { runLength: feet(74.9) }).verdict).toBe('fails')
    expect(check(/length of the run/, { runLength: feet(75) }).verdict).toBe('meets')
  })

  it('asks for more ground behind the posts where the slope breaks', () => {
    expect(
      check(/slope break/, { ground: { ...noGround, slopeBehind: 2, breakBehindPost: feet(0) } }).smallestChange,
    ).toContain('8-ft or 9-ft posts')
    expect(check(/slope break/, { ground: { ...noGround, slopeBehind: 1, breakBehindPost: feet(1.5) } }).verdict).toBe(
      'fails',
    )
    expect(check(/slope break/, { ground: { ...noGround, slopeBehind: 2, breakBehindPost: feet(1) } }).verdict).toBe(
      'meets',
    )
  })

  it('refuses a slope of 1V:1.5H beside the platform and a platform steeper than 1V:10H', () => {
    expect(check(/beside the platform/, { ground: { ...noGround, besideSlope: 1.5 } }).verdict).toBe('fails')
    const platform = check(/platform before/, { ground: { ...noGround, platformSlope: 8 } })
    expect(platform.smallestChange).toContain('tangent terminal')
  })

  it('wants test level 3 above 45 mi/h', () => {
    const low = {
      ...sheet('w-beam-midspan-31'),
      criteria: [{ standard: 'MASH', edition: 2016, testLevel: 2, source: 'recalled', confirmation: 'from memory' }],
    } as LongitudinalSheet
    expect(check(/test level of W-beam/, { system: low, speed: { value: 45, unit: 'mi/h' } }).verdict).toBe('meets')
    expect(check(/test level of W-beam/, { system: low, speed: { value: 50, unit: 'mi/h' } })).toMatchObject({
      verdict: 'fails',
      smallestChange: 'hardware tested to level 3',
    })
  })
})
