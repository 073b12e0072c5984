import { describe, expect, it } from 'vitest'
import { inkEnd } from '../../test/cases/drawing/picture-pixels.ts'
import { fitText, textWidth, wrapText } from './text-width.ts'

describe('textWidth', () => {
  const words = [
    'W-beam, splices midway between posts, 31 in',
    'Anclaje de salida, señal, baranda',
    '9 ft 4 1/2 in',
    '787 mm',
  ]

  it.each([false, true])(
    'is no less than what a renderer of others sets in the face of the screen, and little more, bold %s',
    (bold) => {
      for (const one of words) {
        const ends = inkEnd(one, 10, bold)
        expect(textWidth(one, 10, bold), one).toBeGreaterThanOrEqual(ends)
        expect(textWidth(one, 10, bold), one).toBeLessThan(ends * 1.05 + 1)
      }
    },
  )
})

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

  it('keeps a length beside the same in the other system, unless the text would then be cut', () => {
    const limits = '74 in (1.8796 m) to 76 in (1.9304 m)'
    const room = textWidth('74 in (1.8796 m) to 76 in', 7)
    expect(wrapText(limits, room, 7, 2)).toEqual(['74 in (1.8796 m) to', '76 in (1.9304 m)'])
    expect(wrapText(limits, textWidth('(1.8796 m) to', 7), 7, 4).join(' ')).toBe(limits)
  })
})
