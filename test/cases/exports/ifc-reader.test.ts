import { createHash } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  IFCALIGNMENTSEGMENT,
  IFCANNOTATION,
  IFCBEAM,
  IFCELEMENTASSEMBLY,
  IFCMAPCONVERSION,
  IFCMEMBER,
  IFCRAILING,
  IfcAPI,
} from 'web-ifc'
import { pointToStationOffset } from '../../../src/core/alignment/station-offset.ts'
import { endOf } from '../../../src/core/geometry/clothoid.ts'
import { inches } from '../../../src/core/units/quantity.ts'
import type { JudgedRun } from '../../../src/operations/judge-readings.ts'
import { writeRunIfc } from '../../../src/operations/write-exports.ts'
import { english } from '../../../src/words/english.ts'
import { inventedRoad, judgedDemo, newYorkEast, placedDemo, sound, stamp } from './export-project.ts'

/** What web-ifc, a reader that nobody here wrote, finds in the file. It opens the file; it does not judge it. */
const reader = new IfcAPI()
const sha256 = (content: string): string => createHash('sha256').update(content).digest('hex')

beforeAll(async () => {
  await reader.Init()
  // it complains of curves that have no mesh
  reader.SetLogLevel(6)
}, 30_000)
afterAll(() => reader.Dispose())

async function opened(judged: JudgedRun): Promise<number> {
  const system = await newYorkEast()
  const placed = placedDemo(judged)
  const file = sound(
    writeRunIfc('run.json', judged, placed, { system, unit: system.unit, sha256, stamp, print: english(null) }),
  )
  return reader.OpenModel(new TextEncoder().encode(file))
}

const demo = judgedDemo()
const { posts, panels } = demo.model.layout

/** Where the file counts its coordinates from, m. */
function originOf(model: number) {
  const conversion = reader.GetLine(model, reader.GetLineIDsWithType(model, IFCMAPCONVERSION).get(0))
  const { Eastings, Northings, Scale } = conversion
  return { easting: Eastings.value / Scale.value, northing: Northings.value / Scale.value }
}

describe('web-ifc opens the run', { timeout: 30_000 }, () => {
  it('and finds every piece', async () => {
    const model = await opened(demo)
    const count = (type: number): number => reader.GetLineIDsWithType(model, type).size()
    expect(reader.GetModelSchema(model)).toBe('IFC4X3_ADD2')
    expect(count(IFCRAILING)).toBe(1)
    expect(count(IFCMEMBER)).toBe(posts.length)
    expect(count(IFCBEAM)).toBe(panels.length)
    expect(count(IFCELEMENTASSEMBLY), 'both ends of the demo have a unit').toBe(2)
    expect(count(IFCANNOTATION)).toBe(demo.judgement.findings.length)
    expect(count(IFCALIGNMENTSEGMENT), 'and one without length').toBe(inventedRoad.horizontal.elements.length + 1)
  })

  it('and reads back the worst of words', async () => {
    const name = `it's 31" \\ ½ 🚧 مرحبا`
    const model = await opened(judgedDemo({ name }))
    const railing = reader.GetLine(model, reader.GetLineIDsWithType(model, IFCRAILING).get(0))
    expect(railing.Name.value).toBe(name)
    expect(railing.PredefinedType.value).toBe('GUARDRAIL')
  })

  it.each(['right', 'left'] as const)('and draws a body for every post and panel where it stands: %s', async (side) => {
    const road = { route: null, side, datumStation: '208+40', traffic: 'two-way' }
    const judged = judgedDemo({ road })
    const model = await opened(judged)
    const origin = originOf(model)
    const bodies = boxes(model)
    expect(bodies.size).toBe(posts.length + panels.length)
    const { staking, frame } = placedDemo(judged)
    const members = reader.GetLineIDsWithType(model, IFCMEMBER)
    posts.forEach((post, i) => {
      const box = bodies.get(members.get(i))!
      const { position, offset } = staking.stakes[i]!
      const easting = origin.easting + (box.minX + box.maxX) / 2
      const northing = origin.northing + (box.minY + box.maxY) / 2
      // face of rail, depth of a W-beam, block, half a post
      const behind = inches(3.25 + (post.block ? 8 : 0) + 3)
      expect(Math.hypot(easting - position.easting, northing - position.northing)).toBeCloseTo(behind, 5)
      const [seen] = pointToStationOffset(frame.alignment, { easting, northing })
      const outward = (seen!.offset - offset) * (side === 'right' ? 1 : -1)
      // a flare turns the post by no more than a few degrees
      expect(outward).toBeGreaterThan(0.98 * behind)
      expect(box.minZ).toBeCloseTo(0, 5)
      expect(box.maxZ, 'the demo is a 31 in system').toBeCloseTo(inches(31), 5)
    })
    const beams = reader.GetLineIDsWithType(model, IFCBEAM)
    panels.forEach((panel, i) => {
      const box = bodies.get(beams.get(i))!
      const long = Math.hypot(box.maxX - box.minX, box.maxY - box.minY)
      // a box has corners that its panel does not reach: no more than its depth at each end
      expect(Math.abs(long - inches(panel.inches))).toBeLessThan(inches(4))
      expect(box.maxZ).toBeCloseTo(inches(31), 5)
      expect(box.minZ).toBeCloseTo(inches(31 - 12.25), 5)
    })
  })

  it('and draws the alignment as it is', async () => {
    const model = await opened(demo)
    const origin = originOf(model)
    const [alignment] = reader.GetAllAlignments(model) as { horizontal: { points: { x: number; y: number }[] }[] }[]
    const segments = alignment!.horizontal
    expect(segments).toHaveLength(inventedRoad.horizontal.elements.length + 1)
    inventedRoad.horizontal.elements.forEach((element, i) => {
      const last = segments[i]!.points.at(-1)!
      const end = endOf(element)
      const miss = Math.hypot(last.x + origin.easting - end.easting, last.y + origin.northing - end.northing)
      // its spiral is a series cut short: 1 mm off at the end of 150 ft
      expect(miss).toBeLessThan(0.001)
    })
  })
})

interface Box {
  minX: number
  minY: number
  minZ: number
  maxX: number
  maxY: number
  maxZ: number
}

/** Extents of every body by the number of its product, in the file's coordinates; the reader turns y to z. */
function boxes(model: number): ReadonlyMap<number, Box> {
  const found = new Map<number, Box>()
  reader.StreamAllMeshes(model, ({ expressID, geometries }) => {
    const box = { minX: 1e9, minY: 1e9, minZ: 1e9, maxX: -1e9, maxY: -1e9, maxZ: -1e9 }
    for (let i = 0; i < geometries.size(); i++) {
      const { geometryExpressID, flatTransformation: m } = geometries.get(i)
      const geometry = reader.GetGeometry(model, geometryExpressID)
      const vertices = reader.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize())
      for (let k = 0; k < vertices.length; k += 6) {
        const [x, y, z] = [vertices[k]!, vertices[k + 1]!, vertices[k + 2]!]
        const turned = [0, 1, 2].map((a) => m[a]! * x + m[4 + a]! * y + m[8 + a]! * z + m[12 + a]!)
        const [east, up, south] = turned as [number, number, number]
        box.minX = Math.min(box.minX, east)
        box.maxX = Math.max(box.maxX, east)
        box.minY = Math.min(box.minY, -south)
        box.maxY = Math.max(box.maxY, -south)
        box.minZ = Math.min(box.minZ, up)
        box.maxZ = Math.max(box.maxZ, up)
      }
    }
    found.set(expressID, box)
  })
  return found
}
