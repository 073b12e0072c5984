import { type PerspectiveCamera, Vector3 } from 'three'
import type { ScenePlace } from '../../core/scene/scene.ts'

/** From which side of the rail. */
export type LookFrom = 'road' | 'behind'

/** Where the eye is: round what it looks at. */
interface Viewpoint {
  readonly at: Vector3
  /** Round the vertical, from downstream. */
  readonly turn: number
  /** Above the level. */
  readonly rise: number
  readonly far: number
}

/** How far the eye stands off places of a kind, m. */
const farFrom: Readonly<Record<ScenePlace['kind'], number>> = { post: 3, splice: 1.7, space: 4.5, panel: 5.5, unit: 5 }
const lowest = 0.03
const highest = 1.5
/** Share of the way that is gone in a millisecond; the whole is gone in about half a second. */
const pace = 0.009

/** Moves the eye of a scene; each move tells `changed`. */
export function viewpoint(camera: PerspectiveCamera, outward: 1 | -1, changed: () => void) {
  let [now, goal]: [Viewpoint, Viewpoint] = [start, start]
  const calm = matchMedia('(prefers-reduced-motion: reduce)')
  const go = (next: Partial<Viewpoint>): void => {
    const rise = Math.min(Math.max(next.rise ?? goal.rise, lowest), highest)
    const far = Math.min(Math.max(next.far ?? goal.far, 0.35), 150)
    goal = { ...goal, ...next, rise, far }
    if (calm.matches) now = goal
    changed()
  }
  const put = (): void => {
    const { at, turn, rise, far } = now
    const flat = far * Math.cos(rise)
    camera.position.set(
      at.x + flat * Math.cos(turn),
      Math.max(at.y + far * Math.sin(rise), 0.08),
      at.z - flat * Math.sin(turn),
    )
    camera.lookAt(at)
  }
  return {
    /** To a place, from the road or from behind the rail, a little aside so that depth is seen. */
    toPlace: ({ at, turn, kind }: ScenePlace, from: LookFrom): void => {
      const away = turn + (outward === 1 ? -Math.PI / 2 : Math.PI / 2)
      const side = from === 'road' ? away + Math.PI : away
      const aside = (from === 'road' ? outward : -outward) * 0.45
      go({
        at: new Vector3(at.x, at.y * 0.8, at.z),
        turn: nearestTurn(side + aside, goal.turn),
        rise: 0.22,
        far: farFrom[kind],
      })
    },
    orbit: (turn: number, rise: number): void => go({ turn: goal.turn + turn, rise: goal.rise + rise }),
    zoom: (times: number): void => go({ far: goal.far * times }),
    /** Along the run and up, as shares of what is seen. */
    slide: (along: number, up: number): void => {
      const { at, far } = goal
      go({ at: new Vector3(at.x + along * far, Math.min(Math.max(at.y + up * far, 0), 3), at.z) })
    },
    /** One step on the way; whether there is more of it. */
    move: (passed: number): boolean => {
      const share = 1 - Math.exp(-pace * passed)
      now = {
        at: now.at.clone().lerp(goal.at, share),
        turn: now.turn + (goal.turn - now.turn) * share,
        rise: now.rise + (goal.rise - now.rise) * share,
        far: now.far + (goal.far - now.far) * share,
      }
      const isThere = now.at.distanceTo(goal.at) + Math.abs(now.turn - goal.turn) + Math.abs(now.far - goal.far) < 0.002
      if (isThere && Math.abs(now.rise - goal.rise) < 0.001) now = goal
      put()
      return now !== goal
    },
  }
}

export type ViewpointOf = ReturnType<typeof viewpoint>

const start: Viewpoint = { at: new Vector3(), turn: Math.PI / 2, rise: 0.3, far: 12 }

/** The same direction, the shorter way round. */
const nearestTurn = (turn: number, from: number): number =>
  turn + 2 * Math.PI * Math.round((from - turn) / (2 * Math.PI))
