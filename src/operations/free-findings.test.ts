import { describe, expect, test } from 'vitest'
import { demoRun } from '../../test/fixtures/roadside.ts'
import { soundReading } from '../../test/fixtures/sound-reading.ts'
import type { SeenKind } from '../core/hardware/hardware-sheet.ts'
import type { FreeFinding } from '../core/verdicts/free-findings.ts'
import { freeFindings } from '../formats/entry/free-findings.ts'
import { readingsFromValue, readingsToValue } from '../formats/readings/readings-file.ts'
import { english } from '../words/english.ts'
import { spanish } from '../words/spanish.ts'
import { judgeKnown } from './judge-readings.ts'
import { recordText } from './record-hash.ts'

const { required } = demoRun()
const sound = required.requirements.flatMap(soundReading)
const judged = (...seen: readonly FreeFinding[]) => judgeKnown(required, sound, new Map(), null, seen)

const seen = (what: SeenKind, of: string, changes: Partial<FreeFinding> = {}): FreeFinding => ({
  ...{ id: `${what} at ${of}`, what, of, note: null, photos: [], by: 'R. Quist', at: '2026-05-04T10:30Z' },
  ...{ closed: null, ...changes },
})
const closed = { id: 'end', as: 'put right', note: null, photos: [], by: 'M. Reyes', at: '2026-05-05T10:30Z' } as const

describe('what is seen besides the requirements', () => {
  test('leaves a run that is read and right acceptable where nothing stands', () => {
    expect(judged().judgement.acceptance).toEqual({ kind: 'acceptable' })
    expect(judged(seen('hit', 'post-1', { closed })).judgement.acceptance).toEqual({ kind: 'acceptable' })
  })

  test('keeps the run from being acceptable where it can let the hardware fail, until it is closed', () => {
    expect(judged(seen('hit', 'post-1')).judgement.acceptance).toEqual({ kind: 'not acceptable', freeFindings: 1 })
    // A post of the terminal whose ground is washed out, and one of the run between its ends.
    expect(judged(seen('erosion', 'post-1')).judgement.acceptance.kind).toBe('not acceptable')
    expect(judged(seen('erosion', 'post-10')).judgement.acceptance).toEqual({ kind: 'acceptable', freeFindings: 1 })
  })

  test('counts as the worst where no sheet says how bad it is', () => {
    for (const [what, of] of [
      ['other', 'post-10'],
      ['growth', 'post-99'],
    ] as const)
      expect(judged(seen(what, of)).judgement.acceptance.kind).toBe('not acceptable')
  })

  test('is as bad as its finder says where the sheet says nothing, and never less than the sheet says', () => {
    const said = (what: SeenKind, severity: FreeFinding['severity'] & string) =>
      judged(seen(what, 'post-10', { severity })).judgement
    expect(said('other', 'upkeep').acceptance).toEqual({ kind: 'acceptable', freeFindings: 1 })
    expect(said('other', 'lets it fail').acceptance.kind).toBe('not acceptable')
    expect(said('hit', 'upkeep').acceptance.kind).toBe('not acceptable')
    const told = (what: SeenKind) => {
      const rated = said(what, 'upkeep').freeFindings[0]!.severity
      return [english(null), spanish(null)].map((print) => print.say({ kind: 'severity', rated }))
    }
    expect(told('other')).toEqual(['upkeep (by the word of its finder)', 'conservación (según quien lo halló)'])
    expect(told('hit')[0]).toBe('can let it fail when it is struck (from memory, unconfirmed)')
  })

  test('is told of in the acceptance where it does not decide it', () => {
    const { acceptance } = judged(seen('growth', 'post-9'), seen('missing delineator', 'first')).judgement
    expect(english(null).say(acceptance)).toBe('acceptable; 2 free findings stand')
    expect(spanish(null).say(acceptance)).toBe('aceptable; siguen en pie 2 hallazgos libres')
  })

  test('makes nothing acceptable that is not', () => {
    const unread = judgeKnown(required, [], new Map(), null, [seen('growth', 'run')]).judgement.acceptance
    expect(unread).toEqual({ kind: 'not yet known', freeFindings: 1 })
    const wrong = judgeKnown(required, sound.slice(1), new Map(), null, [seen('hit', 'run')]).judgement.acceptance
    expect(wrong).toEqual({ kind: 'not acceptable', freeFindings: 1 })
  })

  test('is listed with the worst first, and what was closed last', () => {
    const list = judged(
      seen('hit', 'post-2', { closed }),
      seen('growth', 'post-1'),
      seen('debris', 'post-1'),
      seen('hit', 'post-3'),
    ).judgement.freeFindings
    expect(list.map(({ finding }) => finding.id)).toEqual([
      'hit at post-3',
      'debris at post-1',
      'growth at post-1',
      'hit at post-2',
    ])
  })

  test('comes out of the entries of a run, each closed by the first that names it', () => {
    const entry = (id: string, kind: string, body: unknown) => ({
      ...{ id, kind, author: 'R. Quist', capturedAt: '2026-05-04T10:30Z', body },
    })
    const found = freeFindings([
      entry('a', 'free-finding', { what: 'hit', of: 'post-3', note: 'bent', photos: ['p'], version: 'v2' }),
      entry('b', 'free-finding', { what: 'debris', of: 'run', note: null, photos: [] }),
      entry('c', 'free-finding-end', { finding: 'a', as: 'put right', note: 'new panel', photos: [] }),
      entry('d', 'free-finding-end', { finding: 'a', as: 'not so', note: null, photos: [] }),
    ])
    expect(found.map(({ id, closed }) => [id, closed?.id ?? null])).toEqual([
      ['a', 'c'],
      ['b', null],
    ])
    expect(found[0]).toMatchObject({ of: 'post-3', note: 'bent', version: 'v2', by: 'R. Quist' })
  })

  test('stands in a readings file and comes back from it', () => {
    const findings = [
      seen('hit', 'post-3', { note: '1,250 ft on', photos: ['p'], version: 'v2' }),
      seen('other', 'run', { closed, severity: 'upkeep' }),
    ]
    const file = readingsToValue({ run: 'x', readings: [], findings, photoStrokes: [] })
    expect(readingsFromValue('readings.json', file)).toEqual({
      ok: true,
      value: { run: 'x', readings: [], findings, photoStrokes: [] },
    })
  })

  test('is part of what the record is named by, and its end too', () => {
    const version = { id: 'v1', earlier: [], layout: required.model.layout }
    const text = (...findings: readonly FreeFinding[]) => {
      const run = { ...required.run, version }
      return recordText({ run, log: sound, freeFindings: findings }, {}, [])
    }
    const stands = text(seen('hit', 'post-3'))
    expect(text()).not.toContain('findings')
    expect(stands).not.toBe(text())
    expect(text(seen('hit', 'post-3', { closed }))).not.toBe(stands)
  })
})
