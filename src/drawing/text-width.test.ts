import { describe, expect, it } from 'vitest'
import { fitText, textWidth, wrapText } from './text-width.ts'

describe('fitText', () => {
  it('leaves a text alone that fits', () => {
    expect(fitText('County Road 14', 200, 8)).toBe('County Road 14')
  })

  it('cuts a text of 4,000 letters to its room, never inside an emoji', () => {
    const cut = fitText('🚧'.repeat(4000), 60, 8)
    expect(cut).toMatch(/^(🚧)+…$/u)
    expect(textWidth(cut, 8)).toBeLessThanOrEqual(60)
  })
})

describe('wrapText', () => {
  it('breaks at spaces and shortens only the last line', () => {
    const lines = wrapText('Both fasteners, upper hole set, snug and looked at from behind', 96, 7, 2)
    expect(lines).toHaveLength(2)
    expect(lines[0]).toBe('Both fasteners, upper hole')
    expect(lines[1]).toMatch(/…$/)
  })
})
