import { feetInchesText, lengthText, limitsText } from '../hardware/dimension-text.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import type { LayoutPanel, LayoutPost, OmittedPost } from '../layout/layout.ts'
import { exactLength, lengthIn } from '../units/exact-length.ts'
import type { DerivedRule } from './common-rules.ts'
import type { LinePoint } from './requirement.ts'
import type { RunLine } from './run-line.ts'

export const railHeightRule = (limits: Dimension): DerivedRule => ({
  topic: 'rail-height',
  figure: 'rail-height',
  cited: limits,
  must: `The top of the rail stands ${limitsText(limits)} above finish grade.`,
  look: { kind: 'measure', limits, orFrom: null },
  how: limits.measured,
  why: 'Too low, a vehicle goes over the rail; too high, it goes under or snags.',
  remedy: 'Raise or lower the rail within its limits.',
  hold: false,
})

export const stubRule = (limits: Dimension): DerivedRule => ({
  topic: 'stub-height',
  figure: 'stub-height',
  cited: limits,
  must: `The lower post (stub) stands ${limitsText(limits)} above finish grade.`,
  look: { kind: 'measure', limits, orFrom: null },
  how: limits.measured,
  why: 'A vehicle passes over the stub after the post breaks away; a taller one snags its floor.',
  remedy: 'Lower the post or reset it.',
  hold: false,
})

/** Post spacing between two neighbours: the sheet's tolerance round the distance that the layout gives. */
export function spacingRule(
  tolerance: Dimension,
  before: LayoutPost,
  after: LayoutPost,
  omitted: readonly OmittedPost[],
): DerivedRule {
  const apart = after.alongInches - before.alongInches
  const nominal = lengthIn(exactLength(apart, 'in'), tolerance.unit)
  const shift = (limit: number | 'notStated') =>
    limit === 'notStated' || tolerance.nominal === 'notStated' ? limit : nominal + limit - tolerance.nominal
  const limits = { ...tolerance, nominal, low: shift(tolerance.low), high: shift(tolerance.high) }
  const because =
    omitted.length === 0
      ? ''
      : ` (${omitted.length === 1 ? 'a post is' : `${omitted.length} posts are`} left out for ${omitted[0]!.obstruction})`
  return {
    topic: 'spacing',
    figure: omitted.length === 0 ? 'post-spacing' : 'omitted-post',
    cited: tolerance,
    must: `The posts stand ${feetInchesText(apart)} apart, centre to centre${because}.`,
    look: {
      kind: 'measure',
      limits,
      orFrom: { kind: 'difference', from: `${before.id}/along`, to: `${after.id}/along` },
    },
    how: `${tolerance.measured}; or pull one tape from post 1 and read every post on it.`,
    why: 'Wider, the rail pockets; and the bolts no longer meet the slots.',
    remedy: `Move the post. ${slotSentence([before, after])}`,
    hold: false,
  }
}

/**
 * What of the slots in the rail when one of these posts is set right: a post of the run comes back to its own slot, a
 * moved one has no slot of its own yet.
 */
export const slotSentence = (posts: readonly Pick<LayoutPost, 'number' | 'state'>[]): string => {
  const moved = posts.find(({ state }) => state === 'moved')
  return moved === undefined
    ? 'The rail slot may not be enlarged in the field.'
    : `No slot may be enlarged in the field: post ${moved.number}, which is moved by the layout, gets a new one, as its own requirement says.`
}

/** How far the middle of a panel lies from the chord between its ends: measured, or from offsets of its posts. */
export function straightnessRule(limits: Dimension, panel: LayoutPanel, posts: readonly LayoutPost[]): DerivedRule {
  const on = posts.filter((post) => post.alongInches >= panel.fromInches && post.alongInches <= panel.toInches)
  return {
    topic: 'straightness',
    figure: 'straightness',
    cited: limits,
    must: `The panel is straight: its middle lies ${limitsText(limits)} from the line between its ends.`,
    look: {
      kind: 'measure',
      limits,
      orFrom: on.length < 3 ? null : { kind: 'middle ordinate', points: on.map(offsetAt) },
    },
    how: `${limits.measured}; or read the lateral offset of every post from one string, and say the side of each.`,
    why: 'The terminal was tested with straight panels; a curved one buckles out of line when the head is struck.',
    remedy: 'Bring the posts into a straight line between the ends of the panel.',
    hold: false,
  }
}

/** The offset of the end post from the line of the run, extended, away from traffic: measured, or from offsets of posts. */
export function flareOffsetRule(limits: Dimension, post: LayoutPost, line: RunLine): DerivedRule {
  return {
    topic: 'flare-offset',
    figure: 'flare-offset',
    cited: limits,
    must: `Post 1 stands ${limitsText(limits)} off ${line.isFlared ? 'the flared line of the run before the end, carried on' : 'the line of the run'}, away from traffic.`,
    look: {
      kind: 'measure',
      limits,
      orFrom:
        line.posts.length < 2
          ? null
          : { kind: 'offset from line', point: offsetAt(post), line: line.posts.map(offsetAt) },
    },
    how: `${limits.measured}; sight along the run or stretch a string past at least two of its posts, and say the side.`,
    why: 'The flare takes the head away from traffic and was tested at this offset.',
    remedy: `Move the end so that it stands ${limits.nominal === 'notStated' ? limitsText(limits) : lengthText(limits.nominal, limits.unit)} off the line, away from traffic.`,
    hold: false,
  }
}

const offsetAt = (post: LayoutPost): LinePoint => ({
  reading: `${post.id}/lateral-offset`,
  alongInches: post.alongInches,
})
