import { expect, test } from 'vitest'
import { keepTogether } from './keep-together.ts'

test('a number keeps its unit and its fraction, and nothing else is held together', () => {
  const held = (text: string): string => keepTogether(text).replaceAll('\u00a0', '_')
  expect(held('27 3/4 in to 32 in (704.8 mm)')).toBe('27_3/4_in to 32_in (704.8_mm)')
  expect(held('probability over 99.9 %, 6 ft 3 in, 120 lbf·ft')).toBe('probability over 99.9_%, 6_ft 3_in, 120_lbf·ft')
  expect(held('post 8 of 20 in sight, 3 inspections, 2 m. and 4 mallets')).toBe(
    'post 8 of 20_in sight, 3 inspections, 2_m. and 4 mallets',
  )
})
