import { readFileSync } from 'node:fs'
import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../../src/core/hardware/hardware-sheet.ts'
import { nameOf } from '../../../src/core/hardware/sheet-text.ts'
import type { Layout, LayoutPanel, LayoutPost, LayoutSplice, Unit } from '../../../src/core/layout/layout.ts'
import { withFirstIds } from '../../../src/core/layout/place-ids.ts'
import type { Place } from '../../../src/core/requirements/requirement.ts'
import type { Verdict, VerdictWord } from '../../../src/core/verdicts/verdict.ts'
import type { StripEnd, StripInput } from '../../../src/drawing/views/strip/strip-input.ts'
import { english } from '../../../src/words/english.ts'
import { byHand } from '../../fixtures/by-hand.ts'

/** Layouts put together by hand for drawings, so that a drawing's tests do not rest on the search for layouts. */

export function shippedSheet(id: string): HardwareSheet {
  const path = new URL(`../../../src/sheets/${id}.json`, import.meta.url)
  return JSON.parse(readFileSync(path, 'utf8')) as HardwareSheet
}

const systemSheet = (id: string): LongitudinalSheet => shippedSheet(id) as LongitudinalSheet

function endOf(id: string): StripEnd {
  const sheet = shippedSheet(id) as EndSheet
  return { name: english(null).say(nameOf(sheet)), kind: sheet.kind, sheet }
}

interface HandPanel {
  readonly inches: number
  readonly unit: Unit
  readonly role: LayoutPanel['role']
  readonly nested?: boolean
}

interface HandPost {
  readonly block: boolean
  readonly kind: string
}

/** Posts 75 in apart along `panels`, with splices where the panels meet. `changes` alters posts by number. */
function handLayout(
  panels: readonly HandPanel[],
  firstPosts: readonly HandPost[],
  secondPosts: readonly HandPost[],
  changes: Readonly<Record<number, Partial<LayoutPost>>> = {},
  omitted: Layout['omitted'] = [],
): Layout {
  let along = 0
  const laid: Omit<LayoutPanel, 'id'>[] = panels.map((panel, i) => {
    const from = along
    along += panel.inches
    const own = panel.unit === 'run' ? null : i + 1
    return {
      number: i + 1,
      inches: panel.inches,
      fromInches: from,
      toInches: along,
      unit: panel.unit,
      role: panel.role,
      ownNumber: own,
      nested: panel.nested ?? false,
    }
  })
  const places = Array.from({ length: along / 75 + 1 }, (_, i) => i * 75).filter(
    (place) => !omitted.some((one) => one.alongInches === place),
  )
  const posts: Omit<LayoutPost, 'id'>[] = places.map((place, i) => {
    const fromSecond = places.length - i
    const first = firstPosts[i]
    const second = secondPosts[fromSecond - 1]
    const own = first ?? second ?? { block: true, kind: 'standard post' }
    return {
      number: i + 1,
      alongInches: place,
      kind: own.kind,
      block: own.block,
      unit: first ? 'first' : second ? 'second' : 'run',
      ownNumber: first ? i + 1 : second ? fromSecond : null,
      state: 'regular',
      ...changes[i + 1],
    }
  })
  const splices: Omit<LayoutSplice, 'id'>[] = laid.slice(1).map((panel, i) => ({
    number: i + 1,
    alongInches: panel.fromInches,
    position: panel.fromInches % 75 === 0 ? 'post' : 'midspan',
    unit: laid[i]!.unit === panel.unit ? panel.unit : laid[i]!.unit === 'run' ? panel.unit : laid[i]!.unit,
  }))
  return withFirstIds({
    posts,
    panels: laid,
    splices,
    omitted,
    postOneAtInches: 0,
    countsFromInches: 150,
    countsToInches: along - 75,
    score: { changedPosts: 0, oddPanels: 0, railInches: along, pieces: laid.length },
  })
}

const flaredPosts = [
  ...[1, 2].map(() => ({ block: false, kind: 'hinged breakaway post' })),
  ...[3, 4, 5, 6].map(() => ({ block: true, kind: 'standard post' })),
]
const anchorPosts = [1, 2].map(() => ({ block: false, kind: 'breakaway wood post' }))

/** Flared terminal, `standardPanels` panels of 12 ft 6 in at 31 in, trailing-end anchor; a culvert takes one post. */
export function culvertRun(standardPanels: number): StripInput {
  const layout = handLayout(
    [
      { inches: 150, unit: 'first', role: 'own' },
      { inches: 150, unit: 'first', role: 'own' },
      { inches: 112.5, unit: 'first', role: 'adapter' },
      ...Array.from({ length: standardPanels }, () => ({
        inches: 150,
        unit: 'run' as const,
        role: 'standard' as const,
      })),
      { inches: 112.5, unit: 'second', role: 'adapter' },
    ],
    flaredPosts,
    anchorPosts,
    Object.fromEntries(
      [10, 11, 12, 13, 14, 15].map((number) => [number, { state: 'special', kind: 'breakaway wood post' }]),
    ),
    [{ alongInches: 900, obstructions: ['pipe culvert'], rule: 'single' }],
  )
  return {
    layout,
    system: systemSheet('w-beam-midspan-31'),
    first: endOf('flared-terminal-31'),
    second: endOf('trailing-anchor-31'),
    traffic: 'two-way',
    obstructions: [{ name: 'pipe culvert, 48 in', fromInches: 870, toInches: 930 }],
    need: { fromInches: 420, toInches: 1020 },
    verdicts: null,
    titles: {
      run: 'Mill Creek culvert, right side',
      route: 'County Road 14',
      stations: '12+37.50 to 13+56.25',
      block: null,
    },
    units: 'feet and inches',
    flareRate: null,
    lateralExaggeration: 1,
    areEndsKnown: true,
    print: english(null),
  }
}

/** A bridge end first, reduced spacing by hand, a nested panel, a moved post, and a run that stands at the other end. */
export function bridgeRun(): StripInput {
  const along = [
    0, 18.75, 37.5, 56.25, 75, 93.75, 131.25, 168.75, 206.25, 243.75, 318.75, 393.75, 468.75, 553.75, 618.75,
  ]
  const posts: Omit<LayoutPost, 'id'>[] = along.map((alongInches, i) => ({
    number: i + 1,
    alongInches,
    kind: i < 10 ? 'transition post' : 'standard post',
    block: true,
    unit: i < 10 ? 'first' : 'run',
    ownNumber: i < 10 ? i + 1 : null,
    state: i === 13 ? 'moved' : i === 14 ? 'standing' : 'regular',
  }))
  const lengths = [150, 75, 75, 150, 150, 150]
  let from = -18.75
  const panels: Omit<LayoutPanel, 'id'>[] = lengths.map((inches, i) => {
    const panel: Omit<LayoutPanel, 'id'> = {
      number: i + 1,
      inches,
      fromInches: from,
      toInches: from + inches,
      unit: i < 3 ? 'first' : 'run',
      role: i < 3 ? 'own' : i === 5 ? 'hung' : 'standard',
      ownNumber: i < 3 ? i + 1 : null,
      nested: i === 3,
    }
    from += inches
    return panel
  })
  const splices: Omit<LayoutSplice, 'id'>[] = panels.slice(1).map((panel, i) => ({
    number: i + 1,
    alongInches: panel.fromInches,
    position: 'midspan',
    unit: i < 3 ? 'first' : 'run',
  }))
  return {
    layout: withFirstIds({
      posts,
      panels,
      splices,
      omitted: [],
      postOneAtInches: 100,
      countsFromInches: 0,
      countsToInches: null,
      score: { changedPosts: 1, oddPanels: 1, railInches: 750, pieces: 6 },
    }),
    system: systemSheet('w-beam-midspan-31'),
    first: endOf('bridge-end-31'),
    second: { name: 'run of 2009', kind: 'standing splice', sheet: null },
    traffic: 'divided',
    obstructions: [{ name: 'inlet', fromInches: 600, toInches: 640 }],
    need: { fromInches: 100, toInches: 500 },
    verdicts: null,
    titles: {
      run: 'Pont <Neuf> & “Ufer” 🚧 جسر النهر',
      route: 'A 7',
      stations: '1+237.500 bis 1+256.000',
      block: null,
    },
    units: 'metric',
    flareRate: null,
    lateralExaggeration: 3,
    areEndsKnown: true,
    print: english(null),
  }
}

/** `input` seen from its other end: what was first is second, and every distance counts from there. */
export function mirrored(input: StripInput): StripInput {
  const { layout } = input
  const last = layout.posts.at(-1)!.alongInches
  const units = { first: 'second', run: 'run', second: 'first' } as const
  return {
    ...input,
    first: input.second,
    second: input.first,
    layout: withFirstIds({
      ...layout,
      posts: layout.posts
        .map((post, i) => ({
          ...post,
          number: layout.posts.length - i,
          alongInches: last - post.alongInches,
          unit: units[post.unit],
        }))
        .reverse(),
      panels: layout.panels
        .map((panel, i) => ({
          ...panel,
          number: layout.panels.length - i,
          fromInches: last - panel.toInches,
          toInches: last - panel.fromInches,
          unit: units[panel.unit],
        }))
        .reverse(),
      splices: layout.splices
        .map((splice, i) => ({
          ...splice,
          number: layout.splices.length - i,
          alongInches: last - splice.alongInches,
          unit: units[splice.unit],
        }))
        .reverse(),
      omitted: layout.omitted.map((one) => ({ ...one, alongInches: last - one.alongInches })),
    }),
  }
}

/** A verdict of every kind along `layout`: what each place gets is fixed by its number. */
export function mixedVerdicts(layout: Layout): Verdict[] {
  const words: readonly VerdictWord[] = ['meets', 'fails', 'meets', 'too close', 'unread', 'meets', 'does not apply']
  const verdicts: Verdict[] = []
  const add = (id: string, topic: string, place: Place, verdict: VerdictWord): void => {
    verdicts.push({
      requirement: `${id}/${topic}`,
      place,
      verdict,
      because: { kind: 'nobody looked' },
      readings: [],
      sheet: 'by hand',
      sheetVersion: '1.0.0',
    })
  }
  for (const post of layout.posts) {
    const place: Place = {
      id: post.id,
      kind: 'post',
      number: post.number,
      alongInches: post.alongInches,
      own: null,
    }
    add(post.id, 'rail-height', place, words[post.number % 7]!)
    add(post.id, 'block', place, words[(post.number * 3) % 7]!)
    add(post.id, 'rail-bolt', place, 'meets')
  }
  for (const splice of layout.splices) {
    const place: Place = {
      id: splice.id,
      kind: 'splice',
      number: splice.number,
      alongInches: splice.alongInches,
    }
    add(splice.id, 'lap', place, splice.number === 3 ? 'fails' : 'meets')
    add(splice.id, 'bolts', place, splice.number % 4 === 0 ? 'unread' : 'meets')
  }
  for (const panel of layout.panels) {
    const middle = (panel.fromInches + panel.toInches) / 2
    const place: Place = {
      id: panel.id,
      kind: 'panel',
      number: panel.number,
      alongInches: middle,
      own: null,
    }
    add(panel.id, 'length', place, panel.number === 2 ? 'too close' : 'meets')
  }
  const unit: Place = { id: 'first', kind: 'unit', number: 1, alongInches: 0, sheet: byHand('Terminal drawn by hand') }
  add('first', 'manual', unit, 'unread')
  const run: Place = { id: 'run', kind: 'run', number: 0, alongInches: 0 }
  add('run', 'criteria', run, 'fails')
  return verdicts
}
