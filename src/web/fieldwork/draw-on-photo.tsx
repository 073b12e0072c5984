import { useEffect, useRef, useState } from 'preact/hooks'
import type { PhotoStrokes, Stroke } from '../../core/record/photo-strokes.ts'
import type { KeptEntry, RunSource, Trouble } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { usePhoto } from './photo-image.tsx'
import { centredStroke, grownStroke, isTap, isWithin, movedStroke, partOf, startedStroke } from './stroke-moves.ts'
import { StrokesOver } from './strokes-over.tsx'

interface Props {
  readonly source: RunSource
  readonly run: string
  readonly photo: KeptEntry<'photo'>
  /** What is drawn on it already. */
  readonly drawn: readonly PhotoStrokes[]
  readonly by: string
  readonly saved: () => Promise<void>
  readonly close: () => void
}

const kinds = ['arrow', 'circle', 'line'] as const

/**
 * Draws on a photo, by pointer or by buttons and arrow keys, and takes back what is drawn. Only strokes are kept, beside
 * the photo: new ones as an entry of their own, and what is left of an earlier entry in its place.
 */
export function DrawOnPhoto({ source, run, photo, drawn, by, saved, close }: Props) {
  const { sha256, width, height } = photo.body
  const dialog = useRef<HTMLDialogElement>(null)
  const [kind, setKind] = useState<Stroke['kind']>('arrow')
  // As it was when this was opened, whatever another device sends in the meantime.
  const [before] = useState(drawn)
  const [kept, setKept] = useState(before)
  const [fresh, setFresh] = useState<readonly Stroke[]>([])
  const [isDragging, setDragging] = useState(false)
  const [isKeeping, setKeeping] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const address = usePhoto(source, sha256)
  const last = fresh.at(-1)

  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal()
  }, [])

  /** The last stroke as it becomes; as it is where that would leave the photo. */
  const changeLast = (change: (stroke: Stroke) => Stroke): void => {
    if (last === undefined) return
    const changed = change(last)
    if (isWithin(changed)) setFresh([...fresh.slice(0, -1), changed])
  }
  const takeBack = (): void => {
    const at = kept.findLastIndex(({ strokes }) => strokes.length > 0)
    if (last !== undefined) setFresh(fresh.slice(0, -1))
    else setKept(kept.map((one, i) => (i === at ? { ...one, strokes: one.strokes.slice(0, -1) } : one)))
  }
  const changed = kept.filter((one, i) => one.strokes.length < before[i]!.strokes.length)
  const count = kept.reduce((sum, { strokes }) => sum + strokes.length, fresh.length)
  const save = async (): Promise<void> => {
    setKeeping(true)
    const bodies = [
      ...changed.map(({ id, width, height, strokes }) => ({ id, width, height, strokes })),
      ...(fresh.length === 0 ? [] : [{ id: null, width, height, strokes: fresh }]),
    ]
    for (const { id, strokes, ...size } of bodies) {
      const answer = await source.appendEntry(run, 'photo-strokes', { photo: sha256, ...size, strokes }, by, id)
      if (!answer.ok) {
        setKeeping(false)
        return setTrouble(answer.error)
      }
    }
    await saved()
    dialog.current?.close()
  }
  const size = { width, height }
  const nudges = [
    ['←', m.markUp.left, (stroke: Stroke) => movedStroke(stroke, size, -1, 0)],
    ['→', m.markUp.right, (stroke: Stroke) => movedStroke(stroke, size, 1, 0)],
    ['↑', m.markUp.up, (stroke: Stroke) => movedStroke(stroke, size, 0, -1)],
    ['↓', m.markUp.down, (stroke: Stroke) => movedStroke(stroke, size, 0, 1)],
    ['+', m.markUp.larger, (stroke: Stroke) => grownStroke(stroke, size, 1.2, 0)],
    ['−', m.markUp.smaller, (stroke: Stroke) => grownStroke(stroke, size, 1 / 1.2, 0)],
    ['↻', m.markUp.turn, (stroke: Stroke) => grownStroke(stroke, size, 1, Math.PI / 8)],
  ] as const
  return (
    <dialog ref={dialog} class="mark-up" aria-labelledby="mark-up" onClose={close}>
      <h2 id="mark-up">{m.markUp.title}</h2>
      <p class="hint">{m.markUp.how}</p>
      <div class="photo-buttons">
        {kinds.map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={kind === one}
            onClick={() => {
              setKind(one)
              setFresh([...fresh, centredStroke(one, size)])
            }}
          >
            {m.markUp.add[one]}
          </button>
        ))}
        <button type="button" class="button" disabled={count === 0} onClick={takeBack}>
          {m.markUp.takeBack}
        </button>
      </div>
      <div class="mark-up-photo">
        {address === 'missing' && <p>{m.photo.notHere}</p>}
        {address !== null && address !== 'missing' && (
          <>
            <img src={address} alt={m.photo.title} />
            {[...kept, { width, height, strokes: fresh }].map((one, i) => (
              <StrokesOver key={i} drawn={one} />
            ))}
            <div
              class="mark-up-pad"
              onPointerDown={(event) => {
                event.currentTarget.setPointerCapture(event.pointerId)
                setFresh([...fresh, startedStroke(kind, partOf(event))])
                setDragging(true)
              }}
              onPointerMove={(event) => {
                const to = partOf(event)
                if (!isDragging) return
                changeLast(({ kind, points }) =>
                  kind === 'line' ? { kind, points: [...points, to] } : { kind, points: [points[0], to] },
                )
              }}
              onPointerUp={() => {
                setDragging(false)
                if (last !== undefined && isTap(last)) setFresh(fresh.slice(0, -1))
              }}
            />
          </>
        )}
      </div>
      <fieldset class="photo-buttons" disabled={last === undefined}>
        <legend>{m.markUp.last(count)}</legend>
        {nudges.map(([sign, words, change]) => (
          <button key={sign} type="button" class="key" aria-label={words} onClick={() => changeLast(change)}>
            {sign}
          </button>
        ))}
      </fieldset>
      {trouble !== null && <TroubleNote title={m.markUp.notKept} trouble={trouble} />}
      <div class="photo-buttons">
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          {m.markUp.leave}
        </button>
        <button
          type="button"
          class="button main"
          disabled={(fresh.length === 0 && changed.length === 0) || isKeeping}
          onClick={() => void save()}
        >
          {m.markUp.keep}
        </button>
      </div>
    </dialog>
  )
}
