import { expect, test } from 'vitest'
import { instantOf, timeText } from './printed-time.ts'

test('a time keeps its zone and drops seconds that say nothing', () => {
  expect(timeText('2016-05-12T10:05:00-06:00')).toBe('2016-05-12 10:05 -06:00')
  expect(timeText('2016-05-12T10:05:30.250Z')).toBe('2016-05-12 10:05:30 UTC')
  expect(timeText('2016-05-12T10:05')).toBe('2016-05-12 10:05')
  expect(timeText('2016-05-12')).toBe('2016-05-12')
})

// 2016-05-12 is 16 933 days after 1970-01-01; 10:05 at -06:00 is 16:05 UTC
test('an instant does not depend on where the program runs', () => {
  const day = 16_933 * 86_400_000
  expect(instantOf('2016-05-12')).toBe(day)
  expect(instantOf('2016-05-12T10:05')).toBe(day + (10 * 60 + 5) * 60_000)
  expect(instantOf('2016-05-12T10:05:00-06:00')).toBe(day + (16 * 60 + 5) * 60_000)
  expect(() => instantOf('yesterday')).toThrow(RangeError)
})
