// Texas Department of Transportation, Roadway Design Manual, chapter 17, section 17.6.4, example problem 1: embankment on
// a two-lane two-way collector. ADT 500, shoulders 6 ft, clear zone 16 ft, side slope 1V:2H 10 ft high, hazard 125 ft
// long, guard fence 6 ft out. Below 750 vehicles a day that manual uses 200 ft for every speed; the site gives it as its
// runout length. The lane width, 11 ft, follows from the printed 17 ft from centreline to area of concern.
// Printed: L_u = 125 ft, L_d = 0.
import { expect, test } from 'vitest'
import { readSite } from '../../src/formats/site/read-site.ts'
import { computeNeed } from '../../src/operations/compute-need.ts'

test('125 ft upstream, nothing downstream', () => {
  const site = readSite(
    'site.json',
    JSON.stringify({
      format: 'lapwise-site/1',
      units: 'us',
      road: { speed: 45, adt: 500, traffic: 'two-way', lanes: 2, laneWidth: 11, shoulderWidth: 6 },
      clearZone: 16,
      runoutLength: 200,
      hazards: [{ name: 'embankment', from: '10+00', to: '11+25', near: 6, far: 26 }],
      barrier: { offset: 6 },
    }),
  )
  if (!site.ok) throw new Error(JSON.stringify(site.error))
  const need = computeNeed(site.value)
  if (!need.ok) throw new Error(JSON.stringify(need.error))
  const { approach, departure } = need.value
  expect(approach.lengthOfNeed).toBe(125)
  expect(departure?.lengthOfNeed).toBe(0)
  // 17 ft from the edge of opposing traffic, beyond its clear zone of 16 ft
  const outside = departure?.notes.map(({ note }) => note).find(({ kind }) => kind === 'hazard-outside-clear-zone')
  expect(outside).toMatchObject({ near: expect.closeTo(17 * 0.3048, 9), clearZone: expect.closeTo(16 * 0.3048, 9) })
})
