import { describe, expect, test } from 'vitest'
import { demoJudged, entryOf } from '../../test/fixtures/roadside.ts'
import type { DayLogBody, LocateTicketBody } from '../formats/entry/entry-kinds.ts'
import { dayReport } from './day-report.ts'
import { postsNearMarks, ticketOn } from './locate-warnings.ts'
import { parseNumbers, printNumbers } from './number-list.ts'

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
      entryOf('a', log({ day: '2016-05-09', postsDriven: [1, 2, 3], panelsHung: [1] })),
      entryOf('b', log({ postsDriven: [3, 4], crew: ['T. Alvarez', 'M. Reyes'] })),
      entryOf('c', log({ day: '2016-05-13', postsDriven: [9] })),
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
      entryOf('a', log({ openEnds: 'exposed', postsDriven: [1] })),
      entryOf('b', log({ openEnds: 'none', postsDriven: [2] }), 'a'),
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
        ticket({ validThrough: '2016-05-11', marks: [{ name: 'gas', alongInches: post.alongInches + 20 }] }),
      ),
    ]
    const logs = [entryOf('a', log({ postsDriven: [post.number, 1] }))]
    const report = dayReport(judged, { ...nothing, logs, tickets }, '2016-05-12', dayOf)
    expect(report.nearMarks).toEqual([{ post: post.number, mark: 'gas', ticket: '1234', apart: 20 }])
    expect(report.ticket).toMatchObject({ kind: 'outside', through: '2016-05-11' })
  })
})

describe('postsNearMarks', () => {
  test('are those up to 2 ft away to either side, and no farther', () => {
    const marks = [{ name: 'water', alongInches: 100 }]
    const posts = [75.9375, 76, 100, 124, 124.0625].map((alongInches, i) => ({ number: i + 1, alongInches }))
    expect(postsNearMarks(posts, [ticket({ marks })]).map(({ post }) => post)).toEqual([2, 3, 4])
  })
})

describe('ticketOn', () => {
  test('counts the first and the last day, and takes the ticket that lasts longest', () => {
    const tickets = [ticket({}), ticket({ number: '99', validFrom: '2016-05-19', validThrough: '2016-06-01' })]
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
