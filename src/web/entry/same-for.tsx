import type { Requirement } from '../../core/requirements/requirement.ts'
import { m } from '../messages.ts'
import { placeWords } from './reading-words.ts'
import { placesBetween } from './same-places.ts'

/** From which to which place one answer is given, and the name that its readings share. */
export interface Span {
  readonly from: number
  readonly to: number
  readonly together: string
}

interface Props {
  /** All places that ask the same; more than one. */
  readonly places: readonly Requirement[]
  readonly here: Requirement
  readonly span: Span | null
  readonly change: (span: Span | null) => void
  readonly newName: () => string
}

/** Gives one answer to several places at once: a reading for each, marked as taken together. */
export function SameFor({ places, here, span, change, newName }: Props) {
  const own = here.place.number
  const field = (name: 'from' | 'to', words: string) =>
    span !== null && (
      <label>
        <span>{words}</span>
        <select
          value={span[name]}
          onChange={({ currentTarget }) => change({ ...span, [name]: Number(currentTarget.value) })}
        >
          {places
            .filter(({ place }) => (name === 'from' ? place.number <= own : place.number >= own))
            .map(({ id, place }) => (
              <option key={id} value={place.number}>
                {placeWords(place)}
              </option>
            ))}
        </select>
      </label>
    )
  return (
    <div class="same-for">
      <label class="check">
        <input
          type="checkbox"
          checked={span !== null}
          onChange={({ currentTarget }) =>
            change(currentTarget.checked ? { from: own, to: places.at(-1)!.place.number, together: newName() } : null)
          }
        />
        {m.entry.sameFor}
      </label>
      {span !== null && (
        <>
          <div class="fields">
            {field('from', m.entry.from)}
            {field('to', m.entry.to)}
          </div>
          <p class="hint">{m.entry.sameCount(placesBetween(places, span.from, span.to).length)}</p>
        </>
      )}
    </div>
  )
}
