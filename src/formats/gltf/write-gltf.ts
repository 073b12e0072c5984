import { isMesh, type Material, type Mesh, type Scene, type Solid, type Vector } from '../../core/scene/scene.ts'

/**
 * The scene as a file of glTF 2.0 in one piece (GLB), metres, y up: a node for each part, named by its place, with place,
 * part and whether its shape is a sign as extras. Like parts share a mesh. The same scene gives the same bytes.
 *
 * @param name  of the scene, as the run is called
 * @source Khronos, glTF 2.0 specification (ISO/IEC 12113:2022), 3 and 4.4
 */
export function writeGltf(scene: Scene, name: string): Uint8Array<ArrayBuffer> {
  const file = openFile()
  const nodes = scene.solids.map((solid) => nodeOf(file, scene, solid))
  const json = {
    asset: { version: '2.0', generator: 'Lapwise' },
    scene: 0,
    scenes: [{ name, nodes: nodes.map((_, i) => i) }],
    nodes,
    meshes: file.meshes,
    materials: file.materials,
    accessors: file.accessors,
    bufferViews: file.views,
    buffers: [{ byteLength: file.length() }],
  }
  return container(new TextEncoder().encode(JSON.stringify(json)), file.bytes())
}

/** Base colours, linear; our own choice. */
const colours: Readonly<Record<Material, readonly [number, number, number]>> = {
  steel: [0.46, 0.53, 0.58],
  wood: [0.43, 0.25, 0.1],
  concrete: [0.62, 0.6, 0.55],
  cable: [0.08, 0.1, 0.12],
  dark: [0.02, 0.02, 0.02],
  marker: [0.87, 0.58, 0.06],
  ground: [0.4, 0.46, 0.27],
  road: [0.15, 0.17, 0.19],
  lane: [0.87, 0.58, 0.06],
  unknown: [0.5, 0.5, 0.5],
}

interface File {
  readonly meshes: object[]
  readonly materials: object[]
  readonly accessors: object[]
  readonly views: object[]
  /** Number of the mesh of that name; the first to ask for it says what it is. */
  mesh(key: string, shape: Mesh, material: Material): number
  length(): number
  bytes(): Uint8Array
}

const [floats, whole, corners, order] = [5126, 5125, 34962, 34963]

function openFile(): File {
  const parts: Uint8Array[] = []
  const [meshes, materials, accessors, views]: object[][] = [[], [], [], []]
  const [knownMeshes, knownMaterials] = [new Map<string, number>(), new Map<Material, number>()]
  let length = 0
  const view = (data: Float32Array | Uint32Array, target: number): number => {
    const bytes = new Uint8Array(data.buffer)
    views!.push({ buffer: 0, byteOffset: length, byteLength: bytes.length, target })
    parts.push(bytes)
    length += bytes.length
    return views!.length - 1
  }
  const accessor = (what: object): number => accessors!.push(what) - 1
  const materialOf = (material: Material): number => {
    const known = knownMaterials.get(material)
    if (known !== undefined) return known
    const number = materials!.push({
      name: material,
      pbrMetallicRoughness: { baseColorFactor: [...colours[material], 1], metallicFactor: 0, roughnessFactor: 0.8 },
      doubleSided: material === 'ground' || material === 'road' || material === 'lane',
    })
    knownMaterials.set(material, number - 1)
    return number - 1
  }
  return {
    ...{ meshes: meshes!, materials: materials!, accessors: accessors!, views: views! },
    mesh: (key, { points, triangles }, material) => {
      const known = knownMeshes.get(key)
      if (known !== undefined) return known
      const positions = new Float32Array(points.flatMap(({ x, y, z }) => [x, y, z]))
      const extreme = (pick: (...values: number[]) => number) =>
        [0, 1, 2].map((axis) =>
          positions.reduce((best, one, i) => (i % 3 === axis ? pick(best, one) : best), positions[axis]!),
        )
      const position = accessor({
        ...{ bufferView: view(positions, corners!), componentType: floats, count: points.length, type: 'VEC3' },
        ...{ min: extreme(Math.min), max: extreme(Math.max) },
      })
      const indices = accessor({
        ...{ bufferView: view(new Uint32Array(triangles), order!), componentType: whole },
        ...{ count: triangles.length, type: 'SCALAR' },
      })
      const number =
        meshes!.push({
          name: key,
          primitives: [{ attributes: { POSITION: position }, indices, material: materialOf(material) }],
        }) - 1
      knownMeshes.set(key, number)
      return number
    },
    length: () => length,
    bytes: () => joinedBytes(parts, length),
  }
}

function nodeOf(file: File, { shapes }: Scene, { part, place, material, isSign, form }: Solid): object {
  const extras = { part, ...(place === null ? {} : { place }), isSign }
  const name = place === null ? part : `${place}: ${part}`
  if (isMesh(form)) return { name, mesh: file.mesh(`${name} ${file.meshes.length}`, form, material), extras }
  const { of, at, turn } = form
  return {
    ...{ name, mesh: file.mesh(`${of}, ${material}`, shapes.get(of)!, material), extras },
    translation: inOrder(at),
    rotation: [0, Math.sin(turn / 2), 0, Math.cos(turn / 2)],
  }
}

const inOrder = ({ x, y, z }: Vector): readonly number[] => [x, y, z]

function joinedBytes(parts: readonly Uint8Array[], length: number): Uint8Array {
  const all = new Uint8Array(length)
  let at = 0
  for (const part of parts) {
    all.set(part, at)
    at += part.length
  }
  return all
}

/** Head, the description padded with spaces, and the bytes padded with zeros. */
function container(json: Uint8Array, bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const [jsonRoom, bytesRoom] = [json, bytes].map(({ length }) => Math.ceil(length / 4) * 4) as [number, number]
  const whole = new Uint8Array(12 + 8 + jsonRoom + 8 + bytesRoom)
  const numbers = new DataView(whole.buffer)
  const put = (at: number, ...values: readonly number[]): void =>
    values.forEach((value, i) => {
      numbers.setUint32(at + 4 * i, value, true)
    })
  put(0, 0x46546c67, 2, whole.length, jsonRoom, 0x4e4f534a)
  whole.fill(0x20, 20, 20 + jsonRoom)
  whole.set(json, 20)
  put(20 + jsonRoom, bytesRoom, 0x004e4942)
  whole.set(bytes, 28 + jsonRoom)
  return whole
}
