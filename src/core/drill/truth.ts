import { noDoubt } from '../measurement/doubt.ts'
import { type Instrument, instruments as shipped } from '../measurement/instruments.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { exactValue } from '../units/quantity-kinds.ts'
import { judgeMeasured } from '../verdicts/judge-measured.ts'
import { type PracticeSite, trueAnswer } from './read-as-built.ts'
import { guardOf, usualInstrument } from './usual-instrument.ts'

/** How a requirement truly stands. */
export interface Truth {
  readonly isRight: boolean
  /** Whether it lies so near to its limit that a reading with the usual instrument may leave it open. */
  readonly isNear: boolean
}

/** What is true of a requirement in the modelled run, exactly and without a reading; null where nobody can look. */
export function truthOf(
  site: PracticeSite,
  requirement: Requirement,
  instruments: readonly Instrument[] = shipped,
): Truth | null {
  const answer = trueAnswer(site, requirement)
  const { look } = requirement
  if (answer === null || look.kind === 'record') return null
  if (answer.kind === 'confirmed') return { isRight: answer.yes, isNear: false }
  if (answer.kind === 'choice')
    return {
      isRight: look.kind === 'choose' && look.choices.some(({ id, right }) => right && id === answer.choice),
      isNear: false,
    }
  if (look.kind !== 'measure') throw new RangeError(`${requirement.id} is not measured`)
  const { limits } = look
  const judged = judgeMeasured(answer.value, noDoubt, limits, { kind: 'simple' }, false)
  if (judged === null) return null
  const guard = guardOf(usualInstrument(requirement, limits, instruments), answer.value)
  return {
    isRight: judged.verdict === 'meets',
    isNear: Math.abs(exactValue(judged.because.margin, limits.unit)) < guard,
  }
}
