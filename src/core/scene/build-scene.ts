import type { RunModel } from '../requirements/run-model.ts'
import { railLine } from '../staking/rail-line.ts'
import { inches } from '../units/quantity.ts'
import { drawnSizes } from './drawn-sizes.ts'
import { endSolids } from './end-solids.ts'
import { groundSolids } from './ground-solids.ts'
import { mirrored, moved, vector } from './mesh.ts'
import { panelEnds, panelSolids, spliceBolts } from './panel-solids.ts'
import { postSolids } from './post-solids.ts'
import { type RailPath, railPath } from './rail-path.ts'
import { isMesh, type Mesh, type Scene, type ScenePlace, type Solid } from './scene.ts'
import type { Standing } from './standing.ts'

/**
 * The run in three dimensions, as it stands: every part at its place, from the data that drawings and requirements rest on.
 *
 * @param outward  on which side of the run, looking downstream, the road does not lie: 1 right, -1 left
 */
export function buildScene(model: RunModel, standing: Standing, outward: 1 | -1): Scene {
  const path = railPath(model, standing)
  const shapes = new Map<string, Mesh>()
  const named = (name: string, make: () => Mesh): string => {
    if (!shapes.has(name)) shapes.set(name, make())
    return name
  }
  const solids = [
    ...groundSolids(model, standing, path),
    ...panelSolids(model, standing, path),
    ...postSolids(model, standing, path, named),
    ...boltedSplices(model, standing, path, named),
    ...endSolids(model, standing, path),
  ]
  const scene: Scene = {
    shapes,
    solids,
    places: placesOf(model, standing, path),
    unknown: unknownOf(model),
    outward: 1,
  }
  return outward === 1 ? scene : onTheLeft(scene)
}

/** A flare whose sheet states no offset is drawn straight, posts that were only counted at their spacing. */
const unknownOf = (model: RunModel): Scene['unknown'] => [
  ...(railLine(model).ok ? [] : (['flare'] as const)),
  ...(model.layout.asCounted === 'posts only counted' ? (['places of posts'] as const) : []),
]

/** Eight bolts in every splice, one less where they were seen to be wanting under the rule that the shipped sheets have. */
function boltedSplices(
  model: RunModel,
  standing: Standing,
  path: RailPath,
  named: (name: string, make: () => Mesh) => string,
): Solid[] {
  const ends = panelEnds(model, standing)
  return model.layout.splices.map(({ id }, i): Solid => {
    const along = ends[i + 1]!
    const was = standing.seen(`${id}/splice-bolts`)
    const count = was?.kind === 'choice' && !was.right ? 7 : 8
    return {
      ...{ part: 'splice bolts', place: id, material: 'cable', isSign: true },
      form: {
        of: named(`splice bolts ${count}`, () => spliceBolts(count)),
        at: moved(path.at(along), vector(0, path.top(along), 0)),
        turn: path.turn(along),
      },
    }
  })
}

/** Post, the space after it, and what of splices and panels lies before the next, in the order of the rail. */
function placesOf(model: RunModel, standing: Standing, path: RailPath): readonly ScenePlace[] {
  const { layout } = model
  const ends = panelEnds(model, standing)
  const middle = (a: number, b: number): number => (a + b) / 2
  const at = (along: number) => ({
    at: moved(path.at(along), vector(0, path.top(along) - inches(drawnSizes.beam / 2), 0)),
    turn: path.turn(along),
  })
  const posts = standing.posts
  const all = [
    ...layout.posts.map(({ id, number }, i) => ({ kind: 'post' as const, id, number, along: posts[i]!.along })),
    ...layout.spaces.map(({ id, number }, i) => ({
      ...{ kind: 'space' as const, id, number },
      along: middle(posts[i]!.along, posts[i + 1]!.along),
    })),
    ...layout.splices.map(({ id, number }, i) => ({ kind: 'splice' as const, id, number, along: ends[i + 1]! })),
    ...layout.panels.map(({ id, number }, i) => ({
      ...{ kind: 'panel' as const, id, number },
      along: middle(ends[i]!, ends[i + 1]!),
    })),
    ...(['first', 'second'] as const)
      .filter((which) => model[which].kind === 'unit')
      .map((which) => ({
        ...{ kind: 'unit' as const, id: layout.endIds[which], number: which === 'first' ? 1 : 2 },
        along: which === 'first' ? ends[0]! : ends.at(-1)!,
      })),
  ]
  return all
    .sort((a, b) => a.along - b.along)
    .map(({ id, kind, number, along }) => ({ id, kind, number, ...at(along) }))
}

/** The same run on the other side of its road. */
function onTheLeft({ shapes, solids, places, unknown }: Scene): Scene {
  const over = <T extends { readonly at: ScenePlace['at']; readonly turn: number }>(one: T): T => ({
    ...one,
    at: vector(one.at.x, one.at.y, -one.at.z),
    turn: -one.turn,
  })
  return {
    shapes: new Map([...shapes].map(([name, mesh]) => [name, mirrored(mesh)])),
    solids: solids.map((solid) => ({ ...solid, form: isMesh(solid.form) ? mirrored(solid.form) : over(solid.form) })),
    places: places.map(over),
    unknown,
    outward: -1,
  }
}
