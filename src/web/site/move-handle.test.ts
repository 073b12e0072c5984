import { describe, expect, test } from 'vitest'
import { planHandles } from '../../drawing/views/plan.ts'
import { planInput } from '../../operations/write-site-drawings.ts'
import { english } from '../../words/english.ts'
import { type Draft, valueAt, withValue } from '../form/draft.ts'
import { inUnits } from './convert-units.ts'
import { exampleSite } from './example-site.ts'
import { movedHandle, nudgedHandle } from './move-handle.ts'
import { solveSite } from './solve-site.ts'

const feet = 0.3048

function handleOf(draft: Draft, place: string) {
  const { site, need } = solveSite(draft)
  if (site === null || need === null) throw new Error('the draft is no site with a need')
  const handle = planHandles(planInput(site, need, 'web', english(null))).find((one) => one.place === place)
  if (handle === undefined) throw new Error(`there is no handle ${place}`)
  return { site, handle }
}

/** Drags to so many feet up-station and away from the road, on a grid of half a foot. */
function dragged(draft: Draft, place: string, along: number, away: number): Draft {
  const { site, handle } = handleOf(draft, place)
  const to = { station: handle.station + along * feet, lateral: handle.lateral + away * feet }
  return movedHandle(draft, site, handle, to, 0.5)
}

const nudged = (draft: Draft, place: string, along: number, away: number, times = 1): Draft => {
  const { site, handle } = handleOf(draft, place)
  return nudgedHandle(draft, site, handle, { along, away, times })
}

describe('a corner of a hazard', () => {
  test('moves its station and its side, both to the grid, and the station stays written as it was', () => {
    const moved = dragged(exampleSite, 'hazard-1-far-from', -10.2, 3.4)
    expect(valueAt(moved, 'hazards[0]')).toMatchObject({ from: '11+90', far: 29.5, near: 16, to: '12+24' })
    const numbered = withValue(exampleSite, 'hazards[0].from', 1200)
    expect(valueAt(dragged(numbered, 'hazard-1-far-from', -10.2, 0), 'hazards[0].from')).toBe(1190)
  })

  test('stops where the site would be none: at the barrier, at its other side and at its other end', () => {
    expect(valueAt(dragged(exampleSite, 'hazard-1-near-to', -90, -90), 'hazards[0]')).toMatchObject({
      from: '12+00',
      to: '12+00',
      near: 9,
    })
    expect(valueAt(dragged(exampleSite, 'hazard-1-far-to', 0, -90), 'hazards[0].far')).toBe(16)
  })

  test('leaves alone what did not move, however it was written', () => {
    const odd = withValue(exampleSite, 'hazards[0].far', 26.3)
    expect(valueAt(dragged(odd, 'hazard-1-far-from', 4, 0), 'hazards[0]')).toMatchObject({ from: '12+04', far: 26.3 })
  })
})

test('a key moves by a foot, with Shift by ten; a metric site by a quarter of a metre', () => {
  expect(valueAt(nudged(exampleSite, 'hazard-1-far-from', 0, 1), 'hazards[0].far')).toBe(27)
  expect(valueAt(nudged(exampleSite, 'hazard-1-far-to', 1, 0, 10), 'hazards[0].to')).toBe('12+34')
  const metric = withValue(inUnits(exampleSite, 'metric'), 'barrier.offset', 2.5)
  expect(valueAt(nudged(metric, 'barrier-offset', 0, 1), 'barrier.offset')).toBe(2.75)
})

describe('the barrier', () => {
  test('stays in front of the hazards', () => {
    expect(valueAt(dragged(exampleSite, 'barrier-offset', 0, 2), 'barrier.offset')).toBe(11)
    expect(valueAt(dragged(exampleSite, 'barrier-offset', 0, 50), 'barrier.offset')).toBe(16)
    expect(valueAt(dragged(exampleSite, 'barrier-offset', 0, -50), 'barrier.offset')).toBe(0)
  })

  test('is flared later the further the beginning of its flare is moved upstream', () => {
    expect(valueAt(dragged(exampleSite, 'flare-start', -12, 5), 'barrier.flare.parallelLength')).toBe(37)
    expect(valueAt(dragged(exampleSite, 'flare-start', 80, 0), 'barrier.flare.parallelLength')).toBe(0)
  })

  test('is flared more steeply the further the end of its flare is moved away', () => {
    // X - L_1 = 84.375 ft at 15:1 is 5.625 ft across; 8.4375 ft across is 10:1.
    expect(valueAt(dragged(exampleSite, 'flare', 0, 2.8125), 'barrier.flare.rate')).toBe(10)
    expect(valueAt(nudged(exampleSite, 'flare', 0, 1), 'barrier.flare.rate')).toBe(14)
  })
})
