import { expect, test } from 'vitest'
import { inventedEnd } from '../../../test/fixtures/sheet-files.ts'
import { type Draft, valueAt, withValue } from '../form/draft.ts'
import { unconfirmed } from './unconfirmed.ts'

const published = {
  source: 'invented',
  confirmation: 'published',
  checked: { by: 'R. Quist', page: '1', on: '2026-11-28' },
}
const confirmed = (place: string): Draft =>
  withValue(inventedEnd as unknown as Draft, place, {
    ...(valueAt(inventedEnd, place) as object),
    ...published,
  })

test.each([
  ['railHeight', 'railHeight.low', 29],
  ['posts[0]', 'posts[0].along', 3],
  ['posts[0]', 'posts[0].slots.set', 'lower'],
])('what is changed in %s is confirmed no longer', (owner, place, value) => {
  const after = unconfirmed(withValue(confirmed(owner), place, value), place)
  expect(valueAt(after, owner)).toMatchObject({ confirmation: 'from memory', source: 'invented' })
  expect(valueAt(after, `${owner}.checked`)).toBe(undefined)
  expect(valueAt(after, place)).toBe(value)
})

test('what stands elsewhere stays confirmed', () => {
  const after = unconfirmed(withValue(confirmed('railHeight'), 'lap.rule', 'terminal end-on'), 'lap.rule')
  expect(valueAt(after, 'railHeight')).toMatchObject(published)
  const named = withValue(confirmed('railHeight'), 'name', 'Another')
  expect(unconfirmed(named, 'name')).toBe(named)
})

test('a stub that is confirmed by itself is not touched by what its post says', () => {
  const both = withValue(confirmed('posts[0]'), 'posts[0].stub', { high: 4, ...published })
  const after = unconfirmed(withValue(both, 'posts[0].kind', 'steel post'), 'posts[0].kind')
  expect(valueAt(after, 'posts[0].stub')).toMatchObject(published)
  expect(valueAt(after, 'posts[0].confirmation')).toBe('from memory')
})
