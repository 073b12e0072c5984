import {
  BufferAttribute,
  BufferGeometry,
  type Color,
  ConeGeometry,
  Group,
  InstancedMesh,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  Points,
  PointsMaterial,
  Vector3,
} from 'three'
import { isMesh, type Part, type Scene, type Mesh as Shape, type Solid, type Vector } from '../../core/scene/scene.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import type { SceneColours } from './scene-colours.ts'
import { signTexture } from './sign-texture.ts'

/** What is drawn of a scene, and what of it was hit. */
export interface SceneObjects {
  readonly group: Group
  /** Id of the place that the part of an object belongs to. */
  readonly placeOf: (
    object: unknown,
    part: { readonly face: number | null; readonly copy: number | null },
  ) => string | null
  /** Small parts are drawn where they can be seen. */
  readonly lookFrom: (eye: Vector3) => void
  /** Shows which place is looked at. */
  readonly mark: (at: Vector) => void
  /** Bytes of what was sent to be drawn. */
  readonly bytes: number
  readonly free: () => void
}

/** Parts that are too small to be seen from `smallFrom` metres on, and how long the stretches are that they are drawn by. */
const small: ReadonlySet<Part> = new Set(['rail bolt', 'splice bolts', 'hinge bolt', 'hole', 'slots', 'washer'])
const smallFrom = 30
const stretch = 20

/** How far a part of a place that is not as it must be takes on the colour of the verdict. */
const tinted: Partial<Record<VerdictWord, number>> = { fails: 0.6, 'too close': 0.45 }

/**
 * Everything of its own shape as one object, and each shape that several parts share as one with a copy for each part.
 *
 * @param verdictOf  the worst verdict of a place; null where nothing is judged
 */
export function sceneObjects(
  scene: Scene,
  colours: SceneColours,
  verdictOf: (place: string) => VerdictWord | null,
): SceneObjects {
  const group = new Group()
  const material = new MeshLambertMaterial({ vertexColors: true, flatShading: true })
  const plain = new MeshLambertMaterial({ flatShading: true })
  const colourOf = ({ material, place }: Solid): Color => {
    const colour = colours.of[material].clone()
    const word = place === null ? null : verdictOf(place)
    return word === null || tinted[word] === undefined ? colour : colour.lerp(colours.verdict[word], tinted[word])
  }
  const own = joinedOwn(scene, colourOf, material)
  group.add(own.mesh)
  const copies = copiesOf(scene, colourOf, plain)
  group.add(...copies.map(({ mesh }) => mesh))
  group.add(...signs(scene, colours, verdictOf))
  const here = new Mesh(new ConeGeometry(0.06, 0.18, 4), new MeshBasicMaterial({ color: colours.here }))
  here.rotation.x = Math.PI
  here.visible = false
  group.add(here)
  return {
    group,
    placeOf: (object, { face, copy }) => {
      if (object === own.mesh && face !== null) return own.placeOf(face)
      if (object instanceof Points && copy !== null) return (object.userData.places as string[])[copy] ?? null
      const hit = copies.find(({ mesh }) => mesh === object)
      return hit === undefined || copy === null ? null : (hit.solids[copy]?.place ?? null)
    },
    lookFrom: (eye) => {
      for (const { mesh, isSmall, from, to } of copies)
        mesh.visible = !isSmall || Math.hypot(Math.max(from - eye.x, 0, eye.x - to), eye.y, eye.z) < smallFrom
    },
    mark: (at) => {
      here.visible = true
      here.position.set(at.x, at.y + 0.75, at.z)
    },
    bytes: bytesOf(group),
    free: () => {
      group.traverse((one) => {
        if (one instanceof InstancedMesh) one.dispose()
        if (one instanceof Mesh || one instanceof Points) one.geometry.dispose()
        if (one instanceof Points) one.material.map?.dispose()
        if (one instanceof Mesh || one instanceof Points) one.material.dispose()
      })
    },
  }
}

function geometryOf({ points, triangles }: Shape): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute(
    'position',
    new BufferAttribute(new Float32Array(points.flatMap(({ x, y, z }) => [x, y, z])), 3),
  )
  geometry.setIndex(new BufferAttribute(new Uint32Array(triangles), 1))
  return geometry
}

/** Solids of their own shape as one object, so that they are drawn in one go; which triangle is whose is kept. */
function joinedOwn(scene: Scene, colourOf: (solid: Solid) => Color, material: MeshLambertMaterial) {
  const points: number[] = []
  const colours: number[] = []
  const triangles: number[] = []
  const ends: { readonly end: number; readonly place: string | null }[] = []
  for (const solid of scene.solids) {
    if (!isMesh(solid.form)) continue
    const first = points.length / 3
    const { r, g, b } = colourOf(solid)
    for (const { x, y, z } of solid.form.points) {
      points.push(x, y, z)
      colours.push(r, g, b)
    }
    for (const corner of solid.form.triangles) triangles.push(corner + first)
    ends.push({ end: triangles.length / 3, place: solid.place })
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(points), 3))
  geometry.setAttribute('color', new BufferAttribute(new Float32Array(colours), 3))
  geometry.setIndex(new BufferAttribute(new Uint32Array(triangles), 1))
  return {
    mesh: new Mesh(geometry, material),
    placeOf: (face: number): string | null => ends.find(({ end }) => face < end)?.place ?? null,
  }
}

interface Copies {
  readonly mesh: InstancedMesh
  readonly solids: readonly Solid[]
  readonly isSmall: boolean
  /** Stretch of the run in which they stand, m. */
  readonly from: number
  readonly to: number
}

function copiesOf(scene: Scene, colourOf: (solid: Solid) => Color, material: MeshLambertMaterial): Copies[] {
  const like = new Map<string, Solid[]>()
  for (const solid of scene.solids) {
    if (isMesh(solid.form)) continue
    const part = small.has(solid.part) ? `${solid.form.of} ${Math.floor(solid.form.at.x / stretch)}` : solid.form.of
    like.set(part, [...(like.get(part) ?? []), solid])
  }
  const up = new Vector3(0, 1, 0)
  return [...like.values()].map((solids) => {
    const copies = solids.flatMap(({ form }) => (isMesh(form) ? [] : [form]))
    const mesh = new InstancedMesh(geometryOf(scene.shapes.get(copies[0]!.of)!), material, solids.length)
    copies.forEach(({ at, turn }, i) => {
      mesh.setMatrixAt(i, new Matrix4().makeRotationAxis(up, turn).setPosition(at.x, at.y, at.z))
      mesh.setColorAt(i, colourOf(solids[i]!))
    })
    const along = copies.map(({ at }) => at.x)
    return { mesh, solids, isSmall: small.has(solids[0]!.part), from: Math.min(...along), to: Math.max(...along) }
  })
}

/** How high above the middle of the rail the sign of a place stands, m: the kinds apart, so that none hides another. */
const signHeight = { post: 0.42, splice: 0.3, space: -0.3, panel: 0.54, unit: 0.66 } as const

/** The signs of the places, turned to the eye: one object for each verdict. */
function signs(scene: Scene, colours: SceneColours, verdictOf: (place: string) => VerdictWord | null): Points[] {
  return verdictOrder
    .filter((word) => word !== 'does not apply')
    .flatMap((word) => {
      const places = scene.places.filter(({ id }) => verdictOf(id) === word)
      if (places.length === 0) return []
      const geometry = new BufferGeometry()
      const points = places.flatMap(({ at, kind }) => [at.x, at.y + signHeight[kind], at.z])
      geometry.setAttribute('position', new BufferAttribute(new Float32Array(points), 3))
      const material = new PointsMaterial({
        map: signTexture(word, colours.verdict[word], colours.paper),
        size: word === 'meets' ? 0.15 : 0.2,
        alphaTest: 0.4,
      })
      const object = new Points(geometry, material)
      object.userData.places = places.map(({ id }) => id)
      return [object]
    })
}

/** Bytes of points, triangles, copies and pictures. */
function bytesOf(group: Group): number {
  let bytes = 0
  group.traverse((one) => {
    if (!(one instanceof Mesh || one instanceof Points)) return
    const { attributes, index } = one.geometry as BufferGeometry
    for (const attribute of Object.values(attributes)) bytes += attribute.array.byteLength
    bytes += index?.array.byteLength ?? 0
    if (one instanceof InstancedMesh)
      bytes += one.instanceMatrix.array.byteLength + (one.instanceColor?.array.byteLength ?? 0)
    if (one instanceof Points) bytes += 4 * (one.material.map?.image.width ?? 0) ** 2
  })
  return bytes
}
