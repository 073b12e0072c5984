import type { Cited, FigureKind } from '../hardware/hardware-sheet.ts'
import type { DerivedTopic } from './derived-topics.ts'
import type { RequirementLook } from './requirement.ts'

/** What a requirement says, before it is given its place and sheet. */
export interface RuleText {
  /** A derived topic, or the id of a rule of the sheet. */
  readonly topic: string
  readonly must: string
  readonly look: RequirementLook
  readonly how: string
  readonly why: string
  readonly remedy: string
  readonly hold: boolean
  readonly figure: FigureKind | null
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

const choose = (...choices: readonly (readonly [id: string, label: string, right: boolean])[]): RequirementLook => ({
  kind: 'choose',
  choices: choices.map(([id, label, right]) => ({ id, label, right })),
})

export const blockRule = (block: boolean, cited: Cited): DerivedRule =>
  rule('block', 'block', cited, {
    must: block ? 'The post carries an offset block.' : 'The post carries no offset block.',
    look: choose(['block', 'An offset block', block], ['no-block', 'No offset block', !block]),
    how: 'Look between rail and post.',
    why: block
      ? 'Without the block a wheel snags on the post.'
      : 'A block here keeps the post from breaking away as tested.',
    remedy: block ? 'Fit the offset block.' : 'Take the offset block out and fix the rail as the manual shows.',
  })

export const postKindRule = (kind: string, cited: Cited): DerivedRule =>
  rule('post-kind', 'post-kind', cited, {
    must: `The post is a ${kind}.`,
    look: choose(
      ['right', `A ${kind}, sound`, true],
      ['other', 'Another kind of post', false],
      ['damaged', 'Damaged, rotten or cut', false],
    ),
    how: 'Look at the whole post; at a wood post tap it and look for rot at the ground.',
    why: 'Only the post that was tested bends or breaks as tested.',
    remedy: `Replace the post by a ${kind}.`,
  })

export const railBoltRule = (bolted: boolean, cited: Cited): DerivedRule =>
  rule('rail-bolt', 'rail-bolt', cited, {
    must: bolted
      ? 'The rail is bolted to the post, without a washer on its face.'
      : 'The rail is not bolted to the post.',
    look: bolted
      ? choose(
          ['bolted', 'Bolted, no washer on the face', true],
          ['washer', 'Bolted with a washer on the face', false],
          ['not-bolted', 'Not bolted', false],
        )
      : choose(['not-bolted', 'Not bolted', true], ['bolted', 'Bolted', false]),
    how: 'Look at the face of the rail in front of the post.',
    why: bolted
      ? 'A loose rail drops; a washer keeps the rail from coming off the post as tested.'
      : 'A bolt here holds the rail back when the head has to move.',
    remedy: bolted ? 'Bolt the rail to the post with a button head and no washer on the face.' : 'Take the bolt out.',
  })

export const hingeRule = (side: 'upstream' | 'downstream', cited: Cited): DerivedRule =>
  rule('hinge-side', 'hinge-side', cited, {
    must:
      side === 'upstream'
        ? 'The hinge bolt is on the side toward the head.'
        : 'The hinge bolt is on the side away from the head.',
    look: choose(
      ['toward-head', 'Toward the head', side === 'upstream'],
      ['away', 'Away from the head', side === 'downstream'],
    ),
    how: 'Look at the joint of upper and lower post from the side.',
    why: 'On the wrong side the post does not fold as tested.',
    remedy: `Move the hinge bolt to the side ${side === 'upstream' ? 'toward' : 'away from'} the head.`,
  })

export const slotRule = (set: 'upper' | 'lower', side: 'upstream' | 'downstream', cited: Cited): DerivedRule => {
  const other = set === 'upper' ? 'lower' : 'upper'
  const where = side === 'upstream' ? 'toward the head' : 'away from the head'
  return rule('slot-set', 'slot-set', cited, {
    must: `The rail is held in the open ${set} slots of the post, on its side ${where}.`,
    look: choose(
      ['right', `In the ${set} slots, ${where}`, true],
      ['other-set', `In the ${other} slots`, false],
      ['other-side', `In the ${set} slots, on the other side`, false],
      ['not-held', 'Not held in slots', false],
    ),
    how: 'Look at the back of the rail where it meets the post.',
    why: 'The slot set fixes the rail height and lets the rail come free.',
    remedy: `Set the rail in the ${set} slots on the side ${where}.`,
  })
}

export const slottedPanelRule = (slotted: boolean, length: string, name: string, cited: Cited): DerivedRule =>
  rule('slotted-panel', 'slotted-panel', cited, {
    must: `The panel is the ${name}, ${length} long, with a row of 4-in slots along it.`,
    look: choose(['slotted', 'Slotted', slotted], ['plain', 'No slots', !slotted]),
    how: 'Look along the middle of the panel.',
    // Transportation Research Record 1500, 1995, pages 43 to 51, abstract: slots reduce the buckling strength, not the tensile.
    why: 'The slots make the panel bend at a lower force when the end is hit, and leave its strength in tension; a plain panel resists far more.',
    remedy: `Replace the panel by the ${name}, ${length} long.`,
  })

export const panelLengthRule = (
  length: string,
  choices: readonly (readonly [string, string, boolean])[],
  adapter: boolean,
  cited: Cited,
): DerivedRule =>
  rule('panel-length', 'panel-length', cited, {
    must: adapter
      ? `The last panel before the run is ${length} long, which brings the splices where they belong.`
      : `The panel is ${length} long, splice to splice.`,
    look: choose(...choices, ['other', 'Another length', false]),
    how: 'Measure from splice centre to splice centre, not from end to end of the sheet: a panel is about a foot longer overall.',
    why: 'A panel of another length moves every splice beyond it.',
    remedy: `Replace the panel by one of ${length}.`,
  })

export const nestedRule = (cited: Cited): DerivedRule =>
  rule('nested', null, cited, {
    must: 'Two panels lie one in the other (nested) here.',
    look: choose(['nested', 'Nested', true], ['single', 'Single', false]),
    how: 'Look at the edge of the rail from below.',
    why: 'The rail spans a gap here and was tested doubled.',
    remedy: 'Add the second panel.',
  })

export const spliceRule = (position: 'post' | 'midspan', cited: Cited): DerivedRule =>
  rule('splice-position', 'splice-position', cited, {
    must: position === 'post' ? 'The splice lies at a post.' : 'The splice lies midway between two posts.',
    look: choose(
      ['post', 'At a post', position === 'post'],
      ['midspan', 'Midway between posts', position === 'midspan'],
      ['elsewhere', 'Elsewhere', false],
    ),
    how: 'Stand square to the rail and look where the splice bolts are.',
    why: 'The system was tested with its splices there; elsewhere the rail tears at the splice.',
    remedy: 'Bring the splice where it belongs by exchanging panels.',
  })

export const lapRule = (over: 'upstream' | 'downstream', cited: Cited): DerivedRule =>
  rule('lap', 'lap', cited, {
    must: `The ${over} panel lies on the traffic side of the splice${over === 'upstream' ? ', so that its edge points away from adjacent traffic' : ', toward the terminal end'}.`,
    look: choose(
      ['upstream-over', 'Upstream panel on the traffic side', over === 'upstream'],
      ['downstream-over', 'Downstream panel on the traffic side', over === 'downstream'],
    ),
    how: 'Look at the face from upstream: no edge may point at you.',
    why: 'An edge that points at traffic catches a vehicle and opens the splice.',
    remedy: 'Take the splice apart and lap it the other way.',
  })
