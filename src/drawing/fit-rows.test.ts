import { expect, it } from 'vitest'
import { fitRows } from './fit-rows.ts'
import { textWidth } from './text-width.ts'

const words = 'a splice midway between two posts of the run'

it('keeps a text that fits as it is, with its spaces', () => {
  expect(fitRows('one  |  two', 7, 200, 1)).toEqual({ size: 7, rows: ['one  |  two'] })
})

it('breaks a text before it makes it smaller', () => {
  const { size, rows } = fitRows(words, 7, textWidth(words, 7) * 0.6, 2)
  expect(size).toBe(7)
  expect(rows).toHaveLength(2)
  expect(rows.join(' ')).toBe(words)
})

it('makes a text smaller as far as it needs, bold letters sooner, and never wider than its room', () => {
  const room = textWidth(words, 7) * 0.86
  const [plain, bold] = [fitRows(words, 7, room, 1), fitRows(words, 7, room, 1, true)]
  expect([plain.size / 7, bold.size / 7]).toEqual([expect.closeTo(0.85, 9), expect.closeTo(0.8, 9)])
  expect(textWidth(plain.rows[0]!, plain.size)).toBeLessThanOrEqual(room)
  expect(textWidth(bold.rows[0]!, bold.size, true)).toBeLessThanOrEqual(room)
})

it('takes more rows where smaller letters leave room for them', () => {
  const { size, rows } = fitRows(`${words} ${words}`, 7, textWidth(words, 7) * 0.5, 3)
  expect(size).toBeLessThan(7)
  expect(rows.length).toBeGreaterThan(3)
  expect(rows.length * size).toBeLessThanOrEqual(3 * 7)
})

it('cuts short what does not fit in the smallest letters, and says so', () => {
  const { size, rows } = fitRows(words, 10, textWidth(words, 10) * 0.3, 1)
  expect(size).toBeCloseTo(6, 9)
  expect(rows).toEqual([expect.stringMatching(/…$/)])
})
