import { describe, expect, test } from 'vitest'
import type { SeverityRule } from './hardware-sheet.ts'
import { severityOfSeen, severityOfTopic, severityRank, worstSeverity } from './severity.ts'

const rule = (severity: SeverityRule['severity'], topics: readonly string[]): SeverityRule => ({
  ...{ severity, topics, seen: severity === 'upkeep' ? ['growth'] : [] },
  ...{ source: 'test', confirmation: 'common practice' },
})
const sheet = { severities: [rule('weakens it', ['lap', 'block']), rule('upkeep', ['manual'])] }

describe('how bad a fault is', () => {
  test('is what the sheet says of its topic, and not stated where it says nothing', () => {
    expect(severityOfTopic(sheet, 'block')).toBe('weakens it')
    expect(severityOfTopic(sheet, 'manual')).toBe('upkeep')
    expect(severityOfTopic(sheet, 'rail-height')).toBe('notStated')
    expect(severityOfTopic({}, 'block')).toBe('notStated')
  })

  test('is what the sheet says of a thing seen', () => {
    expect(severityOfSeen(sheet, 'growth')).toBe('upkeep')
    expect(severityOfSeen(sheet, 'hit')).toBe('notStated')
  })

  test('counts as the worst where it is not stated', () => {
    expect(severityRank('notStated')).toBe(severityRank('lets it fail'))
    expect(severityRank('lets it fail')).toBeLessThan(severityRank('weakens it'))
    expect(severityRank('weakens it')).toBeLessThan(severityRank('upkeep'))
  })

  test('of several is that of the worst', () => {
    expect(worstSeverity(['upkeep', 'weakens it'])).toBe('weakens it')
    expect(worstSeverity(['upkeep', 'lets it fail', 'weakens it'])).toBe('lets it fail')
    expect(worstSeverity(['upkeep', 'notStated'])).toBe('notStated')
    expect(worstSeverity(['notStated', 'lets it fail'])).toBe('lets it fail')
  })
})
