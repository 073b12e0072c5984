import { describe, expect, it } from 'vitest'
import { clearZoneWidth } from '../../src/core/need/clear-zone.ts'
import type { Findings } from '../../src/core/need/look-up.ts'
import { designTables } from '../../src/core/need/tables/design-tables.ts'
import type { Site } from '../../src/core/site/site.ts'
import { hardwareNotSaid } from '../fixtures/hardware-not-said.ts'

/** AASHTO, Errata to Roadside Design Guide, 4th Edition: page 3-3 and example 3-D, as printed there, in its units. */

interface Place {
  readonly units: 'us' | 'metric'
  readonly edition: Site['edition']
  readonly speed: number
  readonly adt: number
  readonly slope: 'foreslope' | 'backslope'
  readonly run: number
}

function cellAt({ units, edition, speed, adt, slope, run }: Place) {
  const look = (take: 'low' | 'high') => {
    const findings: Findings = { found: [], notes: [] }
    const site: Site = {
      ...{ units, edition, interpolateSpeeds: false, runoutOnCurves: 'edge' },
      clearZone: { kind: 'slope', slope, run, take },
      road: {
        ...{ speed, adt, traffic: 'two-way', lanes: 2, laneWidth: 3.6, shoulderWidth: 2, medianWidth: null },
        alignment: { kind: 'straight' },
      },
      ...{ runoutLength: null, shyLine: null, flareLimits: null, side: 'right', hazards: [] },
      barrier: { offset: 3, flare: null, approachEnd: null, departureEnd: null },
      ...{ driveways: [], hardware: hardwareNotSaid, sheets: [] },
    }
    const width = clearZoneWidth(site, designTables(edition, units), null, findings)
    if (!width.ok) throw new Error(JSON.stringify(width.error))
    return findings.found[0]!
  }
  const [low, high] = [look('low'), look('high')]
  return { range: [low.value, high.value], confirmation: high.confirmation, source: high.source, remark: high.remark }
}

const slow = { units: 'us', edition: 'rdg-2011', speed: 40, adt: 1000, slope: 'backslope', run: 3 } as const

describe('the clear zone at 40 mi/h and below', () => {
  // printed: under 750 7-10; corrected from 12-14, 14-16, 16-18 to 10-12, 12-14, 14-16 in all three backslope columns
  const rows = [
    [500, [7, 10]],
    [1000, [10, 12]],
    [3000, [12, 14]],
    [7000, [14, 16]],
  ] as const
  it.each(rows.flatMap(([adt, range]) => [3, 4, 6].map((run) => [adt, run, range] as const)))(
    'at %d vehicles a day on a backslope of 1V:%dH is %o, as corrected',
    (adt, run, range) => {
      for (const edition of ['rdg-2011', 'rdg-2006'] as const)
        expect(cellAt({ ...slow, edition, adt, run }).range).toEqual(range)
      expect(cellAt({ ...slow, adt, run })).toMatchObject({
        confirmation: 'published',
        source: { confirmedBy: expect.stringContaining('Errata to Roadside Design Guide, 4th Edition') },
      })
    },
  )

  it('is confirmed there for backslopes of the 2011 edition only', () => {
    expect(cellAt({ ...slow, slope: 'foreslope', run: 6 }).confirmation).toBe('from memory')
    expect(cellAt({ ...slow, edition: 'rdg-2006' }).confirmation).toBe('from memory')
    expect(cellAt({ ...slow, speed: 45 }).confirmation).toBe('from memory')
    for (const edition of ['rdg-2011', 'rdg-2006'] as const)
      expect(cellAt({ ...slow, edition }).remark).toEqual({ kind: 'first printing differs' })
  })
})

// example 3-D: 9 to 10.5 m [30 to 34 ft]
it.each([
  ['us', 70, [30, 34]],
  ['metric', 110, [9, 10.5]],
] as const)('the clear zone of example 3-D, in %s units', (units, speed, range) => {
  const place = { units, edition: 'rdg-2011', speed, adt: 7000, slope: 'foreslope', run: 6 } as const
  expect(cellAt(place)).toMatchObject({ range, confirmation: 'published' })
  expect(cellAt({ ...place, adt: 6000 }).confirmation).toBe('from memory')
})
