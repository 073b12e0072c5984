import { lengthText } from '../../core/hardware/dimension-text.ts'
import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import type { Layout } from '../../core/layout/layout.ts'
import { lacksSide } from '../../core/measurement/offset-side.ts'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import type { Place, Requirement } from '../../core/requirements/requirement.ts'
import { theirs } from '../../core/theirs.ts'
import { exactLength, lengthIn } from '../../core/units/exact-length.ts'
import { type Unit, valueIn } from '../../core/units/quantity-kinds.ts'
import type { Unproven, VerdictReason } from '../../core/verdicts/verdict.ts'
import { asWritten, m, printIn, say } from '../messages.ts'

/** What a reading of `requirement`, or of what it is computed from, says; null where what was asked is not at hand. */
export const readWords = (
  reading: Pick<Reading, 'of' | 'answer'>,
  requirement: Pick<Requirement, 'look'> | null,
  units: 'us' | 'metric',
): string =>
  `${answerWords(reading.answer, requirement, units)}${lacksSide(reading) ? `, ${m.entry.sideNotStated}` : ''}`

/** What an answer to `requirement` says. */
export function answerWords(
  answer: Answer,
  requirement: Pick<Requirement, 'look'> | null,
  units: 'us' | 'metric',
): string {
  switch (answer.kind) {
    case 'measured':
      return [
        printIn(null).measured(valueIn(answer.value, answer.unit), answer.unit),
        ...(answer.side === undefined ? [] : [m.entry.sides[answer.side].toLowerCase()]),
      ].join(' ')
    case 'choice': {
      const choices = requirement?.look.kind === 'choose' ? requirement.look.choices : []
      return say(choices.find(({ id }) => id === answer.choice)?.label ?? theirs(answer.choice), units)
    }
    case 'confirmed':
      return answer.yes ? m.entry.yes : m.entry.no
    case 'cannot see':
      return m.entry.cannotSeeSaid
    case 'does not apply':
      return `${m.verdict['does not apply']}: ${asWritten(answer.because)}`
    default:
      return answer satisfies never
  }
}

/** `post-3/lateral-offset` and `post-3/along`, from which other values are computed, in words. */
export function measurableWords(id: string, { posts }: Pick<Layout, 'posts'>): string {
  const [place, what] = id.split('/')
  const post = m.entry.post(`${posts.find((one) => one.id === place)?.number ?? place}`)
  return what === 'along' ? m.entry.along(post) : m.entry.offset(post)
}

/** The name of a place in the language in force; that of an end unit may hold a length. */
export const placeWords = (place: Place, units: 'us' | 'metric'): string => say(place, units)

/** The limits in the units of the run, as published behind. */
export const limitsWords = (limits: Dimension<Unit>, units: 'us' | 'metric'): string => say(limitsOf(limits), units)

/** Why a verdict is what it is. */
export const reasonWords = (because: VerdictReason, units: 'us' | 'metric'): string => say(because, units)

/** Why something is not proven. */
export const unprovenWords = (because: Unproven['because'], units: 'us' | 'metric'): string =>
  because.kind === 'not rechecked' ? m.unproven.notRechecked : reasonWords(because, units)

/** A length in the unit of the run, for what is typed nowhere. */
export const alongWords = (inches: number, units: 'us' | 'metric'): string =>
  units === 'us' ? lengthText(inches / 12, 'ft') : lengthText(lengthIn(exactLength(inches, 'in'), 'm'), 'm')

export const momentWords = (at: string): string => printIn(null).moment(at)

export const dayWords = (day: string): string => printIn(null).day(day)
