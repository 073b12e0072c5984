import { exactLength, lengthIn, type Nanometres } from '../core/units/exact-length.ts'

const sixteenth: Nanometres = exactLength(1 / 16, 'in')

/** Inches of a length that has to reach a limit, in whole sixteenths: short of the limit it never reads as the limit. */
export const reachingInches = (length: Nanometres): number => lengthIn(Math.floor(length / sixteenth) * sixteenth, 'in')

/** Inches of a length that must not exceed a limit, in whole sixteenths: beyond the limit it never reads as the limit. */
export const exceedingInches = (length: Nanometres): number => lengthIn(Math.ceil(length / sixteenth) * sixteenth, 'in')
