import { describe, expect, test } from 'vitest'
import { demoJudged, entryOf } from '../../test/fixtures/roadside.ts'
import { demoAsked, demoVersions } from '../../test/fixtures/three-versions.ts'
import { ticketsText } from '../documents/locate-ticket-text.ts'
import { dayLogOf, locateTicketOf } from '../formats/entry/day-entries.ts'
import type { DayLogBody, LocateTicketBody } from '../formats/entry/entry-kinds.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { english } from '../words/english.ts'
import { dayReport } from './day-report.ts'
import { judgeKnown } from './judge-readings.ts'
import { postsNearMarks, ticketOn } from './locate-warnings.ts'
import { parseNumbers, printNumbers } from './number-list.ts'
import { placedTickets } from './placed-tickets.ts'
import { requireRun } from './require-run.ts'
import { reviseRun } from './revise-run.ts'
import { versionsOf } from './run-history.ts'

const log = (changes: Partial<DayLogBody>): DayLogBody => ({
  day: '2016-05-12',
  done: 'Drove posts',
  postsDriven: [],
  panelsHung: [],
  crew: ['T. Alvarez'],
  openEnds: 'none',
  openEndsNote: null,
  ...changes,
})

const ticket = (changes: Partial<LocateTicketBody>): LocateTicketBody => ({
  number: '1234',
  calledOn: '2016-05-02',
  validFrom: '2016-05-05',
  validThrough: '2016-05-20',
  marks: [],
  ...changes,
})

const dayOf = (moment: string): string => moment.slice(0, 10)
const nothing = { logs: [], tickets: [], photos: [] }

describe('dayReport', () => {
  test('comes out of the entries of the day: readings by person, posts and panels of all so far', () => {
    const logs = [
      entryOf('a', log({ day: '2016-05-09', postsDriven: ['post-1', 'post-2', 'post-3'], panelsHung: ['panel-1'] })),
      entryOf('b', log({ postsDriven: ['post-3', 'post-4'], crew: ['T. Alvarez', 'M. Reyes'] })),
      entryOf('c', log({ day: '2016-05-13', postsDriven: ['post-9'] })),
    ]
    const judged = demoJudged()
    const report = dayReport(judged, { ...nothing, logs }, '2016-05-12', dayOf)
    expect(report.postsDriven).toEqual([3, 4])
    expect(report.progress.posts).toEqual({ done: 4, of: judged.model.layout.posts.length })
    expect(report.crew).toEqual(['T. Alvarez', 'M. Reyes'])
    // The crew of the demo read the hold points on the 9th, the inspector all else on the 12th.
    const own = judged.readings.filter(({ at }) => at.startsWith('2016-05-12'))
    expect(report.readings).toEqual([{ by: 'J. Okafor', count: own.length }])
    expect(report.findings).toHaveLength(4)
  })

  test('takes the log in force, and the worst of the open ends of two logs', () => {
    const logs = [
      entryOf('a', log({ openEnds: 'exposed', postsDriven: ['post-1'] })),
      entryOf('b', log({ openEnds: 'none', postsDriven: ['post-2'] }), 'a'),
      entryOf('c', log({ openEnds: 'protected', openEndsNote: 'drums' })),
    ]
    const report = dayReport(demoJudged(), { ...nothing, logs }, '2016-05-12', dayOf)
    expect(report.logs.map(({ id }) => id)).toEqual(['b', 'c'])
    expect(report.openEnds).toBe('protected')
    expect(report.postsDriven).toEqual([2])
  })

  test('does not take a day without a log for one without open ends', () => {
    expect(dayReport(demoJudged(), nothing, '2016-05-12', dayOf).openEnds).toBe('not said')
  })

  test('warns of posts driven near a mark, and of a day outside the ticket', () => {
    const judged = demoJudged()
    const post = judged.model.layout.posts[3]!
    const tickets = [
      entryOf(
        't',
        ticket({
          validThrough: '2016-05-11',
          marks: [{ name: 'gas', from: 'post-1', alongInches: post.alongInches + 20 }],
        }),
      ),
    ]
    const logs = [entryOf('a', log({ postsDriven: [post.id, 'post-1'] }))]
    const report = dayReport(judged, { ...nothing, logs, tickets }, '2016-05-12', dayOf)
    expect(report.nearMarks).toEqual([{ post: post.number, markNumber: 1, mark: 'gas', ticket: '1234', apart: 20 }])
    expect(report.ticket).toMatchObject({ kind: 'outside', through: '2016-05-11' })
  })
})

describe('what was logged at an earlier version', () => {
  // The second version is longer than the first, the third has another first end: posts 1 of the first two are gone.
  const [first, second, third] = demoVersions(['v1', 'v2', 'v3']) as readonly [RunFile, RunFile, RunFile]
  // One more, made from the first, begins farther upstream.
  const farther = reviseRun(
    { before: 'before', asked: 'asked' },
    first,
    demoAsked({ need: { from: '-100 ft', to: '25 ft' } }),
    'v4',
  )
  if (!farther.ok) throw new Error('the version cannot be made', { cause: farther.error })
  const upstream = farther.value.run
  const versions = versionsOf({ files: new Map([first, second, third].map((run) => [run.version!.id, run])) })
  const judgedIn = (run: RunFile, atHand: typeof versions) => {
    const required = requireRun('run', run)
    if (!required.ok) throw new Error('the version cannot be read', { cause: required.error })
    return judgeKnown(required.value, [], atHand)
  }
  /** A post that every version has. */
  const shared = 'post-10'
  const postIn = ({ version }: RunFile, id: string) => version!.layout.posts.find((post) => post.id === id)

  test('is told by the numbers of the one in force, and what that no longer has by the last that it had', () => {
    expect([postIn(first, 'post-1'), postIn(third, 'post-1')]).toEqual([expect.anything(), undefined])
    const logs = [entryOf('a', log({ postsDriven: ['post-1', shared], panelsHung: ['panel-1'] }))]
    const then = dayReport(judgedIn(first, versions), { ...nothing, logs }, '2016-05-12', dayOf)
    expect(then).toMatchObject({ postsDriven: [1, 10], panelsHung: [1], gone: [], progress: { posts: { done: 2 } } })
    const now = dayReport(judgedIn(third, versions), { ...nothing, logs }, '2016-05-12', dayOf)
    expect(now.postsDriven).toEqual([postIn(third, shared)!.number])
    const gone = (atHand: typeof versions) =>
      dayReport(judgedIn(third, atHand), { ...nothing, logs }, '2016-05-12', dayOf).gone.map(english(null).say)
    expect(gone(versions)).toEqual(['post 1, version 2', 'panel 1, version 2'])
    expect(gone(new Map())).toEqual(['post-1', 'panel-1'])
    expect(now.progress.posts.done).toBe(1)
  })

  test('as a mark stays where it is on the ground, or where that is cannot be told', () => {
    const fromShared = 30
    const alongThen = postIn(first, shared)!.alongInches + fromShared
    const tickets = [entryOf('t', ticket({ marks: [{ name: 'gas', from: 'post-1', alongInches: alongThen }] }))]
    const alongIn = (run: RunFile, atHand: typeof versions) =>
      placedTickets(judgedIn(run, atHand), tickets)[0]!.marks[0]!.alongInches
    expect(alongIn(first, new Map())).toBe(alongThen)
    const alongNow = postIn(upstream, shared)!.alongInches + fromShared
    expect([postIn(upstream, 'post-1'), alongNow > alongThen]).toEqual([undefined, true])
    expect(alongIn(upstream, versions)).toBe(alongNow)
    expect(alongIn(third, versions)).toBe(postIn(third, shared)!.alongInches + fromShared)
    expect(alongIn(third, new Map())).toBeNull()
    const placed = placedTickets(judgedIn(third, new Map()), tickets)
    expect(ticketsText({ units: 'us' }, placed, [], english(null))).toContain('gas WHERE IS NOT KNOWN')
  })

  test('and in the first version of its entry, by number, is the same place as then', () => {
    const { version: _, ...body } = log({})
    expect(dayLogOf(1, { ...body, postsDriven: [1, 10], panelsHung: [2] })).toEqual({
      ...body,
      ...{ postsDriven: ['post-1', 'post-10'], panelsHung: ['panel-2'] },
    })
    const marked = { ...ticket({}), marks: [{ name: 'gas', alongInches: 162 }] }
    expect(locateTicketOf(1, marked)).toEqual({ ...marked, marks: [{ name: 'gas', from: 'post-1', alongInches: 162 }] })
    // Numbers are those of the first version's ids.
    for (const { id, number } of first.version!.layout.posts) expect(id).toBe(`post-${number}`)
    for (const { id, number } of first.version!.layout.panels) expect(id).toBe(`panel-${number}`)
  })
})

describe('postsNearMarks', () => {
  test('are those up to 2 ft away to either side, and no farther', () => {
    const marks = [
      { name: 'water', alongInches: 100 },
      { name: 'somewhere', alongInches: null },
    ]
    const posts = [75.9375, 76, 100, 124, 124.0625].map((alongInches, i) => ({ number: i + 1, alongInches }))
    expect(postsNearMarks(posts, [{ ...ticket({}), marks }]).map(({ post }) => post)).toEqual([2, 3, 4])
  })

  test('know marks of one name apart', () => {
    const marks = [100, 200].map((alongInches) => ({ name: 'water', alongInches }))
    const posts = [100, 200].map((alongInches, i) => ({ number: i + 1, alongInches }))
    const near = postsNearMarks(posts, [{ ...ticket({}), marks }])
    expect(near.map(({ post, markNumber }) => [post, markNumber])).toEqual([
      [1, 1],
      [2, 2],
    ])
  })
})

describe('ticketOn', () => {
  test('counts the first and the last day, and takes the ticket that lasts longest', () => {
    const [first, second] = [ticket({}), ticket({ number: '99', validFrom: '2016-05-19', validThrough: '2016-06-01' })]
    const tickets = [first, second].map((one) => ({ ...one, marks: [] }))
    expect(ticketOn('2016-05-05', tickets)).toMatchObject({ kind: 'valid', ticket: '1234' })
    expect(ticketOn('2016-05-20', tickets)).toMatchObject({ kind: 'valid', ticket: '99' })
    expect(ticketOn('2016-05-04', tickets).kind).toBe('outside')
    expect(ticketOn('2016-06-02', tickets)).toMatchObject({ kind: 'outside', ticket: '99' })
    expect(ticketOn('2016-05-05', [])).toEqual({ kind: 'none' })
  })
})

describe('numbers as a list', () => {
  test('are drawn together and read back', () => {
    expect(printNumbers([7, 1, 2, 3, 3, 12])).toBe('1-3, 7, 12')
    expect(parseNumbers('1-3, 7 12', 20)).toEqual({ ok: true, value: [1, 2, 3, 7, 12] })
    expect(parseNumbers('1 – 4', 20)).toEqual({ ok: true, value: [1, 2, 3, 4] })
    expect(parseNumbers('', 20)).toEqual({ ok: true, value: [] })
  })

  test('that are none are refused by what stands there', () => {
    for (const text of ['21', '0', '5-3', 'four', '1--3'])
      expect(parseNumbers(`2, ${text}`, 20)).toEqual({ ok: false, error: text })
  })
})
