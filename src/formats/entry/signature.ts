import type { SignOffBody } from './entry-kinds.ts'

/** A signature in a box 1 wide, y downward. */
export type Signature = SignOffBody['signature']
export type Strokes = Extract<Signature, { readonly kind: 'drawn' }>['strokes']

/** Height of the box of a signature; its width is 1. */
export const boxHeight = 0.4

/** The plain line on which a typed name is shown. */
export const nameLine: Strokes = [
  [
    [0, 0.3],
    [1, 0.3],
  ],
]
