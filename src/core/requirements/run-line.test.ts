import { describe, expect, it } from 'vitest'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import type { RunFlare } from '../layout/run-flare.ts'
import { runLineAt } from './run-line.ts'

const terminal = shippedEnd('flared-terminal-27-3-4')
const barrier = laidBarrier('w-beam-post-splice-27-3-4', terminal, terminal, [-1200, 1200])
const { posts, postOneAtInches } = barrier.layout

const lineAt = (end: 'first' | 'second', flare: RunFlare | null) =>
  runLineAt({ ...barrier, flare, work: null, letting: null, speed: null, opposingReaches: null }, end)

/** Places of the run's posts on the line at one end, inches from the datum. */
function line(end: 'first' | 'second', flare: RunFlare | null): { readonly from: number; readonly to: number } {
  const along = lineAt(end, flare).posts.map(({ alongInches }) => postOneAtInches + alongInches)
  return { from: Math.min(...along), to: Math.max(...along) }
}

const run = posts.filter(({ unit }) => unit === 'run').map(({ alongInches }) => postOneAtInches + alongInches)
const [outermost, innermost] = [run[0]!, run.at(-1)!]
const flare = (firstFromInches: number | null, secondFromInches: number | null): RunFlare => ({
  ...{ rate: 14, firstFromInches, secondFromInches },
})
/** Two posts of the run, so that a bend at one of them is on both lines. */
const [a, b] = [run[3]!, run.at(-4)!]

describe('the line that an end unit stands off', () => {
  it('is the whole run where that is straight', () => {
    for (const end of ['first', 'second'] as const) {
      expect(line(end, null)).toEqual({ from: outermost, to: innermost })
      expect(line(end, flare(-9999, 9999))).toEqual({ from: outermost, to: innermost })
    }
  })

  it('is the flare toward that end, up to its bend', () => {
    expect(line('first', flare(a, b))).toEqual({ from: outermost, to: a })
    expect(line('second', flare(a, b))).toEqual({ from: b, to: innermost })
    expect(line('first', flare(a - 1, null))).toEqual({ from: outermost, to: run[2]! })
    expect(line('second', flare(null, b + 1))).toEqual({ from: run.at(-3)!, to: innermost })
  })

  it('is the parallel part where only the other end is flared', () => {
    expect(line('second', flare(a, null))).toEqual({ from: a, to: innermost })
    expect(line('first', flare(null, b))).toEqual({ from: outermost, to: b })
  })

  it('is a flare of the run at the end where that has one, and nowhere else', () => {
    const isFlared = (of: RunFlare | null) => (['first', 'second'] as const).map((end) => lineAt(end, of).isFlared)
    expect(isFlared(flare(a, null))).toEqual([true, false])
    expect(isFlared(flare(null, b))).toEqual([false, true])
    expect(isFlared(flare(a, b))).toEqual([true, true])
    expect(isFlared(null)).toEqual([false, false])
  })
})
