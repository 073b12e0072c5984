import type { LeftOut } from '../../formats/entry/carried.ts'
import type { EntryKind } from '../../formats/entry/entry-kinds.ts'
import type { LackedPhoto } from '../data/run-source.ts'
import { momentWords } from '../entry/reading-words.ts'
import { asWritten, say } from '../messages.ts'
import { words } from './words.ts'

/** So many are listed; who needs them all has the file. */
const listed = 20

/** What is not taken in of a file, by name, place and reason. */
export function LeftList({ left }: { readonly left: readonly LeftOut[] }) {
  return (
    <ul class="problems">
      {left.slice(0, listed).map((one, i) => (
        <li key={i}>
          <b>{nameOf(one)}</b>
          {one.problems.map(({ file, place, expected, found }) => (
            <p key={`${place} ${say(expected)}`}>
              {words().problem(`${file}, ${place}`, say(expected), found === null ? '' : say(found))}
            </p>
          ))}
        </li>
      ))}
      {left.length > listed && <li>{words().more(left.length - listed)}</li>}
    </ul>
  )
}

/** Photos whose pictures are missing, by who took them and when. */
export function LackedList({ lacks }: { readonly lacks: readonly LackedPhoto[] }) {
  const w = words()
  return (
    <ul>
      {lacks.slice(0, listed).map(({ sha256, author, capturedAt }) => (
        <li key={sha256}>{w.leftEntry(w.kinds.photo(1), asWritten(author), momentWords(capturedAt))}</li>
      ))}
      {lacks.length > listed && <li>{w.more(lacks.length - listed)}</li>}
    </ul>
  )
}

/** What people know it by, as far as it says it. */
function nameOf({ table, raw }: LeftOut): string {
  const w = words()
  const { kind, author, capturedAt, sha256 } = (typeof raw === 'object' && raw !== null ? raw : {}) as Record<
    string,
    unknown
  >
  if (table === 'photos') return w.leftPhoto(String(sha256).slice(0, 12))
  const known = typeof kind === 'string' && Object.hasOwn(w.kinds, kind) ? w.kinds[kind as EntryKind](1) : w.leftOther
  if (typeof author !== 'string' || typeof capturedAt !== 'string') return known
  return w.leftEntry(
    known,
    asWritten(author),
    Number.isNaN(Date.parse(capturedAt)) ? capturedAt : momentWords(capturedAt),
  )
}
