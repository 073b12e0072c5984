import { validateBytes } from 'gltf-validator'
import { describe, expect, it } from 'vitest'
import { demoRun } from '../../../test/fixtures/roadside.ts'
import { buildScene } from '../../core/scene/build-scene.ts'
import { standingAsAsked } from '../../core/scene/standing.ts'
import { writeGltf } from './write-gltf.ts'

const { model } = demoRun().required

describe.each([1, -1] as const)('a scene with the road on either side (%i)', (outward) => {
  const scene = buildScene(model, standingAsAsked(model), outward)
  const bytes = writeGltf(scene, 'Arroyo "Álamo", {1}')

  it('passes the validator of the format without a remark', async () => {
    const { issues, info } = await validateBytes(bytes)
    expect(issues.messages).toEqual([])
    expect([issues.numErrors, issues.numWarnings, issues.numInfos]).toEqual([0, 0, 0])
    expect(info.totalTriangleCount).toBeGreaterThan(3000)
  })

  it('names each part by its place, and puts posts where the layout has them', () => {
    const length = new DataView(bytes.buffer).getUint32(12, true)
    const { nodes, scenes } = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + length)))
    expect(nodes).toHaveLength(scene.solids.length)
    expect(scenes[0].name).toBe('Arroyo "Álamo", {1}')
    const along = (id: string): number =>
      nodes.find((one: { name: string }) => one.name === `${id}: post`).translation[0] / 0.0254
    const [a, b] = model.layout.posts.filter(({ unit }) => unit === 'run')
    expect(along(b!.id) - along(a!.id)).toBeCloseTo(b!.alongInches - a!.alongInches, 6)
    expect(nodes.find((one: { name: string }) => one.name === 'post-1: anchor cable').extras).toEqual({
      ...{ part: 'anchor cable', place: 'post-1', isSign: true },
    })
  })

  it('is the same bytes for the same scene', () => {
    expect(writeGltf(scene, 'Arroyo "Álamo", {1}')).toEqual(bytes)
  })
})

it('is refused by the validator where a byte of its head is another', async () => {
  const bytes = writeGltf(buildScene(model, standingAsAsked(model), 1), 'run')
  bytes[4] = 3
  const { issues } = await validateBytes(bytes)
  expect(issues.messages.map(({ code }) => code)).toEqual(['GLB_INVALID_VERSION'])
})
