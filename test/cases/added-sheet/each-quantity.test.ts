import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { remedyOf } from '../../../src/core/verdicts/saying.ts'
import { secondReading } from '../../../src/core/verdicts/second-reading.ts'
import { recordContents } from '../../../src/documents/record-contents.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { readingsFromValue, readReadings, writeReadings } from '../../../src/formats/readings/readings-file.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { type JudgedRun, judgeReadings } from '../../../src/operations/judge-readings.ts'
import type { RequiredRun } from '../../../src/operations/require-by.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { recordInput } from '../../../src/operations/write-record.ts'
import { english } from '../../../src/words/english.ts'
import type { Print } from '../../../src/words/print.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { noSide } from '../../fixtures/record-inputs.ts'

/** The invented terminal of the other test, with a part that has one rule for each kind of quantity. */
const parsed = (name: string) => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'))
const terminal = parsed('invented-terminal-31.json')
const sheet = { ...terminal, parts: [...terminal.parts, parsed('rules-of-each-quantity.json')] }

const runWith = (more: object): RequiredRun => {
  const run = {
    format: 'lapwise-run/1',
    name: 'a run with a rule of each quantity',
    system: 'w-beam-midspan-31',
    first: { sheet: 'trailing-anchor-31' },
    second: { sheet: sheet.id },
    need: { from: 0, to: 1200 },
    sheets: [sheet],
    ...more,
  }
  const read = runFromValue('run.json', run)
  const result = read.ok ? requireRun('run.json', read.value) : read
  if (!result.ok) throw new Error(result.error.map((one) => printProblem(one, english(null))).join('\n'))
  return result.value
}

const guarded = runWith({})
const simple = runWith({ decisionRule: { kind: 'simple' } })

type Given = Readonly<Record<string, unknown>>

/** The run judged with these readings, each given by the topic that it is of, or why they are refused. */
function judge(required: RequiredRun, ...given: readonly Given[]): JudgedRun | readonly string[] {
  const file = {
    format: 'lapwise-readings/2',
    run: required.run.name,
    visit: { by: 'R. Quist', at: '2026-01-01T10:00' },
    readings: given.map(({ topic, ...rest }) => ({ of: idOf(required, topic), ...rest })),
  }
  const read = readingsFromValue('readings.json', file)
  if (!read.ok) return read.error.map((one) => printProblem(one, english(null)))
  const again = readReadings('readings.json', writeReadings(read.value))
  expect(again).toEqual(read)
  const judged = judgeReadings('readings.json', required, read.value.readings)
  return judged.ok ? judged.value : judged.error.map((one) => printProblem(one, english(null)))
}

const idOf = ({ requirements }: RequiredRun, topic: unknown): string =>
  requirements.find((one) => one.topic === topic)!.id

function judged(required: RequiredRun, ...given: readonly Given[]): JudgedRun {
  const result = judge(required, ...given)
  if (!('judgement' in result)) throw new Error(result.join('\n'))
  return result
}

const verdictOf = (required: RequiredRun, given: Given) => {
  const id = idOf(required, given.topic)
  return judged(required, given).judgement.verdicts.find(({ requirement }) => requirement === id)!
}

describe('a rule of each quantity under simple acceptance', () => {
  it.each([
    ['tell-tale-gap', '30 mm', '29.9 mm', '30.1 mm'],
    ['cross-slope', '10 %', '9.9 %', '10.1 %'],
    ['cable-angle', '30°', '29.9°', '30.1 deg'],
    ['cable-angle', '10°', '10.1°', '9.9°'],
    ['nut-torque', '25 lbf·ft', '25.1 lbf-ft', '24.9 ft-lb'],
    // 25 lbf·ft are 33.895 448 708 N·m.
    ['nut-torque', '33.895449 N·m', '33.9 N·m', '33.8 Nm'],
    ['cable-tension', '2 kN', '2.01 kN', '1.99 kN'],
    // 2 kN are 449.6179 lbf.
    ['cable-tension', '449.618 lbf', '450 lbf', '449 lbf'],
  ])('%s: %s on the limit and %s inside meet, %s outside fails', (topic, at, inside, outside) => {
    const verdicts = [at, inside, outside].map((value) => verdictOf(simple, { topic, value }).verdict)
    expect(verdicts).toEqual(['meets', 'meets', 'fails'])
  })

  it('a count meets as itself and fails one below and one above', () => {
    const counted = (value: number) => verdictOf(simple, { topic: 'bracket-nuts', value, unit: 'count' }).verdict
    expect([6, 5, 7].map(counted)).toEqual(['meets', 'fails', 'fails'])
  })
})

describe('a rule of each quantity with a guard band of U = 2u', () => {
  // Worked by hand. Digital level: u = sqrt(0.1² + 0.1²/12) % = 0.1041 %, U = 0.2082 %.
  // Angle gauge: u = sqrt(0.2² + 0.1²/12)° = 0.2021°, U = 0.4041°.
  // Torque wrench: u² = (0.04/sqrt(3) v)² + (1 lbf·ft)²/12: U(26.3) = 1.345, U(26.4) = 1.349, U(23.8) = 1.242, U(23.7) = 1.238.
  // Tension gauge: u² = (0.03 v)² + (20 lbf)²/12, 20 lbf being 0.08896 kN: U(2.1) = 0.1361, U(2.2) = 0.1416, U(1.8) = 0.1196.
  it.each([
    ['cross-slope', '9.8 %', 'digital-level', 'too close'],
    ['cross-slope', '9.7 %', 'digital-level', 'meets'],
    ['cross-slope', '10.2 %', 'digital-level', 'too close'],
    ['cross-slope', '10.3 %', 'digital-level', 'fails'],
    ['cable-angle', '10.4°', 'angle-gauge', 'too close'],
    ['cable-angle', '10.5°', 'angle-gauge', 'meets'],
    ['cable-angle', '9.6°', 'angle-gauge', 'too close'],
    ['cable-angle', '9.5°', 'angle-gauge', 'fails'],
    ['nut-torque', '26.3 lbf·ft', 'torque-wrench', 'too close'],
    ['nut-torque', '26.4 lbf·ft', 'torque-wrench', 'meets'],
    ['nut-torque', '23.8 lbf·ft', 'torque-wrench', 'too close'],
    ['nut-torque', '23.7 lbf·ft', 'torque-wrench', 'fails'],
    ['cable-tension', '2.1 kN', 'tension-gauge', 'too close'],
    ['cable-tension', '2.2 kN', 'tension-gauge', 'meets'],
    ['cable-tension', '494.58 lbf', 'tension-gauge', 'meets'],
    ['cable-tension', '1.8 kN', 'tension-gauge', 'fails'],
  ])('%s %s with %s: %s', (topic, value, instrument, verdict) => {
    expect(verdictOf(guarded, { topic, value, instrument }).verdict).toBe(verdict)
  })

  it('what is counted has no doubt', () => {
    const counted = (value: number) => verdictOf(guarded, { topic: 'bracket-nuts', value, unit: 'count' }).verdict
    expect([6, 5, 7].map(counted)).toEqual(['meets', 'fails', 'fails'])
  })

  it('a reading that names no instrument is as coarse as its kind allows', () => {
    // u = 10 % and a step of 5 lbf·ft: U(30) = 2 sqrt(9 + 25/12) = 6.66 lbf·ft.
    expect(verdictOf(guarded, { topic: 'nut-torque', value: '30 lbf·ft' }).verdict).toBe('too close')
    expect(verdictOf(guarded, { topic: 'nut-torque', value: '33 lbf·ft' }).verdict).toBe('meets')
  })

  it('a second reading is as doubtful as its own value, where the doubt grows with it', () => {
    const verdict = verdictOf(guarded, { topic: 'nut-torque', value: '26 lbf·ft', instrument: 'torque-wrench' })
    const { look } = guarded.requirements.find(({ id }) => id === verdict.requirement)!
    if (verdict.because.kind !== 'measured' || look.kind !== 'measure') throw new Error('measured')
    const second = secondReading(verdict.because, look.limits, guarded.run.decisionRule)!
    // v - 25 = U(v) at 26.347 and 25 - v = U(v) at 23.760, drawn to whole lbf·ft.
    expect(second).toMatchObject({ meets: { from: 27, to: null }, fails: { atMost: 23, atLeast: null } })
    for (const [value, expected] of [
      ['27', 'meets'],
      ['26', 'too close'],
      ['24', 'too close'],
      ['23', 'fails'],
    ] as const) {
      const given = { topic: 'nut-torque', value: `${value} lbf·ft`, instrument: 'torque-wrench' }
      expect(verdictOf(guarded, given).verdict).toBe(expected)
    }
  })
})

describe('a reading of another quantity', () => {
  it.each([
    [{ topic: 'nut-torque', value: '25 lbf' }, 'readings[0].value: expected a torque as "value", found a force'],
    [{ topic: 'nut-torque', value: '25' }, 'readings[0].value: expected a torque as "value", found a length'],
    [{ topic: 'cross-slope', value: '3°' }, 'readings[0].value: expected a slope as "value", found an angle'],
    [{ topic: 'tell-tale-gap', value: '25 %' }, 'readings[0].value: expected a length as "value", found a slope'],
    [
      { topic: 'bracket-nuts', value: 5.5, unit: 'count' },
      'readings[0].value: expected a value with its unit (at character 1, “5.5”: a count is a whole number), found 5.5',
    ],
    [
      { topic: 'cross-slope', value: '3 %', instrument: 'tape' },
      'readings[0].instrument: expected one of digital-level, slope-not-stated, found "tape"',
    ],
    [
      { topic: 'cross-slope', value: '3 %', uncertainty: '1 mm' },
      'readings[0].uncertainty: expected a slope of more than 0, found "1 mm"',
    ],
    [
      { topic: 'nut-torque', value: '25 lbf·ft', side: 'away' },
      'readings[0].side: expected nothing, it belongs to the value of an offset, found "away"',
    ],
    [
      { topic: 'nut-torque', value: '9000 lbf·ft' },
      'readings[0].value: expected a torque of 0 N·m to 10000 N·m, found "9000 lbf·ft"',
    ],
  ])('%j is refused with its place', (given, expected) => {
    expect(judge(guarded, given)).toEqual([`readings.json: ${expected}`])
  })
})

const readings: readonly Given[] = [
  { topic: 'cross-slope', value: '12 %', instrument: 'digital-level' },
  { topic: 'cable-angle', value: '20°', instrument: 'angle-gauge' },
  { topic: 'nut-torque', value: '20 lbf·ft', instrument: 'torque-wrench' },
  { topic: 'cable-tension', value: '500 lbf', instrument: 'tension-gauge' },
  { topic: 'bracket-nuts', value: 5, unit: 'count' },
]
const topics = readings.map(({ topic }) => topic)

/** By topic: the limit, the reading, its instrument and the reason of its verdict as the record says them. */
function recordLines(print: Print): Readonly<Record<string, readonly (string | null)[]>> {
  const printing = { printedAt: '2026-01-02T10:00', author: '', hash: '' }
  const { requirements } = recordContents(recordInput(judged(guarded, ...readings), print), printing, noSide)
  return Object.fromEntries(
    topics.map((topic) => {
      const { limit, readings: read, reason } = requirements.find(({ id }) => id === idOf(guarded, topic))!
      return [topic, [limit, read[0]!.answer, read[0]!.instrument, reason]]
    }),
  )
}

describe('what is measured, in the record', () => {
  it('is said in English, in its own unit', () => {
    expect(recordLines(english(null))).toEqual({
      'cross-slope': [
        'at most 10 %',
        '12 %',
        'digital level',
        '12 %, 2 % outside the limit; ± 0.21 % (k = 2); probability of conformity under 0.1 %',
      ],
      'cable-angle': [
        '10° to 30°, 20° nominal',
        '20°',
        'angle gauge',
        '20°, 10° inside the limit; ± 0.40° (k = 2); probability of conformity over 99.9 %',
      ],
      'nut-torque': [
        'at least 25 lbf·ft',
        '20 lbf·ft',
        'torque wrench',
        '20 lbf·ft, 5 lbf·ft outside the limit; ± 1.1 lbf·ft (k = 2); probability of conformity under 0.1 %',
      ],
      'cable-tension': [
        'at least 2 kN',
        '500 lbf',
        'cable tension gauge',
        '2.224111 kN, 0.224111 kN inside the limit; ± 0.14 kN (k = 2); probability of conformity over 99.9 %',
      ],
      'bracket-nuts': [
        'exactly 6',
        '5',
        null,
        '5, 1 outside the limit; ± 0 (k = 2); probability of conformity under 0.1 %',
      ],
    })
  })

  it('is said in Spanish, with the unit of the run beside it', () => {
    expect(recordLines(spanish('metric'))).toMatchObject({
      'cross-slope': ['a lo más 10 %', '12 %', 'nivel digital', expect.stringContaining('12 %, 2 % fuera del límite')],
      'cable-angle': ['10° a 30°, nominal 20°', '20°', 'medidor de ángulos', expect.stringContaining('10° dentro')],
      'nut-torque': [
        'al menos 33.9 N·m (25 lbf·ft)',
        '20 lbf·ft',
        'llave dinamométrica',
        expect.stringContaining('27.1 N·m (20 lbf·ft), 6.8 N·m (5 lbf·ft) fuera del límite'),
      ],
      'cable-tension': [
        'al menos 2 kN',
        '500 lbf',
        'medidor de tensión de cables',
        expect.stringContaining('kN dentro del'),
      ],
      'bracket-nuts': ['exactamente 6', '5', null, expect.stringContaining('5, 1 fuera del límite')],
    })
  })

  it('has a finding for what fails, which says what a reading has to give to prove it put right', () => {
    const said = (print: Print) =>
      judged(guarded, ...readings)
        .judgement.findings.map((finding) => print.say(remedyOf(finding)))
        .filter((text) => /proves it|lo demuestra/.test(text))
    // 10 - v = U(v) at 9.79 %; v - 25 = U(v) at 26.35 lbf·ft.
    expect(said(english(null))).toEqual([
      'Tighten the nut. A reading of at least 27 lbf·ft then proves it.',
      'Grade the ground. A reading of at most 9.7 % then proves it.',
      'Set the missing nuts. A reading of 6 then proves it.',
    ])
    expect(said(spanish(null))).toEqual([
      'Tighten the nut. (en) Una lectura de 27 lbf·ft como mínimo lo demuestra entonces.',
      'Grade the ground. (en) Una lectura de 9.7 % como máximo lo demuestra entonces.',
      'Set the missing nuts. (en) Una lectura de 6 lo demuestra entonces.',
    ])
  })
})
