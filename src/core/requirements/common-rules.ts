import type { Cited, FigureKind, PostMake, Shown, SlotSet, SplicePosition } from '../hardware/hardware-sheet.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { Wanted } from './as-counted.ts'
import type { DerivedTopic } from './derived-topics.ts'
import type { RequirementChoice, RequirementLook } from './requirement.ts'
import type { PlainChoice, RequirementText } from './requirement-saying.ts'

/** What a requirement says, before it is given its place and sheet. */
export interface RuleText {
  /** A derived topic, or the id of a rule of the sheet. */
  readonly topic: string
  readonly must: RequirementText
  readonly look: RequirementLook
  readonly how: RequirementText
  readonly why: RequirementText
  readonly remedy: RequirementText
  readonly hold: boolean
  readonly figure: FigureKind | null
  readonly shows?: Shown | undefined
  readonly cited: Cited
}

/** What follows from the layout and the fields of a sheet. */
export interface DerivedRule extends RuleText {
  readonly topic: DerivedTopic
}

const rule = (
  topic: DerivedTopic,
  figure: FigureKind | null,
  cited: Cited,
  text: Omit<RuleText, 'topic' | 'figure' | 'cited' | 'hold'>,
): DerivedRule => ({
  topic,
  figure,
  cited,
  hold: false,
  ...text,
})

type ChoiceRow = readonly [id: string, label: RequirementChoice['label'] | PlainChoice, right: boolean]

const choose = (...choices: readonly ChoiceRow[]): RequirementLook => ({
  kind: 'choose',
  choices: choices.map(([id, label, right]) => ({
    id,
    label: typeof label === 'string' ? { kind: 'choice', is: label } : label,
    right,
  })),
})

/** The same with the answer that the count gives. */
const asCounted = (counted: string | null, look: RequirementLook): RequirementLook =>
  counted === null || look.kind !== 'choose' ? look : { ...look, counted }

export const blockRule = (block: boolean, cited: Cited): DerivedRule =>
  rule('block', 'block', cited, {
    must: { kind: 'must', of: 'block', block },
    look: choose(['block', 'offset block', block], ['no-block', 'no offset block', !block]),
    how: { kind: 'how to look', of: 'block' },
    why: { kind: 'why it matters', of: 'block', block },
    remedy: { kind: 'if it fails', of: 'block', block },
    shows: { present: block },
  })

export const postKindRule = (postKind: SheetText, { breakaway }: PostMake, cited: Cited): DerivedRule =>
  rule('post-kind', 'post-kind', cited, {
    must: { kind: 'must', of: 'post-kind', postKind },
    look: choose(
      ['right', { kind: 'choice of post', postKind }, true],
      ['other', 'another kind of post', false],
      ['damaged', 'damaged post', false],
    ),
    how: { kind: 'how to look', of: 'post-kind' },
    why: { kind: 'why it matters', of: 'post-kind' },
    remedy: { kind: 'if it fails', of: 'post-kind', postKind },
    shows: { breakaway },
  })

export const railBoltRule = (bolted: boolean, cited: Cited): DerivedRule =>
  rule('rail-bolt', 'rail-bolt', cited, {
    must: { kind: 'must', of: 'rail-bolt', bolted },
    look: bolted
      ? choose(
          ['bolted', 'bolted without washer', true],
          ['washer', 'bolted with washer', false],
          ['not-bolted', 'not bolted', false],
        )
      : choose(['not-bolted', 'not bolted', true], ['bolted', 'bolted', false]),
    how: { kind: 'how to look', of: 'rail-bolt' },
    why: { kind: 'why it matters', of: 'rail-bolt', bolted },
    remedy: { kind: 'if it fails', of: 'rail-bolt', bolted },
    shows: { present: bolted, wrongWasher: bolted },
  })

export const hingeRule = (side: 'upstream' | 'downstream', cited: Cited): DerivedRule =>
  rule('hinge-side', 'hinge-side', cited, {
    must: { kind: 'must', of: 'hinge-side', side },
    look: choose(
      ['toward-head', 'toward the head', side === 'upstream'],
      ['away', 'away from the head', side === 'downstream'],
    ),
    how: { kind: 'how to look', of: 'hinge-side' },
    why: { kind: 'why it matters', of: 'hinge-side' },
    remedy: { kind: 'if it fails', of: 'hinge-side', side },
    shows: { toward: side === 'upstream' ? 'head' : 'away' },
  })

export const slotRule = ({ set, side }: SlotSet, cited: Cited): DerivedRule =>
  rule('slot-set', 'slot-set', cited, {
    must: { kind: 'must', of: 'slot-set', set, side },
    look: choose(
      ['right', { kind: 'choice of slots', set, side }, true],
      ['other-set', { kind: 'choice of slots', set: set === 'upper' ? 'lower' : 'upper', side: 'either' }, false],
      ['other-side', { kind: 'choice of slots', set, side: 'other' }, false],
      ['not-held', 'not held in slots', false],
    ),
    how: { kind: 'how to look', of: 'slot-set' },
    why: { kind: 'why it matters', of: 'slot-set' },
    remedy: { kind: 'if it fails', of: 'slot-set', set, side },
    shows: { set, toward: side === 'upstream' ? 'head' : 'away' },
  })

/** The terminal's own panel with its row of slots. */
export const slottedPanelRule = (inches: number, name: SheetText, cited: Cited): DerivedRule =>
  rule('slotted-panel', 'slotted-panel', cited, {
    must: { kind: 'must', of: 'slotted-panel', name, inches },
    look: choose(['slotted', 'slotted', true], ['plain', 'not slotted', false]),
    how: { kind: 'how to look', of: 'slotted-panel' },
    why: { kind: 'why it matters', of: 'slotted-panel' },
    remedy: { kind: 'if it fails', of: 'slotted-panel', name, inches },
    shows: { present: true },
  })

/**
 * @param lengths    to choose from, of which the panel has to have `wanted`
 * @param isAdapter  whether it is the one that brings a unit's splices to those of the run
 */
export const panelLengthRule = (
  { wanted, counted }: Wanted<number>,
  lengths: readonly number[],
  isAdapter: boolean,
  cited: Cited,
): DerivedRule =>
  rule('panel-length', 'panel-length', cited, {
    must: { kind: 'must', of: 'panel-length', inches: wanted, isAdapter },
    look: asCounted(
      counted === null ? null : `in-${counted}`,
      choose(
        ...lengths.map((one): ChoiceRow => [`in-${one}`, { kind: 'choice of panel', inches: one }, one === wanted]),
        ['other', 'another length', false],
      ),
    ),
    how: { kind: 'how to look', of: 'panel-length' },
    why: { kind: 'why it matters', of: 'panel-length' },
    remedy: { kind: 'if it fails', of: 'panel-length', inches: wanted, isAdapter },
  })

export const nestedRule = (cited: Cited): DerivedRule =>
  rule('nested', null, cited, {
    must: { kind: 'must', of: 'nested' },
    look: choose(['nested', 'nested', true], ['single', 'single', false]),
    how: { kind: 'how to look', of: 'nested' },
    why: { kind: 'why it matters', of: 'nested' },
    remedy: { kind: 'if it fails', of: 'nested' },
  })

export const spliceRule = (
  { wanted: position, counted }: Wanted<SplicePosition | 'elsewhere'> & { readonly wanted: SplicePosition },
  cited: Cited,
): DerivedRule =>
  rule('splice-position', 'splice-position', cited, {
    must: { kind: 'must', of: 'splice-position', position },
    look: asCounted(
      counted,
      choose(
        ['post', 'splice at a post', position === 'post'],
        ['midspan', 'splice at midspan', position === 'midspan'],
        ['elsewhere', 'splice elsewhere', false],
      ),
    ),
    how: { kind: 'how to look', of: 'splice-position' },
    why: { kind: 'why it matters', of: 'splice-position' },
    remedy: { kind: 'if it fails', of: 'splice-position' },
    shows: { splice: position },
  })

export const lapRule = (over: 'upstream' | 'downstream', cited: Cited): DerivedRule =>
  rule('lap', 'lap', cited, {
    must: { kind: 'must', of: 'lap', over },
    look: choose(
      ['upstream-over', 'upstream panel over', over === 'upstream'],
      ['downstream-over', 'downstream panel over', over === 'downstream'],
    ),
    how: { kind: 'how to look', of: 'lap' },
    why: { kind: 'why it matters', of: 'lap' },
    remedy: { kind: 'if it fails', of: 'lap' },
    shows: { over },
  })
