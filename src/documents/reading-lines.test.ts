import { describe, expect, test } from 'vitest'
import { sampleInput, sampleReading } from '../../test/fixtures/record-inputs.ts'
import { instruments } from '../core/measurement/instruments.ts'
import type { Answer, Reading } from '../core/measurement/reading.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { english } from '../words/english.ts'
import { readingLine } from './reading-lines.ts'

const reading = (answer: Answer, of = 'post-3/rail-height'): Reading =>
  sampleReading('r1', of, answer, { instrument: 'tape', uncertainty: { value: 0.125, unit: 'in' } })

const length = (value: number, unit: 'in' | 'mm' | 'ft', resolution: number | null): Answer => ({
  kind: 'measured',
  value: exactLength(value, unit),
  unit,
  resolution: resolution === null ? null : exactLength(resolution, unit),
})

const { nameOf } = sampleInput(() => [])
const input = { instruments, nameOf, judgement: { withoutEffect: [] }, print: english(null) }
const answerOf = (answer: Answer): string => readingLine(reading(answer), undefined, input).answer

describe('readingLine', () => {
  test('gives a length in its own unit, and its resolution where the reader stated one', () => {
    expect(answerOf(length(27.75, 'in', null))).toBe('27 3/4 in')
    expect(answerOf(length(28, 'in', 1 / 8))).toBe('28 in (read to 1/8 in)')
    expect(answerOf(length(27.3, 'in', null))).toBe('27.3 in')
    expect(answerOf(length(705, 'mm', 5))).toBe('705 mm (read to 5 mm)')
    expect(answerOf(length(12.5, 'ft', null))).toBe('12.5 ft')
  })

  test('says on which side an offset lies, or that nobody said it', () => {
    const offset = (side?: 'away' | 'toward', value = 48): string => {
      const answer = { ...length(value, 'in', null), ...(side === undefined ? {} : { side }) } as Answer
      return readingLine(reading(answer, 'post-1/flare-offset'), undefined, input).answer
    }
    expect(offset('away')).toBe('48 in away from traffic')
    expect(offset('toward')).toBe('48 in toward traffic')
    expect(offset()).toBe('48 in, side not stated')
    expect(offset(undefined, 0)).toBe('0 in')
  })

  test('says in words what is no length', () => {
    expect(answerOf({ kind: 'confirmed', yes: false })).toBe('not confirmed')
    expect(answerOf({ kind: 'cannot see' })).toBe('could not be seen')
    expect(answerOf({ kind: 'does not apply', because: 'no curb here' })).toBe('does not apply: no curb here')
  })

  test('gives a note as its person wrote it', () => {
    const noted = { ...reading(length(31, 'in', null)), note: 'post leans, 1,250 ft from the bridge' }
    expect(readingLine(noted, undefined, input).note).toBe('post leans, 1,250 ft from the bridge')
    expect(readingLine(reading(length(31, 'in', null)), undefined, input).note).toBeNull()
  })

  test('names instrument, stated uncertainty and time in words', () => {
    const line = readingLine(reading(length(31, 'in', null)), undefined, input)
    expect(line).toMatchObject({
      instrument: 'steel tape',
      uncertainty: 'u = 1/8 in (k = 1), stated',
      at: '2016-05-12 10:05 -06:00',
    })
  })
})
