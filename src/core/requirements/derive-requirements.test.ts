import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { SourceSaying } from '../hardware/hardware-saying.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { contentOf, sheetText } from '../hardware/sheet-text.ts'
import type { CurbBefore, LayoutRequest, RunEnd } from '../layout/layout.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import { noCurbRule } from './changed-post-rules.ts'
import { blockRule, type DerivedRule, nestedRule, slotRule, slottedPanelRule } from './common-rules.ts'
import { deriveRequirements } from './derive-requirements.ts'
import type { Requirement, RequirementLook } from './requirement.ts'

const sheetOf = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T
const system = sheetOf<LongitudinalSheet>('w-beam-midspan-31')
const flared = sheetOf<EndSheet>('flared-terminal-31')
const anchor = sheetOf<EndSheet>('trailing-anchor-31')
const unit = (sheet: EndSheet, atInches: number): RunEnd => ({ kind: 'unit', sheet, atInches })
const standingSplice = (atInches: number): RunEnd => ({ kind: 'standing splice', atInches, position: 'midspan' })

function requirementsOf(
  first: RunEnd,
  second: RunEnd,
  changes: Partial<LayoutRequest> = {},
  curb?: CurbBefore,
): ReadonlyMap<string, Requirement> {
  const solved = solveLayout({
    ...{ system, first, second, need: null, stock: null, obstructions: [], reduced: [], standing: null },
    ...{ mayExtendInches: 0, curb, ...changes },
  })
  if (!solved.ok) throw new Error(solved.error.kind)
  const [layout] = solved.value.runs
  const notSaid = { work: null, letting: null, speed: null, flare: null, opposingReaches: null } as const
  const found = deriveRequirements({ layout: layout!, system, first, second, curb, ...notSaid })
  return new Map(found.map((one) => [one.id, one]))
}

/**
 * A flared terminal of six posts, six posts of the run and two of a trailing anchor; panels of 150, 150, 187.5, 300 and
 * 187.5 in. Worked by hand in the layout's own tests.
 */
const all = requirementsOf(unit(flared, 0), unit(anchor, 975))
const topicsAt = (place: string) => [...all.values()].filter((one) => one.place.id === place).map(({ topic }) => topic)

describe('what is required of each place, by its sheet', () => {
  const post = ['rail-height', 'post-kind', 'block', 'rail-bolt']
  it.each([
    [
      'post-1',
      ['lower-post-seen', ...post, 'hinge-side', 'stub-height', 'flare-offset'],
      ['head-holes', 'bearing-plate', 'plate-retainer', 'cable-play'],
    ],
    ['post-2', ['lower-post-seen', 'rail-height', 'post-kind', 'block', 'hinge-side', 'slot-set', 'stub-height'], []],
    ['post-3', post, []],
    ['post-7', post, []],
    ['post-13', [...post, 'stub-height'], []],
    ['post-14', ['strut', ...post, 'stub-height'], ['cable-play']],
    ['space-1', ['spacing'], []],
    ['panel-1', ['panel-length', 'slotted-panel'], ['bracket-seat', 'bracket-opening', 'straightness']],
    ['panel-2', ['panel-length', 'straightness'], []],
    ['panel-3', ['panel-length', 'straightness'], []],
    ['panel-4', ['panel-length'], []],
    ['panel-5', ['panel-length'], []],
    ['splice-1', ['splice-position', 'lap'], ['splice-bolts']],
    ['splice-3', ['splice-position', 'lap'], ['splice-bolts', 'rail-sound']],
    ['first', ['manual', 'criteria', 'crashworthy'], []],
    ['second', ['criteria', 'crashworthy'], []],
    ['run', ['criteria'], []],
  ])('%s', (place, derived, own) => {
    expect(topicsAt(place)).toEqual([...derived, ...own])
  })

  it('nothing of a post that stands already', () => {
    const between = requirementsOf(standingSplice(0), standingSplice(600))
    const posts = new Set(
      [...between.values()].filter(({ place }) => place.kind === 'post').map(({ place }) => place.number),
    )
    expect([...posts]).toEqual([2, 3, 4, 5, 6, 7, 8, 9])
  })
})

const choicesOf = (look: RequirementLook) => {
  if (look.kind !== 'choose') throw new Error('not chosen')
  return [look.choices.filter(({ right }) => right).map(({ id }) => id), look.choices.map(({ id }) => id)]
}

describe('of what is looked at one answer is right, and only one', () => {
  const kind = ['right', 'other', 'damaged']
  const lengths = ['in-75', 'in-112.5', 'in-150', 'in-187.5', 'in-300', 'other']
  it.each([
    ['post-1/post-kind', 'right', kind],
    ['post-7/post-kind', 'right', kind],
    ['post-1/block', 'no-block', ['block', 'no-block']],
    ['post-3/block', 'block', ['block', 'no-block']],
    ['post-1/rail-bolt', 'not-bolted', ['not-bolted', 'bolted']],
    ['post-3/rail-bolt', 'bolted', ['bolted', 'washer', 'not-bolted']],
    ['post-7/rail-bolt', 'bolted', ['bolted', 'washer', 'not-bolted']],
    ['post-1/hinge-side', 'toward-head', ['toward-head', 'away']],
    ['post-2/hinge-side', 'away', ['toward-head', 'away']],
    ['post-2/slot-set', 'right', ['right', 'other-set', 'other-side', 'not-held']],
    ['panel-1/panel-length', 'in-150', lengths],
    ['panel-3/panel-length', 'in-187.5', lengths],
    ['panel-4/panel-length', 'in-300', lengths],
    ['panel-1/slotted-panel', 'slotted', ['slotted', 'plain']],
    ['splice-1/splice-position', 'post', ['post', 'midspan', 'elsewhere']],
    ['splice-3/splice-position', 'midspan', ['post', 'midspan', 'elsewhere']],
    ['splice-1/lap', 'upstream-over', ['upstream-over', 'downstream-over']],
    ['splice-3/lap', 'upstream-over', ['upstream-over', 'downstream-over']],
    ['splice-4/lap', 'upstream-over', ['upstream-over', 'downstream-over']],
  ])('%s: %s', (id, right, choices) => {
    expect(choicesOf(all.get(id)!.look)).toEqual([[right], choices])
  })

  it('a panel of a unit is of the length of its sheet, though the run has none such', () => {
    const own = anchor.panels.own.concat({ ...flared.panels.own[1]!, inches: 140 })
    const adapters = [{ ...anchor.panels.adapters[0]!, inches: 122.5 }]
    const odd: EndSheet = { ...anchor, panels: { ...anchor.panels, own, adapters } }
    const found = requirementsOf(unit(flared, 0), unit(odd, 1050))
    const chosen = [...found.values()]
      .filter(({ topic }) => topic === 'panel-length')
      .map(({ look }) => choicesOf(look))
    expect(chosen.slice(-2).map(([right]) => right)).toEqual([['in-122.5'], ['in-140']])
    expect(chosen.at(-1)![1]).toEqual(['in-75', 'in-112.5', 'in-140', 'in-150', 'in-187.5', 'in-300', 'other'])
  })

  const cited = { source: 'trade', confirmation: 'published' } as const
  const single = system.omissions.find(({ kind }) => kind === 'single')!
  it.each<[DerivedRule, string, string, string[]]>([
    [blockRule(true, cited), 'block', 'block', ['block', 'no-block']],
    [nestedRule(cited), 'nested', 'nested', ['nested', 'single']],
    [slottedPanelRule(150, byHand(''), cited), 'slotted-panel', 'slotted', ['slotted', 'plain']],
    [noCurbRule({ rule: single, obstructions: [''], omitted: [], doubled: 450 }), 'curb', 'none', ['none', 'curb']],
  ])('of a rule by itself: $topic', ({ topic, look, hold }, wanted, right, choices) => {
    expect(topic).toBe(wanted)
    expect(hold).toBe(false)
    expect(choicesOf(look)).toEqual([[right], choices])
  })

  it('a moved post has one right slot', () => {
    const older = sheetOf<LongitudinalSheet>('w-beam-post-splice-27-3-4')
    const ends = [0, 1500].map((atInches) => ({ kind: 'standing splice', atInches, position: 'post' }) as const)
    const obstructions = [{ name: 'a pipe', fromInches: 445, toInches: 455 }]
    const first = ends[0]!
    const solved = solveLayout({
      ...{ system: older, first, second: ends[1]!, need: null, stock: null, obstructions, reduced: [] },
      ...{ standing: null, mayExtendInches: 0 },
    })
    if (!solved.ok) throw new Error(solved.error.kind)
    const [layout] = solved.value.runs
    const notSaid = { work: null, letting: null, speed: null, flare: null, opposingReaches: null } as const
    const found = deriveRequirements({ layout: layout!, system: older, first, second: ends[1]!, ...notSaid })
    const slots = found.filter(({ topic }) => topic === 'new-slot')
    expect(slots.map(({ look }) => choicesOf(look))).toEqual([[['right'], ['right', 'bare', 'rough', 'enlarged']]])
  })
})

describe('which panel lies on the traffic side', () => {
  it('is the downstream one only inside a terminal at the second end that is lapped toward its end', () => {
    const endOn = { ...flared, lap: { ...flared.lap, rule: 'terminal end-on' } } as const
    const over = (first: EndSheet, second: EndSheet) => {
      const found = requirementsOf(unit(first, 0), unit(second, 1500))
      return [...found.values()]
        .filter(({ topic }) => topic === 'lap')
        .map(({ look }) => choicesOf(look)[0]![0] === 'downstream-over')
    }
    // Splices from the first end on: two inside the first terminal, those of the run, two inside the second.
    const plain = over(flared, flared)
    expect(plain.every((downstream) => !downstream)).toBe(true)
    expect(over(endOn, flared)).toEqual(plain)
    expect(over(flared, endOn)).toEqual(plain.map((_, i) => i >= plain.length - 2))
  })
})

describe('limits of what is measured', () => {
  const limits = (id: string, of = all) => {
    const look = of.get(id)?.look
    if (look?.kind !== 'measure') throw new Error(`${id} is not measured`)
    const { nominal, low, high, unit: inUnit } = look.limits
    return { nominal, low, high, unit: inUnit, orFrom: look.orFrom }
  }

  it('of a space are 1 in about the distance of its posts, also where posts are left out', () => {
    expect(limits('space-1/spacing')).toEqual({
      ...{ nominal: 75, low: 74, high: 76, unit: 'in' },
      orFrom: { kind: 'difference', from: 'post-1/along', to: 'post-2/along' },
    })
    // Posts at 712.5 and 787.5 in of 37.5 + 75k are left out: 225 in between those beside.
    const obstructions = [{ name: 'the culvert', fromInches: 700, toInches: 800 }]
    const spanned = requirementsOf(standingSplice(0), standingSplice(1500), { obstructions })
    const wide = [...spanned.keys()].filter((id) => id.endsWith('/spacing')).map((id) => limits(id, spanned))
    expect(wide.filter(({ nominal }) => nominal === 225)).toMatchObject([{ low: 224, high: 226 }])
    expect(wide.filter(({ nominal }) => nominal !== 225).every(({ nominal }) => nominal === 75)).toBe(true)
  })

  it('of a straight panel may be computed from its three posts, and not from two', () => {
    const point = (post: number, alongInches: number) => ({ reading: `post-${post}/lateral-offset`, alongInches })
    expect(limits('panel-1/straightness')).toMatchObject({
      ...{ low: 'notStated', high: 0.5, unit: 'in' },
      orFrom: { kind: 'middle ordinate', points: [point(1, 0), point(2, 75), point(3, 150)] },
    })
    expect(limits('panel-3/straightness').orFrom).toEqual({
      ...{ kind: 'middle ordinate', points: [point(5, 300), point(6, 375), point(7, 450)] },
    })
    // With the adapter of 112.5 in the panel goes from 300 to 412.5 in, and has posts at 300 and 375 in only.
    const stock = [150, 112.5, 300].map((inches) => ({ inches, count: null }))
    const short = requirementsOf(unit(flared, 0), unit(anchor, 975), { stock })
    expect(limits('panel-3/straightness', short).orFrom).toBeNull()
  })

  it('of an end post may be computed from it and two posts of the run, and not from one', () => {
    const point = (post: number, alongInches: number) => ({ reading: `post-${post}/lateral-offset`, alongInches })
    // The terminal's last post stands at 375 in; a standing splice at 562.5 in has its post at 600.
    const two = requirementsOf(unit(flared, 0), standingSplice(562.5))
    expect(limits('post-1/flare-offset', two)).toEqual({
      ...{ nominal: 48, low: 45, high: 51, unit: 'in' },
      orFrom: { kind: 'offset from line', point: point(1, 0), line: [point(7, 450), point(8, 525)] },
    })
    const one = requirementsOf(unit(flared, 0), standingSplice(487.5))
    expect(limits('post-1/flare-offset', one).orFrom).toBeNull()
  })
})

describe('the line that the end post of a terminal stands off', () => {
  it('is a flare of the run where that has one at the same end', () => {
    const ends = { first: unit(flared, 0), second: unit(flared, 1500) }
    const asked = { system, ...ends, need: null, stock: null, obstructions: [], reduced: [], standing: null }
    const solved = solveLayout({ ...asked, mayExtendInches: 0 })
    if (!solved.ok) throw new Error(solved.error.kind)
    const [layout] = solved.value.runs
    const last = layout!.posts.length
    const isFlared = (firstFromInches: number | null, secondFromInches: number | null) => {
      const flare = { rate: 15, firstFromInches, secondFromInches }
      const notSaid = { work: null, letting: null, speed: null, opposingReaches: null } as const
      const found = deriveRequirements({ layout: layout!, system, ...ends, flare, ...notSaid })
      const must = [1, last].map((post) => found.find(({ id }) => id === `post-${post}/flare-offset`)?.must)
      return must.map((one) => one?.kind === 'must' && one.of === 'flare-offset' && one.isFlared)
    }
    expect(isFlared(700, null)).toEqual([true, false])
    expect(isFlared(null, 800)).toEqual([false, true])
  })
})

describe('the order', () => {
  it('is what later work covers, then the rest, each from the first end on, posts before what hangs on them', () => {
    const list = [...all.values()]
    const holds = list.filter(({ hold }) => hold)
    expect(holds.length).toBeGreaterThan(1)
    expect(list.slice(0, holds.length)).toEqual(holds)
    const kinds = ['post', 'space', 'panel', 'splice', 'unit', 'run']
    const places = (some: readonly Requirement[]) =>
      some.map(({ place }) => place.alongInches * 10 + kinds.indexOf(place.kind))
    for (const some of [holds, list.slice(holds.length)])
      expect(places(some)).toEqual(places(some).toSorted((a, b) => a - b))
  })
})

describe('whose sheet holds', () => {
  it('is that of the end unit between two of its posts, and that of the system where the run begins', () => {
    // Six posts of the terminal, six of the run, two of the anchor.
    const sheets = [1, 5, 6, 7, 12, 13].map((n) => all.get(`space-${n}/spacing`)!.sheet)
    expect(sheets).toEqual([flared.id, flared.id, system.id, system.id, system.id, anchor.id])
  })

  it('names the adapter panel of each unit as such, and no other', () => {
    const named = [...all.values()].flatMap(({ place, must }) =>
      must.kind === 'must' && must.of === 'panel-length' && must.isAdapter ? [place.number] : [],
    )
    expect(named).toEqual([3, 5])
  })

  it('asks nothing of slots that the sheet does not state', () => {
    const without = (slots: 'none' | 'notStated') => {
      const posts = flared.posts.map((post) => ({ ...post, slots }))
      return [...requirementsOf(unit({ ...flared, posts }, 0), unit(anchor, 975)).values()]
    }
    for (const slots of ['none', 'notStated'] as const)
      expect(without(slots).some(({ topic }) => topic === 'slot-set')).toBe(false)
    expect([...all.values()].some(({ topic }) => topic === 'slot-set')).toBe(true)
  })
})

describe('a choice that is wrong', () => {
  it('is of slots the other set, whichever is right, either side', () => {
    const other = (set: 'upper' | 'lower') => {
      const { look } = slotRule({ set, side: 'upstream' }, { source: 'test', confirmation: 'published' })
      return look.kind === 'choose' ? look.choices.find(({ id }) => id === 'other-set')?.label : null
    }
    expect(other('upper')).toEqual({ kind: 'choice of slots', set: 'lower', side: 'either' })
    expect(other('lower')).toEqual({ kind: 'choice of slots', set: 'upper', side: 'either' })
  })
})

describe('where a place lies', () => {
  it.each([
    ['post-9/rail-height', 'post', 9, 600],
    ['space-9/spacing', 'space', 9, 637.5],
    ['panel-4/panel-length', 'panel', 4, 637.5],
    ['splice-4/lap', 'splice', 4, 787.5],
    ['first/criteria', 'unit', 1, 0],
    ['second/criteria', 'unit', 2, 975],
    ['run/criteria', 'run', 0, 0],
  ] as const)('%s: at its middle, or at the outermost post of an end unit', (id, kind, number, alongInches) => {
    expect(all.get(id)!.place).toMatchObject({ kind, number, alongInches })
  })
})

describe('the source of a requirement', () => {
  const editionOf = (source: string) => sheetText(system, system.sources[source]!.edition)
  it.each([
    ['post-7/post-kind', system, 'wisconsin'],
    ['panel-1/panel-length', flared, 'trade'],
    ['panel-4/panel-length', system, 'fhwaRepair'],
    ['panel-5/panel-length', anchor, 'answer821'],
    ['splice-1/splice-position', flared, 'trade'],
    ['splice-3/splice-position', system, 'fhwaWBeam'],
    ['post-14/post-kind', anchor, 'answer14531'],
  ] as const)('%s is what its sheet says of that piece', (id, sheet, source) => {
    const { title, edition } = sheet.sources[source]!
    expect(all.get(id)!.source).toMatchObject({
      title: { of: { own: title, sheet: sheet.id } },
      edition: { of: { own: edition } },
    })
    expect([all.get(id)!.sheet, all.get(id)!.sheetVersion]).toEqual([sheet.id, sheet.version])
  })

  it('of a special post is that of the rule that asks for it', () => {
    const obstructions = [{ name: 'the culvert', fromInches: 700, toInches: 800 }]
    const spanned = [...requirementsOf(standingSplice(0), standingSplice(1500), { obstructions }).values()]
    const kinds = spanned
      .filter(({ topic }) => topic === 'post-kind')
      .map(({ source }) => (source as SourceSaying).edition?.of)
    expect(kinds.filter((said) => contentOf(said) === contentOf(editionOf('answer266')))).toHaveLength(6)
    expect(new Set(kinds.map(contentOf))).toEqual(
      new Set(['answer266', 'wisconsin'].map((id) => contentOf(editionOf(id)))),
    )
  })
})

it('what the sheet lets be set aside, and nothing else, may be', () => {
  const allowed = { topic: 'stub-height', source: 'trade', confirmation: 'published' } as const
  const allowing: EndSheet = { ...flared, maySetAside: [allowed] }
  const found = [...requirementsOf(unit(allowing, 0), unit(anchor, 975)).values()]
  expect(found.filter(({ maySetAside }) => maySetAside).map(({ id }) => id)).toEqual([
    ...['post-1/stub-height', 'post-2/stub-height'],
  ])
})
