import { describe, expect, test } from 'vitest'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import { readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { requireRun } from '../../operations/require-run.ts'
import { english } from '../../words/english.ts'
import { draftOf, likeReading } from './like-places.ts'
import { orderedChoices } from './ordered-choices.ts'
import { takingBack } from './undo.ts'

const demo = demoProject()
const run = readRun('run', demo.run)
const file = readReadings('readings', demo.readings)
if (!run.ok || !file.ok) throw new Error('the demo is not sound')
const required = requireRun('run', run.value)
if (!required.ok) throw new Error('the demo cannot be laid out')
const { requirements } = required.value
const { readings } = file.value
const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
const requirement = (id: string) => byId.get(id)!

const of = (id: string, answer: Answer, more: Partial<Reading> = {}): Reading => ({
  ...readings[0]!,
  ...{ id: `${id} ${JSON.stringify(answer)}`, of: id, answer, by: 'R. Quist', at: '2026-05-04T15:30:00.000Z' },
  ...more,
})
const since = Date.parse('2026-05-04T06:00:00Z')
const likeAt = (id: string, said: readonly Reading[]) =>
  likeReading(requirement(id), requirements, said, 'R. Quist', since)
const height: Answer = { kind: 'measured', value: 787_000_000, unit: 'mm', resolution: null }
const bolted: Answer = { kind: 'choice', choice: 'bolted' }

describe('what is in force at a like place', () => {
  test('is the latest answer to the same question, and not one that says nothing of here', () => {
    const said = [
      of('post-7/rail-height', height),
      of('post-8/rail-bolt', bolted),
      of('post-9/rail-height', { kind: 'cannot see' }),
    ]
    const like = likeAt('post-8/rail-height', said)!
    expect(like.at.id).toBe('post-7/rail-height')
    expect(draftOf(like.answer)).toEqual({ mode: 'answer', text: '787 mm', side: null })
    expect(likeAt('post-8/block', said)).toBeNull()
  })

  test('is asked in the same words by the same sheet of the same kind of piece', () => {
    const others = requirements.filter(
      ({ topic, sheet, id }) =>
        topic === 'rail-bolt' && (sheet !== requirement('post-9/rail-bolt').sheet || id === 'post-1/rail-bolt'),
    )
    expect(others.length).toBeGreaterThan(2)
    const words = (id: string) => english(null).say(requirement(id).must)
    expect(others.some(({ id }) => words(id) === words('post-9/rail-bolt'))).toBe(true)
    for (const { id } of others) expect(likeAt('post-9/rail-bolt', [of(id, bolted)]), id).toBeNull()
    expect(likeAt('post-9/rail-bolt', [of('post-10/rail-bolt', bolted)])?.at.id).toBe('post-10/rail-bolt')
  })

  test('is of the same person on this visit', () => {
    const at = 'post-8/rail-height'
    expect(likeAt(at, [of('post-7/rail-height', height, { by: 'J. Okafor' })])).toBeNull()
    expect(likeAt(at, [of('post-7/rail-height', height, { at: '2026-05-04T05:59:59.000Z' })])).toBeNull()
    // The same moment where it was read.
    expect(likeAt(at, [of('post-7/rail-height', height, { at: '2026-05-04T00:00:00-06:00' })])).not.toBeNull()
  })

  test('is what was corrected, not what was wrong', () => {
    const wrong = of('post-7/rail-height', height)
    const right = of('post-7/rail-height', { ...height, value: 790_000_000 }, { corrects: wrong.id })
    expect(likeAt('post-8/rail-height', [wrong, right])?.answer).toEqual(right.answer)
  })

  test('of an offset takes its side along', () => {
    const offset = { kind: 'measured', value: 304_800_000, unit: 'in', resolution: null, side: 'toward' } as const
    expect(draftOf(offset)).toEqual({ mode: 'answer', text: '12 in', side: 'toward' })
  })
})

describe('choices', () => {
  test('begin with the right one and its usual wrong twin, at the same side wherever they are asked', () => {
    const ids = (id: string) => orderedChoices(requirement(id).look).pair.map((one) => one.id)
    expect(ids('post-1/block')).toEqual(['block', 'no-block'])
    expect(ids('post-3/block')).toEqual(['block', 'no-block'])
    // 12 ft 6 in beside the piece that is nearest to it; beside any other the panel that every yard has.
    expect(ids('panel-1/panel-length')).toEqual(['in-112.5', 'in-150'])
    const odd = requirements.find(
      ({ topic, look }) =>
        topic === 'panel-length' &&
        look.kind === 'choose' &&
        look.choices.some(({ id, right }) => right && id === 'in-112.5'),
    )!
    expect(ids(odd.id)).toEqual(['in-112.5', 'in-150'])
  })

  test('are all there, and the right one is not always first', () => {
    const looks = requirements.flatMap(({ look }) => (look.kind === 'choose' ? [look] : []))
    for (const look of looks) {
      const { pair, others } = orderedChoices(look)
      expect(new Set([...pair, ...others])).toEqual(new Set(look.choices))
    }
    const first = new Set(looks.map((look) => orderedChoices(look).pair[0]!.right))
    expect(first).toEqual(new Set([true, false]))
  })
})

describe('taking back', () => {
  const height = 'post-8/rail-height'
  const taken: Reading = { ...readings.find((one) => one.of === height)!, id: 'wrong', by: 'R. Quist', photos: ['p'] }

  test('puts what was in force before in force again', () => {
    const before = currentReadings(readings).get(height)!
    const log = [...readings, taken]
    const undo = { ...takingBack(taken, log, 'L. Haddad', 'a slip'), id: 'undo', at: '2026-05-04T10:30Z' }
    expect(undo).toMatchObject({ corrects: 'wrong', answer: before.answer, instrument: before.instrument })
    expect(undo).toMatchObject({ by: 'L. Haddad', note: 'a slip' })
    expect(currentReadings([...log, undo]).get(height)!.answer).toEqual(before.answer)
  })

  test('says that it could not be seen when nothing was read before', () => {
    const undo = takingBack(taken, [taken], 'R. Quist', 'a slip')
    expect(undo.answer).toEqual({ kind: 'cannot see' })
    expect(undo.photos).toEqual([])
  })
})
