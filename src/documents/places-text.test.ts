import { describe, expect, test } from 'vitest'
import { byHand } from '../../test/fixtures/by-hand.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { english } from '../words/english.ts'
import { numberedText, placesText, stationOf } from './places-text.ts'

const place = (kind: 'post' | 'space' | 'panel' | 'splice', number: number): Place => ({
  ...{ id: `${kind}-${number}`, number, alongInches: 0, own: null },
  kind,
})
const unit: Place = { id: 'first', kind: 'unit', number: 1, alongInches: 0, sheet: byHand('Terminal of ours') }

describe('placesText', () => {
  test('joins neighbours of one kind and keeps whole units by name', () => {
    const places = [place('post', 4), place('post', 3), unit, place('post', 5), place('panel', 2)]
    expect(placesText(places, english(null))).toBe('first end, terminal of ours; posts 3 to 5; panel 2')
    expect(placesText([place('space', 7), place('splice', 1), place('splice', 3)], english(null))).toBe(
      'space after post 7; splices 1 and 3',
    )
  })
})

describe('numberedText', () => {
  test('names two neighbours singly, counts a number once, and says nothing of none', () => {
    expect(numberedText('post', [9, 1, 2, 9, 5, 6, 7], english(null))).toBe('posts 1, 2, 5 to 7 and 9')
    expect(numberedText('post', [9, 9], english(null))).toBe('post 9')
    expect(numberedText('post', [], english(null))).toBe('')
  })
})

describe('stationOf', () => {
  const road = {
    route: null,
    side: 'right',
    datumStation: '208+40',
    speed: null,
    traffic: 'two-way',
    opposingReaches: null,
  } as const

  // 62.5 ft = 750 in; 20840 - 62.5 = 20777.5 ft, 20840 + 62.5 = 20902.5 ft
  test('counts up-station on the right, and down-station on the left of a two-way road', () => {
    expect(stationOf({ units: 'us', road }, -750)).toBe('207+77.50')
    expect(stationOf({ units: 'us', road: { ...road, side: 'left' } }, -750)).toBe('209+02.50')
    expect(stationOf({ units: 'us', road: { ...road, side: 'left', traffic: 'divided' } }, -750)).toBe('207+77.50')
  })

  // 1 237.5 m + 100 in x 0.0254 m = 1 240.04 m
  test('counts metres in a metric run', () => {
    const metric = { ...road, datumStation: '1+237.500' }
    expect(stationOf({ units: 'metric', road: metric }, 100)).toBe('1+240.040')
  })

  test('is not known when datum, side or, on the left, traffic is not said', () => {
    for (const missing of [{ datumStation: null }, { side: null }, { side: 'left', traffic: null }] as const)
      expect(stationOf({ units: 'us', road: { ...road, ...missing } }, 0)).toBeNull()
  })
})
