import { describe, expect, it } from 'vitest'
import { check, facts, feet, inches, noGround, sheet } from '../../../test/fixtures/fit-facts.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { checkFit } from './check-fit.ts'

describe('checkFit', () => {
  it('says where nothing is said, and never meets by default', () => {
    const silent = checkFit({ ...facts, work: null, letting: null, opposingReaches: null, runLength: null })
    for (const what of [
      /test of Flared/,
      /anchor.* departure end/,
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
      const found = check(/test of Flared/, { letting })
      expect(found).toMatchObject({
        verdict,
        smallestChange:
          verdict === 'fails' ? 'a terminal with one test to MASH 2016 or later at level 3 or higher' : null,
      })
      // which contracts the date binds, and that exceptions and states' own dates exist
      expect(found.limit).toContain('National Highway System; exceptions by memorandum exist')
    },
  )

  it.each([
    ['flared-terminal-31', 'meets'],
    ['tangent-terminal-31', 'meets'],
    ['trailing-anchor-31', 'fails'],
  ] as const)('judges %s at the approach end, whatever opposing traffic does: %s', (id, verdict) => {
    for (const opposingReaches of [true, false, null]) {
      const found = check(/approach end/, { approach: sheet(id) as EndSheet, opposingReaches })
      expect(found.verdict).toBe(verdict)
      expect(found.smallestChange).toBe(verdict === 'fails' ? 'a crashworthy terminal at this end' : null)
    }
  })

  it('wants a crashworthy terminal where opposing traffic can reach the departure end', () => {
    expect(check(/departure end/, { opposingReaches: true })).toMatchObject({
      verdict: 'fails',
      smallestChange: 'a crashworthy terminal at this end',
    })
    expect(check(/departure end/, { opposingReaches: false }).verdict).toBe('meets')
    expect(check(/departure end/, { opposingReaches: null }).verdict).toBe('unread')
    const terminal = { departure: sheet('tangent-terminal-31') as EndSheet }
    for (const opposingReaches of [true, false, null])
      expect(check(/departure end/, { ...terminal, opposingReaches }).verdict).toBe('meets')
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

  // public answer 42020: 75 ft anchor to anchor, of which about 25 ft redirects; TRP-03-276-13: 175 ft recommended
  it.each([
    [74.99, 'fails'],
    [75, 'unread'],
    [174.99, 'unread'],
    [175, 'meets'],
  ] as const)('of a run of %d ft says %s, and on what conditions', (length, verdict) => {
    expect(check(/length of the run/, { runLength: feet(length) })).toMatchObject({
      verdict,
      limit:
        'at least 75 ft 0 in, the shortest tested; of that only about 25 ft 0 in redirects; at least 175 ft 0 in is recommended',
      smallestChange: verdict === 'fails' ? '12 ft 6 in more rail' : null,
      source: expect.stringContaining(verdict === 'unread' ? 'TRP-03-276-13' : '42020'),
    })
  })

  it('of a system that only says the shortest tested, judges by that', () => {
    const system = { ...facts.system!, recommendedRun: undefined, shortestRunRedirects: undefined }
    expect(check(/length of the run/, { system, runLength: feet(75) }).verdict).toBe('meets')
    expect(check(/length of the run/, { system, runLength: feet(74.99) }).verdict).toBe('fails')
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
    expect(platform).toMatchObject({ confirmation: 'published', source: expect.stringContaining('Texas DOT') })
    expect(platform.smallestChange).toContain('tangent terminal')
    expect(check(/level ground/, {}).confirmation).toBe('from memory')
    expect(check(/platform before/, { ground: { ...noGround, platformSlope: 10 } }).verdict).toBe('meets')
    expect(check(/platform before/, { ground: { ...noGround, platformSlope: 9.9 } }).verdict).toBe('fails')
  })

  it('wants one test that covers both criteria and level', () => {
    const tested = (
      ...tests: readonly (readonly [standard: 'MASH' | 'NCHRP 350', edition: number, testLevel: number])[]
    ) => ({
      system: {
        ...sheet('w-beam-midspan-31'),
        criteria: tests.map(([standard, edition, testLevel]) => ({
          ...{ standard, edition, testLevel },
          ...({ source: 'recalled', confirmation: 'published' } as const),
        })),
      } as LongitudinalSheet,
      letting: '2026-01-15',
    })
    const apart = tested(['MASH', 2016, 2], ['NCHRP 350', 1993, 3])
    expect(check(/test of W-beam/, { ...apart, speed: { value: 65, unit: 'mi/h' } })).toMatchObject({
      verdict: 'fails',
      smallestChange: 'a system with one test to MASH 2016 or later at level 3 or higher',
    })
    expect(check(/test of W-beam/, { ...apart, speed: { value: 45, unit: 'mi/h' } }).verdict).toBe('meets')
    expect(
      check(/test of W-beam/, { ...apart, letting: '2016-01-15', speed: { value: 65, unit: 'mi/h' } }).verdict,
    ).toBe('meets')
    expect(check(/test of W-beam/, tested(['MASH', 2025, 3])).verdict).toBe('meets')
  })
})
