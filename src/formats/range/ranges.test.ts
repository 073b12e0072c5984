import { describe, expect, test } from 'vitest'
import { publishedFormats, publishedSchema } from '../published-schemas.ts'
import { lengthFault } from './range-faults.ts'
import { day, moment, ranged } from './ranged.ts'
import { type LengthRangeName, lengthRanges, type RangeName, ranges } from './ranges.ts'

const isRead = (name: RangeName, value: number): boolean => ranged(name).safeParse(value).success

describe('every range', () => {
  test.each(Object.entries(ranges).map(([name, range]) => [name as RangeName, range] as const))(
    '%s holds its limits and what is usual, and nothing just outside',
    (name, { least, most, usual, why }) => {
      const inside = usual === null ? [] : [...usual.us, ...usual.metric]
      for (const value of [least, most, ...inside]) expect([value, isRead(name, value)]).toEqual([value, true])
      const step = Math.max(1, Math.abs(least), Math.abs(most)) * 1e-9
      for (const value of [least - step, most + step, Number.NaN, Number.POSITIVE_INFINITY])
        expect([value, isRead(name, value)]).toEqual([value, false])
      expect(why).not.toBe('')
    },
  )

  test.each(Object.entries(lengthRanges).map(([name, range]) => [name as LengthRangeName, range] as const))(
    'of lengths, %s holds its limits, and nothing just outside',
    (name, { least, most, usual }) => {
      for (const value of [least, most, ...(usual ?? [])]) expect(lengthFault(name, value)).toBeNull()
      for (const value of [least - Math.max(1e-9, Math.abs(least) * 1e-9), most * (1 + 1e-9)])
        expect(lengthFault(name, value)).toEqual({ kind: 'value between', least, most, unit: 'm' })
    },
  )
})

test.each([
  ['1950-01-01', true],
  ['2100-12-31', true],
  ['1949-12-31', false],
  ['2101-01-01', false],
  ['0001-01-01', false],
  ['9999-12-31', false],
  ['2100-02-29', false],
])('the day %s is read: %s', (text, expected) => {
  expect(day.safeParse(text).success).toBe(expected)
  expect(moment.safeParse(`${text}T10:30`).success).toBe(expected)
  expect(moment.safeParse(`${text}T10:30:15.5-05:00`).success).toBe(expected)
})

/** All but the record, which is written and never read: what stands in it came through one of the others. */
const readFormats = publishedFormats.filter((format) => format !== 'record')

/** Numbers of a schema that have no least or no most, as paths. */
function unbounded(schema: unknown, path: string): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  const { type, minimum, maximum, exclusiveMinimum } = schema as Readonly<Record<string, unknown>>
  if ('const' in schema || 'enum' in schema) return []
  const isNumber = type === 'number' || type === 'integer' || (Array.isArray(type) && type.includes('number'))
  const isOpen = isNumber && ((minimum ?? exclusiveMinimum) === undefined || maximum === undefined)
  // What zod gives every whole number is no range.
  const isSafeOnly = isNumber && maximum === Number.MAX_SAFE_INTEGER
  const below = Object.entries(schema).flatMap(([key, inner]) => unbounded(inner, `${path}/${key}`))
  return isOpen || isSafeOnly ? [path, ...below] : below
}

/** Lists of a schema that may be of any length. */
function endless(schema: unknown, path: string): string[] {
  if (typeof schema !== 'object' || schema === null) return []
  const { type, maxItems, prefixItems } = schema as Readonly<Record<string, unknown>>
  const below = Object.entries(schema).flatMap(([key, inner]) => endless(inner, `${path}/${key}`))
  return type === 'array' && maxItems === undefined && prefixItems === undefined ? [path, ...below] : below
}

test.each(readFormats)('the schema of a %s file leaves no number without a range', (format) => {
  expect(unbounded(publishedSchema(format), '')).toEqual([])
})

test.each(readFormats)('the schema of a %s file leaves no list without a greatest length', (format) => {
  expect(endless(publishedSchema(format), '')).toEqual([])
})
