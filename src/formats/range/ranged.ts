import * as z from 'zod/mini'
import { form } from './form.ts'
import { listLimits, type NumberRange, type RangeName, ranges } from './ranges.ts'

/** A number inside the hard limits of its range; the published schema says what is usual, and why. */
export const ranged = (name: RangeName) => z.number().check(...limitsOf(ranges[name]))

/** The same for a whole number. */
export const rangedWhole = (name: RangeName) => z.int().check(...limitsOf(ranges[name]))

/** The checks alone, for a number that has others too. */
export const limitsOf = (range: NumberRange) =>
  [z.minimum(range.least), z.maximum(range.most), z.meta({ $comment: commentOf(range) })] as const

function commentOf({ usual, why, basis }: NumberRange): string {
  const said = usual === null ? '' : ` Usually ${usualText(usual)}.`
  return `${why} (${basis}).${said}`
}

function usualText({ us, metric }: NonNullable<NumberRange['usual']>): string {
  const text = ([low, high]: readonly [number, number]): string => `${low} to ${high}`
  return us[0] === metric[0] && us[1] === metric[1]
    ? text(us)
    : `${text(us)} in a us file, ${text(metric)} in a metric one`
}

/** A list of at most as many entries as one file can mean. */
export const listOf = <T extends z.core.$ZodType>(entry: T, name: keyof typeof listLimits) =>
  z.array(entry).check(z.maxLength(listLimits[name]))

/** Years that are read: 1950 to 2100. */
const year = '(19[5-9]\\d|20\\d\\d|2100)'

/** A day of the calendar. */
export const day = z.iso
  .date({ ...form('day'), abort: true })
  .check(z.regex(new RegExp(`^${year}-`), form('day in years')))

const date = z.regexes.date.source.replace(/\$$/, '')
const time = '([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d(\\.\\d{1,9})?)?'
const zone = '(Z|[+-]([01]\\d|2[0-3]):[0-5]\\d)?'

/** A moment; seconds and zone may be left out. */
export const moment = z.string().check(
  z.regex(new RegExp(`${date}T${time}${zone}$`), {
    ...form('moment'),
    abort: true,
  }),
  z.regex(new RegExp(`^${year}-`), form('moment in years')),
  z.meta({ id: 'Moment' }),
)
