import type { SignOffBody } from './entry-kinds.ts'

/** A signature in a box 1 wide, y downward. */
export type Strokes = SignOffBody['strokes']

/** Height of the box of a signature; its width is 1. */
export const boxHeight = 0.4

/** What stands for a signature that was typed: the plain line on which the name is written. */
export const typedLine: Strokes = [
  [
    [0, 0.3],
    [1, 0.3],
  ],
]

export const isTyped = (strokes: Strokes): boolean => JSON.stringify(strokes) === JSON.stringify(typedLine)
