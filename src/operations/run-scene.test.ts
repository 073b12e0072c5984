import { isDeepStrictEqual } from 'node:util'
import { expect, it } from 'vitest'
import { demoJudged } from '../../test/fixtures/roadside.ts'
import { makeDrill } from '../core/drill/make-drill.ts'
import { drillScene, runScene } from './run-scene.ts'

const judged = demoJudged()
const onRoad = (road: Partial<typeof judged.run.road>) =>
  runScene({ ...judged, run: { ...judged.run, road: { ...judged.run.road, ...road } } }, 1).outward

it('has the road on the left of the run, but for the left of a road that nobody meets there', () => {
  expect(onRoad({ side: 'right', traffic: 'two-way' })).toBe(1)
  expect(onRoad({ side: 'left', traffic: 'two-way' })).toBe(1)
  expect(onRoad({ side: 'left', traffic: 'divided' })).toBe(-1)
  expect(onRoad({ side: 'left', traffic: 'one-way' })).toBe(-1)
  expect(onRoad({ side: null, traffic: null })).toBe(1)
})

it('shows the stub of 4 3/4 in that the demo reads, whatever heights and offsets are drawn as', () => {
  for (const factor of [1, 10]) {
    const scene = runScene(judged, factor)
    const stub = scene.solids.find(({ part, place }) => part === 'lower post' && place === 'post-1')!.form
    const points = 'of' in stub ? scene.shapes.get(stub.of)!.points : []
    expect(Math.max(...points.map(({ y }) => y / 0.0254))).toBeCloseTo(4.75, 6)
  }
})

/** What no part of a scene shows, as docs/scene.md says: the rules have no figure that tells what turns, or no part. */
const unseen = ['plate-retainer', 'bracket-seat', 'strut', 'manual', 'rail-sound', 'lower-post-seen']

it('shows each state that a drill plants, but for those that no part of a scene tells', () => {
  const { model, requirements } = judged
  const told = new Map<string, boolean>()
  for (let seed = 1; seed <= 200; seed++) {
    const { site, faults } = makeDrill(model, requirements, { faults: 1, size: 'gross', decoys: 0, seed })
    const { requirement } = faults[0]!
    const right = site.sound.states.get(requirement)
    if (right === undefined) continue
    const mended = { ...site.asBuilt, states: new Map([...site.asBuilt.states, [requirement, right]]) }
    const isSeen = !isDeepStrictEqual(drillScene(judged, site.asBuilt), drillScene(judged, mended))
    const topic = requirement.split('/')[1]!
    told.set(topic, (told.get(topic) ?? true) && isSeen)
  }
  expect(told.size).toBeGreaterThan(10)
  expect(
    [...told]
      .filter(([, isSeen]) => !isSeen)
      .map(([topic]) => topic)
      .sort(),
  ).toEqual(unseen.sort())
})
