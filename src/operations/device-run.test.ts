import { expect, it } from 'vitest'
import { demoVersions } from '../../test/fixtures/three-versions.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { writeRun } from '../formats/run/write-run.ts'
import { deviceRun } from './device-run.ts'

const [first, second] = demoVersions(['v1', 'v2'])
const common = { run: 'v1', author: 'R. Quist', device: 'phone', capturedAt: '2026-05-04T15:30:00.000Z' }
const runs = [first, second].map((file, i) => ({
  ...{ ...common, id: `v${i + 1}`, kind: 'run', schemaVersion: 2, supersedes: i === 0 ? null : `v${i}` },
  body: JSON.parse(writeRun(file!)),
}))
const log = (postsDriven: readonly string[]) => ({
  ...{ ...common, id: 'v3', kind: 'day-log', schemaVersion: 2, supersedes: null },
  body: {
    ...{ day: '2026-05-04', done: 'Posts', postsDriven, panelsHung: [], crew: ['R. Quist'], openEnds: 'none' },
    openEndsNote: null,
  },
})
const told = (postsDriven: readonly string[]) =>
  deviceRun('device.json', { entries: [...runs, log(postsDriven)] as unknown as readonly Entry[] }, second!)

it('takes a log of posts that any version of the run has, and refuses by name those that none ever had', () => {
  const posts = ({ version }: typeof first & object) => version!.layout.posts.map(({ id }) => id)
  const gone = posts(first!).find((id) => !posts(second!).includes(id))!
  const taken = told(['post-1', gone])
  expect(taken.ok && taken.value.entries.logs.map(({ body }) => body.postsDriven)).toEqual([['post-1', gone]])
  expect(told(['post-1', 'post-999'])).toMatchObject({
    error: [
      {
        ...{ file: 'device.json', place: 'entries[2].body.postsDriven[1]' },
        ...{ expected: { kind: 'piece of run', piece: 'post' }, found: { text: '"post-999"' } },
      },
    ],
  })
})
