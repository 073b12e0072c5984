import { describe, expect, test } from 'vitest'
import type { SeverityRule } from './hardware-sheet.ts'
import { type Rated, severityOfSeen, severityOfTopic, severityRank, worstSeverity } from './severity.ts'

const rule = (severity: SeverityRule['severity'], topics: readonly string[]): SeverityRule => ({
  ...{ severity, topics, seen: severity === 'upkeep' ? ['growth'] : [] },
  ...{ source: 'test', confirmation: 'common practice' },
})
const rated = (severity: SeverityRule['severity'], by: Rated['by'] = 'common practice'): Rated => ({ severity, by })
const sheet = { severities: [rule('weakens it', ['lap', 'block']), rule('upkeep', ['manual'])] }

describe('how bad a fault is', () => {
  test('is what the sheet says of its topic, and not stated where it says nothing', () => {
    expect(severityOfTopic(sheet, 'block')).toEqual(rated('weakens it'))
    expect(severityOfTopic(sheet, 'manual')).toEqual(rated('upkeep'))
    expect(severityOfTopic(sheet, 'rail-height')).toBe('notStated')
    expect(severityOfTopic({}, 'block')).toBe('notStated')
  })

  test('is what the sheet says of a thing seen', () => {
    expect(severityOfSeen(sheet, 'growth')).toEqual(rated('upkeep'))
    expect(severityOfSeen(sheet, 'hit')).toBe('notStated')
  })

  test('counts as the worst where it is not stated', () => {
    expect(severityRank('notStated')).toBe(severityRank(rated('lets it fail')))
    expect(severityRank(rated('lets it fail'))).toBeLessThan(severityRank(rated('weakens it')))
    expect(severityRank(rated('weakens it'))).toBeLessThan(severityRank(rated('upkeep')))
  })

  test('of several is that of the worst, on the best word that there is for it', () => {
    const all = [rated('upkeep'), rated('lets it fail', 'from memory'), rated('weakens it')]
    expect(worstSeverity(all)).toEqual(rated('lets it fail', 'from memory'))
    expect(worstSeverity([...all, rated('lets it fail', 'published')])).toEqual(rated('lets it fail', 'published'))
    expect(worstSeverity([rated('upkeep'), 'notStated'])).toBe('notStated')
    expect(worstSeverity(['notStated', rated('lets it fail')])).toEqual(rated('lets it fail'))
  })
})
