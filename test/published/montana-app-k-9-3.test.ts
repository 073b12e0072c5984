// Montana Department of Transportation, Road Design Manual, Appendix K "Example Calculations" (April 2021), p. 47,
// example 9-3, part (a), departure to the right: bridge end on a two-lane two-way road, obstacle beyond the clear zone,
// parallel rail at the edge of an 8-ft shoulder. Design speed 55 mi/h, AADT 4,750, lanes 12 ft, clear zone 34 ft, runout
// lengths interpolated between 50 and 60 mi/h to 185 ft. Printed: 141.5 ft, to one decimal.
//
// The printed answer of part (b), departure to the left, could not be read and is not tested here.
import { expect, test } from 'vitest'
import { readSite } from '../../src/formats/site/read-site.ts'
import { computeNeed } from '../../src/operations/compute-need.ts'

test('the length of need is 141.5 ft with a runout length of 185 ft', () => {
  const site = readSite(
    'site.json',
    JSON.stringify({
      format: 'lapwise-site/1',
      units: 'us',
      edition: 'rdg-2011',
      interpolateSpeeds: true,
      road: { speed: 55, adt: 4750, traffic: 'two-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 },
      clearZone: 34,
      hazards: [{ name: 'river', from: '10+00', to: '10+60', near: 8, beyondClearZone: true }],
      barrier: { offset: 8 },
    }),
  )
  if (!site.ok) throw new Error(JSON.stringify(site.error))
  const need = computeNeed(site.value)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  expect(need.value.unit).toBe('ft')
  expect(need.value.approach.runoutLength).toBe(185)
  expect(Math.abs(need.value.approach.lengthOfNeed - 141.5)).toBeLessThanOrEqual(0.05)
  expect(need.value.approach.lateralAtEnd).toBe(8)
  const runout = need.value.approach.sources.filter((source) => source.what === 'runout length')
  expect(runout.map(({ value, confirmation }) => [value, confirmation])).toEqual([
    [160, 'published'],
    [210, 'published'],
  ])
})
