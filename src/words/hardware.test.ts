import { describe, expect, it } from 'vitest'
import { endExposure, testAnswerSaying } from '../core/hardware/hardware-saying.ts'
import type { Criteria } from '../core/hardware/hardware-sheet.ts'
import { findTest, type WorkAtHand } from '../core/hardware/tested-criteria.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

const test = (standard: Criteria['standard'], edition: number, testLevel: number): Criteria => ({
  ...{ standard, edition, testLevel },
  ...{ source: 'maker', confirmation: 'published' },
})
const late: WorkAtHand = { work: 'new', letting: '2026-01-15', speed: { value: 65, unit: 'mi/h' } }

function answerTo(criteria: readonly Criteria[], changes: Partial<WorkAtHand>, print = english(null)): string {
  const [hardware, at] = [{ category: 'W-beam terminal', criteria } as const, { ...late, ...changes }]
  return print.say(testAnswerSaying(hardware, at, findTest(hardware, at)))
}

describe('what is said of a crash test', () => {
  const old = [test('NCHRP 350', 1993, 3)]

  it('has the conditions wherever a date decides, on either side of it', () => {
    for (const letting of ['2018-06-30', '2018-07-01', null])
      expect(answerTo(old, { letting })).toMatch(
        /2018-06-30 .*contracts on the National Highway System; exceptions by memorandum exist; a state's own date/,
      )
    expect(answerTo(old, { work: 'standing' })).not.toContain('2018-06-30')
  })

  it('names what covers the work, what is missing and what nobody said', () => {
    const mash = [test('MASH', 2016, 3)]
    expect(answerTo(mash, { speed: null })).toBe(
      'tested to MASH 2016, test level 3, which is enough for any work and speed',
    )
    expect(answerTo(mash, { work: 'standing' })).toBe(
      'tested to MASH 2016, test level 3; needed is one test at level 3 or higher, for 65 mi/h; standing work: the letting date does not apply',
    )
    expect(answerTo([test('MASH', 2016, 2)], {})).toMatch(
      /^no one test is enough: tested to MASH 2016, test level 2; needed is one test to MASH 2016 or later at level 3 or higher/,
    )
    expect(answerTo([], { work: 'standing', speed: null }, spanish(null))).toBe(
      'no se dice: un ensayo de choque en la ficha; hace falta un ensayo al nivel para la velocidad de la vía; obra existente: la fecha de adjudicación no aplica',
    )
  })
})

it('an end is said with the traffic that reaches it', () => {
  const at = (kind: 'terminal' | 'bridge end', end: 'approach' | 'departure', opposingReaches: boolean | null) =>
    english(null).say(endExposure({ crashworthy: false, kind }, { end, opposingReaches }))
  expect(at('terminal', 'approach', null)).toBe('not crashworthy; adjacent traffic meets it first')
  expect(at('bridge end', 'departure', false)).toBe('not crashworthy; traffic passes along it')
  expect(at('terminal', 'departure', false)).toBe('not crashworthy; opposing traffic cannot reach it')
  expect(at('terminal', 'departure', null)).toBe('not crashworthy; not said whether opposing traffic can reach it')
})
