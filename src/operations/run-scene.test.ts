import { expect, it } from 'vitest'
import { demoJudged } from '../../test/fixtures/roadside.ts'
import { runScene } from './run-scene.ts'

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
