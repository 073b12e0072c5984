import { useMemo, useRef, useState } from 'preact/hooks'
import { findNeed, type Need } from '../../core/need/need.ts'
import type { Site } from '../../core/site/site.ts'
import type { Box, Drawing, Point } from '../../drawing/drawing.ts'
import type { PlanHandle } from '../../drawing/views/plan/handles.ts'
import type { PlanFrame } from '../../drawing/views/plan/plan-frame.ts'
import type { PlanInput, SitePage, Stretch } from '../../drawing/views/plan/site-view.ts'
import { planDrawing, planFrame, planHandles } from '../../drawing/views/plan.ts'
import { siteFromValue } from '../../formats/site/read-site.ts'
import { planInput } from '../../operations/write-site-drawings.ts'
import type { Draft } from '../form/draft.ts'
import { m, printIn } from '../messages.ts'
import { Picture } from '../parts/picture.tsx'
import { aroundHazards, closeUp } from './close-up.ts'
import { handleValue } from './handle-value.ts'
import { movedHandle, nudgedHandle } from './move-handle.ts'
import { words } from './words.ts'

interface Props {
  /** What `site` was read from. */
  readonly draft: Draft
  readonly site: Site
  readonly need: Need | null
  readonly page: SitePage
  /** False until the picture is put in. */
  readonly isDrawn: boolean
  readonly change: (change: (draft: Draft) => Draft) => void
}

/** A drag from its beginning: everything is measured from there, so the hand and the point stay together. */
interface Drag {
  readonly draft: Draft
  readonly site: Site
  readonly handle: PlanHandle
  readonly frame: PlanFrame
  readonly from: Point
  readonly pointer: Point
  /** Inches in the world for each CSS pixel. */
  readonly perPixel: number
}

/** What a drag holds still, so that the road does not move under the hand. */
interface Held {
  readonly range: Stretch
  readonly extent: Box
}

/** How near a hand has to come to a handle, CSS pixels. */
const reachPixels = 30

/** The plan, drawn anew with every change, with points that are moved by hand or by the arrow keys. */
export function PlanPane({ isDrawn, ...props }: Props) {
  const { site, need, page } = props
  const { plan } = words()
  const [shown, show] = useState<'whole' | 'near'>('whole')
  const [held, hold] = useState<Held | null>(null)
  const input = useMemo(
    () => ({
      ...planInput(site, need, page, printIn(site.units)),
      range: held?.range ?? (shown === 'near' ? aroundHazards(site) : null),
    }),
    [site, need, page, held, shown, m],
  )
  const frame = useMemo(() => planFrame(input), [input])
  const drawing = useMemo(() => {
    const whole = planDrawing(input)
    const plan = shown === 'near' ? closeUp(whole, frame, site) : whole
    return held === null ? plan : { ...plan, extent: held.extent }
  }, [input, frame, site, shown, held])
  const step = site.units === 'us' ? ['1 ft', '10 ft'] : ['0.25 m', '2.5 m']
  return (
    <section class="sheet site-plan" aria-labelledby="site-plan-title">
      <div class="site-plan-bar">
        <h2 id="site-plan-title">{plan.title}</h2>
        <label class="site-shown">
          <span>{plan.show}</span>
          <select value={shown} onChange={({ currentTarget }) => show(currentTarget.value as 'whole' | 'near')}>
            <option value="whole">{plan.whole}</option>
            <option value="near">{plan.near}</option>
          </select>
        </label>
        <p class="hint" id="site-plan-how">
          {plan.how(step[0]!, step[1]!)}
          {shown === 'near' && frame.across !== 1 && ` ${plan.across(frame.across)}`}
        </p>
      </div>
      {isDrawn && <PlanBox {...props} input={input} frame={frame} drawing={drawing} held={held} hold={hold} />}
    </section>
  )
}

interface BoxProps extends Omit<Props, 'isDrawn' | 'need' | 'page'> {
  readonly input: PlanInput
  readonly frame: PlanFrame
  readonly drawing: Drawing
  readonly held: Held | null
  readonly hold: (held: Held | null) => void
}

/** The picture, and on it the points. */
function PlanBox({ draft, site, change, input, frame, drawing, held, hold }: BoxProps) {
  const { plan } = words()
  const drag = useRef<Drag | null>(null)
  const box = useRef<HTMLDivElement>(null)
  const handles = useMemo(() => planHandles(input).filter(({ station }) => isIn(frame.range, station)), [input, frame])
  const placeOf = ({ station, lateral }: PlanHandle) => {
    const { left, top } = shareOf(drawing, frame.toDrawing(station, lateral))
    return { left: `${left * 100}%`, top: `${top * 100}%` }
  }
  const grid = site.units === 'us' ? 0.5 : 0.1

  const begin = (event: PointerEvent): void => {
    const picture = box.current!.getBoundingClientRect()
    const perPixel = (drawing.extent.maxX - drawing.extent.minX) / picture.width
    const pointer = { x: event.clientX, y: event.clientY }
    const distance = (handle: PlanHandle): number => {
      const { left, top } = shareOf(drawing, frame.toDrawing(handle.station, handle.lateral))
      const [x, y] = [picture.left + left * picture.width, picture.top + top * picture.height]
      return Math.hypot(pointer.x - x, pointer.y - y)
    }
    const handle = handles.toSorted((a, b) => distance(a) - distance(b))[0]
    if (event.button !== 0 || handle === undefined || distance(handle) > reachPixels) return
    event.preventDefault()
    box.current!.setPointerCapture(event.pointerId)
    box.current!.querySelector<HTMLElement>(`[data-handle="${handle.place}"]`)?.focus({ preventScroll: true })
    drag.current = {
      draft,
      site,
      handle,
      frame,
      from: frame.toDrawing(handle.station, handle.lateral),
      pointer,
      perPixel,
    }
    hold({ range: frame.range, extent: drawing.extent })
  }
  const move = (event: PointerEvent): void => {
    if (drag.current === null) return
    const { from, pointer, perPixel, frame: start, ...moving } = drag.current
    const x = from.x + (event.clientX - pointer.x) * perPixel
    const y = from.y - (event.clientY - pointer.y) * perPixel
    const to = start.toSite(x, y)
    if (to !== null) change(() => movedHandle(moving.draft, moving.site, moving.handle, to, grid))
  }
  const end = (): void => {
    drag.current = null
    hold(null)
  }
  const press = (event: KeyboardEvent, handle: PlanHandle): void => {
    const along = { ArrowRight: 1, ArrowLeft: -1 }[event.key] ?? 0
    const away = frame.outward * ({ ArrowUp: 1, ArrowDown: -1 }[event.key] ?? 0)
    if (along === 0 && away === 0) return
    event.preventDefault()
    const step = { along, away, times: event.shiftKey ? 10 : 1 }
    change((now) => nudged(now, handle.place, step))
  }
  return (
    <div
      ref={box}
      class={held === null ? 'plan-box' : 'plan-box held'}
      onPointerDown={begin}
      onPointerMove={move}
      onPointerUp={end}
      onPointerCancel={end}
    >
      <Picture drawing={drawing} class="plan" />
      {handles.map((handle) => (
        <div key={handle.place} class="grip-zone" style={placeOf(handle)} aria-hidden="true" />
      ))}
      {/* biome-ignore lint/a11y/useSemanticElements: what it holds are points of a picture, not fields of a form */}
      <div role="group" aria-label={plan.handles} aria-describedby="site-plan-how">
        {handles.map((handle) => {
          const value = handleValue(site, handle)
          return (
            <div
              key={handle.place}
              class="grip"
              role="slider"
              tabIndex={0}
              data-handle={handle.place}
              style={placeOf(handle)}
              aria-label={handle.words}
              aria-valuemin={0}
              aria-valuemax={Math.max(100, Math.ceil(value.now))}
              aria-valuenow={value.now}
              aria-valuetext={value.text}
              onKeyDown={(event) => press(event, handle)}
            />
          )
        })}
      </div>
    </div>
  )
}

/** Where a point of the drawing lies in its picture, as shares of width and height. */
const shareOf = ({ extent }: Drawing, { x, y }: Point): { readonly left: number; readonly top: number } => ({
  left: (x - extent.minX) / (extent.maxX - extent.minX),
  top: (extent.maxY - y) / (extent.maxY - extent.minY),
})

const isIn = ({ from, to }: Stretch, station: number): boolean => station >= from && station <= to

/** Keys may come faster than pictures, so the handle is looked up in what is written now. */
function nudged(now: Draft, place: string, step: Parameters<typeof nudgedHandle>[3]): Draft {
  const read = siteFromValue('site', now)
  if (!read.ok) return now
  const need = findNeed(read.value)
  const handles = planHandles(planInput(read.value, need.ok ? need.value : null, 'web', printIn(read.value.units)))
  const handle = handles.find((one) => one.place === place)
  return handle === undefined ? now : nudgedHandle(now, read.value, handle, step)
}
