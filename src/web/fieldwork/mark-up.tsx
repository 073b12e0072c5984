import { useEffect, useRef, useState } from 'preact/hooks'
import type { KeptEntry, RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { jpegOf } from './photo-file.ts'
import { usePhoto } from './photo-image.tsx'

/** In pixels of the photo. An arrow points from `x, y` to `toX, toY`; a circle is centred on `x, y` and passes there. */
interface Mark {
  readonly kind: 'arrow' | 'circle'
  readonly x: number
  readonly y: number
  readonly toX: number
  readonly toY: number
}

interface Props {
  readonly source: RunSource
  readonly photo: KeptEntry<'photo'>
  readonly keep: (bytes: ArrayBuffer, width: number, height: number) => Promise<void>
  readonly close: () => void
}

/** Draws arrows and circles on a copy; the photo itself stays as it is. By pointer, or by buttons and arrow keys. */
export function MarkUp({ source, photo, keep, close }: Props) {
  const { width, height } = photo.body
  const dialog = useRef<HTMLDialogElement>(null)
  const picture = useRef<HTMLImageElement>(null)
  const [kind, setKind] = useState<Mark['kind']>('arrow')
  const [marks, setMarks] = useState<readonly Mark[]>([])
  const [isDragging, setDragging] = useState(false)
  const [isKeeping, setKeeping] = useState(false)
  const address = usePhoto(source, photo.body.sha256)
  const size = Math.max(width, height)
  const step = size / 40

  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal()
  }, [])

  const last = marks.at(-1)
  const put = (mark: Mark): void => setMarks([...marks, mark])
  const changeLast = (change: (mark: Mark) => Mark): void => {
    if (last !== undefined) setMarks([...marks.slice(0, -1), change(last)])
  }
  const move = (dx: number, dy: number): void =>
    changeLast(({ x, y, toX, toY, ...mark }) => ({ ...mark, x: x + dx, y: y + dy, toX: toX + dx, toY: toY + dy }))
  /** About its own start: `by` lengthens, `turn` radians turns. */
  const reach = (by: number, turn: number): void =>
    changeLast((mark) => {
      const [dx, dy] = [mark.toX - mark.x, mark.toY - mark.y]
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
      return { ...mark, toX: mark.x + by * (dx * cos - dy * sin), toY: mark.y + by * (dx * sin + dy * cos) }
    })
  const pointOf = (event: PointerEvent): { x: number; y: number } => {
    const box = (event.currentTarget as Element).getBoundingClientRect()
    return {
      x: ((event.clientX - box.left) / box.width) * width,
      y: ((event.clientY - box.top) / box.height) * height,
    }
  }
  const save = async (): Promise<void> => {
    if (picture.current === null) return
    setKeeping(true)
    const canvas = document.createElement('canvas')
    canvas.width = width
    canvas.height = height
    const pen = canvas.getContext('2d')!
    pen.drawImage(picture.current, 0, 0, width, height)
    for (const [ink, line] of inks(size)) {
      pen.strokeStyle = ink
      pen.lineWidth = line
      pen.lineCap = 'round'
      for (const mark of marks) pen.stroke(new Path2D(pathOf(mark, size)))
    }
    const bytes = await jpegOf(canvas)
    if (bytes !== null) await keep(bytes, width, height)
    setKeeping(false)
  }
  const nudges = [
    ['←', m.markUp.left, () => move(-step, 0)],
    ['→', m.markUp.right, () => move(step, 0)],
    ['↑', m.markUp.up, () => move(0, -step)],
    ['↓', m.markUp.down, () => move(0, step)],
    ['+', m.markUp.larger, () => reach(1.2, 0)],
    ['−', m.markUp.smaller, () => reach(1 / 1.2, 0)],
    ['↻', m.markUp.turn, () => reach(1, Math.PI / 8)],
  ] as const
  return (
    <dialog ref={dialog} class="mark-up" aria-labelledby="mark-up" onClose={close}>
      <h2 id="mark-up">{m.markUp.title}</h2>
      <p class="hint">{m.markUp.how}</p>
      <div class="photo-buttons">
        {(['arrow', 'circle'] as const).map((one) => (
          <button
            key={one}
            type="button"
            class="button"
            aria-pressed={kind === one}
            onClick={() => {
              setKind(one)
              put({ kind: one, x: width / 2, y: height / 2, toX: width / 2 + size / 8, toY: height / 2 - size / 12 })
            }}
          >
            {m.markUp.add[one]}
          </button>
        ))}
        <button type="button" class="button" disabled={last === undefined} onClick={() => setMarks(marks.slice(0, -1))}>
          {m.markUp.takeBack}
        </button>
      </div>
      <div class="mark-up-photo">
        {address === 'missing' && <p>{m.photo.notHere}</p>}
        {address !== null && address !== 'missing' && (
          <>
            <img ref={picture} src={address} alt={m.photo.title} />
            <svg
              viewBox={`0 0 ${width} ${height}`}
              aria-hidden="true"
              onPointerDown={(event) => {
                event.currentTarget.setPointerCapture(event.pointerId)
                const { x, y } = pointOf(event)
                put({ kind, x, y, toX: x, toY: y })
                setDragging(true)
              }}
              onPointerMove={(event) => {
                if (!isDragging) return
                const { x, y } = pointOf(event)
                changeLast((mark) => ({ ...mark, toX: x, toY: y }))
              }}
              onPointerUp={() => {
                setDragging(false)
                // A tap leaves no mark.
                if (last !== undefined && Math.hypot(last.toX - last.x, last.toY - last.y) < step / 2)
                  setMarks(marks.slice(0, -1))
              }}
            >
              {inks(size).map(([ink, line]) => (
                <path
                  key={ink}
                  d={marks.map((mark) => pathOf(mark, size)).join('')}
                  fill="none"
                  stroke={ink}
                  stroke-width={line}
                  stroke-linecap="round"
                />
              ))}
            </svg>
          </>
        )}
      </div>
      <fieldset class="photo-buttons" disabled={last === undefined}>
        <legend>{m.markUp.last(marks.length)}</legend>
        {nudges.map(([sign, words, act]) => (
          <button key={sign} type="button" class="key" aria-label={words} onClick={act}>
            {sign}
          </button>
        ))}
      </fieldset>
      <div class="photo-buttons">
        <button type="button" class="button" onClick={() => dialog.current?.close()}>
          {m.markUp.leave}
        </button>
        <button
          type="button"
          class="button main"
          disabled={marks.length === 0 || isKeeping || address === null || address === 'missing'}
          onClick={() => void save()}
        >
          {m.markUp.keep}
        </button>
      </div>
    </dialog>
  )
}

/** White below red, so that a mark shows on any ground. */
const inks = (size: number): readonly (readonly [ink: string, line: number])[] => [
  ['#ffffff', size / 90],
  ['#c40000', size / 180],
]

function pathOf({ kind, x, y, toX, toY }: Mark, size: number): string {
  const n = (value: number): string => value.toFixed(1)
  if (kind === 'circle') {
    const r = n(Math.hypot(toX - x, toY - y))
    return `M${n(x + Number(r))} ${n(y)}a${r} ${r} 0 1 1 ${n(-2 * Number(r))} 0a${r} ${r} 0 1 1 ${n(2 * Number(r))} 0`
  }
  const angle = Math.atan2(toY - y, toX - x)
  const barb = (turn: number): string =>
    `M${n(toX)} ${n(toY)}L${n(toX - (size / 28) * Math.cos(angle + turn))} ${n(toY - (size / 28) * Math.sin(angle + turn))}`
  return `M${n(x)} ${n(y)}L${n(toX)} ${n(toY)}${barb(0.5)}${barb(-0.5)}`
}
