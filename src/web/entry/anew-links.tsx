import type { Place } from '../../core/requirements/requirement.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import { m } from '../messages.ts'
import { anewPath } from '../route.ts'

interface Props {
  readonly run: RunFile
  readonly id: string
  readonly place: Place
}

/** From where somebody stands: what is beyond this piece laid out anew; nothing of a run that stood before the visit. */
export function AnewLinks({ run, id, place }: Props) {
  const isBuilt = run.counted !== undefined || run.work === 'standing'
  if (isBuilt || (place.kind !== 'post' && place.kind !== 'panel')) return null
  return (
    <p>
      <a href={anewPath(id, place.id, false)}>{place.kind === 'post' ? m.entry.anewFromPost : m.entry.anewFromPanel}</a>
      {place.kind === 'post' && (
        <>
          {' · '}
          <a href={anewPath(id, place.id, true)}>{m.entry.anewBlocked}</a>
        </>
      )}
    </p>
  )
}
