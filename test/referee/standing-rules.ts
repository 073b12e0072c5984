import type { LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { LayoutRequest, Obstruction, RunEnd } from '../../src/core/layout/layout.ts'
import type { DividedSpace } from './reduced-rules.ts'
import { type Closing, closingsOf, full, isOddAdapter } from './run-rules.ts'

/**
 * What stands already, as the referee reads it: post 1 stays where it stands; the panels that hang stay in their order, each of
 * a length that the run may have there, with its splices where splices may lie or at the other end's own joint; posts that are
 * driven, counted from the first end, are in nobody's way and stay what they are; what hangs is not taken from the stock.
 */
export interface HungPanel {
  readonly inches: number
  /** Where it ends, from the first end's origin. */
  readonly to: number
}

/** The first end, fixed where post 1 stands; null when that is not where it is fixed anyway. */
export function standingFirst({ first, standing, system }: LayoutRequest): RunEnd | null {
  if (standing === null) return first
  const at = standing.postOneAtInches - closingsOf(first, system)[0]!.posts[0]!
  return first.atInches === null || first.atInches === at ? { ...first, atInches: at } : null
}

/** The hung panels beyond those of the unit; null when those of the unit are not what hangs. */
export function hungBeyond({ standing }: LayoutRequest, { panels, joint }: Closing): readonly HungPanel[] | null {
  const hung = standing?.panels ?? []
  if (panels.some((inches, i) => i < hung.length && hung[i] !== inches)) return null
  let to = joint
  return hung.slice(panels.length).map((inches) => {
    to += inches
    return { inches, to }
  })
}

export function unlawfulHung(
  { panels }: LongitudinalSheet,
  { inches }: HungPanel,
  index: number,
): 'always' | 'unless last' | null {
  const isIn = (list: readonly { readonly inches: number }[]): boolean => list.some((one) => one.inches === inches)
  if (isIn(panels.standard) || isIn(panels.converting)) return null
  if (!isIn(panels.endOnly)) return 'always'
  return index === 0 ? null : 'unless last'
}

export const oddHung = (system: LongitudinalSheet, hung: readonly HungPanel[]): number =>
  hung.filter(({ inches }) => isOddAdapter(system, inches)).length

/** The place of the last driven post, from the first end's origin. */
export function drivenUntil({ standing }: LayoutRequest, closing: Closing, divided: readonly DividedSpace[]): number {
  const driven = standing?.postsDriven ?? 0
  if (driven === 0) return Number.NEGATIVE_INFINITY
  const places = [...closing.posts].sort((a, b) => a - b)
  for (let space = closing.lastPost; places.length < driven; space += full) {
    const into = divided.find(({ from }) => from === space)?.into ?? 1
    for (let i = 1; i <= into; i++) places.push(space + (i * full) / into)
  }
  return places[driven - 1]!
}

/** How many of a second unit's posts are driven, its inner ones first. @param lastPostAt its innermost post */
export function drivenInSecond(
  { standing }: LayoutRequest,
  closing: Closing,
  lastPostAt: number,
  divided: readonly DividedSpace[],
): number {
  let before = closing.posts.length
  for (let space = closing.lastPost; space < lastPostAt; space += full)
    before += (divided.find(({ from }) => from === space)?.into ?? 1) - (space + full === lastPostAt ? 1 : 0)
  return (standing?.postsDriven ?? 0) - before
}

/** What is left of the obstructions beyond the posts that are driven. */
export const clearOfStanding = (obstructions: readonly Obstruction[], standing: number): readonly Obstruction[] =>
  obstructions
    .filter(({ toInches }) => toInches > standing)
    .map((one) => ({ ...one, fromInches: Math.max(one.fromInches, standing) }))
