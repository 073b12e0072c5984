import { describe, expect, test } from 'vitest'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import { readReadings } from '../../formats/readings/readings-file.ts'
import { readRun } from '../../formats/run/run-file.ts'
import { demoProject } from '../../operations/demo-project.ts'
import { requireRun } from '../../operations/require-run.ts'
import { english } from '../../words/english.ts'
import { draftOf, lastAnswer } from './last-answer.ts'
import { placesBetween, samePlaces } from './same-places.ts'
import { undoing } from './undo.ts'

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

describe('samePlaces', () => {
  test('are the posts that ask the same thing, in the order of their numbers', () => {
    const places = samePlaces(requirement('post-8/rail-height'), requirements)
    const numbers = places.map(({ place }) => place.number)
    expect(numbers).toContain(8)
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b))
    expect(new Set(places.map(({ must }) => english(null).say(must))).size).toBe(1)
  })

  test('leave out a post of which something else is asked', () => {
    const bolted = requirement('post-8/rail-bolt')
    const other = requirements.find(
      ({ topic, must }) => topic === 'rail-bolt' && english(null).say(must) !== english(null).say(bolted.must),
    )!
    expect(samePlaces(bolted, requirements)).not.toContain(other)
  })

  test('between two numbers, whichever is the larger', () => {
    const places = samePlaces(requirement('post-8/rail-height'), requirements)
    expect(placesBetween(places, 10, 8).map(({ place }) => place.number)).toEqual([8, 9, 10])
  })
})

describe('lastAnswer', () => {
  const reading = (of: string, answer: Answer): Reading => ({ ...readings[0]!, id: of, of, answer })

  test('is the latest answer to the same question elsewhere', () => {
    const said = [
      reading('post-7/rail-height', { kind: 'measured', value: 787_000_000, unit: 'mm', resolution: null }),
      reading('post-8/rail-bolt', { kind: 'choice', choice: 'bolted' }),
      reading('post-9/rail-height', { kind: 'cannot see' }),
    ]
    const answer = lastAnswer(requirement('post-8/rail-height'), byId, said)!
    expect(draftOf(answer)).toEqual({ mode: 'answer', text: '787 mm', side: null })
    expect(lastAnswer(requirement('post-8/block'), byId, said)).toBeNull()
  })

  test('of an offset takes its side along', () => {
    const offset = { kind: 'measured', value: 304_800_000, unit: 'in', resolution: null, side: 'toward' } as const
    expect(draftOf(offset)).toEqual({ mode: 'answer', text: '12 in', side: 'toward' })
  })

  test('is no choice that is not on offer here', () => {
    const said = [reading('post-8/rail-bolt', { kind: 'choice', choice: 'washer' })]
    const loose = requirements.find(
      ({ topic, must }) => topic === 'rail-bolt' && /not bolted/.test(english(null).say(must)),
    )!
    expect(lastAnswer(loose, byId, said)).toBeNull()
  })
})

describe('undoing', () => {
  const of = 'post-8/rail-height'
  const taken: Reading = { ...readings.find((one) => one.of === of)!, id: 'wrong', by: 'R. Quist', photos: ['p'] }

  test('puts what was in force before in force again', () => {
    const before = currentReadings(readings).get(of)!
    const log = [...readings, taken]
    const undo = undoing(taken, log, 'undo', '2026-05-04T10:30Z', 'R. Quist')
    expect(undo).toMatchObject({ corrects: 'wrong', answer: before.answer, instrument: before.instrument })
    expect(currentReadings([...log, undo]).get(of)!.answer).toEqual(before.answer)
  })

  test('says that it could not be seen when nothing was read before', () => {
    const undo = undoing(taken, [taken], 'undo', '2026-05-04T10:30Z', 'R. Quist')
    expect(undo.answer).toEqual({ kind: 'cannot see' })
    expect(undo.photos).toEqual([])
  })
})
