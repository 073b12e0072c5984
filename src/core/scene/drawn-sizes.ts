import type { Dimension } from '../hardware/hardware-sheet.ts'
import { exactLength, lengthIn } from '../units/exact-length.ts'

/**
 * Sizes, in inches, that the sheets do not state, as every drawing, building model and scene draws them.
 *
 * Common practice: a W-beam 12 1/4 high, 3 1/4 deep and 0.105 thick (12 gauge) whose panels lap 12 1/2 at a splice, eight
 * splice bolts in two columns 8 1/2 apart, post bolt on the middle of the rail, blocks 6 x 14 x 8, posts that end 1 above
 * the rail. From memory: rows of splice bolts, steel post of 6 x 4, cable. Nothing is judged by any of them.
 */
export const drawnSizes = {
  beam: 12.25,
  beamDepth: 3.25,
  beamSteel: 0.105,
  halfLap: 6.25,
  postAboveRail: 1,
  postWidth: 4,
  postDepth: 6,
  breakawayWidth: 6,
  blockWidth: 6,
  blockHeight: 14,
  blockDepth: 8,
  /** How far a stub or soil tube stands out beyond the post in it. */
  stubBeyond: 1,
  /** Where a post is cut off below finish grade. */
  cutBelow: 24,
  /** Of the hole for the anchor cable in post 1 above finish grade: just above the highest stub. */
  cableHeight: 5.5,
  /** First bolt of the cable anchor bracket from the centre of post 1: a public answer on the trailing-end anchor. */
  bracketAt: 49.25,
} as const

/**
 * The eight bolts of a splice: inches along the rail from its middle, and below the top of rail. In two columns of four,
 * each 2 in from the edge of a lap of 12 1/2.
 */
export const spliceBoltPlaces: readonly (readonly [along: number, below: number])[] = [-4.25, 4.25].flatMap((along) =>
  [1.5, 4.3, drawnSizes.beam - 4.3, drawnSizes.beam - 1.5].map((below) => [along, below] as const),
)

const valley = drawnSizes.beamDepth - drawnSizes.beamSteel

/**
 * Face of the double corrugation from its upper edge to its lower: inches behind the foremost line, and below the top.
 * Height and depth are common practice, where it turns is our own: the shape is a generic one.
 */
export const railFace: readonly (readonly [behind: number, below: number])[] = [
  [valley, 0],
  [valley, 0.7],
  [0, 2.4],
  [0, 3.5],
  [valley, 5.2],
  [valley, 7.05],
  [0, 8.75],
  [0, 9.85],
  [valley, 11.55],
  [valley, drawnSizes.beam],
]

/** Top of rail above finish grade as drawn, inches: the nominal height, else the limit that is stated; null when none is. */
export function drawnRailTop(height: Dimension): number | null {
  const value = [height.nominal, height.low, height.high].find((one) => one !== 'notStated')
  return value === undefined ? null : lengthIn(exactLength(value, height.unit), 'in')
}
