import type { Requirement } from '../../core/requirements/requirement.ts'
import { theirs } from '../../core/theirs.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { Begun } from '../data/begun.ts'
import { asWritten, m, say } from '../messages.ts'
import { requirementPath } from '../route.ts'
import { askedWords } from './asked-words.ts'
import type { Draft } from './draft.ts'
import { measurableWords, momentWords, placeWords } from './reading-words.ts'

interface HereProps {
  readonly units: 'us' | 'metric'
  readonly begun: Begun | undefined
  /** Id of the version in force. */
  readonly version: string
  readonly requirement: Pick<Requirement, 'look'>
  readonly takeUp: (begun: Begun) => void
  readonly drop: (begun: Begun) => void
}

/** What was begun at this place when the page was closed: taken up or dropped by hand; of another version dropped only. */
export function BegunHere({ units, begun, version, requirement, takeUp, drop }: HereProps) {
  if (begun === undefined) return null
  return (
    <BegunNote
      class="begun begun-here"
      at={begun.at}
      words={draftWords(begun.draft, units, requirement)}
      isOfThis={begun.version === version}
      goOn={() => takeUp(begun)}
      drop={() => drop(begun)}
    />
  )
}

interface NoteProps {
  readonly class?: string
  /** ISO 8601. */
  readonly at: string
  /** What was entered so far. */
  readonly words: string
  /** Whether it was begun in the version in force. */
  readonly isOfThis: boolean
  readonly goOn: () => void
  readonly drop: () => void
}

/** What was begun and not saved when the page was closed; what was begun in another version can be dropped only. */
export const BegunNote = ({ class: kind = 'begun', at, words, isOfThis, goOn, drop }: NoteProps) => (
  <div class={kind}>
    <p>
      {m.begun.at(momentWords(at))} <b>{words}</b>
      {!isOfThis && ` ${m.begun.otherVersion}`}
    </p>
    <div class="begun-buttons">
      {isOfThis && (
        <button type="button" class="button" onClick={goOn}>
          {m.begun.goOn}
        </button>
      )}
      <button type="button" class="button" onClick={drop}>
        {m.begun.drop}
      </button>
    </div>
  </div>
)

interface ListProps {
  readonly begun: readonly Begun[]
  readonly judged: JudgedRun
  readonly run: string
  readonly drop: (begun: Begun) => void
}

/** Where something was begun and not saved; the way there, or what was entered where nothing is asked any more. */
export function BegunElsewhere({ begun, judged, run, drop }: ListProps) {
  if (begun.length === 0) return null
  const nameOf = askedWords(judged)
  return (
    <div class="begun">
      <p>{m.begun.elsewhere}</p>
      <ul class="plain">
        {begun.map((one) => {
          const requirement = judged.requirements.find(({ id }) => id === one.requirement)
          return (
            <li key={one.of}>
              {requirement === undefined ? (
                <>
                  {nameOf(one.of, null)}, {m.begun.at(momentWords(one.at))}{' '}
                  <b>{draftWords(one.draft, judged.run.units)}</b> {m.begun.otherVersion}{' '}
                  <button type="button" class="button small" onClick={() => drop(one)}>
                    {m.begun.drop}
                  </button>
                </>
              ) : (
                <a href={requirementPath(run, requirement.id, one.of === requirement.id ? null : one.of)}>
                  {one.of === requirement.id
                    ? `${placeWords(requirement.place, judged.run.units)}: ${say(requirement.must, judged.run.units)}`
                    : measurableWords(one.of, judged.model.layout)}
                </a>
              )}
            </li>
          )
        })}
      </ul>
    </div>
  )
}

/** What a draft says so far. */
function draftWords(
  { mode, text, side, choice, yes, because, note }: Draft,
  units: 'us' | 'metric',
  asked?: Pick<Requirement, 'look'>,
): string {
  const label =
    asked?.look.kind === 'choose'
      ? asked.look.choices.find(({ id }) => id === choice)?.label
      : choice === null
        ? undefined
        : theirs(choice)
  const parts = [
    ...(mode === 'cannot see' ? [m.entry.cannotSeeSaid] : []),
    ...(mode === 'does not apply' ? [`${m.entry.because} ${asWritten(because)}`] : []),
    text,
    ...(side === null ? [] : [m.entry.sides[side].toLowerCase()]),
    ...(label === undefined ? [] : [say(label, units)]),
    ...(yes === null ? [] : [yes ? m.entry.yes : m.entry.no]),
    ...(note === '' ? [] : [`${m.entry.note}: ${asWritten(note)}`]),
  ]
  return parts.filter((part) => part !== '').join(' ')
}
