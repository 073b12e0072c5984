import type { LongitudinalSheet, OmissionRule } from '../../src/core/hardware/hardware-sheet.ts'
import type { LayoutRequest, Obstruction, RunEnd } from '../../src/core/layout/layout.ts'

/**
 * The rules of a run as the referee reads them from the sheets, written without a look at the solver's own code for
 * them. All lengths are inches; every one is a whole number of sixteenths, so sums and remainders are exact.
 */

/** Half a full post space: every joint and every splice of the shipped sheets lies on a multiple of it. */
export const half = 37.5
export const full = 75

/** One way to close an end, measured from the end's own origin inward. */
export interface Closing {
  readonly isUnit: boolean
  readonly adapter: number | null
  /** The panels that come with the unit, the adapter last. */
  readonly panels: readonly number[]
  /** From the origin to the splice where the run's own panels begin. */
  readonly joint: number
  readonly posts: readonly number[]
  readonly lastPost: number
  /** From the origin to where the rail begins to count; null where a standing run goes on. */
  readonly countsFrom: number | null
}

export function closingsOf(end: RunEnd, system: LongitudinalSheet): readonly Closing[] {
  if (end.kind === 'standing splice') {
    const post = end.position === 'post' ? 0 : -half
    return [{ isUnit: false, adapter: null, panels: [], joint: 0, posts: [post], lastPost: post, countsFrom: null }]
  }
  if (end.kind === 'unknown') return []
  const { own, adapters } = end.sheet.panels
  const posts = end.sheet.posts.map(({ along }) => along)
  const lastPost = Math.max(...posts)
  const ownLength = own.reduce((sum, { inches }) => sum + inches, 0)
  return (adapters.length === 0 ? [null] : adapters.map(({ inches }) => inches))
    .map((adapter) => ({
      isUnit: true,
      adapter,
      panels: [...own.map(({ inches }) => inches), ...(adapter === null ? [] : [adapter])],
      joint: ownLength + (adapter ?? 0),
      posts,
      lastPost,
      countsFrom: end.sheet.lengthOfNeedFrom.inches,
    }))
    .filter(({ joint }) => remainder(joint - lastPost, full) === splicePhase(system))
}

/** Where a splice lies after a post of the full lattice. */
export const splicePhase = (system: LongitudinalSheet): number => (system.splice.position === 'post' ? 0 : half)

export const remainder = (a: number, by: number): number => ((a % by) + by) % by

export const standsClear = (at: number, obstructions: readonly Obstruction[]): boolean =>
  obstructions.every(({ fromInches, toInches }) => at <= fromInches || at >= toInches)

/** One lawful answer to a row of posts that cannot stand. */
export interface Answer {
  /** Posts left out, moved and replaced. */
  readonly changed: number
  /** From the last post that stands before the posts left out to the first after them; null when none is left out. */
  readonly gap: { readonly from: number; readonly to: number } | null
  /** Least distance to the next gap. */
  readonly leastToNextGap: number
  readonly special: readonly number[]
  /** Rail that has to be doubled; it may not reach into an end unit. */
  readonly nested: { readonly from: number; readonly to: number } | null
  readonly noSpliceAt: readonly number[]
  /** Whether the answer is to move the post. */
  readonly moves: boolean
}

/** Neighbouring posts of the full lattice that cannot stand. */
export interface ObstructedRow {
  readonly posts: readonly number[]
  readonly answers: readonly Answer[]
}

/** The rows among the posts that stand strictly between `from` and `to`, both posts themselves. */
export function obstructedRows(
  { system, obstructions, curb }: Pick<LayoutRequest, 'system' | 'obstructions' | 'curb'>,
  from: number,
  to: number,
): readonly ObstructedRow[] {
  const rows: number[][] = []
  let standing = true
  for (let at = from + full; at < to; at += full) {
    const clear = standsClear(at, obstructions)
    if (!clear && standing) rows.push([at])
    else if (!clear) rows[rows.length - 1]!.push(at)
    standing = clear
  }
  return rows.map((posts) => ({ posts, answers: answersTo({ system, obstructions, curb }, posts) }))
}

function answersTo(
  { system, obstructions, curb }: Pick<LayoutRequest, 'system' | 'obstructions' | 'curb'>,
  posts: readonly number[],
): readonly Answer[] {
  const answers: Answer[] = []
  const { movedPost } = system
  if (movedPost !== 'notStated' && posts.length === 1 && canMove(posts[0]!, movedPost.most.inches, obstructions)) {
    const noSpliceAt = movedPost.atSplice ? [] : posts
    answers.push({ changed: 1, gap: null, leastToNextGap: 0, special: [], nested: null, noSpliceAt, moves: true })
  }
  for (const rule of system.omissions) {
    if (posts.length > rule.most) continue
    if (rule.leastToEndUnit !== 'notStated') throw new RangeError(`no distance to the end unit expected: ${rule.kind}`)
    const nested = nestedRail(rule, curb)
    if (nested === 'not allowed') continue
    const gap = { from: posts[0]! - full, to: posts[posts.length - 1]! + full }
    const special = Array.from({ length: rule.specialPostsEachSide }, (_, i) => [
      gap.from - i * full,
      gap.to + i * full,
    ]).flat()
    if (!special.every((at) => standsClear(at, obstructions))) continue
    answers.push({
      changed: posts.length + special.length,
      gap,
      leastToNextGap: distance(rule.leastToNextGap),
      special,
      nested: nested === 0 ? null : around((gap.from + gap.to) / 2, nested),
      noSpliceAt: rule.spliceOnOmittedPost ? [] : posts,
      moves: false,
    })
  }
  return answers
}

/** With a curb before the rail a gap is lawful only as the sheet says for it; nobody having said counts as no curb. */
export function nestedRail(rule: OmissionRule, curb: LayoutRequest['curb']): number | 'not allowed' {
  if (curb !== 'present') return rule.nestedInches
  const { nestedAtCurb } = rule
  return typeof nestedAtCurb === 'object' ? nestedAtCurb.inches : 'not allowed'
}

const distance = (stated: OmissionRule['leastToNextGap']): number =>
  stated === 'notStated' ? 0 : typeof stated === 'object' ? stated.inches : stated

/** Most posts that one run may have moved. */
export function mostMoved({ movedPost }: LongitudinalSheet): number {
  if (movedPost === 'notStated' || typeof movedPost.mostInRun !== 'object') return Number.POSITIVE_INFINITY
  return movedPost.mostInRun.posts
}

/** Whether the post finds a clear place within `most` on either side. */
function canMove(at: number, most: number, obstructions: readonly Obstruction[]): boolean {
  const edges = obstructions.flatMap(({ fromInches, toInches }) => [fromInches, toInches])
  return edges.some((edge) => Math.abs(edge - at) <= most && standsClear(edge, obstructions))
}

/** Special posts are posts of the run: strictly between the two ends' last posts. */
export const specialPostsFit = (answer: Answer, from: number, to: number): boolean =>
  answer.special.every((at) => at > from && at < to)

const around = (middle: number, length: number) => ({ from: middle - length / 2, to: middle + length / 2 })

/** Whether the doubled rail begins after the joint of a first end that is a unit. */
export const nestedAfter = (answer: Answer, closing: Closing, jointAt: number): boolean =>
  answer.nested === null || !closing.isUnit || answer.nested.from >= jointAt

/** Whether it ends before the joint of a second end that is a unit. */
export const nestedBefore = (answer: Answer, closing: Closing, jointAt: number): boolean =>
  answer.nested === null || !closing.isUnit || answer.nested.to <= jointAt

export function goTogether(one: Answer, other: Answer): boolean {
  if (one.special.some((at) => other.special.includes(at))) return false
  if (one.gap === null || other.gap === null) return true
  const between = Math.max(other.gap.from - one.gap.to, one.gap.from - other.gap.to)
  return between >= Math.max(one.leastToNextGap, other.leastToNextGap)
}

export interface UsablePanel {
  readonly inches: number
  readonly odd: boolean
  readonly endOnly: boolean
}

/** The panel lengths that the run may be made of. */
export function usablePanels({ system, stock }: Pick<LayoutRequest, 'system' | 'stock'>): readonly UsablePanel[] {
  const { standard, converting, endOnly } = system.panels
  return [
    ...standard.map(({ inches }) => ({ inches, odd: false, endOnly: false })),
    ...converting.map(({ inches }) => ({ inches, odd: true, endOnly: false })),
    ...endOnly.map(({ inches }) => ({ inches, odd: true, endOnly: true })),
  ].filter(({ inches }) => stockCount(stock, inches) !== 0)
}

/** How many panels of a length there are; null for as many as wanted. */
export function stockCount(stock: LayoutRequest['stock'], inches: number): number | null {
  return stock === null ? null : (stock.find((panel) => panel.inches === inches)?.count ?? notCounted(stock, inches))
}

const notCounted = (stock: NonNullable<LayoutRequest['stock']>, inches: number): number | null =>
  stock.some((panel) => panel.inches === inches) ? null : 0

export const isOddAdapter = (system: LongitudinalSheet, adapter: number | null): boolean =>
  adapter !== null && !system.panels.standard.some(({ inches }) => inches === adapter)
