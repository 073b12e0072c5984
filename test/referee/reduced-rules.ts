import type { LongitudinalSheet } from '../../src/core/hardware/hardware-sheet.ts'
import type { Layout, LayoutRequest, ReducedPart } from '../../src/core/layout/layout.ts'
import { type Answer, type Closing, full } from './run-rules.ts'

/**
 * What reduced spacing and doubled rail ask for, as the referee reads it: every post space that lies in the part, even
 * with a corner, is divided; the finest spacing asked for a space holds; between full and quarter spacing lie so many
 * inches at half spacing; posts of a divided space all stand, and where the sheets put them, so none is left out, moved or
 * replaced, and a space of an end unit, or of what stands beyond a splice, is never divided; doubled rail stays out of the
 * panels of an end unit. Where every half space has a post a splice may lie at any of them.
 */
export interface DividedSpace {
  readonly from: number
  readonly to: number
  readonly into: 2 | 4
}

interface Stretch {
  readonly from: number
  readonly to: number
}

/** Stretches of a request's parts counted from some origin. */
export interface PlacedPart extends Stretch {
  readonly spacing: ReducedPart['spacing']
  readonly nested: boolean
}

/** The request's parts counted from a place of the datum's axis. */
export const partsFrom = ({ reduced }: Pick<LayoutRequest, 'reduced'>, origin: number): readonly PlacedPart[] =>
  reduced.map(({ fromInches, toInches, ...part }) => ({ ...part, from: fromInches - origin, to: toInches - origin }))

/** The spaces of the full lattice through `post` that are divided. */
export function dividedSpaces(
  system: LongitudinalSheet,
  parts: readonly PlacedPart[],
  post: number,
): readonly DividedSpace[] {
  const reducing = parts.filter(({ spacing }) => spacing !== 'full')
  if (reducing.length === 0) return []
  const margin = system.spacings.halfBeforeQuarter.inches + full
  const begin = Math.min(...reducing.map(({ from }) => from)) - margin
  const end = Math.max(...reducing.map(({ to }) => to)) + margin
  const spaces: Stretch[] = []
  for (let from = post + Math.floor((begin - post) / full) * full; from < end; from += full)
    spaces.push({ from, to: from + full })
  const inside = (space: Stretch, spacing: ReducedPart['spacing']): boolean =>
    reducing.some((part) => part.spacing === spacing && part.from < space.to && part.to > space.from)
  const quarters = spaces.filter((space) => inside(space, 'quarter'))
  const besideQuarter = (space: Stretch): boolean =>
    quarters.some(
      (quarter) =>
        Math.max(quarter.from - space.to, space.from - quarter.to) < system.spacings.halfBeforeQuarter.inches,
    )
  return spaces.flatMap((space): DividedSpace[] => {
    if (quarters.includes(space)) return [{ ...space, into: 4 }]
    return inside(space, 'half') || besideQuarter(space) ? [{ ...space, into: 2 }] : []
  })
}

/** Every post of the divided spaces, those at their ends included. */
export const dividedPosts = (spaces: readonly DividedSpace[]): readonly number[] =>
  spaces.flatMap(({ from, into }) => Array.from({ length: into + 1 }, (_, i) => from + (i * full) / into))

/** Whether all of them lie between the last posts of the two ends. */
export const dividedWithin = (spaces: readonly DividedSpace[], from: number, to: number): boolean =>
  spaces.every((space) => space.from >= from && space.to <= to)

/** Whether a half space inside a divided stretch lies here: not at its very ends, beyond which spaces are whole. */
export const insideDivided = (spaces: readonly DividedSpace[], at: number): boolean =>
  spaces.some(({ from, to }) => at > from && at < to) ||
  (spaces.some(({ to }) => at === to) && spaces.some(({ from }) => at === from))

/** Whether what is left out, moved or replaced keeps out of the divided spaces. */
export function clearOfDivided(answer: Answer, row: readonly number[], spaces: readonly DividedSpace[]): boolean {
  const places = [...row, ...answer.special, ...(answer.gap === null ? [] : [answer.gap.from, answer.gap.to])]
  const [from, to] = [Math.min(...places), Math.max(...places)]
  return spaces.every((space) => space.to <= from || space.from >= to)
}

/** Whether the rail doubled for these parts begins after the joint of a first end that is a unit, … */
export const doubledAfter = (parts: readonly PlacedPart[], { isUnit }: Closing, jointAt: number): boolean =>
  !isUnit || parts.every(({ nested, from }) => !nested || from >= jointAt)

/** … and ends before that of a second. */
export const doubledBefore = (parts: readonly PlacedPart[], { isUnit }: Closing, jointAt: number): boolean =>
  !isUnit || parts.every(({ nested, to }) => !nested || to <= jointAt)

const widest = { full, half: full / 2, quarter: full / 4 } as const

/** What a layout lacks of the spacing and the doubled rail that were asked for, looked at piece by piece. */
export function reducedFaultsOf(
  request: LayoutRequest,
  { posts, panels, postOneAtInches }: Layout,
  divided: readonly DividedSpace[],
): readonly string[] {
  const faults: string[] = []
  const parts = partsFrom(request, postOneAtInches)
  const spaces = posts.slice(1).map((post, i) => ({ from: posts[i]!.alongInches, to: post.alongInches, post }))
  const meets = (one: Stretch, other: Stretch): boolean => one.from < other.to && one.to > other.from
  const check = (part: Stretch, most: number): void => {
    for (const space of spaces.filter((one) => meets(one, part)))
      if (space.to - space.from > most) faults.push(`post ${space.post.number}: space of ${space.to - space.from} in`)
  }
  for (const part of parts) {
    check(part, part.spacing === 'full' ? Number.POSITIVE_INFINITY : widest[part.spacing])
    if (part.spacing === 'quarter') {
      const inside = spaces.filter((one) => meets(one, part))
      const beside = request.system.spacings.halfBeforeQuarter.inches
      check({ from: inside[0]!.from - beside, to: inside[inside.length - 1]!.to + beside }, full / 2)
    }
    if (!part.nested) continue
    for (const panel of panels.filter(({ fromInches, toInches }) => meets({ from: fromInches, to: toInches }, part)))
      if (!panel.nested || panel.unit !== 'run')
        faults.push(`panel ${panel.number}: doubled rail is missing or not allowed`)
  }
  for (const { from, to, post } of spaces) {
    if (
      post.unit === 'run' &&
      post.state === 'regular' &&
      to - from <= full / 2 &&
      !divided.some((one) => meets(one, { from, to }))
    )
      faults.push(`post ${post.number}: nobody asked for it`)
  }
  for (const post of posts) {
    if (post.state !== 'regular' && divided.some(({ from, to }) => post.alongInches > from && post.alongInches < to))
      faults.push(`post ${post.number}: ${post.state} where spaces are divided`)
  }
  return faults
}
