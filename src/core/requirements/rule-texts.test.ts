import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import { sourceIn } from '../hardware/hardware-saying.ts'
import type { Dimension, LongitudinalSheet, MovedPostRule, SheetRule } from '../hardware/hardware-sheet.ts'
import type { LayoutPost, OmittedPost } from '../layout/layout.ts'
import { newSlotRule } from './changed-post-rules.ts'
import {
  blockRule,
  type DerivedRule,
  hingeRule,
  lapRule,
  nestedRule,
  panelLengthRule,
  postKindRule,
  railBoltRule,
  slotRule,
  slottedPanelRule,
  spliceRule,
} from './common-rules.ts'
import { deriveRequirements } from './derive-requirements.ts'
import { spacingRule } from './measured-rules.ts'

const cited = { source: 'test', confirmation: 'published' } as const
const name = byHand('some post')
const slots = (toward: 'upstream' | 'downstream') => slotRule({ set: 'upper', side: toward }, cited)

/** What one can choose: how it is said, and whether it is right. */
const answers = ({ look }: DerivedRule) =>
  look.kind === 'choose' ? look.choices.map(({ label, right }) => ['is' in label ? label.is : label, right]) : []

describe('what one chooses from says what it is, and one of it is right', () => {
  const make = { material: 'wood', breakaway: 'hinge' } as const
  it.each<[string, DerivedRule, readonly (readonly [unknown, boolean])[]]>([
    [
      'a block',
      blockRule(true, cited),
      [
        ['offset block', true],
        ['no offset block', false],
      ],
    ],
    [
      'no block',
      blockRule(false, cited),
      [
        ['offset block', false],
        ['no offset block', true],
      ],
    ],
    [
      'the kind of a post',
      postKindRule(name, make, cited),
      [
        [{ kind: 'choice of post', postKind: name }, true],
        ['another kind of post', false],
        ['damaged post', false],
      ],
    ],
    [
      'a bolted rail',
      railBoltRule(true, cited),
      [
        ['bolted without washer', true],
        ['bolted with washer', false],
        ['not bolted', false],
      ],
    ],
    [
      'a rail that is not bolted',
      railBoltRule(false, cited),
      [
        ['not bolted', true],
        ['bolted', false],
      ],
    ],
    [
      'a hinge upstream',
      hingeRule('upstream', cited),
      [
        ['toward the head', true],
        ['away from the head', false],
      ],
    ],
    [
      'a hinge downstream',
      hingeRule('downstream', cited),
      [
        ['toward the head', false],
        ['away from the head', true],
      ],
    ],
    [
      'slots',
      slots('downstream'),
      [
        [{ kind: 'choice of slots', set: 'upper', side: 'downstream' }, true],
        [{ kind: 'choice of slots', set: 'lower', side: 'either' }, false],
        [{ kind: 'choice of slots', set: 'upper', side: 'other' }, false],
        ['not held in slots', false],
      ],
    ],
    [
      'a slotted panel',
      slottedPanelRule(150, name, cited),
      [
        ['slotted', true],
        ['not slotted', false],
      ],
    ],
    [
      'doubled rail',
      nestedRule(cited),
      [
        ['nested', true],
        ['single', false],
      ],
    ],
    [
      'a length',
      panelLengthRule({ wanted: 150, counted: null }, [75, 150], false, cited),
      [
        [{ kind: 'choice of panel', inches: 75 }, false],
        [{ kind: 'choice of panel', inches: 150 }, true],
        ['another length', false],
      ],
    ],
    [
      'a splice',
      spliceRule({ wanted: 'midspan', counted: null }, cited),
      [
        ['splice at a post', false],
        ['splice at midspan', true],
        ['splice elsewhere', false],
      ],
    ],
    [
      'a lap',
      lapRule('downstream', cited),
      [
        ['upstream panel over', false],
        ['downstream panel over', true],
      ],
    ],
  ])('%s', (_, rule, wanted) => {
    expect(answers(rule)).toEqual(wanted)
  })
})

describe('what a figure shows is what is right', () => {
  it.each<[string, DerivedRule, object]>([
    ['a hinge upstream', hingeRule('upstream', cited), { toward: 'head' }],
    ['a hinge downstream', hingeRule('downstream', cited), { toward: 'away' }],
    ['slots upstream', slots('upstream'), { set: 'upper', toward: 'head' }],
    ['slots downstream', slots('downstream'), { set: 'upper', toward: 'away' }],
    ['a slotted panel', slottedPanelRule(150, name, cited), { present: true }],
    ['a block', blockRule(true, cited), { present: true }],
    ['a lap', lapRule('upstream', cited), { over: 'upstream' }],
    ['a splice', spliceRule({ wanted: 'post', counted: null }, cited), { splice: 'post' }],
  ])('%s', (_, { shows }, wanted) => {
    expect(shows).toEqual(wanted)
  })
})

describe('the distance of two posts', () => {
  const post = (number: number, alongInches: number, state: LayoutPost['state'] = 'regular') =>
    ({ id: `post-${number}`, number, alongInches, state }) as LayoutPost
  const sheet = laidBarrier(
    'w-beam-midspan-31',
    shippedEnd('flared-terminal-31'),
    shippedEnd('trailing-anchor-31'),
    [0, 900],
  ).system
  const rule = (
    changes: Partial<Dimension> = {},
    omitted: readonly Pick<OmittedPost, 'obstructions'>[] = [],
    moved = false,
  ) =>
    spacingRule(
      { ...sheet, postSpacing: { ...sheet.postSpacing, ...changes } as Dimension<'in'> },
      post(4, 300),
      post(5, 378, moved ? 'moved' : 'regular'),
      { wanted: 78, counted: null },
      omitted as readonly OmittedPost[],
    )
  const limits = ({ look }: DerivedRule) =>
    look.kind === 'measure' ? [look.limits.low, look.limits.nominal, look.limits.high] : null

  it('may be as far from that of the layout as the sheet allows; what that does not state stays unstated', () => {
    // 75 in, 74 to 76 on the sheet; 78 in as it is laid out.
    expect(limits(rule())).toEqual([77, 78, 79])
    expect(limits(rule({ low: 'notStated' }))).toEqual(['notStated', 78, 79])
    expect(limits(rule({ high: 'notStated' }))).toEqual([77, 78, 'notStated'])
    // Without a nominal value its limits are about nothing, and hold as they stand.
    expect(limits(rule({ nominal: 'notStated' }))).toEqual([74, 78, 76])
  })

  it('says whose posts are left out between them, and for what', () => {
    const must = (posts: readonly string[]) => {
      const made = rule(
        {},
        posts.map((obstruction) => ({ obstructions: [obstruction] })),
      )
      return [made.figure, made.must.kind === 'must' && 'omitted' in made.must ? made.must.omitted : '']
    }
    expect(must([])).toEqual(['post-spacing', null])
    expect(must(['a pipe'])).toEqual(['omitted-post', { posts: 1, obstructions: ['a pipe'] }])
    expect(must(['a culvert', 'a culvert'])).toEqual(['omitted-post', { posts: 2, obstructions: ['a culvert'] }])
  })

  it('is put right with a new slot where the layout moves one of them', () => {
    const slot = (moved: boolean) => {
      const { remedy } = rule({}, [], moved)
      return remedy.kind === 'if it fails' && 'slots' in remedy ? remedy.slots : null
    }
    expect(slot(false)).toEqual({ kind: 'rail slots', newSlotAt: null })
    expect(slot(true)).toEqual({ kind: 'rail slots', newSlotAt: 5 })
  })

  it('and no rule of a layout is held before something is covered', () => {
    expect(rule().hold).toBe(false)
    const slot = { ...cited, widthInches: 0.75, lengthInches: 2.5 }
    expect(newSlotRule({ newSlot: slot } as unknown as MovedPostRule)!.hold).toBe(false)
  })
})

describe('a rule of a sheet', () => {
  const [terminal, anchor] = [shippedEnd('flared-terminal-31'), shippedEnd('trailing-anchor-31')]
  const barrier = laidBarrier('w-beam-midspan-31', terminal, anchor, [0, 900])
  const derived = (rule: Partial<SheetRule>, panels = barrier.layout.panels) => {
    const said = { must: 'It is right.', how: 'Look.', why: 'So.', remedy: 'Mend it.', hold: false, figure: null }
    const whole = { id: 'own-rule', look: { kind: 'confirm' }, ...said, ...cited, ...rule } as unknown as SheetRule
    const system: LongitudinalSheet = { ...barrier.system, parts: [{ name: 'Part', rules: [whole] }] as never }
    const notSaid = { work: null, letting: null, speed: null, opposingReaches: null } as const
    const layout = { ...barrier.layout, panels }
    return deriveRequirements({ ...barrier, ...notSaid, system, layout })
  }
  const of = (found: ReturnType<typeof derived>) => found.filter(({ topic }) => topic === 'own-rule')

  it('for each post is asked of each post of its sheet, and of no other', () => {
    const posts = barrier.layout.posts.filter(({ unit }) => unit === 'run').map(({ id }) => id)
    const found = of(derived({ at: { kind: 'each post' } }))
    expect(found.map(({ place }) => place.id)).toEqual(posts)
  })

  it('shows what it says that its figure shows, and what older sheets say in words where it does not', () => {
    const shows = { present: false } as const
    expect(of(derived({ at: { kind: 'each post' }, shows }))[0]!.shows).toEqual(shows)
    expect(of(derived({ at: { kind: 'each post' }, must: 'The upstream panel lies over.' }))[0]!.shows?.over).toBe(
      'upstream',
    )
  })

  it('a panel that hangs and is of no length of the system has its own among those to choose from', () => {
    const panels = barrier.layout.panels.map((panel) =>
      panel.unit === 'run' ? { ...panel, inches: 140, role: 'hung' as const } : panel,
    )
    const odd = derived({ at: { kind: 'unit' } }, panels).find(
      ({ topic, place }) => topic === 'panel-length' && panels[place.number - 1]!.inches === 140,
    )!
    const right = odd.look.kind === 'choose' ? odd.look.choices.filter((one) => one.right).map(({ id }) => id) : []
    expect(right).toEqual(['in-140'])
    // No panel of the sheet is of that length: its source is what the sheet says of splices.
    expect(odd.source).toEqual(sourceIn(barrier.system, barrier.system.splice))
  })
})
