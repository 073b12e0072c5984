import { describe, expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { SourceSaying } from '../hardware/hardware-saying.ts'
import type { EndSheet, LongitudinalSheet, OmissionRule } from '../hardware/hardware-sheet.ts'
import type { CurbBefore, LayoutRequest } from '../layout/layout.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { deriveRequirements } from './derive-requirements.ts'

/** The sheet with a source of its own at every place that names one: what a requirement cites then says where it was taken from. */
function apart<T extends EndSheet | LongitudinalSheet>(id: string): T {
  const sheet = shippedSheets.find((one) => one.id === id)!
  const sources: Record<string, { title: string; edition: string }> = {}
  const walk = (value: unknown, at: string): unknown => {
    if (Array.isArray(value)) return value.map((one, i) => walk(one, `${at}[${i}]`))
    if (typeof value !== 'object' || value === null) return value
    const own = Object.fromEntries(
      Object.entries(value).map(([name, one]) => [name, walk(one, at === '' ? name : `${at}.${name}`)]),
    )
    if (!('source' in own)) return own
    sources[at] = { title: at, edition: '' }
    return { ...own, source: at }
  }
  return { ...(walk({ ...sheet, sources: {} }, '') as T), sources }
}

const system = apart<LongitudinalSheet>('w-beam-midspan-31')
const low = apart<LongitudinalSheet>('w-beam-post-splice-27-3-4')
const flared = apart<EndSheet>('flared-terminal-31')
const anchor = apart<EndSheet>('trailing-anchor-31')

/** Which place of its sheet each requirement cites, by id. */
function citedIn(
  changes: Partial<LayoutRequest>,
  model: { readonly curb?: CurbBefore; readonly of?: LongitudinalSheet } = {},
): (id: string) => string | undefined {
  const of = model.of ?? system
  const ends = {
    first: { kind: 'standing splice', atInches: 0, position: of.splice.position },
    second: { kind: 'standing splice', atInches: 1500, position: of.splice.position },
  } as const
  const request = {
    ...{ system: of, need: null, stock: null, obstructions: [], reduced: [], standing: null, mayExtendInches: 0 },
    ...{ ...ends, curb: model.curb, ...changes },
  }
  const solved = solveLayout(request)
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  const { first, second, curb } = request
  const notSaid = { work: null, letting: null, speed: null, flare: null, opposingReaches: null } as const
  const found = deriveRequirements({ layout: layout!, system: of, first, second, curb, ...notSaid })
  const cited = new Map(
    found.map(({ id, source }) => {
      const { of } = (source as SourceSaying).title
      return [id, typeof of === 'string' ? of : of.own]
    }),
  )
  return (id) => cited.get(id)
}

describe('a requirement cites the place of its sheet that says it', () => {
  const cited = citedIn({
    first: { kind: 'unit', sheet: flared, atInches: 0 },
    second: { kind: 'unit', sheet: anchor, atInches: 975 },
  })

  it.each([
    ['post-1/post-kind', 'posts[0]'],
    ['post-2/block', 'posts[1]'],
    ['post-1/stub-height', 'posts[0].stub'],
    ['post-1/rail-height', 'railHeight'],
    ['post-1/flare-offset', 'flare.offset'],
    ['post-7/post-kind', 'post'],
    ['post-7/block', 'post'],
    ['space-9/spacing', 'postSpacing'],
    // The panels that the terminal brings, by their own numbers.
    ['panel-1/panel-length', 'panels.own[0]'],
    ['panel-1/slotted-panel', 'panels.own[0]'],
    ['panel-2/panel-length', 'panels.own[1]'],
    // The adapter of 187.5 in to a run with its splices at midspan; then what is the run's own.
    ['panel-3/panel-length', 'panels.adapters[1]'],
    ['panel-4/panel-length', 'panels.standard[1]'],
    ['splice-3/splice-position', 'splice'],
    ['splice-3/lap', 'lap'],
  ])('%s: %s', (id, place) => {
    expect(cited(id)).toBe(place)
  })
})

describe('where posts are left out, the rule that allows it is cited', () => {
  const at = (fromInches: number, toInches: number) => ({ obstructions: [{ name: 'a culvert', fromInches, toInches }] })
  const posts = (cited: (id: string) => string | undefined, topic: string) =>
    Array.from({ length: 30 }, (_, i) => cited(`post-${i + 1}/${topic}`)).filter((one) => one !== undefined)

  it('by the special posts on both sides, three each, and by no other', () => {
    const kinds = posts(citedIn(at(700, 800)), 'post-kind')
    const first = kinds.indexOf('omissions[1]')
    expect(kinds.slice(first, first + 6)).toEqual(Array(6).fill('omissions[1]'))
    expect(new Set([...kinds.slice(0, first), ...kinds.slice(first + 6)])).toEqual(new Set(['post']))
  })

  it('not by a post that is like the others, though the special ones are of the same kind', () => {
    const omissions = system.omissions.map((rule) => ({ ...rule, specialPostKind: system.post.kind }))
    expect(new Set(posts(citedIn({}, { of: { ...system, omissions } }), 'post-kind'))).toEqual(new Set(['post']))
  })

  const nested = (cited: (id: string) => string | undefined) =>
    new Set(Array.from({ length: 12 }, (_, i) => cited(`panel-${i + 1}/nested`)).filter((one) => one !== undefined))

  it('by the rail that it doubles, at a curb by what the rule says of that', () => {
    expect(nested(citedIn(at(700, 800), { of: low }))).toEqual(new Set(['omissions[0]']))
    expect(nested(citedIn(at(705, 720), { curb: 'present' }))).toEqual(new Set(['omissions[0].nestedAtCurb']))
    expect(nested(citedIn(at(705, 720), { curb: 'none' }))).toEqual(new Set())
    // A rule that was used, and not one that stands before it in the sheet.
    const unused = { ...low.omissions[0]!, kind: 'unused', most: 0, source: 'unused' } as unknown as OmissionRule
    const of = { ...low, omissions: [unused, ...low.omissions] }
    expect(nested(citedIn(at(700, 800), { of }))).toEqual(new Set(['omissions[0]']))
    // Two posts, beside a gap of one by another rule, which doubles nothing.
    const plain = { kind: 'single', most: 1, specialPostsEachSide: 0, nestedInches: 0, source: 'splice' } as const
    const omissions = [{ ...low.omissions[0]!, ...plain }, ...low.omissions] as readonly OmissionRule[]
    const both = { ...low, movedPost: 'notStated', omissions } as const
    const second = { kind: 'standing splice', atInches: 4500, position: 'post' } as const
    const obstructions = [...at(700, 900).obstructions, ...at(3595, 3605).obstructions]
    expect(nested(citedIn({ second, obstructions }, { of: both }))).toEqual(new Set(['omissions[0]']))
    // What is said of a curb is cited at one alone.
    const { nestedAtCurb } = system.omissions[0]!
    const alike = { ...low.omissions[0]!, nestedAtCurb } as OmissionRule
    const curbed = { ...low, sources: { ...system.sources, ...low.sources }, omissions: [alike] }
    expect(nested(citedIn(at(700, 800), { of: curbed, curb: 'none' }))).toEqual(new Set(['omissions[0]']))
  })

  it('not by rail that is doubled because the run file asks for it: that is the panel of the sheet', () => {
    const reduced = [{ fromInches: 600, toInches: 900, spacing: 'full', nested: true }] as const
    for (const of of [system, low]) {
      const cited = nested(citedIn({ reduced }, { of }))
      expect(cited.size).toBeGreaterThan(0)
      for (const place of cited) expect(place).toMatch(/^panels[.]/)
    }
  })

  it('by the question about a curb that nobody has answered', () => {
    const curb = (cited: (id: string) => string | undefined) =>
      Array.from({ length: 30 }, (_, i) => cited(`space-${i + 1}/curb`)).filter((one) => one !== undefined)
    expect(curb(citedIn(at(705, 720)))).toEqual(['omissions[0].nestedAtCurb'])
    for (const nestedAtCurb of ['notStated', undefined] as const) {
      const omissions = system.omissions.map((rule) => ({ ...rule, nestedAtCurb })) as readonly OmissionRule[]
      expect(curb(citedIn(at(705, 720), { of: { ...system, omissions } }))).toEqual(['omissions[0]'])
    }
    expect(curb(citedIn(at(705, 720), { curb: 'present' }))).toEqual([])
  })
})
