import * as z from 'zod/mini'
import { exactLength, lengthIn, type Nanometres, nanometresPer } from '../core/units/exact-length.ts'
import { parseLength } from '../core/units/length-text.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import { reportUnfit } from './contradiction.ts'
import { form } from './range/form.ts'
import { limitsOf, ranged } from './range/ranged.ts'
import { ranges } from './range/ranges.ts'

/** Longest distance along a rail that is read, inches. */
const longestInches = ranges.alongRail.most

const sixteenth = exactLength(1 / 16, 'in')

const sixteenths = z.multipleOf(1 / 16, form('whole sixteenths'))

/** A number of inches along the rail, a whole number of sixteenths. */
const inchNumber = z.number().check(sixteenths, ...limitsOf(ranges.alongRail))

/** The same within one hardware unit. */
export const sheetInchNumber = z.number().check(sixteenths, ...limitsOf(ranges.sheetInches))

/**
 * A length along the rail in a file: a number of inches, or a text such as `12 ft 6 in` or `3810 mm`, where a number
 * without a unit is inches. It has to be a whole number of sixteenths of an inch, and comes out as inches.
 */
export const railLength = z.pipe(
  z.union([inchNumber, z.string().check(z.minLength(1))]).check(z.meta({ id: 'RailLength' })),
  z.transform((given, context) => {
    if (typeof given === 'number') return given + 0 // -0 becomes 0
    const parsed = parseLength(given, 'in')
    if (parsed.ok && parsed.value.nanometres % sixteenth === 0) {
      const inches = lengthIn(parsed.value.nanometres, 'in')
      if (Math.abs(inches) <= longestInches) return inches
    }
    reportUnfit(
      context,
      parsed.ok ? expectedSixteenth(parsed.value.nanometres) : { kind: 'a length', not: parsed.error },
      given,
    )
    return z.NEVER
  }),
)

/**
 * Where a stretch begins or ends. A place between two sixteenths is moved outward to the next one, so that what is
 * shielded or obstructed never comes out shorter than it was given.
 */
const stretchLimit = (id: string, outward: (sixteenths: number) => number) =>
  z.pipe(
    z.union([ranged('alongRail'), z.string().check(z.minLength(1))]).check(z.meta({ id })),
    z.transform((given, context) => {
      const parsed = typeof given === 'number' ? null : parseLength(given, 'in')
      if (parsed !== null && !parsed.ok) {
        reportUnfit(context, { kind: 'a length', not: parsed.error }, given)
        return z.NEVER
      }
      const length = parsed === null ? exactLength(given as number, 'in') : parsed.value.nanometres
      if (Math.abs(length) > longestInches * nanometresPer.in) {
        reportUnfit(context, { kind: 'length of at most inches', inches: longestInches }, given)
        return z.NEVER
      }
      return outward(length / sixteenth) / 16 + 0
    }),
  )

export const stretchFrom = stretchLimit('StretchFrom', Math.floor)
export const stretchTo = stretchLimit('StretchTo', Math.ceil)

function expectedSixteenth(length: Nanometres): ProblemSaying {
  if (Math.abs(length) > longestInches * nanometresPer.in)
    return { kind: 'length of at most inches', inches: longestInches }
  return { kind: 'sixteenths near', nearest: Math.round(length / sixteenth) * sixteenth }
}
