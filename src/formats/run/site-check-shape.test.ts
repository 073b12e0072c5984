import { expect, test } from 'vitest'
import { checksOfEveryKind } from '../../../test/cases/spanish/gather-sites.ts'
import { fit } from '../../words/en/fit.ts'
import { hardware } from '../../words/en/hardware.ts'
import { checkShape } from '../read-json.ts'
import { siteCheckShape } from './site-check-shape.ts'

const shape = siteCheckShape()
const checks = checksOfEveryKind()

/** Kinds of what a check says of its own; those of hardware are a part of them. */
const kindsIn = (value: unknown): readonly string[] =>
  typeof value === 'object' && value !== null
    ? [...('kind' in value ? [String(value.kind)] : []), ...Object.values(value).flatMap(kindsIn)]
    : []

test('every check comes back as it was written', () => {
  for (const check of checks) {
    const written: unknown = JSON.parse(JSON.stringify(check))
    expect(checkShape('check', written, shape)).toEqual({ ok: true, value: check })
  }
})

test('every kind that a check can say is tried', () => {
  const tried = new Set(checks.flatMap(kindsIn))
  expect(Object.keys(fit).filter((kind) => !tried.has(kind))).toEqual([])
  expect(Object.keys(hardware).filter((kind) => tried.has(kind)).length).toBeGreaterThan(3)
})

test.each([
  ['a kind that nobody says', { what: { kind: 'colour of rail' } }],
  ['a value without its length', { value: { kind: 'length there is' } }],
  ['a field that does not exist', { what: { kind: 'length of run', of: 'rail' } }],
  ['a length between the nanometres', { value: { kind: 'length there is', length: 0.5 } }],
  ['a verdict that no check has', { verdict: 'too close' }],
  ['a sheet text in a language that nothing is said in', { what: sheetAtEnd('xx') }],
])('refuses %s', (_, changes) => {
  const one = checks.find(({ verdict }) => verdict === 'fails')
  expect(checkShape('check', { ...one, ...changes }, shape).ok).toBe(false)
  expect(checkShape('check', one, shape).ok).toBe(true)
})

function sheetAtEnd(language: string) {
  const sheet = { kind: 'sheet text', sheet: 'a', version: '1', own: 'a', language, others: {} }
  return { kind: 'sheet at end', sheet, end: 'approach' }
}
