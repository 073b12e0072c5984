import { describe, expect, test } from 'vitest'
import type { EndSheet } from '../core/hardware/hardware-sheet.ts'
import { lessonOf } from './lesson.ts'
import { shippedShelf } from './sheet-shelf.ts'

const sheet = (id: string): EndSheet => shippedShelf.get(id) as EndSheet
const differing = (one: string, other: string): readonly string[] =>
  lessonOf(sheet(one), sheet(other), shippedShelf).flatMap(({ place, asked }) =>
    asked.filter(({ differs }) => differs).map(({ topic }) => `${place.kind} ${place.number} ${topic}`),
  )

describe('the flared terminal at both heights', () => {
  const found = differing('flared-terminal-31', 'flared-terminal-27-3-4')

  /** Facts 1, 6, 7, 15 and 16 of the handbook: height, last panel, splices, slots of post 2, holes of the head. */
  test('differs where the handbook says so', () => {
    const expected = ['post 1 rail-height', 'post 4 rail-height', 'post 2 slot-set', 'post 1 head-holes']
    expect(expected.filter((one) => !found.includes(one))).toEqual([])
    expect(found.some((one) => /^panel \d panel-length$/.test(one))).toBe(true)
  })

  /** Facts 4, 8, 9, 10, 12, 13, 14 and 18 are the same at both. */
  test('is alike where the handbook has one fact for both', () => {
    const alike = ['post 1 rail-bolt', 'post 1 block', 'post 1 hinge-side', 'post 2 hinge-side', 'post 1 stub-height']
    expect(
      [...alike, 'post 1 cable-play', 'splice 1 lap', 'space 1 spacing'].filter((one) => found.includes(one)),
    ).toEqual([])
  })
})

test('a sheet beside itself differs nowhere', () => {
  expect(differing('tangent-terminal-31', 'tangent-terminal-31')).toEqual([])
})
