import { describe, expect, it } from 'vitest'
import { drawnWords } from '../../test/cases/drawing/drawn.ts'
import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import type { RunEnd } from '../core/layout/layout.ts'
import { stripDrawing } from '../drawing/views/strip.ts'
import { readRun } from '../formats/run/run-file.ts'
import { writeRun } from '../formats/run/write-run.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { undescribedSystem } from '../sheets/undescribed-system.ts'
import { english } from '../words/english.ts'
import { countedRun, mostPanelsOf, panelsBySheet, postsBySheets, type SeenRun } from './counted-run.ts'
import { judgeReadings } from './judge-readings.ts'
import { requireRun } from './require-run.ts'
import { stripInput } from './strip-input.ts'

const sheets = new Map(shippedSheets.map((sheet) => [sheet.id, sheet]))
const ends = shippedSheets.filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal')
const systemOf = ({ joins }: EndSheet) => sheets.get(joins[0]!) as LongitudinalSheet
const unknown = (because: 'not looked at' | 'no sheet fits'): RunEnd => ({
  ...{ kind: 'unknown', because, atInches: null, posts: 0, panels: 0 },
})
const unit = (sheet: EndSheet): RunEnd => ({ kind: 'unit', sheet, atInches: null })

const seen = (run: Pick<SeenRun, 'system' | 'first' | 'second' | 'counted'> & Partial<SeenRun>): SeenRun => ({
  ...{
    name: 'What stands',
    units: 'us',
    side: null,
    opposingReaches: null,
    letting: null,
    datumStation: null,
    position: null,
    unknownPanels: 2,
    reduced: [],
    obstructions: [],
    sheets: [],
  },
  ...run,
})

/** What the sheets ask of a run that has just what was counted from. */
function asked(run: SeenRun) {
  const read = readRun('seen', writeRun(countedRun(run)))
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const required = requireRun('seen', read.value)
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  const topics = required.value.requirements.map(({ id }) => id)
  return { topics, layout: required.value.model.layout }
}

describe('the strip of what is counted', () => {
  const first = sheets.get('flared-terminal-31') as EndSheet
  const system = systemOf(first)
  const saysThatRailCounts = (run: Partial<SeenRun>): readonly string[] => {
    const counted = { panels: [...panelsBySheet(first), ...Array.from({ length: 8 }, () => 150)], posts: 30 }
    const read = readRun('seen', writeRun(countedRun(seen({ system, first, second: first, counted, ...run }))))
    const required = read.ok ? requireRun('seen', read.value) : read
    if (!required.ok) throw new Error(JSON.stringify(required.error))
    return drawnWords(stripDrawing(stripInput(required.value, english('us')))).filter((words) =>
      /count for|counts for/.test(words),
    )
  }

  // Common practice: a barrier carries what strikes it by its anchors at both ends.
  it('says of no rail that it counts where an end is not known', () => {
    const notKnown = ['would count for length of need; not known, since an end is not known']
    expect(saysThatRailCounts({})[0]).toMatch(/^counts for length of need, /)
    for (const second of ['not looked at', 'no sheet fits'] as const)
      expect(saysThatRailCounts({ second }), second).toEqual(notKnown)
    expect(saysThatRailCounts({ first: 'no sheet fits', second: first })).toEqual(notKnown)
  })
})

describe('what is counted from', () => {
  it.each(ends.map((sheet) => [sheet.id, sheet] as const))('%s by itself has all its pieces', (_, sheet) => {
    const panels = panelsBySheet(sheet)
    const system = systemOf(sheet)
    const posts = postsBySheets({ first: unit(sheet), second: unknown('not looked at'), system }, panels)
    const { topics, layout } = asked(
      seen({ system, first: sheet, second: 'not looked at', counted: { panels, posts } }),
    )
    expect(layout.asCounted).toBe('posts placed')
    expect(layout.posts.filter(({ unit }) => unit === 'first')).toHaveLength(sheet.posts.length)
    expect(topics.filter((id) => id.endsWith('-count'))).toEqual([])
    expect(topics).toContain('run/rest-of-run')
  })

  it('two ends with panels between are a lawful run', () => {
    const [first, second] = [sheets.get('flared-terminal-31'), sheets.get('trailing-anchor-31')] as EndSheet[]
    const system = systemOf(first!)
    const panels = [...panelsBySheet(first!), 150, 150, 150, ...panelsBySheet(second!).toReversed()]
    const posts = postsBySheets({ first: unit(first!), second: unit(second!), system }, panels)
    const { layout, topics } = asked(seen({ system, first: first!, second: second!, counted: { panels, posts } }))
    expect(layout.asCounted).toBe(undefined)
    expect(topics).toContain('run/need')
    expect(topics).not.toContain('run/rest-of-run')
  })

  it('of a whole run, what belongs to an end that no sheet fits is asked nothing, and the rest is', () => {
    const anchor = sheets.get('trailing-anchor-27-3-4') as EndSheet
    const system = systemOf(anchor)
    const panels = [...Array.from({ length: 6 }, () => 150), ...panelsBySheet(anchor).toReversed()]
    const counted = {
      panels,
      posts: postsBySheets({ first: unknown('no sheet fits'), second: unit(anchor), system }, panels),
    }
    const { topics, layout } = asked(
      seen({
        system,
        first: 'no sheet fits',
        second: anchor,
        counted,
        unknownPanels: mostPanelsOf([anchor, sheets.get('flared-terminal-27-3-4') as EndSheet]),
      }),
    )
    const own = (sheets.get('flared-terminal-27-3-4') as EndSheet).panels.own.length
    expect(layout.panels.filter(({ unit }) => unit === 'first')).toHaveLength(own)
    const judged = new Set(topics.map((id) => id.split('/')[0]))
    const isAsked = ({ id }: { readonly id: string }): boolean => judged.has(id)
    expect(layout.panels.map(isAsked)).toEqual(layout.panels.map((_, i) => i >= own))
    // Its last panel ends at a post, which still is its own.
    const reach = own * 150
    expect(layout.posts.map(isAsked)).toEqual(layout.posts.map(({ alongInches }) => alongInches > reach))
  })

  it('of a barrier that no sheet describes nothing is asked, in a run that can be read and judged all the same', () => {
    const counted = { panels: [150, 150], posts: 5 }
    const { topics, layout } = asked(
      seen({
        ...{ system: undescribedSystem, first: 'no sheet fits', second: 'not looked at', counted },
        sheets: [undescribedSystem],
      }),
    )
    expect(layout.posts).toHaveLength(5)
    expect(topics.every((id) => id.startsWith('run/'))).toBe(true)
    expect(topics).toContain('run/end-hardware')
    expect(topics).not.toContain('run/criteria')
  })

  it('an end that no sheet fits is asked nothing but what it is', () => {
    const system = sheets.get('w-beam-midspan-31') as LongitudinalSheet
    const counted = { panels: [150, 150], posts: 4 }
    const { topics } = asked(seen({ system, first: 'no sheet fits', second: 'not looked at', counted }))
    expect(topics).toEqual(['run/end-hardware', 'run/rest-of-run', 'run/need', 'run/location'])
  })
})

describe('where it stands', () => {
  const first = sheets.get('flared-terminal-27-3-4') as EndSheet
  const counted = { panels: panelsBySheet(first), posts: first.posts.length }
  const terminal = (said: Partial<SeenRun>): SeenRun =>
    seen({ system: systemOf(first), first, second: 'not looked at', counted, ...said })
  const position = { latitude: 44.0523, longitude: -92.9117, accuracy: 8, fixedAt: '2026-04-03T10:00:00Z' }

  it('is asked for as long as neither a station nor the position of a device is said', () => {
    expect(asked(terminal({})).topics).toContain('run/location')
    expect(asked(terminal({ datumStation: '104+00' })).topics).not.toContain('run/location')
    expect(asked(terminal({ position })).topics).not.toContain('run/location')
  })

  it('asks for no date of the letting, on which nothing hangs for work that stands', () => {
    expect(asked(terminal({})).topics).toEqual(asked(terminal({ letting: '2012-05-15' })).topics)
  })
})

describe('an end that is no good where it is struck head-on', () => {
  const anchor = sheets.get('trailing-anchor-27-3-4') as EndSheet
  const system = systemOf(anchor)
  const counted = { panels: panelsBySheet(anchor), posts: anchor.posts.length }
  const verdictOn = (run: Partial<SeenRun>, id: string) => {
    const ends = { system, first: 'not looked at', second: 'not looked at', counted } as const
    const read = readRun('seen', writeRun(countedRun(seen({ ...ends, ...run }))))
    const required = read.ok ? requireRun('seen', read.value) : read
    const judged = required.ok ? judgeReadings('seen', required.value, []) : required
    if (!judged.ok) throw new Error(JSON.stringify(judged.error))
    return judged.value.judgement.verdicts.find(({ requirement }) => requirement === id)?.verdict
  }

  it('fails where traffic comes to it first, and where it leaves hangs on whether opposing traffic reaches it', () => {
    expect(verdictOn({ first: anchor }, 'first/crashworthy')).toBe('fails')
    const leaving = (opposingReaches: boolean | null) =>
      verdictOn({ second: anchor, opposingReaches }, 'second/crashworthy')
    expect([leaving(true), leaving(false), leaving(null)]).toEqual(['fails', 'meets', 'unread'])
  })

  it.each(ends.map((sheet) => [sheet.id, sheet] as const))(
    '%s has all its pieces where traffic leaves by it',
    (_, sheet) => {
      const panels = panelsBySheet(sheet).toReversed()
      const system = systemOf(sheet)
      const posts = postsBySheets({ first: unknown('not looked at'), second: unit(sheet), system }, panels)
      const { topics, layout } = asked(
        seen({ system, first: 'not looked at', second: sheet, counted: { panels, posts } }),
      )
      expect(layout.posts.filter(({ unit }) => unit === 'second')).toHaveLength(sheet.posts.length)
      expect(topics.filter((id) => id.endsWith('-count'))).toEqual([])
      expect(topics).toContain('run/rest-of-run')
    },
  )
})
