import { describe, expect, it } from 'vitest'
import { inBothUnits, inOneUnit } from './in-both-units.ts'

// An inch is 25.4 mm exactly (international yard and pound agreement, 1959); the products are worked out by hand.
describe('inBothUnits', () => {
  it.each([
    ['30 in to 32 in, 31 in nominal', '30 in (762 mm) to 32 in (812.8 mm), 31 in (787.4 mm) nominal'],
    ['30 in a 32 in, nominal 31 in', '30 in (762 mm) a 32 in (812.8 mm), nominal 31 in (787.4 mm)'],
    ['at least 27 3/4 in', 'at least 27 3/4 in (704.85 mm)'],
    ['The posts stand 6 ft 3 in apart', 'The posts stand 6 ft 3 in (1.905 m) apart'],
    ['a 9 ft 4 1/2 in panel', 'a 9 ft 4 1/2 in (2.8575 m) panel'],
    ['5/8 in', '5/8 in (15.9 mm)'],
    ['1/16 in', '1/16 in (1.6 mm)'],
    ['0.984 in inside', '0.984 in (25 mm) inside'],
    ['slots of 4-in and 6-ft posts', 'slots of 4-in (101.6 mm) and 6-ft (1.8288 m) posts'],
    ['less than 2 ft of the break', 'less than 2 ft (609.6 mm) of the break'],
    ['-3 in', '-3 in (-76.2 mm)'],
    // 25 x 1.355 818 N·m = 33.895 N·m; 500 x 4.448 222 N = 2224.1 N (NIST SP 811, 2008, B.8).
    ['at least 25 lbf·ft', 'at least 25 lbf·ft (33.9 N·m)'],
    ['500 lbf to 1000 lbf', '500 lbf (2.224 kN) to 1000 lbf (4.448 kN)'],
  ])('puts metres beside %s', (text, expected) => {
    expect(inBothUnits(text, 'metric')).toBe(expected)
  })

  it.each([
    '787 mm',
    '55 mi/h',
    '1V:10H',
    'splices 3, 4 in the run',
    'at most 3 in a row',
    '5/8 x 1 1/4 in bolts',
    '12+37.50',
    '±0.5 mm',
    '2.5 %',
    '34 N·m',
    '2 kN',
    '15° to 20°',
    '31 in (787.4 mm)',
    'a 9 ft 4 1/2 in (2.8575 m) panel',
  ])('leaves %s as it is for a metric run', (text) => {
    expect(inBothUnits(text, 'metric')).toBe(text)
  })

  it('puts inches and feet beside metres', () => {
    expect(inBothUnits('at least 705 mm', 'us')).toBe('at least 705 mm (27.76 in)')
    expect(inBothUnits('3.81 m long', 'us')).toBe('3.81 m (12.5 ft) long')
    // 34 / 1.355 818 = 25.08 lbf·ft; 2000 / 4.448 222 = 449.6 lbf.
    expect(inBothUnits('at least 34 N·m', 'us')).toBe('at least 34 N·m (25.1 lbf·ft)')
    expect(inBothUnits('2 kN', 'us')).toBe('2 kN (450 lbf)')
    expect(inBothUnits('30 in to 32 in', 'us')).toBe('30 in to 32 in')
  })

  it('puts metres in the place of inches where there is room for one', () => {
    expect(inOneUnit('> 6 ft 4 in', 'metric')).toBe('> 1.9304 m')
    expect(inOneUnit('25 lbf·ft', 'metric')).toBe('33.9 N·m')
    expect(inOneUnit('787 mm', 'metric')).toBe('787 mm')
  })
})
