import { describe, expect, it } from 'vitest'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import { makeOfPost } from './make-of-post.ts'

const wood = { material: 'wood', breakaway: 'other' } as const
const plain = { material: 'notStated', breakaway: 'none' } as const

describe('what a post of a layout is made of', () => {
  const ends = [shippedEnd('flared-terminal-31'), shippedEnd('trailing-anchor-31')] as const
  const run = laidBarrier('w-beam-midspan-31', ...ends, [0, 1200])
  const { posts } = run.layout
  const inRun = posts.filter(({ unit }) => unit === 'run')

  it('is as the sheet of its end unit says, counted from that end', () => {
    expect(posts.slice(0, 3).map((post) => makeOfPost(post, run))).toEqual([
      { material: 'notStated', breakaway: 'hinge' },
      { material: 'notStated', breakaway: 'hinge' },
      plain,
    ])
    expect(posts.slice(-2).map((post) => makeOfPost(post, run))).toEqual([wood, wood])
  })

  it('is as the system says in the run', () => {
    expect(inRun.length).toBeGreaterThan(10)
    expect(inRun.map((post) => makeOfPost(post, run))).toEqual(inRun.map(() => plain))
  })

  it('is as the rule for a gap says at a special post', () => {
    const special = run.system.omissions.find(({ kind }) => kind === 'long span')!
    const post = { ...inRun[4]!, state: 'special', kind: special.specialPostKind! } as const
    expect(makeOfPost(post, run)).toEqual(wood)
  })
})
