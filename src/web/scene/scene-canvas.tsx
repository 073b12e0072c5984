import { useEffect, useRef, useState } from 'preact/hooks'
import type { Scene, Vector } from '../../core/scene/scene.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { measureMarks } from './measure-marks.ts'
import { sceneColours } from './scene-colours.ts'
import { type Touched, useHands } from './scene-hands.ts'
import { type SceneObjects, sceneObjects } from './scene-objects.ts'
import { type Stage, type StageState, theStage } from './stage.ts'
import { type LookFrom, type ViewpointOf, viewpoint } from './viewpoint.ts'
import { words } from './words.ts'

interface Props {
  readonly scene: Scene
  readonly verdictOf: (place: string) => VerdictWord | null
  /** What is looked at, and from which side. */
  readonly place: string
  readonly from: LookFrom
  readonly label: string
  /** Points that were touched to measure. */
  readonly marks: readonly Vector[]
  readonly touched: (what: Touched) => void
  /** A key that goes to the place before or after, or to the first or last. */
  readonly step: (by: number) => void
}

/** The scene itself, or a word where the device does not draw it. */
export function SceneCanvas({ scene, verdictOf, place, from, label, marks, touched, step }: Props) {
  const [stage] = useState<Stage | null>(theStage)
  const [state, setState] = useState<StageState>(() => stage?.state() ?? 'ready')
  const host = useRef<HTMLDivElement>(null)
  const objects = useRef<SceneObjects | null>(null)
  const view = useRef<ViewpointOf | null>(null)
  const hear = useRef({ touched, step })
  hear.current = { touched, step }
  const light = useLight()

  useEffect(() => {
    const box = host.current
    if (stage === null || box === null) return
    box.prepend(stage.canvas)
    const sized = new ResizeObserver(() => stage.fit())
    sized.observe(box)
    const quiet = [
      stage.onState(setState),
      useHands(stage, {
        objects: () => objects.current,
        view: () => view.current,
        touched: (what) => hear.current.touched(what),
      }),
    ]
    return () => {
      sized.disconnect()
      for (const stop of quiet) stop()
      stage.canvas.remove()
    }
  }, [stage])

  useEffect(() => {
    if (stage === null) return
    view.current = viewpoint(stage.camera, scene.outward, stage.ask)
    stage.move = view.current.move
  }, [stage, scene.outward])

  useEffect(() => {
    const box = host.current
    if (stage === null || box === null) return
    const colours = sceneColours(box)
    objects.current = sceneObjects(scene, colours, verdictOf)
    stage.show(objects.current, colours)
  }, [stage, scene, verdictOf, light])

  useEffect(() => {
    const looked = scene.places.find(({ id }) => id === place)
    if (looked === undefined) return
    view.current?.toPlace(looked, from)
    objects.current?.mark(looked.at)
  }, [scene, place, from, verdictOf, light])

  const marked = JSON.stringify(marks)
  useEffect(() => {
    const box = host.current
    if (stage !== null && box !== null) stage.lay(measureMarks(marks, sceneColours(box).here))
  }, [stage, marked, light])

  if (stage === null) return <p class="scene-none">{words().none}</p>
  return (
    <div
      ref={host}
      class="scene-box"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: keys turn and near it
      tabIndex={0}
      aria-label={label}
      aria-describedby="scene-how"
      onKeyDown={(event) => {
        const seen = view.current
        if (seen === null || !pressed(event.key, seen, hear.current.step)) return
        event.preventDefault()
      }}
    >
      {state === 'lost' && (
        <p class="scene-lost" role="status">
          {words().lost}
        </p>
      )}
    </div>
  )
}

/** What a key does; whether it does anything. */
function pressed(key: string, view: ViewpointOf, step: (by: number) => void): boolean {
  const does: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => view.orbit(-0.15, 0),
    ArrowRight: () => view.orbit(0.15, 0),
    ArrowUp: () => view.orbit(0, 0.1),
    ArrowDown: () => view.orbit(0, -0.1),
    '+': () => view.zoom(0.8),
    '-': () => view.zoom(1.25),
    PageDown: () => step(1),
    PageUp: () => step(-1),
    Home: () => step(Number.NEGATIVE_INFINITY),
    End: () => step(Number.POSITIVE_INFINITY),
  }
  does[key]?.()
  return does[key] !== undefined
}

/** Counts each change of the light that colours are for. */
function useLight(): number {
  const [count, setCount] = useState(0)
  useEffect(() => {
    const change = (): void => setCount((before) => before + 1)
    const chosen = new MutationObserver(change)
    chosen.observe(document.documentElement, { attributes: true, attributeFilter: ['data-light'] })
    const ofDevice = matchMedia('(prefers-color-scheme: dark)')
    ofDevice.addEventListener('change', change)
    return () => {
      chosen.disconnect()
      ofDevice.removeEventListener('change', change)
    }
  }, [])
  return count
}
