import { expect, it } from 'vitest'
import type { Note } from '../core/need/note.ts'
import { metres } from '../core/units/quantity.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

const said = (note: Note, print = english(null), units: 'us' | 'metric' = 'us') =>
  print.say({ kind: 'note on need', note, units, direction: null })

// 12.192 m = 40 ft and 9.144 m = 30 ft, exact
const outside = {
  kind: 'hazard-outside-clear-zone',
  hazard: 'pier',
  near: metres(12.192),
  clearZone: metres(9.144),
} as const

it('a note is said in the units of its site, whatever units are asked for', () => {
  expect(said(outside)).toBe(
    'pier begins 40 ft from the edge of this traffic, beyond its clear zone of 30 ft: not shielded.',
  )
  expect(said(outside, english('metric'))).toBe(said(outside))
  expect(said(outside, english(null), 'metric')).toContain('12.19 m from the edge')
})

it('a hazard keeps the name that a person gave it, in every language', () => {
  expect(said({ ...outside, hazard: 'barrier, 40 ft off' }, spanish('metric'))).toBe(
    'barrier, 40 ft off empieza a 40 ft del borde de este tránsito, más allá de su zona despejada de 30 ft: no se protege.',
  )
})

it('where notes of both directions stand together, a note says whose it is', () => {
  const note = { kind: 'flare-on-curve' } as const
  expect(english(null).say({ kind: 'note on need', note, units: 'us', direction: 'departure' })).toBe(
    'Departure: A flare is generally not used on a curve.',
  )
})

it('what would be enough is named after what is missing', () => {
  const cut = {
    ...({ kind: 'driveway-cuts-run', driveway: 'gate', available: metres(24.384), shortfall: metres(6.096) } as const),
    alternatives: [
      { change: 'flare', rate: 12.345, steeperThanLimit: 14 },
      { change: 'barrier offset', to: metres(3.6576) },
    ],
  } as const
  expect(said(cut)).toBe(
    'gate cuts the run: 80 ft can stand, 20 ft are missing. Enough would be: a flare of 12.35:1 (steeper than the suggested 14:1); or the barrier at 12 ft.',
  )
  expect(said({ ...cut, alternatives: [] })).toBe('gate cuts the run: 80 ft can stand, 20 ft are missing.')
})

it('a cell of a table is named by row and column', () => {
  const cell = {
    kind: 'table cell',
    table: 'Table 1',
    parts: [
      { kind: 'speed', speed: 60, unit: 'mi/h', upTo: true },
      { kind: 'volume', from: 1500, to: 6000 },
      { kind: 'slope', slope: 'foreslope', steepest: 4, flattest: 5 },
    ],
    confirmedBy: 'another book',
  } as const
  expect(english(null).say(cell)).toBe(
    'Table 1, up to 60 mi/h, ADT 1,500 to 6,000, foreslope 1V:5H to 1V:4H; confirmed by another book',
  )
  expect(spanish(null).say(cell)).toBe(
    'Table 1, hasta 60 mi/h, TPDA 1,500 a 6,000, talud descendente 1V:5H a 1V:4H; confirmado por another book',
  )
})
