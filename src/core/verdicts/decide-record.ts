import { isEndSafe } from '../hardware/crashworthy-end.ts'
import { findTest } from '../hardware/tested-criteria.ts'
import type { RecordRule } from '../requirements/requirement.ts'
import type { Decided } from './verdict.ts'

/** The verdict of a rule that the run file and the sheets decide. */
export function decideRecord(rule: RecordRule): Decided {
  switch (rule.kind) {
    case 'criteria': {
      const answer = findTest(rule.hardware, rule.at)
      return { verdict: answer.verdict, because: { ...rule, answer }, readings: [] }
    }
    case 'crashworthy': {
      const safe = isEndSafe(rule.sheet, rule.exposure)
      return { verdict: safe === null ? 'unread' : safe ? 'meets' : 'fails', because: rule, readings: [] }
    }
    case 'not said':
      return { verdict: 'unread', because: rule, readings: [] }
    case 'need of run': {
      const short = [rule.shortAtFirst, rule.shortAtSecond]
      const isShort = short.some((one) => one !== null && one > 0)
      return { verdict: isShort ? 'fails' : short.includes(null) ? 'unread' : 'meets', because: rule, readings: [] }
    }
    case 'site check':
      return { verdict: rule.check.verdict, because: rule, readings: [] }
    case 'unit joins another system':
    case 'too few pieces':
      return { verdict: 'fails', because: rule, readings: [] }
    default:
      return rule satisfies never
  }
}
