import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type GroundUnit, groundFromMetres, groundUnits, metresFromGround } from '../../core/units/ground-unit.ts'
import type { SurveyPoint } from './survey-point.ts'
import { pointOrders, writePoints } from './write-points.ts'

const point: SurveyPoint = {
  name: '1',
  position: { easting: 30.48, northing: 60.96 },
  elevation: 3.048,
  code: 'POST',
  description: 'post, "first"\nof all',
}
const [northFirst, eastFirst] = pointOrders

describe('points as text', () => {
  it('is plain: order as named, four decimals, CRLF, no quotes, commas or line ends inside', () => {
    const written = writePoints([point], { order: northFirst, header: false, unit: 'foot' })
    expect(written).toBe('1,200.0000,100.0000,10.0000,POST post first of all\r\n')
  })

  it('puts easting first when asked, and names columns and unit in a header', () => {
    const written = writePoints([point], { order: eastFirst, header: true, unit: 'metre' })
    expect(written.split('\r\n')).toEqual([
      'point,easting (metre),northing (metre),elevation (metre),code',
      '1,30.4800,60.9600,3.0480,POST post first of all',
      '',
    ])
  })

  it('leaves an unknown height empty and a negative number a number', () => {
    const low = { ...point, position: { easting: -3.048, northing: -1e-9 }, elevation: null, description: '' }
    const written = writePoints([low], { order: northFirst, header: false, unit: 'foot' })
    expect(written).toBe('1,0.0000,-10.0000,,POST\r\n')
  })

  it('keeps to ASCII whatever the description holds', () => {
    const odd = { ...point, description: 'Böschung \u05e9\u05dc\u05d5\u05dd 🚧, 1⁄2' }
    const written = writePoints([odd], { order: northFirst, header: false, unit: 'foot' })
    expect(written).toMatch(/^[ -~]+\r\n$/)
    expect(written).toContain('Boschung')
    expect(written.split(',')).toHaveLength(5)
  })

  it('comes back to the same place to half a tenth of a thousandth of the unit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.constantFrom<GroundUnit>(...groundUnits),
        fc.constantFrom(...pointOrders),
        (easting, northing, unit, order) => {
          const written = writePoints([{ ...point, position: { easting, northing } }], { order, header: false, unit })
          const cells = written.split(',')
          const [n, e] = order === northFirst ? [cells[1], cells[2]] : [cells[2], cells[1]]
          expect(Math.abs(metresFromGround(Number(n), unit) - northing)).toBeLessThan(0.5001e-4)
          expect(Math.abs(metresFromGround(Number(e), unit) - easting)).toBeLessThan(0.5001e-4)
        },
      ),
      { seed: 9 },
    )
  })
})

describe('the two feet', () => {
  it('differ by 4 ft in 2,000,000 ft', () => {
    // 2,000,000 US survey feet are 609,601.2192 m
    const length = metresFromGround(2_000_000, 'US survey foot')
    expect(length).toBeCloseTo(609_601.2192, 4)
    expect(groundFromMetres(length, 'foot') - 2_000_000).toBeCloseTo(4, 3)
    expect(groundFromMetres(length, 'US survey foot')).toBe(2_000_000)
  })
})
