import type { Nanometres } from '../units/exact-length.ts'
import type { Reading, Side } from './reading.ts'

/**
 * Whether what is read is an offset from a line, which means nothing without its side: that of an end post from the line
 * of the run, that of any post from a string. A post that a later version of the run added is named by that version too.
 */
export const isOffset = (of: string): boolean => /^post-\d+(~[0-9a-z]+)?\/(flare|lateral)-offset$/.test(of)

/**
 * The value with its sign: away from traffic is positive, toward traffic negative, on either side of the road and at
 * either end. One whose side was not said keeps the sign it was written with, which then tells only sides of one string
 * apart.
 */
export const signedValue = ({ value, side }: { readonly value: Nanometres; readonly side?: Side }): Nanometres =>
  side === 'toward' ? -value + 0 : value

/** Whether a reading is of an offset and does not say its side, so that it may lie on either; 0 lies on none. */
export const lacksSide = ({ of, answer }: Pick<Reading, 'of' | 'answer'>): boolean =>
  isOffset(of) && answer.kind === 'measured' && answer.value !== 0 && answer.side === undefined
