import { describe, expect, test } from 'vitest'
import { exampleSite } from '../site/example-site.ts'
import { solveSite } from '../site/solve-site.ts'
import { meaningOf, valueAt, withValue } from './draft.ts'
import { placeProblems } from './place-problems.ts'

describe('a place of the draft', () => {
  test('is read and changed by the name that problems give it, and nothing else changes', () => {
    const draft = { hazards: [{ near: 1 }, { near: 2, far: 3 }], road: { speed: 60 } }
    expect(valueAt(draft, 'hazards[1].near')).toBe(2)
    expect(withValue(draft, 'hazards[1].near', '2.')).toEqual({
      hazards: [{ near: 1 }, { near: '2.', far: 3 }],
      road: { speed: 60 },
    })
    expect(draft.hazards[1]!.near).toBe(2)
  })

  test('that is not there says nothing, and can be written', () => {
    expect(valueAt({ barrier: { flare: null } }, 'barrier.flare.rate')).toBe(undefined)
    expect(withValue({ a: null }, 'a.b', 1)).toEqual({ a: { b: 1 } })
  })

  test('is taken out, and not left there empty', () => {
    const draft = { clearZone: { foreslope: 6, take: 'low' }, name: 'A' }
    expect(withValue(draft, 'clearZone.foreslope', undefined)).toStrictEqual({ clearZone: { take: 'low' }, name: 'A' })
    expect(withValue(draft, 'name', undefined)).toStrictEqual({ clearZone: { foreslope: 6, take: 'low' } })
  })
})

test('a typed text means a number only where it is one', () => {
  expect([' 12 ', '12.', '.5', '-3', '−3'].map(meaningOf)).toEqual([12, 12, 0.5, -3, -3])
  expect(['', '12+00', '14:1', '1,5', '1e3', 'wide'].map(meaningOf)).toEqual([
    undefined,
    '12+00',
    '14:1',
    '1,5',
    '1e3',
    'wide',
  ])
})

describe('problems', () => {
  const problem = (place: string) => ({ file: 'site', place, expected: 'something else', found: '' })

  test('stand at their field, at the first inside their place, or at the one around it', () => {
    const places = ['road.speed', 'road.alignment.kind', 'road.alignment.radius', 'clearZone']
    const placed = placeProblems(['road.alignment', 'road.speed', 'clearZone.foreslope', ''].map(problem), places)
    expect([...placed.at.keys()]).toEqual(['road.alignment.kind', 'road.speed', 'clearZone'])
    expect(placed.rest.map(({ place }) => place)).toEqual([''])
  })

  test('of a draft name the field that was spoilt', () => {
    const spoilt = withValue(exampleSite, 'hazards[0].near', 'far off')
    expect(solveSite(spoilt).problems.map(({ place }) => place)).toEqual(['hazards[0].near'])
  })
})

test('the example is a site with a need, a run that can be laid out, and nothing unread', () => {
  const { results, problems } = solveSite(exampleSite)
  const solution = results?.()
  expect(problems).toEqual([])
  expect(solution?.layoutProblems).toEqual([])
  expect(solution?.report.installed).not.toBe(null)
  expect(solution?.checks.filter(({ verdict }) => verdict === 'unread')).toEqual([])
})
