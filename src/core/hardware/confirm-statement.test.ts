import { expect, test } from 'vitest'
import { inventedEnd } from '../../../test/fixtures/sheet-files.ts'
import { type Confirming, confirmStatement } from './confirm-statement.ts'
import { statementsOf } from './sheet-statements.ts'

const confirming: Confirming = {
  document: { title: 'Standard drawing of an invented county', edition: '2026' },
  ...{ page: '12', by: 'R. Quist', on: '2026-11-28' },
}
const citedAt = (sheet: typeof inventedEnd, place: string) =>
  statementsOf(sheet).find((one) => one.place === place)!.cited

test('a confirmed statement is published in its document, says the same, and leaves all others as they were', () => {
  for (const { place } of statementsOf(inventedEnd)) {
    const after = confirmStatement(inventedEnd, place, confirming) as typeof inventedEnd
    const { source, confirmation, checked, ...stated } = citedAt(after, place)
    expect([confirmation, checked]).toEqual(['published', { by: 'R. Quist', page: '12', on: '2026-11-28' }])
    expect(after.sources[source]).toEqual(confirming.document)
    const before = citedAt(inventedEnd, place)
    // What stands within it has a source of its own, and that is not touched either.
    expect({ ...stated, source: before.source, confirmation: before.confirmation }).toEqual(before)
    const others = (sheet: typeof inventedEnd) =>
      statementsOf(sheet)
        .filter((one) => one.place !== place)
        .map((one) => [one.place, one.cited.source, one.cited.confirmation, one.values])
    expect(others(after)).toEqual(others(inventedEnd))
  }
})

test('one document has one key, however many statements are found in it', () => {
  const once = confirmStatement(inventedEnd, 'railHeight', confirming)
  const twice = confirmStatement(once, 'lap', { ...confirming, page: '13' })
  expect(Object.keys(twice.sources)).toEqual(['invented', 'document1'])
  const other = confirmStatement(twice, 'postSpacing', { ...confirming, document: { title: 'Manual', edition: '3' } })
  expect(Object.keys(other.sources)).toEqual(['invented', 'document1', 'document2'])
})

test('nothing is confirmed at a place that states nothing', () => {
  expect(() => confirmStatement(inventedEnd, 'railHeight.low', confirming)).toThrow(RangeError)
})
