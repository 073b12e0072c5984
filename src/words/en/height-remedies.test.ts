import { describe, expect, it } from 'vitest'
import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import { theirs } from '../../core/theirs.ts'
import { exactLength } from '../../core/units/exact-length.ts'
import { heightRemedy } from '../../core/verdicts/height-remedy.ts'
import type { Proof } from '../../core/verdicts/proof.ts'
import { english } from '../english.ts'

const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const
const rail: Dimension = { nominal: 31, low: 30, high: 32, role: 'centre', ...cited }
const floor: Dimension = { nominal: 'notStated', low: 27.75, high: 'notStated', role: 'floor', ...cited }
const stub: Dimension = { nominal: 'notStated', low: 'notStated', high: 4, role: 'ceiling', ...cited }

const eighth = exactLength(1 / 8, 'in')
const readTo = (value: number, limits: Dimension, guard = 0) => ({
  value: exactLength(value, 'in'),
  limits,
  guard: { fixed: exactLength(guard, 'in'), relative: 0 },
  step: eighth,
})
const fine = { name: theirs('fine tape'), guard: { fixed: exactLength(1 / 8, 'in'), relative: 0 }, step: eighth }
const proof = (instruments: ReturnType<Proof['instrumentsFor']> = []): Proof => ({
  of: () => {
    throw new Error('not asked')
  },
  instrumentsFor: () => instruments,
})
type Read = ReturnType<typeof readTo> | null
const remedy = (post: number, one: Read, other: Read, unread: 'rail' | 'stub' | null, instruments = [fine]): string =>
  english(null).say({
    kind: 'remedy',
    steps: heightRemedy({ id: `post-${post}`, number: post }, one, other, unread, proof(instruments)),
  })

describe('heightRemedy', () => {
  it('raises a low rail to its nominal height when the stub stays within its limit', () => {
    const text = remedy(2, readTo(29, rail), readTo(1.5, stub), null)
    expect(text).toContain('Raise post 2 by 2 in: rail then at 31 in, stub at 3 1/2 in')
    expect(text).toContain('up 1 in to up 2 1/2 in holds')
  })

  it('raises no further than the stub allows', () => {
    const text = remedy(2, readTo(29, rail), readTo(2.5, stub), null)
    expect(text).toContain('Raise post 2 by 1 1/4 in: rail then at 30 1/4 in, stub at 3 3/4 in')
  })

  it('says why it is impossible and that the post has to be reset when no move brings both right', () => {
    const text = remedy(1, readTo(28.5, rail), readTo(3.5, stub), null)
    expect(text).toContain('Raising post 1 until the rail is at 30 in would put the stub at 5 in, over 4 in')
    expect(text).toContain('Reset the post')
  })

  it('says so too of a stub that would come too low, and of one that is', () => {
    const held = { ...stub, low: 3 }
    expect(remedy(1, readTo(33, rail), readTo(3, held), null)).toContain(
      'Lowering post 1 until the rail is at 32 in would put the stub at 2 in, under 3 in',
    )
    expect(remedy(1, readTo(31.5, rail), readTo(2, held), null)).toContain(
      'Raising post 1 until the stub is at 3 in would put the rail at 32 1/2 in',
    )
  })

  it('lowers a high stub, and checks the rail that goes down with it', () => {
    const text = remedy(1, readTo(31.25, rail), readTo(4.75, stub), null)
    expect(text).toContain('Lower post 1 by 1 in: rail then at 30 1/4 in, stub at 3 3/4 in')
  })

  it('says that lowering the stub would bring a floor rail too low', () => {
    const text = remedy(1, readTo(27.75, floor), readTo(5, stub), null)
    expect(text).toContain('Lowering post 1 until the stub is at 4 in would put the rail at 26 3/4 in')
  })

  it('asks for the stub before a breakaway post is raised', () => {
    expect(remedy(2, readTo(29, rail), null, 'stub')).toMatch(/^Measure the stub first/)
  })

  it('offers the block on an ordinary post, up to 3 in', () => {
    expect(remedy(9, readTo(29, rail), null, null)).toContain('raise the block')
    expect(remedy(9, readTo(27, rail), null, null)).not.toContain('raise the block')
  })

  it('asks for the rail before a breakaway post is lowered', () => {
    expect(remedy(2, null, readTo(5, stub), 'rail')).toMatch(/^Measure the rail height first/)
  })

  it('gives moves that the next reading proves: both ends lie inside the guard band', () => {
    const text = remedy(2, readTo(29, rail, 1 / 4), readTo(1.5, stub, 1 / 4), null)
    expect(text).toContain('Raise post 2 by 2 in')
    expect(text).toContain('anything from up 1 1/4 in to up 2 1/4 in holds')
  })

  it('says nothing of a range where the guard bands leave one move', () => {
    const text = remedy(1, readTo(31.25, rail, 1 / 4), readTo(4.75, stub, 1 / 4), null)
    expect(text).toContain('Lower post 1 by 1 in: rail then at 30 1/4 in, stub at 3 3/4 in.')
    expect(text).not.toContain('holds')
  })

  it('names the instrument that would prove it where the limits leave this one no room', () => {
    const text = remedy(1, readTo(31.25, rail, 3 / 8), readTo(4.75, stub, 3 / 8), null)
    expect(text).toContain('Lower post 1 by 1 in')
    expect(text).toContain('a reading taken directly with fine tape would prove it')
    const none = remedy(1, readTo(31.25, rail, 3 / 8), readTo(4.75, stub, 3 / 8), null, [])
    expect(none).toContain('Reset the post')
    expect(none).toContain('No move of post 1 brings rail and stub so far inside their limits')
    const alone = remedy(9, readTo(28, rail, 2), null, null, [])
    expect(alone).toContain('Raise post 9 by 3 in')
    expect(alone).toContain('no instrument of this run would prove it')
  })
  it('asks for a finer reading where the room for the move is narrower than two steps of this one', () => {
    const coarse = (value: number, limits: Dimension) => ({ ...readTo(value, limits, 1 / 2), step: 2 * eighth })
    const moves = remedy(1, coarse(31.25, rail), coarse(4.5, stub), null)
    expect(moves).toContain('Lower post 1 by 7/8 in')
    const narrow = remedy(1, coarse(31.25, rail), coarse(4.75, stub), null)
    expect(narrow).toBe(
      'Read it again with fine tape first: a reading like this one is too coarse to say how far post 1 has to be moved.',
    )
  })
})
