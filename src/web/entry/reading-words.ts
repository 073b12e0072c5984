import type { Answer } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import { measuredText } from '../../core/verdicts/describe-reason.ts'
import { m } from '../messages.ts'

/** What a reading of `requirement` says. */
export function answerWords(answer: Answer, { look }: Requirement): string {
  switch (answer.kind) {
    case 'length':
      return measuredText(lengthIn(answer.value, answer.unit), answer.unit)
    case 'choice':
      return (look.kind === 'choose' && look.choices.find(({ id }) => id === answer.choice)?.label) || answer.choice
    case 'confirmed':
      return answer.yes ? m.entry.yes : m.entry.no
    case 'cannot see':
      return m.entry.cannotSeeSaid
    case 'does not apply':
      return `${m.verdict['does not apply']}: ${answer.because}`
    default:
      return answer satisfies never
  }
}

/** `post-3/lateral-offset` and `post-3/along`, from which other values are computed, in words. */
export function measurableWords(id: string): string {
  const [place = '', what] = id.split('/')
  const post = m.entry.post(place.replace(/^\D*/, ''))
  return what === 'along' ? m.entry.along(post) : m.entry.offset(post)
}

export const momentWords = (at: string): string =>
  new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at))
