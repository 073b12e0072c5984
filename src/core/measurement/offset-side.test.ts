import { describe, expect, it } from 'vitest'
import { isOffset, lacksSide, signedValue } from './offset-side.ts'

const length = { kind: 'measured', unit: 'mm', resolution: null } as const

describe('the side of an offset', () => {
  it('is asked of a flare and of a lateral offset of a post, and of nothing else', () => {
    for (const of of ['post-1/flare-offset', 'post-12/lateral-offset', 'post-1~v2/flare-offset'])
      expect(isOffset(of)).toBe(true)
    for (const of of ['run/lateral-offset', 'post-1/rail-height', 'post-1/flare-offset/more', 'a-post-1/flare-offset'])
      expect(isOffset(of)).toBe(false)
  })

  it('turns the sign of what lies toward traffic, and never gives a zero with a sign', () => {
    expect(signedValue({ value: 25, side: 'toward' })).toBe(-25)
    expect(signedValue({ value: 25, side: 'away' })).toBe(25)
    expect(signedValue({ value: 25 })).toBe(25)
    expect(signedValue({ value: 0, side: 'toward' })).toBe(0)
  })

  it('is lacking only of an offset that was measured, is not 0 and has none', () => {
    const of = 'post-1/flare-offset'
    expect(lacksSide({ of, answer: { ...length, value: 1 } })).toBe(true)
    expect(lacksSide({ of, answer: { ...length, value: 1, side: 'away' } })).toBe(false)
    expect(lacksSide({ of, answer: { ...length, value: 0 } })).toBe(false)
    expect(lacksSide({ of: 'post-1/rail-height', answer: { ...length, value: 1 } })).toBe(false)
    expect(lacksSide({ of, answer: { kind: 'cannot see' } })).toBe(false)
  })
})
