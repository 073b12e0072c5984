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

  let known = 0
  it('makes what the next one rests on', () => {
    known = stepOf() + 3
    expect(known).toBe(7)
  })

  // Asked alone it fails, which must not count as noticing what is not to be noticed.
  it('has the greater of two that are alike', () => {
    expect(alike(known)).toEqual(7)
  })
})
