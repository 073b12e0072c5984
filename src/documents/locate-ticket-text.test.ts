import { expect, test } from 'vitest'
import { postsNearMarks } from '../operations/locate-warnings.ts'
import { english } from '../words/english.ts'
import type { PlacedTicket } from './day-report.ts'
import { ticketsText } from './locate-ticket-text.ts'

test('tells the posts near each of two marks that have one name on one ticket', () => {
  const marks = [0, 300].map((alongInches) => ({ name: 'gas', alongInches }))
  const ticket: PlacedTicket = {
    ...{ number: '1234', calledOn: '2016-05-01', validFrom: '2016-05-04', validThrough: '2016-05-20' },
    ...{ note: null, marks },
  }
  const posts = [0, 75, 150, 225, 300].map((alongInches, i) => ({ number: i + 1, alongInches }))
  const text = ticketsText({ units: 'us' }, [ticket], postsNearMarks(posts, [ticket]), english(null))!
  expect(text.match(/Within 2 ft of gas: [^.]+\./g)).toEqual([
    'Within 2 ft of gas: post 1.',
    'Within 2 ft of gas: post 5.',
  ])
})
