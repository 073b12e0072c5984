import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import { photoAskedEarlier } from '../../core/record/readings-in-force.ts'
import { askedEarlierReason } from '../../core/record/record-saying.ts'
import { readableIn } from '../../core/requirements/readable-in.ts'
import { askedBy } from '../../operations/asked-by.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { KeptEntry, RunSource } from '../data/run-source.ts'
import { askedWords } from '../entry/asked-words.ts'
import { momentWords, readWords } from '../entry/reading-words.ts'
import { PhotoImage } from '../fieldwork/photo-image.tsx'
import { asWritten, m, say } from '../messages.ts'
import { VersionReasons } from '../parts/version-reasons.tsx'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly photos: readonly KeptEntry<'photo'>[]
  readonly strokes: readonly PhotoStrokes[]
}

/** What an earlier version of the run asked and the one in force does not, in a fold of its own; nothing where there is none. */
export function AskedEarlierFold({ source, judged, photos, strokes }: Props) {
  const { askedEarlier, run } = judged
  const shown = photosAskedEarlier(judged, photos)
  const count = askedEarlier.length + shown.length
  if (count === 0) return null
  const versionWords = (version: string): string => {
    const at = run.version?.earlier.findIndex(({ id }) => id === version) ?? -1
    return at === -1 ? m.earlier.otherVersion(version.slice(-12)) : m.earlier.version(at + 1)
  }
  const nameOf = askedWords(judged)
  const asked = askedBy(judged.versions)
  return (
    <section class="sheet">
      <details class="earlier">
        <summary>{m.run.withCount(m.earlier.title, count)}</summary>
        <p class="hint">{m.earlier.how}</p>
        <VersionReasons earlier={run.version?.earlier ?? []} />
        <ul class="plain">
          {askedEarlier.map(({ reading, version, because }) => (
            <li key={reading.id} class="past-reading">
              <p>
                {nameOf(reading.of, version)}:{' '}
                <b>{readWords(reading, asked(reading.of, version) ?? null, run.units)}</b>
              </p>
              <p class="hint">{[momentWords(reading.at), asWritten(reading.by), versionWords(version)].join(', ')}</p>
              <p>{say(askedEarlierReason({ because }), run.units)}</p>
            </li>
          ))}
          {shown.map(({ photo: { id, author, capturedAt, body }, of, because }) => (
            <li key={id} class="past-reading">
              <p>
                {m.earlier.photo}, {nameOf(of, null)}
              </p>
              <PhotoImage
                source={source}
                sha256={body.sha256}
                words={`${m.earlier.photo}, ${nameOf(of, null)}`}
                strokes={strokes}
              />
              <p class="hint">
                {[
                  momentWords(capturedAt),
                  asWritten(author),
                  ...(body.note === null ? [] : [asWritten(body.note)]),
                ].join(', ')}
              </p>
              <p>{say(askedEarlierReason({ because }), run.units)}</p>
            </li>
          ))}
        </ul>
      </details>
    </section>
  )
}

function photosAskedEarlier(judged: JudgedRun, photos: readonly KeptEntry<'photo'>[]) {
  const { version } = judged.run
  if (version === undefined || photos.length === 0) return []
  const asked = readableIn(judged)
  return entriesInForce(photos).flatMap((photo) => {
    const { of } = photo.body
    const because = photoAskedEarlier(version, asked, of)
    return because === null || of === null ? [] : [{ photo, of, because }]
  })
}
