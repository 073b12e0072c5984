import { beforeAll, describe, expect, it } from 'vitest'
import { alike, countDown, isFast, stepOf } from './canary.ts'

describe('the canary', () => {
  let early: boolean
  beforeAll(() => {
    early = isFast(50)
  })

  it('is fast above 50 only', () => {
    expect(early).toBe(false)
    expect(isFast(51)).toBe(true)
  })

  it.each([[3], [1]])('counts down from %i', (from) => {
    expect(countDown(from)).toBe(0)
  })

  it('has a step, taken as the module loads', () => {
    expect(stepOf()).toBe(4)
  })

  it('has the greater of two that are alike', () => {
    expect(alike(7)).toEqual(7)
  })
})
