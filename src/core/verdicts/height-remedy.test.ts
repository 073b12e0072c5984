import { describe, expect, it } from 'vitest'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { heightRemedy } from './height-remedy.ts'

const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const
const rail: Dimension = { nominal: 31, low: 30, high: 32, role: 'centre', ...cited }
const floor: Dimension = { nominal: 'notStated', low: 27.75, high: 'notStated', role: 'floor', ...cited }
const stub: Dimension = { nominal: 'notStated', low: 'notStated', high: 4, role: 'ceiling', ...cited }

describe('heightRemedy', () => {
  it('raises a low rail to its nominal height when the stub stays within its limit', () => {
    const text = heightRemedy('post 2', { value: 29, limits: rail }, { value: 1.5, limits: stub }, false)
    expect(text).toContain('Raise post 2 by 2 in: rail then at 31 in, stub at 3 1/2 in')
    expect(text).toContain('up 1 in to up 2 1/2 in holds')
  })

  it('raises no further than the stub allows', () => {
    const text = heightRemedy('post 2', { value: 29, limits: rail }, { value: 2.5, limits: stub }, false)
    expect(text).toContain('Raise post 2 by 1 1/4 in: rail then at 30 1/4 in, stub at 3 3/4 in')
  })

  it('says why it is impossible and that the post has to be reset when no move brings both right', () => {
    const text = heightRemedy('post 1', { value: 28.5, limits: rail }, { value: 3.5, limits: stub }, false)
    expect(text).toContain('Raising post 1 until the rail is at 30 in would put the stub at 5 in, over 4 in')
    expect(text).toContain('Reset the post')
  })

  it('lowers a high stub, and checks the rail that goes down with it', () => {
    const text = heightRemedy('post 1', { value: 31.25, limits: rail }, { value: 4.75, limits: stub }, false)
    expect(text).toContain('Lower post 1 by 1 in: rail then at 30 1/4 in, stub at 3 3/4 in')
  })

  it('says that lowering the stub would bring a floor rail too low', () => {
    const text = heightRemedy('post 1', { value: 27.75, limits: floor }, { value: 5, limits: stub }, false)
    expect(text).toContain('Lowering post 1 until the stub is at 4 in would put the rail at 26 3/4 in')
  })

  it('asks for the stub before a breakaway post is raised', () => {
    expect(heightRemedy('post 2', { value: 29, limits: rail }, null, true)).toMatch(/^Measure the stub first/)
  })

  it('offers the block on an ordinary post, up to 3 in', () => {
    expect(heightRemedy('post 9', { value: 29, limits: rail }, null, false)).toContain('raise the block')
    expect(heightRemedy('post 9', { value: 27, limits: rail }, null, false)).not.toContain('raise the block')
  })
})
