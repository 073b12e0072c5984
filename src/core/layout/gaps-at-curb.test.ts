import { expect, it } from 'vitest'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { doubledRail, gapsThatDependOnCurb } from './gaps-at-curb.ts'
import type { Layout } from './layout.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
const [single, longSpan] = system.omissions as [(typeof system.omissions)[number], (typeof system.omissions)[number]]

// report results 357 and 395: 37 ft 6 in doubled at a curb; of a long span there nothing is said
it('rail over a gap is doubled at a curb by what the sheet says of one, and otherwise by what it says of the gap', () => {
  expect([undefined, 'none', 'present'].map((curb) => doubledRail(single, curb as 'none'))).toEqual([0, 0, 450])
  expect(doubledRail(longSpan, 'none')).toBe(0)
  expect(doubledRail(longSpan, 'present')).toBeNull()
  expect(doubledRail({ ...single, nestedAtCurb: undefined }, 'present')).toBeNull()
})

it('a gap hangs on the curb where a curb would change it; the posts left out for one thing are one gap', () => {
  const omitted = [
    { alongInches: 75, obstructions: ['a'], rule: 'long span' },
    { alongInches: 150, obstructions: ['a'], rule: 'long span' },
    { alongInches: 1500, obstructions: ['b'], rule: 'single' },
    { alongInches: 3000, obstructions: ['c', 'd'], rule: 'long span' },
    { alongInches: 3075, obstructions: ['c', 'd'], rule: 'long span' },
    { alongInches: 4500, obstructions: ['c', 'e'], rule: 'long span' },
  ]
  const gaps = gapsThatDependOnCurb({ omitted } as unknown as Layout, system)
  expect(
    gaps.map(({ obstructions, omitted: posts, doubled }) => [
      obstructions.join('+'),
      posts.map((one) => one.alongInches),
      doubled,
    ]),
  ).toEqual([
    ['b', [1500], 450],
    ['a', [75, 150], null],
    ['c+d', [3000, 3075], null],
    ['c+e', [4500], null],
  ])
  const alike = { ...single, nestedAtCurb: { ...(single.nestedAtCurb as { inches: number }), inches: 0 } }
  expect(
    gapsThatDependOnCurb({ omitted } as unknown as Layout, { ...system, omissions: [alike as typeof single] }),
  ).toEqual([])
})
