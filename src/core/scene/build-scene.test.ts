import { describe, expect, it } from 'vitest'
import { demoRun } from '../../../test/fixtures/roadside.ts'
import { laidBarrier, shippedEnd } from '../../../test/fixtures/staked-run.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { buildScene } from './build-scene.ts'
import { box, mirrored } from './mesh.ts'
import { placed } from './rail-path.ts'
import { isMesh, type Mesh, type Scene, type Solid, type Vector } from './scene.ts'
import { exaggerated, type Seen, type Standing, standingAsAsked } from './standing.ts'

const inch = 0.0254
const { model } = demoRun().required
const asked = standingAsAsked(model)
const scene = buildScene(model, asked, 1)

const lowEnds = [shippedEnd('flared-terminal-27-3-4'), shippedEnd('trailing-anchor-27-3-4')] as const
const low = laidBarrier('w-beam-post-splice-27-3-4', ...lowEnds, [0, 1200])
const lowModel: RunModel = { ...model, ...low }

/** The points of a solid where they lie in the scene. */
const pointsOf = ({ shapes }: Scene, { form }: Solid): readonly Vector[] =>
  isMesh(form) ? form.points : shapes.get(form.of)!.points.map((one) => placed(one, form.at, form.turn))

const partsOf = (of: Scene, part: Solid['part'], place: string): readonly Solid[] =>
  of.solids.filter((one) => one.part === part && one.place === place)

const extent = (of: Scene, solid: Solid, axis: keyof Vector): [number, number] => {
  const values = pointsOf(of, solid).map((one) => one[axis] / inch)
  return [Math.min(...values), Math.max(...values)]
}

/** By the tetrahedra from the origin to each triangle (Gauss): positive where triangles look outward. */
const volume = ({ points, triangles }: Mesh): number => {
  let sum = 0
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [points[triangles[i]!]!, points[triangles[i + 1]!]!, points[triangles[i + 2]!]!]
    sum += a.x * (b.y * c.z - b.z * c.y) + a.y * (b.z * c.x - b.x * c.z) + a.z * (b.x * c.y - b.y * c.x)
  }
  return sum / 6
}

/** Edges that are not passed exactly once in either direction. */
const openEdges = ({ triangles }: Mesh): number => {
  const passed = new Map<string, number>()
  for (let i = 0; i < triangles.length; i += 3)
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      const [from, to] = [triangles[i + a]!, triangles[i + b]!]
      const key = from < to ? `${from} ${to}` : `${to} ${from}`
      passed.set(key, (passed.get(key) ?? 0) + (from < to ? 1 : -1))
    }
  return [...passed.values()].filter((sum) => sum !== 0).length
}

const withSeen = (seen: Readonly<Record<string, Seen>>): Standing => ({ ...asked, seen: (id) => seen[id] ?? null })
const wrong = (choice: string): Seen => ({ kind: 'choice', choice, right: false })

describe('shapes', () => {
  it('is a box of the volume of its three sides, turned over too', () => {
    expect(volume(box([0, 10], [0, 20], [-5, 5])) / inch ** 3).toBeCloseTo(2000, 6)
    expect(volume(mirrored(box([0, 10], [0, 20], [1, 11]))) / inch ** 3).toBeCloseTo(2000, 6)
  })

  it.each([1, -1] as const)(
    'closes every solid but the ground and looks outward, with the road on either side (%i)',
    (outward) => {
      const one = buildScene(model, asked, outward)
      const meshes = [...one.shapes.values(), ...one.solids.map(({ form }) => form).filter(isMesh)]
      const open = new Set(['ground', 'road', 'lane line', 'curb'])
      const ground = one.solids.filter(({ part }) => open.has(part)).map(({ form }) => form)
      const closed = meshes.filter((mesh) => !ground.includes(mesh))
      expect(closed.length).toBeGreaterThan(20)
      for (const mesh of closed) {
        expect(openEdges(mesh)).toBe(0)
        expect(volume(mesh)).toBeGreaterThan(0)
      }
    },
  )

  it('has the steel of the rail: 12 gauge round the face, for every inch of a panel and its two half laps', () => {
    const panel = model.layout.panels[5]!
    const [solid] = partsOf(scene, 'panel', panel.id)
    // Every part of the face is 0.105 in thick square to the rail's line, and so 12 1/4 x 0.105 in all (Cavalieri).
    const section = volume(solid!.form as Mesh) / inch ** 3 / (panel.inches + 12.5)
    expect(section).toBeCloseTo(12.25 * 0.105, 2)
  })
})

describe('a run as it was asked for', () => {
  it('has each post where the layout has it, between the flares', () => {
    const posts = model.layout.posts.filter(({ unit }) => unit === 'run')
    const start = posts[0]!
    const middleOf = (id: string): number => {
      const [from, to] = extent(scene, partsOf(scene, 'post', id)[0]!, 'x')
      return (from + to) / 2
    }
    expect(posts.length).toBeGreaterThan(5)
    for (const post of posts)
      expect(middleOf(post.id) - middleOf(start.id)).toBeCloseTo(post.alongInches - start.alongInches, 3)
  })

  it('has the top of rail at 31 in above finish grade, and posts 1 in above it', () => {
    const run = model.layout.panels.filter(({ unit }) => unit === 'run')
    for (const { id } of run)
      expect(extent(scene, partsOf(scene, 'panel', id)[0]!, 'y')).toEqual([18.75, 31].map((y) => expect.closeTo(y, 6)))
    const post = model.layout.posts.find(({ unit }) => unit === 'run')!
    expect(extent(scene, partsOf(scene, 'post', post.id)[0]!, 'y')[1]).toBeCloseTo(32, 6)
  })

  it('has the end post of the flared terminal 48 in off the line of the run, away from the road on either side', () => {
    const nearest = (of: Scene): number => {
      const face = pointsOf(of, partsOf(of, 'panel', 'panel-1')[0]!)
      const first = Math.min(...face.map(({ x }) => x))
      const end = face.filter(({ x }) => x < first + inch).map(({ z }) => z / inch)
      return of.outward === 1 ? Math.min(...end) : Math.max(...end)
    }
    expect(nearest(scene)).toBeCloseTo(48, 0)
    expect(nearest(buildScene(model, asked, -1))).toBeCloseTo(-48, 0)
  })

  it('turns each post with its rail: in a straight flare of 48 in over 450 in of rail', () => {
    const one = buildScene(lowModel, standingAsAsked(lowModel), 1)
    for (const id of ['post-2', 'post-5']) {
      const [post] = partsOf(one, 'post', id)
      const form = post!.form
      if (isMesh(form)) throw new Error('a post is a copy')
      const [from, to] = [
        placed({ x: 0, y: 0, z: 0 }, form.at, form.turn),
        placed({ x: 450 * inch, y: 0, z: 0 }, form.at, form.turn),
      ]
      expect((from.z - to.z) / inch).toBeCloseTo(48, 3)
    }
  })

  it('has a 27 3/4 in rail at 27 3/4 in', () => {
    const one = buildScene(lowModel, standingAsAsked(lowModel), 1)
    for (const { id } of low.layout.panels)
      expect(extent(one, partsOf(one, 'panel', id)[0]!, 'y')[1]).toBeCloseTo(27.75, 6)
  })

  it('says what of it is not known: a flare without an offset, posts that were only counted', () => {
    const end = shippedEnd('flared-terminal-27-3-4')
    if (end.flare === 'none') throw new Error('a flared terminal has a flare')
    const { flare } = end
    const unstated = { ...end, flare: { ...flare, offset: { ...flare.offset, nominal: 'notStated' } } } as const
    const vague = { ...lowModel, first: { kind: 'unit', sheet: unstated, atInches: null } } as const
    const counted = { ...lowModel, layout: { ...lowModel.layout, asCounted: 'posts only counted' } } as const
    const of = (one: RunModel) => buildScene(one, standingAsAsked(one), -1).unknown
    expect([of(lowModel), of(vague), of(counted)]).toEqual([[], ['flare'], ['places of posts']])
  })

  it('gives every place of the layout, in the order of the rail', () => {
    const { posts, spaces, splices, panels } = model.layout
    expect(scene.places).toHaveLength(posts.length + spaces.length + splices.length + panels.length + 2)
    const along = scene.places.map(({ at }) => at.x)
    expect(along).toEqual(along.toSorted((a, b) => a - b))
    expect(new Set(scene.places.map(({ id }) => id)).size).toBe(scene.places.length)
  })
})

describe('what differs is seen', () => {
  /** Which of two panels lies nearer to the road at their splice, by the points of their steel near it. */
  const overAt = (of: Scene, splice: number): string => {
    const nearestOf = (panel: string): number => {
      const at = of.places.find(({ id }) => id === `splice-${splice}`)!.at
      const near = pointsOf(of, partsOf(of, 'panel', panel)[0]!).filter(({ x }) => Math.abs(x - at.x) < 7 * inch)
      return Math.min(...near.map(({ z }) => z))
    }
    return nearestOf(`panel-${splice}`) < nearestOf(`panel-${splice + 1}`) ? 'upstream' : 'downstream'
  }
  const inRun = 4

  it('laps each splice along traffic, and one the other way where that was seen', () => {
    expect(overAt(scene, inRun)).toBe('upstream')
    const turned = buildScene(model, withSeen({ [`splice-${inRun}/lap`]: wrong('downstream-over') }), 1)
    expect([overAt(turned, inRun), overAt(turned, inRun + 1)]).toEqual(['downstream', 'upstream'])
  })

  it('turns the bearing plate: its longer side below the cable', () => {
    const [, up] = extent(scene, partsOf(scene, 'bearing plate', 'post-1')[0]!, 'y')
    const turned = buildScene(model, withSeen({ 'post-1/bearing-plate': wrong('three-up') }), 1)
    const [, turnedUp] = extent(turned, partsOf(turned, 'bearing plate', 'post-1')[0]!, 'y')
    expect(up - turnedUp).toBeCloseTo(2, 6)
  })

  it('stands on a stub as high as it was read', () => {
    const high = { ...asked, posts: asked.posts.map((post, i) => (i === 0 ? { ...post, stub: 4.75 * inch } : post)) }
    const one = buildScene(model, high, 1)
    expect(extent(one, partsOf(one, 'lower post', 'post-1')[0]!, 'y')[1]).toBeCloseTo(4.75, 6)
    expect(extent(scene, partsOf(scene, 'lower post', 'post-1')[0]!, 'y')[1]).toBeCloseTo(4, 6)
  })

  it('has the hinge bolt upstream at the first end, and downstream where that was seen', () => {
    const bolt = (of: Scene): number => {
      const [from, to] = extent(of, partsOf(of, 'hinge bolt', 'post-1')[0]!, 'x')
      const [left, right] = extent(of, partsOf(of, 'lower post', 'post-1')[0]!, 'x')
      return (from + to) / 2 - (left + right) / 2
    }
    expect(bolt(scene)).toBeLessThan(-2)
    expect(bolt(buildScene(model, withSeen({ 'post-1/hinge-side': wrong('away') }), 1))).toBeGreaterThan(2)
  })

  it('leaves block and bolt out, and shows the washer', () => {
    const id = model.layout.posts.find(({ unit, block }) => unit === 'run' && block)!.id
    const one = buildScene(
      model,
      withSeen({ [`${id}/block`]: wrong('no-block'), [`${id}/rail-bolt`]: wrong('washer') }),
      1,
    )
    expect(partsOf(scene, 'offset block', id)).toHaveLength(1)
    expect(partsOf(one, 'offset block', id)).toHaveLength(0)
    expect([partsOf(scene, 'washer', id), partsOf(one, 'washer', id)].map(({ length }) => length)).toEqual([0, 1])
  })

  it('moves every later splice where a longer panel hangs', () => {
    const longer = {
      ...asked,
      panels: asked.panels.map((panel, i) => (i === 4 ? { ...panel, length: panel.length + 37.5 * inch } : panel)),
    }
    const one = buildScene(model, longer, 1)
    const spliceAt = (of: Scene, n: number): number => of.places.find(({ id }) => id === `splice-${n}`)!.at.x / inch
    expect(spliceAt(one, 4) - spliceAt(scene, 4)).toBeCloseTo(0, 6)
    expect(spliceAt(one, 5) - spliceAt(scene, 5)).toBeCloseTo(37.5, 3)
  })

  it('draws heights and offsets as many times as far from what was asked, and nothing else', () => {
    const read = {
      ...asked,
      posts: asked.posts.map((post, i) =>
        i === 9 ? { ...post, top: 29.5 * inch, away: post.away - 0.5 * inch } : post,
      ),
    }
    const far = exaggerated(read, asked, 4)
    expect(far.posts[9]!.top / inch).toBeCloseTo(25, 9)
    expect((far.posts[9]!.away - asked.posts[9]!.away) / inch).toBeCloseTo(-2, 9)
    expect(far.posts.filter((_, i) => i !== 9)).toEqual(
      asked.posts
        .filter((_, i) => i !== 9)
        .map((post) => ({ ...post, top: expect.closeTo(post.top, 12), away: expect.closeTo(post.away, 12) })),
    )
  })
})
