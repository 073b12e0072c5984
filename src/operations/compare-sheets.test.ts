import { describe, expect, test } from 'vitest'
import { confirmStatement } from '../core/hardware/confirm-statement.ts'
import type { EndSheet } from '../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from '../words/english.ts'
import { valueWords } from '../words/say-sheet.ts'
import { compareSheets } from './compare-sheets.ts'

const sheet = (id: string): EndSheet => shippedSheets.find((one) => one.id === id) as EndSheet
const low = sheet('flared-terminal-27-3-4')
const high = sheet('flared-terminal-31')

describe('the flared terminals of 27 3/4 in and of 31 in', () => {
  const { statements, besides } = compareSheets(low, high)
  const at = (place: string) => statements.find((one) => one.place === place)

  // What the trade tells apart between them: height, slots of post 2, holes of the head, what they join.
  test('differ in height, with both figures', () => {
    const { one, other } = at('railHeight')!
    const said = [one, other].map((side) => valueWords(side!.values[0]!, english(null)))
    expect(said).toEqual(['27 3/4 in to 30 in', '30 in to 32 in, 31 in nominal'])
  })

  test('differ in the slots that hold the rail, in the holes of the head and in what they join', () => {
    expect(at('posts[2]')?.what).toBe('values')
    expect(at('parts[impact-head].rules[head-holes]')?.what).toBe('values')
    expect(besides.map(({ place }) => place)).toEqual(expect.arrayContaining(['name', 'joins[0]']))
  })

  test('do not differ in the stub, the cable or the flare, nor in anything that both state alike', () => {
    for (const place of ['posts[1].stub', 'parts[anchor-cable].rules[cable-play]', 'flare.offset'])
      expect(at(place)).toBe(undefined)
    expect(compareSheets(low, low)).toEqual({ statements: [], besides: [] })
  })

  test('differ the same way round when they are turned round', () => {
    const turned = compareSheets(high, low)
    expect(new Set(turned.statements.map(({ place, what }) => `${place} ${what}`))).toEqual(
      new Set(statements.map(({ place, what }) => `${place} ${what}`)),
    )
    expect(turned.statements.find(({ place }) => place === 'railHeight')!.one).toEqual(at('railHeight')!.other)
  })
})

test('what is confirmed differs in its source alone; a text of a rule in its words', () => {
  const confirming = { document: { title: 'Manual', edition: '3' }, page: '4', by: 'R. Quist', on: '2026-11-28' }
  const confirmed = confirmStatement(high, 'posts[1].stub', confirming)
  expect(compareSheets(high, confirmed).statements.map(({ place, what }) => [place, what])).toEqual([
    ['posts[1].stub', 'source'],
  ])
  const other = { ...high, sources: { ...high.sources, trade: { title: 'Another', edition: '1' } } }
  const stub = compareSheets(high, other).statements.find(({ place }) => place === 'posts[1].stub')
  expect(stub?.what).toBe('source')
  const [head, ...parts] = high.parts
  const [rule] = head!.rules
  const reworded = { ...high, parts: [{ ...head!, rules: [{ ...rule!, how: 'Look.' }] }, ...parts] }
  expect(compareSheets(high, reworded).statements).toMatchObject([
    { place: 'parts[impact-head].rules[head-holes]', what: 'texts' },
  ])
})

test('the order of the fields in a file says nothing', () => {
  const turned = (value: unknown): unknown =>
    Array.isArray(value)
      ? value.map(turned)
      : typeof value === 'object' && value !== null
        ? Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([name, one]) => [name, turned(one)]),
          )
        : value
  const other = turned(high) as EndSheet
  expect(compareSheets(high, other)).toEqual({ statements: [], besides: [] })
  const confirming = { document: { title: 'Manual', edition: '3' }, page: '4', by: 'R. Quist', on: '2026-11-28' }
  for (const place of ['posts[2]', 'parts[impact-head].rules[head-holes]', 'flare'])
    expect(compareSheets(high, confirmStatement(other, place, confirming)).statements).toMatchObject([
      { place, what: 'source' },
    ])
})

test('a post that only one of them has is stated by that one', () => {
  const shorter = { ...high, posts: high.posts.slice(0, -1) }
  expect(compareSheets(high, shorter).statements).toMatchObject([
    { place: 'posts[6]', one: { place: 'posts[6]' }, other: null, what: 'values' },
  ])
})
