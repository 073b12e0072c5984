import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import { valueToText } from '../../formats/written-value.ts'
import { type Draft, emptyDraft } from './draft.ts'

/** What is in force at a place like this one, and where. */
export interface LikeReading {
  readonly answer: Answer
  readonly at: Requirement
}

/**
 * What the same person read last on this visit at a place like `requirement`: the same topic, asked in the same words by
 * the same sheet at the same kind of piece, so that a post of a terminal is never like one of the run. What could not be
 * seen or was set aside there says nothing of here.
 * @param since  when the visit began at the earliest, milliseconds of the clock
 */
export function likeReading(
  requirement: Requirement,
  requirements: readonly Requirement[],
  readings: readonly Reading[],
  by: string,
  since: number,
): LikeReading | null {
  if (requirement.place.number === 0 || requirement.look.kind === 'record') return null
  const asked = askedOf(requirement)
  const like = new Map(
    requirements.flatMap((one) =>
      one.id !== requirement.id && one.topic === requirement.topic && askedOf(one) === asked
        ? [[one.id, one] as const]
        : [],
    ),
  )
  const current = currentReadings(readings)
  const last = readings.findLast(
    (one) =>
      like.has(one.of) &&
      current.get(one.of)?.id === one.id &&
      one.by === by &&
      Date.parse(one.at) >= since &&
      one.answer.kind !== 'cannot see' &&
      one.answer.kind !== 'does not apply',
  )
  return last === undefined ? null : { answer: last.answer, at: like.get(last.of)! }
}

const askedOf = ({ place, must, look, maySetAside, sheet }: Requirement): string =>
  contentOf([place.kind, ownUnit(place), must, lookAsked(look), maySetAside, sheet])

/** The kind of end unit that a piece belongs to. */
const ownUnit = (place: Requirement['place']): string | null =>
  place.kind === 'post' || place.kind === 'panel' ? (place.own?.of ?? null) : null

/** What a look asks for, less the readings it may be computed from, which are others at every place. */
const lookAsked = (look: Requirement['look']): unknown => (look.kind === 'measure' ? look.limits : look)

/** What was entered for a reading, to be corrected or taken back. */
export const reopened = ({ id, answer, note = '' }: Reading): Draft => ({
  ...emptyDraft,
  ...draftOf(answer),
  note,
  corrects: id,
})

/** What has to be entered to give that answer. */
export function draftOf(answer: Answer): Partial<Draft> {
  switch (answer.kind) {
    case 'measured': {
      const written = valueToText(answer) as { value: string | number; unit?: string }
      const text =
        typeof written.value === 'string' || answer.unit === 'count'
          ? `${written.value}`
          : `${written.value} ${written.unit}`
      return { mode: 'answer', text, side: answer.side ?? null }
    }
    case 'choice':
      return { mode: 'answer', choice: answer.choice }
    case 'confirmed':
      return { mode: 'answer', yes: answer.yes }
    case 'cannot see':
      return { mode: 'cannot see' }
    case 'does not apply':
      return { mode: 'does not apply', because: answer.because }
  }
}
