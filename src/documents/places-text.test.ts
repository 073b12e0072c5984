import { describe, expect, test } from 'vitest'
import { byHand } from '../../test/fixtures/by-hand.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { english } from '../words/english.ts'
import { fromDatumText, numberedText, placesText } from './places-text.ts'

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

describe('fromDatumText', () => {
  test('says which way along the rail, and names no station', () => {
    expect(fromDatumText({ units: 'us' }, -750, english(null))).toBe('62 ft 6 in of rail upstream of the datum')
    expect(fromDatumText({ units: 'us' }, 6, english(null))).toBe('6 in of rail downstream of the datum')
    expect(fromDatumText({ units: 'us' }, 0, english(null))).toBe('at the datum')
  })

  // 100 in x 0.0254 m = 2.54 m
  test('counts metres in a metric run', () => {
    expect(fromDatumText({ units: 'metric' }, 100, english('metric'))).toMatch(/^2\.540? m of rail downstream/)
  })
})
