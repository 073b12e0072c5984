import { expect, test } from 'vitest'
import { english } from '../words/english.ts'
import type { NearMark, PlacedTicket } from './day-report.ts'
import { ticketsText } from './locate-ticket-text.ts'

test('tells the posts near each of two marks that have one name on one ticket', () => {
  const ticket: PlacedTicket = {
    ...{ number: '1234', calledOn: '2016-05-01', validFrom: '2016-05-04', validThrough: '2016-05-20' },
    ...{ note: null, marks: [0, 300].map((alongInches) => ({ name: 'gas', alongInches })) },
  }
  const near = (post: number, markNumber: number): NearMark => ({
    post,
    markNumber,
    mark: 'gas',
    ticket: '1234',
    apart: 0,
  })
  const text = ticketsText({ units: 'us' }, [ticket], [near(1, 1), near(2, 1), near(5, 2)], english(null))!
  expect(text.match(/Within 2 ft of gas: [^.]+\./g)).toEqual([
    'Within 2 ft of gas: posts 1 and 2.',
    'Within 2 ft of gas: post 5.',
  ])
})
