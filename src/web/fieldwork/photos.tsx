import { useRef, useState } from 'preact/hooks'
import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import type { PhotoBody } from '../../formats/entry/entry-kinds.ts'
import { now } from '../data/device.ts'
import { later } from '../data/later.ts'
import type { KeptEntry, RunSource, Trouble } from '../data/run-source.ts'
import { sha256Of } from '../data/sha256.ts'
import { momentWords } from '../entry/reading-words.ts'
import { asWritten, m } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { devicePosition } from './device-position.ts'
import { PhotoImage } from './photo-image.tsx'
import { shrunk } from './photo-size.ts'
import { preferences, setPreferences } from './preferences.ts'

const drawing = partOf(() => import('./draw-on-photo.tsx'))
const cameraPart = partOf(() => import('./camera.tsx'))

/** Whether this browser shows a page what the camera sees. */
const hasCamera = (): boolean => navigator.mediaDevices?.getUserMedia !== undefined

interface Props {
  readonly source: RunSource
  readonly run: string
  /** The requirement that they show; null for what no requirement asks. */
  readonly of: string | null
  readonly isHold: boolean
  readonly photos: readonly KeptEntry<'photo'>[]
  /** What is drawn on the photos of the run. */
  readonly strokes: readonly PhotoStrokes[]
  readonly by: string
  /** Told the hash of each that is kept. */
  readonly kept?: (sha256: string) => void
  readonly again: () => Promise<void>
}

type Adding =
  | { readonly state: 'idle' }
  | { readonly state: 'adding' }
  | { readonly state: 'failed'; readonly trouble: Pick<Trouble, 'message' | 'problems'> }

/** The photos of one requirement: taken with the camera or added from files, several of them. */
export function Photos({ source, run, of, isHold, photos, strokes, by, kept: tell, again }: Props) {
  const camera = useRef<HTMLInputElement>(null)
  const files = useRef<HTMLInputElement>(null)
  const [adding, setAdding] = useState<Adding>({ state: 'idle' })
  const [keepsOriginal, setKeepsOriginal] = useState(false)
  const [keepsPosition, setKeepsPosition] = useState(() => preferences().position)
  const [isShooting, setShooting] = useState(false)
  const [drawnOn, setDrawnOn] = useState<KeptEntry<'photo'> | null>(null)

  const fail = (trouble: Pick<Trouble, 'message' | 'problems'>): false => {
    setAdding({ state: 'failed', trouble })
    return false
  }

  /** Keeps each at once; told whether all are kept. */
  const add = async (chosen: readonly File[], isCamera: boolean): Promise<boolean> => {
    if (chosen.length === 0) return true
    setAdding({ state: 'adding' })
    const photoFile = await later(() => import('./photo-file.ts'))
    if (!photoFile.ok) return fail(photoFile.error)
    const takenHere = isCamera ? now() : null
    const position = isCamera && keepsPosition ? await devicePosition() : null
    for (const file of chosen) {
      const prepared = await photoFile.value.preparePhoto(file, keepsOriginal)
      if (!prepared.ok) {
        const message = prepared.error === 'heic' ? m.photo.heic(file.name) : m.photo.noPicture(file.name)
        return fail({ message, problems: [] })
      }
      const { origin } = prepared.value
      const takenAt = origin.takenAt ?? takenHere
      const witness = keepsPosition && origin.position !== null ? { cameraPosition: origin.position } : {}
      const { bytes, type, width, height } = prepared.value
      const body: PhotoBody = {
        ...{ sha256: await sha256Of(bytes), type, bytes: bytes.byteLength, width, height },
        ...{ takenAt, position, ...witness, of, drawnOn: null, note: null },
      }
      const kept = await source.savePhoto(run, bytes, body, by)
      if (!kept.ok) return fail(kept.error)
      tell?.(kept.value.body.sha256)
    }
    setAdding({ state: 'idle' })
    await again()
    return true
  }
  const caption = async (photo: KeptEntry<'photo'>, words: string): Promise<void> => {
    const body = { ...photo.body, note: words === '' ? null : words }
    if (body.note === photo.body.note) return
    const kept = await source.appendEntry(run, 'photo', body, by, photo.id)
    if (!kept.ok) return void fail(kept.error)
    await again()
  }
  const input = (name: 'camera' | 'files') => (
    <input
      ref={name === 'camera' ? camera : files}
      class="unseen"
      type="file"
      tabIndex={-1}
      aria-label={name === 'camera' ? m.photo.take : m.photo.fromFiles}
      accept={name === 'camera' ? 'image/*' : 'image/jpeg,image/png,image/webp,image/heic'}
      {...(name === 'camera' ? { capture: 'environment' as const } : { multiple: true })}
      onChange={({ currentTarget }) => {
        const chosen = [...(currentTarget.files ?? [])]
        currentTarget.value = ''
        void add(chosen, name === 'camera')
      }}
    />
  )
  return (
    <section class="photos" aria-label={m.photo.title}>
      <h3>
        {m.run.withCount(m.photo.title, photos.length)}
        {isHold && photos.length === 0 && <span class="tag strong">{m.photo.needed}</span>}
      </h3>
      {photos.length > 0 && (
        <ul class="photo-list plain">
          {photos.map((photo, i) => (
            <li key={photo.id}>
              <PhotoImage
                source={source}
                sha256={photo.body.sha256}
                words={m.photo.nth(i + 1, photos.length)}
                strokes={strokes}
              />
              <p class="hint">{photoWords(photo)}</p>
              <label class="caption">
                <span>{m.photo.caption}</span>
                <input
                  value={photo.body.note ?? ''}
                  maxLength={4000}
                  onChange={({ currentTarget }) => void caption(photo, currentTarget.value.trim())}
                />
              </label>
              <button type="button" class="button small" onClick={() => setDrawnOn(photo)}>
                {m.photo.draw}
              </button>
            </li>
          ))}
        </ul>
      )}
      {input('camera')}
      {input('files')}
      <div class="photo-buttons">
        <button
          type="button"
          class="button"
          onClick={() => (hasCamera() ? setShooting(true) : camera.current?.click())}
        >
          {m.photo.take}
        </button>
        <button type="button" class="button" onClick={() => files.current?.click()}>
          {m.photo.fromFiles}
        </button>
      </div>
      <p role="status">{adding.state === 'adding' && m.photo.adding}</p>
      {adding.state === 'failed' && <TroubleNote title={m.photo.notAdded} trouble={adding.trouble} />}
      <details>
        <summary>{m.photo.options}</summary>
        <p class="hint">{m.photo.size(shrunk.edge, shrunk.quality * 100)}</p>
        <label class="check">
          <input
            type="checkbox"
            checked={keepsOriginal}
            onChange={({ currentTarget }) => setKeepsOriginal(currentTarget.checked)}
          />
          {m.photo.keepOriginal}
        </label>
        <label class="check">
          <input
            type="checkbox"
            checked={keepsPosition}
            onChange={({ currentTarget }) => {
              setKeepsPosition(currentTarget.checked)
              setPreferences({ position: currentTarget.checked })
            }}
          />
          {m.photo.keepPosition}
        </label>
      </details>
      {isShooting && (
        <LaterPart part={cameraPart} title={m.photo.take}>
          {({ Camera }) => (
            <Camera
              keep={(shot) => add([shot], true)}
              otherWay={() => camera.current?.click()}
              close={() => setShooting(false)}
            />
          )}
        </LaterPart>
      )}
      {drawnOn !== null && (
        <LaterPart part={drawing} title={m.markUp.title}>
          {({ DrawOnPhoto }) => (
            <DrawOnPhoto
              {...{ source, run, by }}
              photo={drawnOn}
              drawn={strokes.filter(({ photo }) => photo === drawnOn.body.sha256)}
              saved={again}
              close={() => setDrawnOn(null)}
            />
          )}
        </LaterPart>
      )}
    </section>
  )
}

/** When, where and by whom; and whether the server has it. */
function photoWords({ body, author, state }: KeptEntry<'photo'>): string {
  const { takenAt, position, cameraPosition, drawnOn } = body
  return [
    takenAt === null ? m.photo.timeUnknown : momentWords(takenAt),
    asWritten(author),
    ...(position === null
      ? []
      : [m.photo.position(position.latitude.toFixed(5), position.longitude.toFixed(5), Math.ceil(position.accuracy))]),
    ...(cameraPosition === undefined
      ? []
      : [m.photo.cameraPosition(cameraPosition.latitude.toFixed(5), cameraPosition.longitude.toFixed(5))]),
    ...(drawnOn === null ? [] : [m.photo.drawn]),
    m.state[state],
  ].join(', ')
}
