import { expect, it } from 'vitest'
import { demoJudged, demoRun } from '../../../test/fixtures/roadside.ts'
import type { AsBuilt } from '../drill/as-built.ts'
import { soundAsBuilt } from '../drill/sound-as-built.ts'
import { standingAsAsked } from './standing.ts'
import { standingAsBuilt } from './standing-as-built.ts'
import { standingAsRead } from './standing-as-read.ts'

const inch = 0.0254
const { model, requirements } = demoRun().required
const { judgement, readings } = demoJudged()
const read = standingAsRead(model, judgement.verdicts, readings)

it('stands as the demo was read: a stub of 4 3/4 in, a plate turned over, a lap against traffic', () => {
  expect(read.posts[0]!.stub! / inch).toBeCloseTo(4.75, 9)
  expect(read.seen('post-1/bearing-plate')).toMatchObject({ choice: 'three-up', right: false })
  expect(read.seen('splice-2/lap')).toMatchObject({ choice: 'downstream-over', right: false })
})

it('hangs the 12 ft 6 in panels that the demo has where its two odd ones belong', () => {
  const odd = model.layout.panels.flatMap(({ role }, i) => (role === 'adapter' ? [i] : []))
  expect(odd.length).toBeGreaterThan(0)
  for (const i of odd) expect(read.panels[i]!.length / inch).toBeCloseTo(150, 9)
})

it('takes offsets from the string and heights from the level', () => {
  const of = (id: string) => readings.find((one) => one.of === id)!.answer as { readonly value: number }
  expect(read.posts[0]!.away).toBeCloseTo(of('post-1/lateral-offset').value / 1e9, 9)
  expect(read.posts[3]!.top).toBeCloseTo(of('post-4/rail-height').value / 1e9, 9)
})

it('stands as a drill built it, and as asked where nothing is asked of the height', () => {
  const sound = soundAsBuilt(model, requirements)
  const faulty: AsBuilt = {
    ...sound,
    posts: sound.posts.map((post, i) =>
      i === 4 ? { ...post, railHeight: 28 * 25_400_000 } : i === 5 ? { ...post, railHeight: 0 } : post,
    ),
    states: new Map([...sound.states, ['post-1/hinge-side', { kind: 'choice', choice: 'away' }]]),
  }
  const standing = standingAsBuilt(model, faulty, requirements)
  expect(standing.posts[4]!.top / inch).toBeCloseTo(28, 9)
  expect(standing.posts[5]!.top).toBe(standingAsAsked(model).posts[5]!.top)
  expect(standing.seen('post-1/hinge-side')).toEqual({ kind: 'choice', choice: 'away', right: false })
  expect(standing.seen('post-2/hinge-side')).toMatchObject({ right: true })
})
