import { describe, expect, test } from 'vitest'
import type { Unit } from '../../core/units/quantity-kinds.ts'
import { type Draft, draftAnswer, emptyDraft, isEmpty } from './draft.ts'

const draft = (changes: Partial<Draft>): Draft => ({ ...emptyDraft, ...changes })

describe('draftAnswer', () => {
  test('is no answer before anything is given', () => {
    for (const kind of ['measure', 'choose', 'confirm', 'record'] as const)
      expect(draftAnswer(emptyDraft, kind, 'in', false)).toEqual({ ok: false, error: { kind: 'nothing given' } })
    expect(isEmpty(emptyDraft)).toBe(true)
  })

  test('reads a length in the unit of the run when none is written', () => {
    const value = (text: string, unit: 'in' | 'mm') => draftAnswer(draft({ text }), 'measure', unit, false)
    expect(value('27¾', 'in')).toMatchObject({ ok: true, value: { kind: 'measured', value: 704_850_000, unit: 'in' } })
    expect(value('787', 'mm')).toMatchObject({ ok: true, value: { kind: 'measured', value: 787_000_000, unit: 'mm' } })
    expect(value('6-3', 'in')).toMatchObject({
      ok: false,
      error: { kind: 'no value', problem: { kind: 'length', problem: { kind: 'ambiguous' } } },
    })
  })

  test('reads what else is asked for in its own unit, and takes no other quantity for it', () => {
    const value = (text: string, unit: Unit) => draftAnswer(draft({ text }), 'measure', unit, false)
    expect(value('25', 'lbf·ft')).toEqual(value('25 lbf·ft', 'lbf·ft'))
    expect(value('34', 'N·m')).toMatchObject({ ok: true, value: { value: 34e9, unit: 'N·m' } })
    expect(value('-2.5', '%')).toMatchObject({ ok: true, value: { value: -2_500_000, unit: '%' } })
    expect(value('8', 'count')).toMatchObject({ ok: true, value: { value: 8, unit: 'count' } })
    expect(value('7.5', 'count')).toMatchObject({ ok: false, error: { problem: { kind: 'not whole' } } })
    for (const [text, unit] of [
      ['25 in', 'lbf·ft'],
      ['25 lbf', 'lbf·ft'],
      ['3°', '%'],
      ['8 %', 'in'],
    ] as const)
      expect(value(text, unit)).toEqual({ ok: false, error: { kind: 'another quantity' } })
  })

  test('of an offset is none without its side, whichever it is, and nothing is chosen for anybody', () => {
    const offset = (text: string, side: Draft['side']) => draftAnswer(draft({ text, side }), 'measure', 'in', true)
    expect(offset('48', null)).toEqual({ ok: false, error: { kind: 'no side given' } })
    expect(offset('48', 'away')).toMatchObject({ ok: true, value: { value: 1_219_200_000, side: 'away' } })
    expect(offset('12', 'toward')).toMatchObject({ ok: true, value: { value: 304_800_000, side: 'toward' } })
    expect(offset('-12', 'away')).toEqual({ ok: false, error: { kind: 'offset below zero' } })
    // 0 lies on no side.
    expect(offset('0', null)).toEqual(draftAnswer(draft({ text: '0' }), 'measure', 'in', false))
    expect(isEmpty(draft({ side: 'away' }))).toBe(false)
  })

  test('does not take a no for nothing', () => {
    expect(draftAnswer(draft({ yes: false }), 'confirm', 'in', false)).toEqual({
      ok: true,
      value: { kind: 'confirmed', yes: false },
    })
  })

  test('asks for the reason when a requirement is set aside', () => {
    const setAside = draft({ mode: 'does not apply', because: '  ' })
    expect(draftAnswer(setAside, 'measure', 'in', false)).toEqual({ ok: false, error: { kind: 'no reason given' } })
    expect(draftAnswer({ ...setAside, because: ' no cable ' }, 'record', 'in', false)).toEqual({
      ok: true,
      value: { kind: 'does not apply', because: 'no cable' },
    })
  })
})
