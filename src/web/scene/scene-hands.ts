import { InstancedMesh, type Intersection, Matrix4, Mesh, Points, Raycaster, Vector2, Vector3 } from 'three'
import type { SceneObjects } from './scene-objects.ts'
import type { Stage } from './stage.ts'
import type { ViewpointOf } from './viewpoint.ts'

/** What was touched. */
export interface Touched {
  readonly place: string | null
  readonly at: Vector3
  /** Width of a pixel there, m. */
  readonly fineness: number
}

interface Heard {
  readonly objects: () => SceneObjects | null
  readonly view: () => ViewpointOf | null
  /** Something was touched that is not the sky. */
  readonly touched: (what: Touched) => void
}

/** A finger that moves less than this presses, and does not drag. */
const still = 6

/** Lets fingers and mouse turn, near and slide the scene, and touch what is in it. Gives the way to stop. */
export function useHands(stage: Stage, { objects, view, touched }: Heard): () => void {
  const { canvas } = stage
  const down = new Map<number, Vector2>()
  let wandered = 0
  const at = ({ clientX, clientY }: MouseEvent): Vector2 => new Vector2(clientX, clientY)
  const spread = (): number => {
    const [a, b] = [...down.values()]
    return a !== undefined && b !== undefined ? a.distanceTo(b) : 0
  }
  const press = (event: PointerEvent): void => {
    if (down.size === 0) wandered = 0
    down.set(event.pointerId, at(event))
    canvas.setPointerCapture(event.pointerId)
  }
  const drag = (event: PointerEvent): void => {
    const from = down.get(event.pointerId)
    const seen = view()
    if (from === undefined || seen === null) return
    const before = spread()
    const by = at(event).sub(from)
    wandered += by.length()
    down.set(event.pointerId, at(event))
    const { clientWidth, clientHeight } = canvas
    if (down.size > 1) {
      const after = spread()
      if (before > 0 && after > 0) seen.zoom(before / after)
      return
    }
    if (event.shiftKey || event.buttons === 2) seen.slide(-by.x / clientWidth, by.y / clientHeight)
    else seen.orbit((-by.x / clientWidth) * Math.PI * 1.5, (by.y / clientHeight) * Math.PI)
  }
  const lift = (event: PointerEvent): void => {
    const isPress = down.size === 1 && wandered < still
    down.delete(event.pointerId)
    if (!isPress || event.type !== 'pointerup' || stage.state() !== 'ready') return
    const hit = touchedAt(stage, objects(), event)
    if (hit !== null) touched(hit)
  }
  const near = (event: WheelEvent): void => {
    event.preventDefault()
    view()?.zoom(Math.exp(event.deltaY * 0.0012))
  }
  const noMenu = (event: Event): void => event.preventDefault()
  const heard = [
    ['pointerdown', press],
    ['pointermove', drag],
    ['pointerup', lift],
    ['pointercancel', lift],
    ['wheel', near],
    ['contextmenu', noMenu],
  ] as const
  for (const [name, hear] of heard) canvas.addEventListener(name, hear as EventListener, { passive: false })
  return () => {
    for (const [name, hear] of heard) canvas.removeEventListener(name, hear as EventListener)
  }
}

/** The nearest thing under the finger. */
function touchedAt({ canvas, camera }: Stage, objects: SceneObjects | null, event: PointerEvent): Touched | null {
  if (objects === null) return null
  const { left, top, width, height } = canvas.getBoundingClientRect()
  const ray = new Raycaster()
  ray.params.Points = { threshold: 0.1 }
  ray.setFromCamera(
    new Vector2(((event.clientX - left) / width) * 2 - 1, 1 - ((event.clientY - top) / height) * 2),
    camera,
  )
  const hits = ray.intersectObjects(objects.group.children.filter(({ visible }) => visible))
  // A sign is meant where it is touched at all, but not one behind what stands before it.
  const first = hits[0]
  if (first === undefined) return null
  const sign = hits.find(({ object, distance }) => object instanceof Points && distance < first.distance + 0.3)
  const { object, point, distance, faceIndex, instanceId, index } = sign ?? first
  const copy = object instanceof Points ? index : instanceId
  const fineness = (2 * distance * Math.tan((camera.fov * Math.PI) / 360)) / height
  return {
    place: objects.placeOf(object, { face: faceIndex ?? null, copy: copy ?? null }),
    at: cornerNear(sign ?? first, fineness * catches) ?? point,
    fineness,
  }
}

/** Pixels from which the corner of a part is caught. */
const catches = 14

/** The corner of the triangle that was touched, where one is within reach. */
function cornerNear({ object, face, instanceId, point }: Intersection, reach: number): Vector3 | null {
  if (!(object instanceof Mesh) || !face) return null
  const move = new Matrix4()
  if (object instanceof InstancedMesh && instanceId !== undefined) object.getMatrixAt(instanceId, move)
  const { position } = object.geometry.attributes
  const corners = [face.a, face.b, face.c].map((i) =>
    new Vector3().fromBufferAttribute(position, i).applyMatrix4(move).applyMatrix4(object.matrixWorld),
  )
  const [nearest] = corners.sort((a, b) => a.distanceTo(point) - b.distanceTo(point))
  return nearest !== undefined && nearest.distanceTo(point) < reach ? nearest : null
}
