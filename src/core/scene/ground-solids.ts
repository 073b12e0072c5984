import { endSheetOf, type RunModel } from '../requirements/run-model.ts'
import { feet, inches, type Metres } from '../units/quantity.ts'
import { drawnSizes } from './drawn-sizes.ts'
import { vector } from './mesh.ts'
import type { RailPath } from './rail-path.ts'
import type { Mesh, Solid, Vector } from './scene.ts'
import type { Standing } from './standing.ts'

/**
 * Where the road lies and how the ground falls behind the rail is not in a run: all of it is a sign, but for the grading
 * platform of an end unit whose sheet states one. Finish grade is level at the face of rail.
 */
const shoulder = feet(8)
const lane = feet(12)
const laneLine = inches(4)
const usualPlatform = inches(drawnSizes.beamDepth + drawnSizes.blockDepth + drawnSizes.postDepth + 24)
/** Of the ground beyond the platform. */
const fall = { run: 3, over: feet(9) }
/** How far ground goes on beyond the run. */
const beyond = feet(200)
const far = feet(150)

export function groundSolids(model: RunModel, standing: Standing, path: RailPath): readonly Solid[] {
  const { posts } = standing
  if (posts.length === 0) return []
  const [first, last] = [posts[0]!.along, posts.at(-1)!.along]
  const inside = path.bends.filter((along) => along > first && along < last)
  const sections = [first - beyond, first - feet(10), first, ...inside, last, last + feet(10), last + beyond].map(
    (along) => {
      const { x, z } = path.at(Math.min(Math.max(along, first), last))
      const outside = along < first ? along - first : along > last ? along - last : 0
      return { x: x + outside, away: z, platform: platformAt(model, standing, along) }
    },
  )
  const ribbon = (across: (section: (typeof sections)[number]) => readonly Vector[]): Mesh =>
    strip(sections.map(across))
  const sign = { place: null, isSign: true } as const
  const edge = -shoulder
  const at =
    (y: Metres) =>
    ({ x }: { readonly x: Metres }, z: Metres): Vector =>
      vector(x, y, z)
  const solids: Solid[] = [
    {
      ...{ ...sign, part: 'ground', material: 'ground' },
      form: ribbon((one) => {
        const back = one.away + one.platform.width
        const drop = one.platform.drop
        const foot = fall.over / fall.run
        return [
          vector(one.x, 0, edge),
          vector(one.x, 0, one.away),
          vector(one.x, -drop, back),
          vector(one.x, -drop - foot, back + fall.over),
          vector(one.x, -drop - foot, back + fall.over + far),
        ]
      }),
    },
    {
      ...{ ...sign, part: 'ground', material: 'ground' },
      form: ribbon((one) => [vector(one.x, 0, edge - 2 * lane - far), vector(one.x, 0, edge - 2 * lane)]),
    },
    {
      ...{ ...sign, part: 'road', material: 'road' },
      form: ribbon((one) => [vector(one.x, 0, edge - 2 * lane), vector(one.x, 0, edge)]),
    },
    {
      ...{ ...sign, part: 'lane line', material: 'lane' },
      form: ribbon((one) => [at(0.01)(one, edge - laneLine), at(0.01)(one, edge)]),
    },
  ]
  if (model.curb === 'present')
    solids.push({
      ...{ ...sign, part: 'curb', material: 'concrete' },
      form: ribbon((one) => {
        const [front, back] = [one.away - inches(12), one.away - inches(6)]
        return [at(0)(one, front), at(inches(6))(one, front), at(inches(6))(one, back), at(0)(one, back)]
      }),
    })
  return solids
}

/** How wide the ground behind the face of rail is graded, and how far it falls over that width. */
function platformAt(model: RunModel, { posts }: Standing, along: Metres): { width: Metres; drop: Metres } {
  const unit = along <= posts[0]!.along ? 'first' : along >= posts.at(-1)!.along ? 'second' : null
  const nearest = model.layout.posts.find((_, i) => posts[i]!.along >= along) ?? model.layout.posts.at(-1)!
  const grading = endSheetOf(model, unit ?? nearest.unit)?.grading ?? 'notStated'
  if (grading === 'notStated' || grading.behindPostOneFeet === 'notStated') return { width: usualPlatform, drop: 0 }
  const { platformSlope } = grading
  const run = typeof platformSlope === 'number' ? platformSlope : platformSlope.run
  const width = feet(grading.behindPostOneFeet)
  return { width, drop: width / run }
}

/** A ribbon over lines across, seen from above; it is open. */
function strip(lines: readonly (readonly Vector[])[]): Mesh {
  const size = lines[0]!.length
  const triangles: number[] = []
  for (let line = 0; line < lines.length - 1; line++)
    for (let i = 0; i < size - 1; i++) {
      const [a, b] = [line * size + i, (line + 1) * size + i]
      triangles.push(a, a + 1, b + 1, a, b + 1, b)
    }
  return { points: lines.flat(), triangles }
}
