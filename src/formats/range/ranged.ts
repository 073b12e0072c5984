import * as z from 'zod/mini'
import { longestRunInches } from '../../core/units/longest-run.ts'
import {
  type LengthRangeName,
  lengthRanges,
  listLimits,
  type NumberRange,
  type RangeName,
  ranges,
  years,
} from './ranges.ts'

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

/** Written out: 0.000001, not 1e-6. */
export const plain = (value: number): string =>
  Math.abs(value) < 1e-5 && value !== 0 ? value.toFixed(6) : String(value)

/** What was expected of a number that lies outside its range; null inside it. */
export function numberFault(name: RangeName, value: number): string | null {
  const { least, most } = ranges[name]
  if (value < least) return `a value of at least ${plain(least)}`
  return value > most ? `a value of at most ${plain(most)}` : null
}

/** What was expected of a length, m, that lies outside its range; null inside it. */
export function lengthFault(name: LengthRangeName, metres: number): string | null {
  const { least, most } = lengthRanges[name]
  if (metres >= least && metres <= most) return null
  return `a length of ${plain(least)} m to ${plain(most)} m`
}

/** What is expected of one run, and what to do with a longer one. */
export const longestRunWords = `at most ${longestRunInches} in (10 miles) in one run: split a longer one at a splice into runs that name it as standingSplice`

/** Years that are read: 1950 to 2100. */
const year = '(19[5-9]\\d|20\\d\\d|2100)'
const inYears = `in the years ${years.least} to ${years.most}`

/** A day of the calendar. */
export const day = z.iso
  .date({ error: 'a date such as 2017-03-15', abort: true })
  .check(z.regex(new RegExp(`^${year}-`), { error: `a date ${inYears}` }))

const date = z.regexes.date.source.replace(/\$$/, '')
const time = '([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d(\\.\\d{1,9})?)?'
const zone = '(Z|[+-]([01]\\d|2[0-3]):[0-5]\\d)?'

/** A moment; seconds and zone may be left out. */
export const moment = z.string().check(
  z.regex(new RegExp(`${date}T${time}${zone}$`), {
    error: 'a date and time such as 2026-05-04T10:30 (ISO 8601)',
    abort: true,
  }),
  z.regex(new RegExp(`^${year}-`), { error: `a date and time ${inYears}` }),
  z.meta({ id: 'Moment', description: 'ISO 8601 date and time; seconds and zone may be left out.' }),
)
