import type { Requirement } from '../../core/requirements/requirement.ts'
import { m } from '../messages.ts'
import type { Draft } from './draft.ts'
import { draftOf, type LikeReading } from './like-places.ts'
import { NoteField } from './note-field.tsx'
import { answerWords, placeWords } from './reading-words.ts'

interface Props {
  readonly requirement: Requirement
  /** Whether it may be taken out of judging with a reason. */
  readonly maySetAside: boolean
  readonly units: 'us' | 'metric'
  readonly draft: Draft
  readonly like: LikeReading | null
  readonly change: (changes: Partial<Draft>) => void
  /** Told before the change of an answer that a finger touched. */
  readonly touched: () => void
}

/**
 * What may be said beside an answer or instead of one. "As at post 5" gives the answer of a like place here: what was
 * seen saves itself as any answer does; a value is put in and not more, and whoever takes it says that they measured
 * here, with the instrument in hand.
 */
export function QuietRow({ requirement, maySetAside, units, draft, like, change, touched }: Props) {
  const isAnswer = draft.mode === 'answer'
  return (
    <div class="quiet">
      {like !== null && isAnswer && (
        <button
          type="button"
          class="button same-here"
          onClick={(event) => {
            if (event instanceof PointerEvent && event.pointerType === 'touch') touched()
            change(draftOf(like.answer))
          }}
        >
          {sameWords(like, requirement, units)}
        </button>
      )}
      {!isAnswer && (
        <button type="button" class="button" onClick={() => change({ mode: 'answer' })}>
          {m.entry.answerInstead}
        </button>
      )}
      {draft.mode !== 'cannot see' && (
        <button type="button" class="button" onClick={() => change({ mode: 'cannot see' })}>
          {m.entry.cannotSee}
        </button>
      )}
      <NoteField note={draft.note} change={(note) => change({ note })} />
      <button type="button" class="button" onClick={() => show('.photos')}>
        {m.photo.title}
      </button>
      <button type="button" class="button" onClick={() => show('.entry-facts')}>
        {m.entry.howAndWhy}
      </button>
      {draft.mode !== 'does not apply' && maySetAside && (
        <button type="button" class="button" onClick={() => change({ mode: 'does not apply' })}>
          {m.entry.setAside}
        </button>
      )}
    </div>
  )
}

const sameWords = ({ answer, at }: LikeReading, requirement: Requirement, units: 'us' | 'metric'): string =>
  answer.kind === 'measured'
    ? m.entry.measuredSame(answerWords(answer, requirement, units), placeWords(at.place, units))
    : m.entry.sameAs(placeWords(at.place, units), answerWords(answer, requirement, units))

const show = (part: string): void => document.querySelector(part)?.scrollIntoView({ block: 'start' })
