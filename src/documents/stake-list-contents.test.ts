import { describe, expect, it } from 'vitest'
import { sampleInput } from '../../test/fixtures/record-inputs.ts'
import { stakeRun } from '../core/staking/stake-run.ts'
import { straightFrame } from '../core/staking/staking-frame.ts'
import { feet, metres } from '../core/units/quantity.ts'
import { english } from '../words/english.ts'
import { stakeListContents, stationText } from './stake-list-contents.ts'

describe('the stake list', () => {
  const { run, model } = sampleInput(() => [])
  const frame = straightFrame({ datumStation: feet(20_840), offset: feet(12), side: 'right', direction: 1 })
  const staking = stakeRun(model, frame)
  if (!staking.ok) throw new Error(staking.error.kind)
  const contents = stakeListContents(run, staking.value, frame, [], 'foot', english(null))

  it('has a line for each post, in the unit it names', () => {
    expect(contents.stakes.map(({ point }) => point)).toEqual(model.layout.posts.map(({ number }) => number))
    const [first, second] = contents.stakes
    expect(first).toMatchObject({ offset: 16, railFromLast: null, chordFromLast: null, code: 'END-POST' })
    expect(second).toMatchObject({ railFromLast: '6 ft 3 in', chordFromLast: 6.25 })
    expect(contents.stakes.at(-1)?.offset).toBe(12)
  })

  it('says how well both ways to the stakes agree and that no heights are known', () => {
    expect(contents.closure).toContain('less than 0.1 mm')
    expect(contents.notes.join(' ')).toContain('Heights are not given')
  })

  it('writes both stations at a station equation', () => {
    const equations = [{ internal: feet(1000), back: feet(1000), ahead: feet(2050) }]
    expect(stationText(feet(1000), { equations }, 'foot')).toBe('10+00.00 = 20+50.00')
    expect(stationText(feet(1010), { equations }, 'foot')).toBe('20+60.00')
    expect(stationText(metres(1237.5), { equations: [] }, 'metre')).toBe('1+237.500')
  })
})
