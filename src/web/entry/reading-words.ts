import { lengthText, limitsText } from '../../core/hardware/dimension-text.ts'
import type { Dimension } from '../../core/hardware/hardware-sheet.ts'
import type { Answer } from '../../core/measurement/reading.ts'
import type { Place, Requirement } from '../../core/requirements/requirement.ts'
import { exactLength, type LengthUnit, lengthIn } from '../../core/units/exact-length.ts'
import { describeReason, measuredText } from '../../core/verdicts/describe-reason.ts'
import type { Measured, Unproven, VerdictReason } from '../../core/verdicts/verdict.ts'
import { language, m, say } from '../messages.ts'

/** What a reading of `requirement` says. */
export function answerWords(answer: Answer, { look }: Pick<Requirement, 'look'>): string {
  switch (answer.kind) {
    case 'length':
      return measuredText(lengthIn(answer.value, answer.unit), answer.unit)
    case 'choice':
      return say(
        (look.kind === 'choose' && look.choices.find(({ id }) => id === answer.choice)?.label) || answer.choice,
      )
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

/** The name of a place in the language in force. */
export const placeWords = ({ name }: Place): string => say(name)

/** The limits in their published unit, and in millimetres or inches where the run is in the other system. */
export function limitsWords(limits: Dimension, units: 'us' | 'metric'): string {
  const isCustomary = limits.unit === 'in' || limits.unit === 'ft'
  const published = say(limitsText(limits))
  if (isCustomary === (units === 'us')) return published
  const other: LengthUnit = isCustomary ? 'mm' : 'in'
  const convert = (value: number | 'notStated'): string | null =>
    value === 'notStated'
      ? null
      : isCustomary
        ? `${lengthIn(exactLength(value, limits.unit), other).toFixed(1)} mm`
        : `${lengthIn(exactLength(value, limits.unit), other).toFixed(2)} in`
  const [low, high] = [convert(limits.low), convert(limits.high)]
  return `${published} (${m.entry.range(low, high)})`
}

/** Why a verdict is what it is. */
export function reasonWords(because: VerdictReason): string {
  if (language() === 'en') return describeReason(because)
  switch (because.kind) {
    case 'measured':
      return measuredWords(because)
    case 'chosen':
      return say(because.label)
    case 'confirmed':
      return because.yes ? m.reason.confirmed : m.reason.notConfirmed
    case 'nobody looked':
      return m.reason.nobodyLooked
    case 'could not be seen':
      return m.entry.cannotSeeSaid
    case 'set aside':
      return m.reason.setAside(because.by, because.because)
    case 'readings missing':
      return m.reason.missing(because.missing.map(measurableWords).join(', '))
    case 'answer of another kind':
      return m.reason.otherKind
    case 'no limit stated':
      return m.reason.noLimit
    case 'criteria':
      return m.reason.criteria(because.standards.join(', '), because.letting, because.lastLetting)
    case 'standing work':
      return m.reason.standing
    case 'work not said':
      return m.reason.workNotSaid
  }
}

/** Why something is not proven. */
export const unprovenWords = (because: Unproven['because']): string =>
  because.kind === 'not rechecked' ? m.unproven.notRechecked : reasonWords(because)

function measuredWords({ value, unit, margin, uncertainty, guard, probability, computed }: Measured): string {
  const side =
    margin === 0
      ? m.reason.onLimit
      : margin < 0
        ? m.reason.outside(measuredText(-margin, unit))
        : m.reason.inside(measuredText(margin, unit))
  const percent = probability > 0.999 ? '> 99.9' : probability < 0.001 ? '< 0.1' : (probability * 100).toFixed(1)
  const digits = { in: 3, ft: 3, mm: 1, m: 4 }[unit]
  return m.reason.measured({
    value: measuredText(value, unit),
    computed,
    side,
    isGuarded: guard > 0 && Math.abs(margin) < guard,
    doubt: `${(2 * uncertainty).toFixed(digits)} ${unit}`,
    percent,
  })
}

/** A length in the unit of the run, for what is typed nowhere. */
export const alongWords = (inches: number, units: 'us' | 'metric'): string =>
  units === 'us' ? lengthText(inches / 12, 'ft') : lengthText(lengthIn(exactLength(inches, 'in'), 'm'), 'm')

export const momentWords = (at: string): string =>
  new Intl.DateTimeFormat(language(), { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at))

export const dayWords = (day: string): string =>
  new Intl.DateTimeFormat(language(), { dateStyle: 'full' }).format(new Date(`${day}T12:00`))
