import '../style/scene.css'
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { AsBuilt } from '../../core/drill/as-built.ts'
import { type MeasuringTool, measuringTools, type TouchedPoint } from '../../core/scene/measure.ts'
import { type PlaceVerdict, placeVerdicts } from '../../drawing/views/strip/verdict-rows.ts'
import { writeGltf } from '../../formats/gltf/write-gltf.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { drillScene, runScene } from '../../operations/run-scene.ts'
import { placeWords } from '../entry/reading-words.ts'
import { asWritten } from '../messages.ts'
import { download } from '../parts/download.ts'
import { useFrameByFrame } from '../parts/use-after-frame.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'
import { MeasureField } from './measure-field.tsx'
import { SceneCanvas } from './scene-canvas.tsx'
import type { LookFrom } from './viewpoint.ts'
import { words } from './words.ts'

/** How many times their size heights and offsets can be shown. */
const factors = [1, 4, 10] as const

interface Props {
  readonly judged: JudgedRun
  readonly run: string
  /** How a run of a drill really stands; null where only readings tell. */
  readonly built: AsBuilt | null
}

/** The run in three dimensions as it was read, or as a drill built it, with a list of its places beside it. */
export function ScenePane({ judged, run, built }: Props) {
  const [factor, setFactor] = useState<number>(1)
  const [from, setFrom] = useState<LookFrom>('road')
  const scene = useMemo(
    () => (built === null ? runScene(judged, factor) : drillScene(judged, built)),
    [judged, factor, built],
  )
  const verdicts = useMemo(
    () => new Map(placeVerdicts(judged.judgement.verdicts).map((one) => [one.id, one])),
    [judged],
  )
  const places = useMemo(() => scene.places.filter(({ id }) => verdicts.has(id)), [scene, verdicts])
  const [chosen, setChosen] = useState<string | null>(null)
  const place = chosen ?? places[0]?.id ?? ''
  const at = places.findIndex(({ id }) => id === place)
  const verdictOf = useCallback((id: string) => verdicts.get(id)?.worst ?? null, [verdicts])
  const step = (by: number): void => {
    const to = Math.min(Math.max(at + by, 0), places.length - 1)
    setChosen(places[to]?.id ?? null)
  }
  const [tool, setTool] = useState<MeasuringTool | null>(null)
  const [points, setPoints] = useState<readonly TouchedPoint[]>([])
  const chooseTool = (next: MeasuringTool | null): void => {
    setTool(next)
    setPoints([])
    // What is drawn larger than it is cannot be measured.
    if (next !== null) setFactor(1)
  }
  const shown = verdicts.get(place)
  const said = words()
  return (
    <section class="scene">
      <div class="scene-stage">
        <SceneCanvas
          scene={scene}
          verdictOf={verdictOf}
          place={place}
          from={from}
          label={said.title(asWritten(judged.run.name))}
          marks={points.map(({ at }) => at)}
          touched={({ place: touched, at, fineness }) => {
            if (tool !== null)
              setPoints((before) => [...(before.length < measuringTools[tool] ? before : []), { at, fineness }])
            else if (touched !== null && verdicts.has(touched)) setChosen(touched)
          }}
          step={step}
        />
        <div class="scene-steps">
          <button type="button" class="button" disabled={at <= 0} onClick={() => step(-1)}>
            {said.previous}
          </button>
          <button type="button" class="button main" disabled={at >= places.length - 1} onClick={() => step(1)}>
            {said.next}
          </button>
        </div>
        {shown !== undefined && <ShownPlace judged={judged} run={run} shown={shown} />}
        <div class="scene-choices">
          <fieldset>
            <legend>{said.from}</legend>
            {(['road', 'behind'] as const).map((side) => (
              <button
                key={side}
                type="button"
                class="button"
                aria-pressed={from === side}
                onClick={() => setFrom(side)}
              >
                {side === 'road' ? said.fromRoad : said.behind}
              </button>
            ))}
          </fieldset>
          {built === null && (
            <fieldset>
              <legend>{said.size}</legend>
              {factors.map((one) => (
                <button
                  key={one}
                  type="button"
                  class="button"
                  aria-pressed={factor === one}
                  onClick={() => {
                    chooseTool(null)
                    setFactor(one)
                  }}
                >
                  {said.times(one)}
                </button>
              ))}
            </fieldset>
          )}
          <MeasureField
            tool={tool}
            points={points}
            outward={scene.outward}
            units={judged.run.units}
            choose={chooseTool}
          />
        </div>
        <p class="hint" role="status">
          {built !== null ? said.practice : factor === 1 ? said.truly : said.exaggerated(factor)}
        </p>
        {scene.unknown.map((one) => (
          <p key={one} class="scene-none">
            {said.unknown[one]}
          </p>
        ))}
        <p>
          <button
            type="button"
            class="button"
            onClick={() => {
              const { name } = judged.run
              download(
                new Blob([writeGltf(scene, name)], { type: 'model/gltf-binary' }),
                `${name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}.glb`,
              )
            }}
          >
            {said.save}
          </button>
        </p>
        <p class="hint" id="scene-how">
          {said.how} {said.signs}
        </p>
      </div>
      <PlaceList judged={judged} places={places.map(({ id }) => verdicts.get(id)!)} place={place} choose={setChosen} />
    </section>
  )
}

interface ShownProps {
  readonly judged: JudgedRun
  readonly run: string
  readonly shown: PlaceVerdict
}

/** What is looked at, how it stands, and the way to what is asked of it. */
function ShownPlace({ judged, run, shown }: ShownProps) {
  const worst = judged.judgement.verdicts.find((one) => one.place.id === shown.id && one.verdict === shown.worst)
  return (
    <div class="scene-shown" role="status">
      <h2>{placeWords(shown.place, judged.run.units)}</h2>
      <VerdictMark word={shown.worst} count={shown.count} of={shown.applying} />
      {worst !== undefined && <a href={requirementPath(run, worst.requirement)}>{words().toRequirement}</a>}
    </div>
  )
}

interface ListProps {
  readonly judged: JudgedRun
  readonly places: readonly PlaceVerdict[]
  readonly place: string
  readonly choose: (place: string) => void
}

/** Places drawn in the first frame, and the most in a later one. */
const drawnAtFirst = 30
const drawnAtOnce = 240

/** The same places for who cannot use a scene, or would rather read. */
function PlaceList({ judged, places, place, choose }: ListProps) {
  const list = useRef<HTMLOListElement>(null)
  const drawn = useFrameByFrame(places.length, drawnAtFirst, drawnAtOnce)
  useEffect(() => {
    const [box, current] = [list.current, list.current?.querySelector<HTMLElement>('[aria-current]')]
    // The list alone scrolls, not the page.
    if (box && current) box.scrollTop = current.offsetTop - box.offsetTop - box.clientHeight / 2
  }, [place])
  return (
    <ol ref={list} class="scene-places" aria-label={words().places}>
      {places.slice(0, drawn).map((one) => (
        <li key={one.id}>
          <button
            type="button"
            class="scene-place"
            aria-current={one.id === place ? 'true' : undefined}
            onClick={() => choose(one.id)}
          >
            <span>{placeWords(one.place, judged.run.units)}</span>
            <VerdictMark word={one.worst} count={one.count} of={one.applying} />
          </button>
        </li>
      ))}
    </ol>
  )
}
