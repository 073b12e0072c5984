import { describe, expect, it } from 'vitest'
import type { Unit } from '../core/units/quantity-kinds.ts'
import { english } from './english.ts'
import { inUnits } from './in-units.ts'

// An inch is 25.4 mm exactly (international yard and pound agreement, 1959); the products are worked out by hand.
describe('a value in the units asked for', () => {
  it.each<[number, Unit, string]>([
    [31, 'in', '787.4 mm'],
    [27.75, 'in', '704.85 mm'],
    [75, 'in', '1.905 m'],
    [112.5, 'in', '2.8575 m'],
    [5 / 8, 'in', '15.9 mm'],
    [1 / 16, 'in', '1.6 mm'],
    [0.984, 'in', '25 mm'],
    [-3, 'in', '-76.2 mm'],
    [2, 'ft', '609.6 mm'],
    [6, 'ft', '1.8288 m'],
    // 25 x 1.355 818 N·m = 33.895 N·m; 500 x 4.448 222 N = 2224.1 N (NIST SP 811, 2008, B.8).
    [25, 'lbf·ft', '33.9 N·m'],
    [500, 'lbf', '2.224 kN'],
    [1000, 'lbf', '4.448 kN'],
  ])('is for %d %s in a metric run %s', (value, unit, expected) => {
    expect(inUnits(value, unit, 'metric')).toBe(expected)
  })

  it.each<[number, Unit, string]>([
    [705, 'mm', '27.76 in'],
    [3.81, 'm', '12.5 ft'],
    [0.5, 'm', '19.69 in'],
    // 34 / 1.355 818 = 25.08 lbf·ft; 2000 / 4.448 222 = 449.6 lbf.
    [34, 'N·m', '25.1 lbf·ft'],
    [2, 'kN', '450 lbf'],
  ])('is for %d %s in a run in feet %s', (value, unit, expected) => {
    expect(inUnits(value, unit, 'us')).toBe(expected)
  })

  it('is none where it is published in them, or both systems have the unit alike', () => {
    for (const unit of ['mm', 'm', 'N·m', 'kN', '%', '°', 'count'] as const)
      expect(inUnits(8, unit, 'metric')).toBeNull()
    for (const unit of ['in', 'ft', 'lbf·ft', 'lbf', '%', '°', 'count'] as const)
      expect(inUnits(8, unit, 'us')).toBeNull()
    expect(inUnits(31, 'in', null)).toBeNull()
  })

  it('leads, and what is published stands behind it; alone where there is room for one', () => {
    const metric = english('metric')
    expect(metric.length(31, 'in')).toBe('787.4 mm (31 in)')
    expect(metric.feetInches(75)).toBe('1.905 m (6 ft 3 in)')
    expect(metric.measured(0.984, 'in')).toBe('25 mm (0.984 in)')
    expect(metric.written('6-ft', 6, 'ft')).toBe('1.8288 m (6-ft)')
    expect(metric.length(787, 'mm')).toBe('787 mm')
    expect(metric.short.feetInches(76)).toBe('1.9304 m')
    expect(metric.short.length(787, 'mm')).toBe('787 mm')
    expect(english('us').length(31, 'in')).toBe('31 in')
    expect(english(null).length(31, 'in')).toBe('31 in')
  })

  it('is said of what a text of a sheet marks, and of nothing else in it', () => {
    const own = 'Within {2 ft}: 5/8 x 1 1/4 in bolts, 3 in a row, {25 lbf·ft}, and 1,250 ft written out.'
    const said = (units: 'us' | 'metric') =>
      english(units).say({ kind: 'sheet text', sheet: 'one', version: '1.0.0', own, language: 'en', others: {} })
    expect(said('us')).toBe('Within 2 ft: 5/8 x 1 1/4 in bolts, 3 in a row, 25 lbf·ft, and 1,250 ft written out.')
    expect(said('metric')).toBe(
      'Within 609.6 mm (2 ft): 5/8 x 1 1/4 in bolts, 3 in a row, 33.9 N·m (25 lbf·ft), and 1,250 ft written out.',
    )
  })
})
