import type { LayoutRequest, Obstruction, PostClearance } from './layout.ts'

/** That posts keep so far clear: why one is in the way that would stand beside an obstruction. */
export type PostsKeepClear = { readonly kind: 'posts keep clear' } & PostClearance

/**
 * Half of a wood post of 6 x 8, the widest along the rail of the posts in use: no sheet states the width of its posts.
 * @source common practice
 */
export const halfPostInches = 6 / 2

/**
 * What a post keeps clear of a pipe, wall or footing where the run states nothing.
 * @source from memory: our judgement, which no document at hand bears out
 */
export const usualClearanceInches = 6

/** @param stated  what the run states, inches; null where it states nothing */
export const postClearance = (stated: number | null): PostClearance => ({
  halfPostInches,
  clearanceInches: stated ?? usualClearanceInches,
  isStated: stated !== null,
})

/**
 * Where the centre of no post may lie: each obstruction, longer at both ends by half a post and the clearance. A centre on
 * the very end of such a part is clear.
 */
export const noPostParts = ({
  obstructions,
  postClearance,
}: Pick<LayoutRequest, 'obstructions' | 'postClearance'>): readonly Obstruction[] =>
  obstructions.map(({ name, fromInches, toInches }) => {
    const apart = postClearance === undefined ? 0 : postClearance.halfPostInches + postClearance.clearanceInches
    return { name, fromInches: fromInches - apart, toInches: toInches + apart }
  })
