import { describe, expect, it } from 'vitest'
import { check, facts, feet, inches, noGround, sheet } from '../../../test/fixtures/fit-facts.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import { checkFit } from './check-fit.ts'
import type { FitFacts } from './fit.ts'
import type { FitTopic } from './fit-saying.ts'

const hangsOnSite: ReadonlySet<FitTopic['kind']> = new Set<FitTopic['kind']>([
  'length of run',
  'platform of end',
  'level ground behind post 1',
  'clear area',
])
const flared = { sheet: nameOf(sheet('flared-terminal-31')) }
const system = { sheet: nameOf(sheet('w-beam-midspan-31')) }

describe('checkFit', () => {
  it('says where nothing is said, and never meets by default', () => {
    const silent = checkFit({ ...facts, work: null, letting: null, opposingReaches: null, runLength: null })
    const undecided = silent.filter(({ what }) =>
      what.kind === 'sheet at end' ? what.end === 'departure' : hangsOnSite.has(what.kind),
    )
    expect(new Set(undecided.map(({ what }) => what.kind)).size).toBe(hangsOnSite.size + 1)
    expect(undecided.map(({ verdict }) => verdict)).not.toContain('meets')
  })

  it.each([
    ['2018-06-30', 'meets'],
    ['2018-07-01', 'fails'],
  ] as const)(
    'judges a terminal tested to NCHRP 350 for new work let %s: %s (agreement, W-beam terminals)',
    (letting, verdict) => {
      const found = check('crash test of sheet', { letting }, flared)
      expect(found).toMatchObject({
        verdict,
        smallestChange:
          verdict === 'fails'
            ? { kind: 'take tested hardware', of: 'terminal', needed: { mash: true, testLevel: 3 } }
            : null,
        limit: { kind: 'needed crash test', category: 'W-beam terminal', lastLetting: '2018-06-30' },
      })
    },
  )

  it.each([
    ['flared-terminal-31', 'meets'],
    ['tangent-terminal-31', 'meets'],
    ['trailing-anchor-31', 'fails'],
  ] as const)('judges %s at the approach end, whatever opposing traffic does: %s', (id, verdict) => {
    for (const opposingReaches of [true, false, null]) {
      const found = check('sheet at end', { approach: sheet(id) as EndSheet, opposingReaches }, { end: 'approach' })
      expect(found.verdict).toBe(verdict)
      expect(found.smallestChange).toEqual(verdict === 'fails' ? { kind: 'take crashworthy terminal' } : null)
    }
  })

  it('wants a crashworthy terminal where opposing traffic can reach the departure end', () => {
    const departure = (changes: Partial<FitFacts>) => check('sheet at end', changes, { end: 'departure' })
    expect(departure({ opposingReaches: true })).toMatchObject({
      verdict: 'fails',
      smallestChange: { kind: 'take crashworthy terminal' },
    })
    expect(departure({ opposingReaches: false }).verdict).toBe('meets')
    expect(departure({ opposingReaches: null }).verdict).toBe('unread')
    const terminal = { departure: sheet('tangent-terminal-31') as EndSheet }
    for (const opposingReaches of [true, false, null])
      expect(departure({ ...terminal, opposingReaches }).verdict).toBe('meets')
  })

  it('says how to meet a run of the other height family', () => {
    const found = check('against adjoining run', { adjoining: { railHeight: inches(27.75), splice: 'post' } })
    expect(found.verdict).toBe('fails')
    // 31 in less 27 3/4 in; 9 ft 4 1/2 in or 15 ft 7 1/2 in
    expect(found.smallestChange).toEqual({
      kind: 'meet adjoining run',
      height: { by: inches(3.25), overFeet: [25, 50] },
      shiftingPanels: [112.5, 187.5],
    })
  })

  // public answer 1277: at least 46 ft 10 1/2 in before the W-to-thrie piece, more when the stroke is longer (50.5 ft seen)
  it('keeps a terminal with a long stroke clear of the transition', () => {
    const bridge = { approach: sheet('tangent-terminal-31') as EndSheet, departure: sheet('bridge-end-31') as EndSheet }
    expect(check('barrier before transition', { ...bridge, runLength: feet(25 + 50) })).toMatchObject({
      verdict: 'fails',
      smallestChange: { kind: 'add rail before transition', inches: 150 },
    })
    expect(check('barrier before transition', { ...bridge, runLength: feet(25 + 62.5) }).verdict).toBe('meets')
  })

  // public answer 42020: 75 ft anchor to anchor, of which about 25 ft redirects; TRP-03-276-13: 175 ft recommended
  it.each([
    [74.99, 'fails'],
    [75, 'unread'],
    [174.99, 'unread'],
    [175, 'meets'],
  ] as const)('of a run of %d ft says %s, and on what conditions', (length, verdict) => {
    expect(check('length of run', { runLength: feet(length) })).toMatchObject({
      verdict,
      limit: { kind: 'run at least', shortest: 75 * 12, redirects: 25 * 12, recommended: 175 * 12 },
      smallestChange: verdict === 'fails' ? { kind: 'add rail', inches: 150 } : null,
      source:
        verdict === 'unread'
          ? { title: { of: { own: expect.stringContaining('TRP-03-276-13') } } }
          : { edition: { of: { own: expect.stringContaining('42020') } } },
    })
  })

  it('of a system that only says the shortest tested, judges by that', () => {
    const sparse = { ...facts.system!, recommendedRun: undefined, shortestRunRedirects: undefined }
    expect(check('length of run', { system: sparse, runLength: feet(75) }).verdict).toBe('meets')
    expect(check('length of run', { system: sparse, runLength: feet(74.99) }).verdict).toBe('fails')
  })

  it('asks for more ground behind the posts where the slope breaks', () => {
    const at = (slopeBehind: number, breakBehindPost: number) =>
      check('ground to slope break', { ground: { ...noGround, slopeBehind, breakBehindPost } })
    expect(at(2, feet(0)).smallestChange).toMatchObject({ kind: 'take longer posts at break', feet: [8, 9] })
    expect(at(1, feet(1.5))).toMatchObject({ verdict: 'fails', smallestChange: { inches: 24, feet: [8, 9] } })
    expect(at(2, feet(1)).verdict).toBe('meets')
  })

  it('refuses a slope of 1V:1.5H beside the platform and a platform steeper than 1V:10H', () => {
    expect(check('foreslope beside platform', { ground: { ...noGround, besideSlope: 1.5 } }).verdict).toBe('fails')
    const platform = (platformSlope: number) => check('platform of end', { ground: { ...noGround, platformSlope } })
    expect(platform(8)).toMatchObject({
      confirmation: 'published',
      source: { title: { of: { own: expect.stringContaining('Texas DOT') } } },
      smallestChange: { kind: 'grade platform', run: 10, orTangent: true },
    })
    expect(check('level ground behind post 1', {}).confirmation).toBe('from memory')
    expect(platform(10).verdict).toBe('meets')
    expect(platform(9.9).verdict).toBe('fails')
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
    expect(check('crash test of sheet', { ...apart, speed: { value: 65, unit: 'mi/h' } }, system)).toMatchObject({
      verdict: 'fails',
      smallestChange: { kind: 'take tested hardware', of: 'longitudinal', needed: { mash: true, testLevel: 3 } },
    })
    expect(check('crash test of sheet', { ...apart, speed: { value: 45, unit: 'mi/h' } }, system).verdict).toBe('meets')
    expect(
      check('crash test of sheet', { ...apart, letting: '2016-01-15', speed: { value: 65, unit: 'mi/h' } }, system)
        .verdict,
    ).toBe('meets')
    expect(check('crash test of sheet', tested(['MASH', 2025, 3]), system).verdict).toBe('meets')
  })
})
