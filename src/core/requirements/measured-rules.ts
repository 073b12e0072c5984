import type { Dimension, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { limitsOf } from '../hardware/limits-saying.ts'
import { sheetText } from '../hardware/sheet-text.ts'
import type { LayoutPanel, LayoutPost, OmittedPost } from '../layout/layout.ts'
import { exactLength, lengthIn } from '../units/exact-length.ts'
import type { Wanted } from './as-counted.ts'
import type { DerivedRule } from './common-rules.ts'
import type { LinePoint } from './requirement.ts'
import type { RailSlots } from './requirement-saying.ts'
import type { RunLine } from './run-line.ts'

export const railHeightRule = (limits: Dimension, sheet: HardwareSheet): DerivedRule => ({
  topic: 'rail-height',
  figure: 'rail-height',
  cited: limits,
  must: { kind: 'must', of: 'rail-height', limits: limitsOf(limits) },
  look: { kind: 'measure', limits, orFrom: null },
  how: sheetText(sheet, limits.measured),
  why: { kind: 'why it matters', of: 'rail-height' },
  remedy: { kind: 'if it fails', of: 'rail-height' },
  hold: false,
})

export const stubRule = (limits: Dimension, sheet: HardwareSheet): DerivedRule => ({
  topic: 'stub-height',
  figure: 'stub-height',
  cited: limits,
  must: { kind: 'must', of: 'stub-height', limits: limitsOf(limits) },
  look: { kind: 'measure', limits, orFrom: null },
  how: sheetText(sheet, limits.measured),
  why: { kind: 'why it matters', of: 'stub-height' },
  remedy: { kind: 'if it fails', of: 'stub-height' },
  hold: false,
})

/** Post spacing between two neighbours: the sheet's tolerance round the distance that is wanted. */
export function spacingRule(
  sheet: HardwareSheet,
  before: LayoutPost,
  after: LayoutPost,
  { wanted: apart, counted }: Wanted<number>,
  omitted: readonly OmittedPost[],
): DerivedRule {
  const tolerance = sheet.postSpacing
  const inUnit = (inches: number): number => lengthIn(exactLength(inches, 'in'), tolerance.unit)
  const nominal = inUnit(apart)
  const shift = (limit: number | 'notStated') =>
    limit === 'notStated' || tolerance.nominal === 'notStated' ? limit : nominal + limit - tolerance.nominal
  const limits = { ...tolerance, nominal, low: shift(tolerance.low), high: shift(tolerance.high) }
  const [first] = omitted
  return {
    topic: 'spacing',
    figure: first === undefined ? 'post-spacing' : 'omitted-post',
    cited: tolerance,
    must: {
      kind: 'must',
      of: 'spacing',
      inches: apart,
      omitted: first === undefined ? null : { posts: omitted.length, obstructions: first.obstructions },
    },
    look: {
      kind: 'measure',
      limits,
      orFrom: { kind: 'difference', from: `${before.id}/along`, to: `${after.id}/along` },
      ...(counted === null ? {} : { counted: inUnit(counted) }),
    },
    how: { kind: 'how to look', of: 'spacing', measured: sheetText(sheet, tolerance.measured) },
    why: { kind: 'why it matters', of: 'spacing' },
    remedy: { kind: 'if it fails', of: 'spacing', slots: railSlots([before, after]) },
    hold: false,
  }
}

const railSlots = (posts: readonly LayoutPost[]): RailSlots => ({
  kind: 'rail slots',
  newSlotAt: posts.find(({ state }) => state === 'moved')?.number ?? null,
})

/** How far the middle of a panel lies from the chord between its ends: measured, or from offsets of its posts. */
export function straightnessRule(
  limits: Dimension,
  sheet: HardwareSheet,
  panel: LayoutPanel,
  posts: readonly LayoutPost[],
): DerivedRule {
  const on = posts.filter((post) => post.alongInches >= panel.fromInches && post.alongInches <= panel.toInches)
  return {
    topic: 'straightness',
    figure: 'straightness',
    cited: limits,
    must: { kind: 'must', of: 'straightness', limits: limitsOf(limits) },
    look: {
      kind: 'measure',
      limits,
      orFrom: on.length < 3 ? null : { kind: 'middle ordinate', points: on.map(offsetAt) },
    },
    how: { kind: 'how to look', of: 'straightness', measured: sheetText(sheet, limits.measured) },
    why: { kind: 'why it matters', of: 'straightness' },
    remedy: { kind: 'if it fails', of: 'straightness' },
    hold: false,
  }
}

/** The offset of the end post from the line of the run, extended, away from traffic: measured, or from offsets of posts. */
export function flareOffsetRule(limits: Dimension, sheet: HardwareSheet, post: LayoutPost, line: RunLine): DerivedRule {
  return {
    topic: 'flare-offset',
    figure: 'flare-offset',
    cited: limits,
    must: { kind: 'must', of: 'flare-offset', limits: limitsOf(limits), isFlared: line.isFlared },
    look: {
      kind: 'measure',
      limits,
      orFrom:
        line.posts.length < 2
          ? null
          : { kind: 'offset from line', point: offsetAt(post), line: line.posts.map(offsetAt) },
    },
    how: { kind: 'how to look', of: 'flare-offset', measured: sheetText(sheet, limits.measured) },
    why: { kind: 'why it matters', of: 'flare-offset' },
    remedy: { kind: 'if it fails', of: 'flare-offset', limits: limitsOf(limits) },
    hold: false,
  }
}

const offsetAt = (post: LayoutPost): LinePoint => ({
  reading: `${post.id}/lateral-offset`,
  alongInches: post.alongInches,
})
