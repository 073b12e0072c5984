import { describe, expect, it } from 'vitest'
import type { AgreementCategory, Criteria } from './hardware-sheet.ts'
import { findTest, type Speed, testConfirmation, type WorkAtHand } from './tested-criteria.ts'

const test = (standard: Criteria['standard'], edition: number, testLevel: number): Criteria => ({
  ...{ standard, edition, testLevel },
  ...{ source: 'maker', confirmation: 'published' },
})
const old = (testLevel: number) => test('NCHRP 350', 1993, testLevel)
const mash = (testLevel: number, edition = 2016) => test('MASH', edition, testLevel)

const mph = (value: number): Speed => ({ value, unit: 'mi/h' })
const kmh = (value: number): Speed => ({ value, unit: 'km/h' })
const late: WorkAtHand = { work: 'new', letting: '2026-01-15', speed: mph(65) }

const answer = (
  criteria: readonly Criteria[],
  at: Partial<WorkAtHand>,
  category: AgreementCategory = 'W-beam barrier',
) => findTest({ category, criteria }, { ...late, ...at })

describe('the level for the speed', () => {
  // Texas DOT Bridge Railing Manual, table A.1: 45 mi/h or less level 2, above it level 3; tests at 50, 70 and 100 km/h
  it.each([
    [31, 1, 'meets'],
    [31.1, 1, 'fails'],
    [31.1, 2, 'meets'],
    [45, 2, 'meets'],
    [45, 1, 'fails'],
    [45.1, 2, 'fails'],
    [45.1, 3, 'meets'],
    [85, 3, 'meets'],
    [85, 4, 'meets'],
  ] as const)('%d mi/h with level %d: %s', (value, level, verdict) => {
    expect(answer([mash(level)], { speed: mph(value) }).verdict).toBe(verdict)
  })

  it.each([
    [50, 1, 'meets'],
    [50.1, 1, 'fails'],
    [50.1, 2, 'meets'],
    [70, 2, 'meets'],
    [70.1, 2, 'fails'],
    [70.1, 3, 'meets'],
    [130, 3, 'meets'],
  ] as const)('%d km/h with level %d: %s', (value, level, verdict) => {
    expect(answer([mash(level)], { speed: kmh(value) }).verdict).toBe(verdict)
  })

  it('is unread where the speed is not said, but for a level that is enough at every speed', () => {
    expect(answer([mash(2)], { speed: null })).toEqual({ verdict: 'unread', notSaid: ['speed'] })
    expect(answer([mash(1)], { speed: null }).verdict).toBe('unread')
    for (const level of [3, 4]) expect(answer([mash(level)], { speed: null }).verdict).toBe('meets')
  })

  it('still counts for standing work, whose letting does not', () => {
    const standing = { work: 'standing', letting: '2026-01-15' } as const
    expect(answer([old(2)], { ...standing, speed: mph(45) }).verdict).toBe('meets')
    expect(answer([old(2)], { ...standing, speed: mph(45.1) }).verdict).toBe('fails')
    expect(answer([old(3)], { ...standing, speed: null }).verdict).toBe('meets')
    expect(answer([old(2)], { ...standing, speed: null })).toEqual({ verdict: 'unread', notSaid: ['speed'] })
  })
})

describe('the standard in force', () => {
  // joint implementation agreement: the four classes and the last day of letting without MASH 2016
  it.each([
    ['W-beam barrier', '2017-12-31', '2018-01-01'],
    ['W-beam terminal', '2018-06-30', '2018-07-01'],
    ['transition', '2019-12-31', '2020-01-01'],
    ['other longitudinal barrier', '2019-12-31', '2020-01-01'],
  ] as const)('%s: NCHRP 350 up to %s', (category, last, next) => {
    expect(answer([old(3)], { letting: last }, category)).toMatchObject({ verdict: 'meets', by: old(3) })
    expect(answer([old(3)], { letting: next }, category).verdict).toBe('fails')
    expect(answer([mash(3)], { letting: next }, category).verdict).toBe('meets')
  })

  it.each([
    [2009, 'fails'],
    [2015, 'fails'],
    [2016, 'meets'],
    [2025, 'meets'],
  ] as const)('goes by the edition of MASH, %d: %s', (edition, verdict) => {
    expect(answer([mash(3, edition)], {}).verdict).toBe(verdict)
  })

  it('is not guessed', () => {
    expect(answer([old(3)], { work: null })).toEqual({ verdict: 'unread', notSaid: ['work'] })
    expect(answer([old(3)], { letting: null })).toEqual({ verdict: 'unread', notSaid: ['letting'] })
    expect(answer([mash(3)], { work: null, letting: null, speed: null }).verdict).toBe('meets')
    // whatever the work is, level 2 is not enough at 65 mi/h
    expect(answer([old(2)], { work: null }).verdict).toBe('fails')
    expect(answer([old(2)], { work: null, speed: null })).toEqual({ verdict: 'unread', notSaid: ['work', 'speed'] })
  })
})

describe('one and the same test', () => {
  it('has to cover both', () => {
    expect(answer([mash(2), old(3)], {}).verdict).toBe('fails')
    expect(answer([mash(2), old(3)], { speed: mph(45) })).toMatchObject({ verdict: 'meets', by: mash(2) })
    expect(answer([mash(2), old(3)], { letting: '2017-12-31' })).toMatchObject({ verdict: 'meets', by: old(3) })
    expect(answer([old(3), mash(3)], {})).toMatchObject({ verdict: 'meets', by: mash(3) })
    expect(answer([mash(2), old(3)], { letting: null })).toEqual({ verdict: 'unread', notSaid: ['letting'] })
    expect(answer([mash(2), old(3)], { speed: null })).toEqual({ verdict: 'unread', notSaid: ['speed'] })
  })

  it('has to be stated', () => {
    for (const work of ['new', 'standing', null] as const)
      expect(answer([], { work })).toEqual({ verdict: 'unread', notSaid: ['test'] })
  })
})

describe('how far the answer can be trusted', () => {
  it('is as far as the least trusted of what it rests on', () => {
    const trust = (criteria: readonly Criteria[], at: Partial<WorkAtHand>) => {
      const hardware = { category: 'W-beam terminal', criteria } as const
      return testConfirmation(hardware, { ...late, ...at }, findTest(hardware, { ...late, ...at }))
    }
    expect(trust([mash(3)], {})).toBe('published')
    expect(trust([{ ...mash(3), confirmation: 'from memory' }], {})).toBe('from memory')
    expect(trust([{ ...old(3), confirmation: 'common practice' }], { work: 'standing' })).toBe('common practice')
    // the test that does not count is not leaned on
    expect(trust([mash(3), { ...old(3), confirmation: 'from memory' }], {})).toBe('published')
    // up to which speed level 1 is enough is recalled; level 3 is enough at any
    expect(trust([mash(1)], { speed: mph(25) })).toBe('from memory')
    expect(trust([mash(3)], { speed: mph(25) })).toBe('published')
  })
})
