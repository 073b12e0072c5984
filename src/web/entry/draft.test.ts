import { describe, expect, test } from 'vitest'
import { type Draft, draftAnswer, emptyDraft, isEmpty } from './draft.ts'

const draft = (changes: Partial<Draft>): Draft => ({ ...emptyDraft, ...changes })

describe('draftAnswer', () => {
  test('is no answer before anything is given', () => {
    for (const kind of ['measure', 'choose', 'confirm', 'record'] as const)
      expect(draftAnswer(emptyDraft, kind, 'in')).toEqual({ ok: false, error: { kind: 'nothing given' } })
    expect(isEmpty(emptyDraft)).toBe(true)
  })

  test('reads a length in the unit of the run when none is written', () => {
    const value = (text: string, unit: 'in' | 'mm') => draftAnswer(draft({ text }), 'measure', unit)
    expect(value('27¾', 'in')).toMatchObject({ ok: true, value: { kind: 'length', value: 704_850_000, unit: 'in' } })
    expect(value('787', 'mm')).toMatchObject({ ok: true, value: { kind: 'length', value: 787_000_000, unit: 'mm' } })
    expect(value('6-3', 'in')).toMatchObject({
      ok: false,
      error: { kind: 'no length', problem: { kind: 'ambiguous' } },
    })
  })

  test('does not take a no for nothing', () => {
    expect(draftAnswer(draft({ yes: false }), 'confirm', 'in')).toEqual({
      ok: true,
      value: { kind: 'confirmed', yes: false },
    })
  })

  test('asks for the reason when a requirement is set aside', () => {
    const setAside = draft({ mode: 'does not apply', because: '  ' })
    expect(draftAnswer(setAside, 'measure', 'in')).toEqual({ ok: false, error: { kind: 'no reason given' } })
    expect(draftAnswer({ ...setAside, because: ' no cable ' }, 'record', 'in')).toEqual({
      ok: true,
      value: { kind: 'does not apply', because: 'no cable' },
    })
  })
})
