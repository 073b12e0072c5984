import { describe, expect, it } from 'vitest'
import { metresFromGround } from '../../core/units/ground-unit.ts'
import { isInArea, loadReferenceSystem, type ReferenceSystem, toGeographic } from './reference-system.ts'

async function loaded(code: number): Promise<ReferenceSystem> {
  const found = await loadReferenceSystem(code)
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

describe('a reference system', () => {
  it('takes the kind of foot from the index', async () => {
    expect((await loaded(2260)).unit).toBe('US survey foot')
    expect((await loaded(2222)).unit).toBe('foot')
    expect((await loaded(32618)).unit).toBe('metre')
  })

  it('agrees with cs2cs on a point of New York East', async () => {
    // cs2cs EPSG:4269 EPSG:2260 at 41 N, 74 W gives 630128.2058, 789591.5210 US survey feet
    const system = await loaded(2260)
    const point = {
      easting: metresFromGround(630128.2058, 'US survey foot'),
      northing: metresFromGround(789591.521, 'US survey foot'),
    }
    const [longitude, latitude] = toGeographic(system, point)
    expect(longitude).toBeCloseTo(-74, 8)
    expect(latitude).toBeCloseTo(41, 8)
    expect(isInArea(system, [longitude, latitude])).toBe(true)
    const swapped = toGeographic(system, { easting: point.northing, northing: point.easting * 5 })
    expect(isInArea(system, swapped)).toBe(false)
  })

  it.each([
    // NAD27 / Montana North; WGS 84; a code that nobody gave; a Clarke's foot
    [32001, 'datum-needs-grids'],
    [4326, 'not-projected'],
    [1, 'unknown-code'],
    [2.5, 'unknown-code'],
    [2155, 'unknown-code'],
    [2314, 'unit-not-supported'],
  ])('refuses EPSG %f: %s', async (code, kind) => {
    const found = await loadReferenceSystem(code)
    expect(found.ok ? 'found' : found.error.kind).toBe(kind)
  })
})
