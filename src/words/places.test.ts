import { describe, expect, it } from 'vitest'
import { nameOf } from '../core/hardware/sheet-text.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

const at = { id: 'anywhere', number: 2, alongInches: 0 }
const anchor = shippedSheets.find(({ id }) => id === 'trailing-anchor-31')!
const said: readonly (readonly [Place, string, string])[] = [
  [{ ...at, kind: 'post', own: null }, 'post 2', 'poste 2'],
  [
    { ...at, kind: 'post', number: 20, own: { number: 1, of: 'trailing anchor' } },
    'post 20 (post 1 of the trailing anchor)',
    'poste 20 (poste 1 del anclaje de salida)',
  ],
  [
    { ...at, kind: 'panel', own: { number: 2, of: 'bridge end' } },
    'panel 2 (panel 2 of the bridge end)',
    'panel 2 (panel 2 del extremo de puente)',
  ],
  [{ ...at, kind: 'space' }, 'between posts 2 and 3', 'entre los postes 2 y 3'],
  [{ ...at, kind: 'splice' }, 'splice 2, between panels 2 and 3', 'empalme 2, entre los paneles 2 y 3'],
  [
    { ...at, kind: 'unit', sheet: nameOf(anchor) },
    'second end, trailing-end anchor, 31 in',
    'segundo extremo, anclaje de salida, 31 in',
  ],
  [{ ...at, kind: 'run' }, 'the run', 'el tramo'],
]

describe('a place', () => {
  it.each(said)('%o is said in both languages', (place, inEnglish, inSpanish) => {
    expect(english(null).say(place)).toBe(inEnglish)
    expect(spanish(null).say(place)).toBe(inSpanish)
  })

  it('is said with what came out there', () => {
    const of = { kind: 'verdicts at place', place: said[0]![0], worst: 'fails', count: 2, applying: 7 } as const
    expect(english(null).say(of)).toBe('post 2: fails, 2 of 7')
    expect(spanish(null).say(of)).toBe('poste 2: no cumple, 2 de 7')
    expect(spanish(null).say({ ...of, worst: 'does not apply' })).toBe('poste 2: no aplica')
    const failing = { kind: 'fails at', places: [said[0]![0], said[6]![0]] } as const
    expect(english(null).say(failing)).toBe('Fails at: post 2; the run.')
    expect(spanish(null).say(failing)).toBe('No cumple en: poste 2; el tramo.')
  })
})
