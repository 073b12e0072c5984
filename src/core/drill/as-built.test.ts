import { describe, expect, test } from 'vitest'
import { practiceReadings } from '../../../test/fixtures/practice-reading.ts'
import { modelFrom } from '../../../test/fixtures/verdict-model.ts'
import { instruments } from '../measurement/instruments.ts'
import { deriveRequirements } from '../requirements/derive-requirements.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { nanometresPer } from '../units/exact-length.ts'
import { defaultRule, judgeRequirements } from '../verdicts/judge-requirements.ts'
import { type AsBuilt, splicesAsBuilt } from './as-built.ts'
import { measuredAt, type PracticeSite, readValue, trueAnswer } from './read-as-built.ts'
import { soundAsBuilt } from './sound-as-built.ts'
import { truthOf } from './truth.ts'

const model = modelFrom('flared-terminal-31', 600)
const requirements = deriveRequirements(model)
const sound = soundAsBuilt(model, requirements)
const siteOf = (asBuilt: AsBuilt): PracticeSite => ({ model, requirements, sound, asBuilt })
const one = (id: string): Requirement => requirements.find((requirement) => requirement.id === id)!
const inch = nanometresPer.in

describe('a sound run', () => {
  test('meets everything that can be looked at, however far off a reading may be', () => {
    for (const error of [-2, 0, 2]) {
      const readings = requirements.flatMap((requirement) => practiceReadings(siteOf(sound), requirement, () => error))
      const verdicts = judgeRequirements(requirements, readings, { rule: defaultRule, instruments })
      const looked = verdicts.filter((_, i) => requirements[i]!.look.kind !== 'record')
      expect(looked.filter(({ verdict }) => verdict !== 'meets')).toEqual([])
      expect(looked.length).toBeGreaterThan(80)
    }
  })

  test('stands where the handbook has a flared terminal: head 4 ft off, hinges toward and away from it', () => {
    expect(trueAnswer(siteOf(sound), one('post-1/flare-offset'))).toEqual({
      ...{ kind: 'measured', value: 48 * inch, unit: 'in' },
    })
    expect(measuredAt(siteOf(sound), 'post-1', 'lateral-offset')).toBeCloseTo(48 * inch, -4)
    expect(sound.states.get('post-1/hinge-side')).toEqual({ kind: 'choice', choice: 'toward-head' })
    expect(sound.states.get('post-2/hinge-side')).toEqual({ kind: 'choice', choice: 'away' })
  })
})

describe('a wrong panel', () => {
  const third = sound.panels.findIndex(({ inches }, i) => inches === 150 && i > 0)
  const panels = sound.panels.map((panel, i) => (i === third ? { ...panel, inches: 112.5 } : panel))
  const site = siteOf({ ...sound, panels })

  test('moves every later splice by what it is shorter, and no earlier one', () => {
    const [before, after] = [splicesAsBuilt(sound, model.layout), splicesAsBuilt(site.asBuilt, model.layout)]
    expect(after.map((at, i) => (at - before[i]!) / inch)).toEqual(before.map((_, i) => (i < third ? 0 : -37.5)))
  })

  test('is seen at the panel and at every splice of the run after it', () => {
    const wrong = requirements.filter((requirement) => truthOf(site, requirement)?.isRight === false)
    const later = model.layout.splices.slice(third).map(({ id }) => `${id}/splice-position`)
    expect(new Set(wrong.map(({ id }) => id))).toEqual(new Set([`${sound.panels[third]!.id}/panel-length`, ...later]))
  })
})

describe('a reading', () => {
  const tape = instruments.find(({ id }) => id === 'tape')!

  test('of a tape falls on an eighth of an inch, 1 mm off for each standard uncertainty', () => {
    const value = 100e6
    const read = (error: number): number => readValue('post-1/stub-height', value, 'in', tape, error).value / (inch / 8)
    // 100 mm are 31.496 eighths; 98 and 102 mm are 30.87 and 32.13.
    expect([-2, 0, 2].map(read)).toEqual([31, 31, 32])
  })

  test('is off by no more than twice the doubt of the instrument, whatever chance says', () => {
    const [most, beyond] = [2, 9].map((error) => readValue('post-1/along', 5e9, 'in', tape, error).value)
    expect(beyond).toBe(most)
  })

  test('of an offset nearer to traffic than its line says so', () => {
    const { value, side } = readValue('post-1/flare-offset', -10 * inch, 'in', tape, 0)
    expect([value, side]).toEqual([10 * inch, 'toward'])
  })
})

describe('a value outside its limit by less than a tape can tell', () => {
  test('is wrong and near, while one further out is wrong and not near', () => {
    const atStub = (stubHeight: number): PracticeSite =>
      siteOf({ ...sound, posts: sound.posts.map((post, i) => (i === 0 ? { ...post, stubHeight } : post)) })
    const stub = one('post-1/stub-height')
    expect(truthOf(atStub(4 * inch + 1e6), stub)).toEqual({ isRight: false, isNear: true })
    expect(truthOf(atStub(4 * inch - 1e6), stub)).toEqual({ isRight: true, isNear: true })
    expect(truthOf(atStub(4.5 * inch), stub)).toEqual({ isRight: false, isNear: false })
  })
})
