import { describe, expect, it } from 'vitest'
import { demoVersions } from '../../test/fixtures/three-versions.ts'
import { dayProblems } from './day-problems.ts'

// Three versions of a run. The second has another second end than the first, the third another first end than both.
const ids = ['v1', 'v2', 'v3']
const files = new Map(demoVersions(ids).map((file, i) => [ids[i]!, file] as const))
const layoutOf = (version: string) => files.get(version)!.version!.layout
const [first, last] = [layoutOf('v1'), layoutOf('v3')]
const addedIn = (version: string): string => layoutOf(version).posts.find(({ id }) => id.includes('~'))!.id
/** Of the first version, and no longer of the last. */
const gone = first.posts.find(({ id }) => last.posts.every((post) => post.id !== id))!.id

const log = {
  day: '2026-05-04',
  done: 'Posts',
  panelsHung: [],
  crew: ['R. Quist'],
  openEnds: 'none',
  openEndsNote: null,
}
const logged = (postsDriven: readonly unknown[], more: object = {}, schemaVersion = 2) =>
  ({ run: 'v1', kind: 'day-log', schemaVersion, body: { ...log, postsDriven, ...more } }) as const
const ticket = (from: string, version?: string) => {
  const marks = [{ name: 'gas', from, alongInches: 12 }]
  return { run: 'v1', kind: 'locate-ticket', schemaVersion: 2, body: { number: 'A-1', version, marks } } as const
}
const problems = (entry: Parameters<typeof dayProblems>[2], some = files) =>
  dayProblems('device.json', 'body', entry, some).map(({ place, expected, found }) => [
    place,
    expected.kind,
    found !== null && 'text' in found ? found.text : found?.kind,
  ])

describe('a day log or locate ticket', () => {
  it('names posts and panels of its run, of the version that its person saw or of another', () => {
    expect(problems(logged(['post-1', gone]))).toEqual([])
    expect(problems(logged(['post-12', addedIn('v3')], { panelsHung: [last.panels[0]!.id], version: 'v3' }))).toEqual(
      [],
    )
    // What was logged of a post that is gone stays in a log that is written anew.
    expect(problems(logged([gone], { version: 'v3' }))).toEqual([])
    expect(problems(ticket(gone, 'v3'))).toEqual([])
  })

  it('is refused where it names one that the run never had, however well it is formed', () => {
    const beyond = first.posts.length + 1
    expect(problems(logged(['post-1', `post-${beyond}`], { panelsHung: ['panel-99'] }))).toEqual([
      ['body.postsDriven[1]', 'piece of run', `"post-${beyond}"`],
      ['body.panelsHung[0]', 'piece of run', '"panel-99"'],
    ])
    expect(problems(logged([1, beyond - 1, beyond], { panelsHung: [1, 99] }, 1))).toEqual([
      ['body.postsDriven[2]', 'piece of run', `"post-${beyond}"`],
      ['body.panelsHung[1]', 'piece of run', '"panel-99"'],
    ])
    expect(problems(ticket('post-3~elsewhere'))).toEqual([['body.marks[0].from', 'piece of run', '"post-3~elsewhere"']])
    // One of a version that is not at hand.
    const early = new Map([...files].slice(0, 2))
    expect(problems(logged([addedIn('v3')], { version: 'v2' }), early)).toHaveLength(1)
  })

  it('is refused where it was made at a version that the run does not have', () => {
    expect(problems(logged(['post-1'], { version: 'v4' }))).toEqual([['body.version', 'version of run', '"v4"']])
    expect(problems(ticket('post-1', 'v4'))).toEqual([['body.version', 'version of run', '"v4"']])
  })
})
