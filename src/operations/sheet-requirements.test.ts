import { describe, expect, test } from 'vitest'
import type { LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { statementsOf } from '../core/hardware/sheet-statements.ts'
import { panelsOfUnit } from '../core/layout/counted-layout.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { english } from '../words/english.ts'
import { requiredBySheet } from './sheet-requirements.ts'

const system = shippedSheets.find(({ id }) => id === 'w-beam-midspan-31') as LongitudinalSheet
const flared = shippedSheets.find(({ id }) => id === 'flared-terminal-31')!
const postSplice = shippedSheets.find(({ id }) => id === 'w-beam-post-splice-27-3-4') as LongitudinalSheet
const print = english(null)

const topicsAt = (sheet: typeof flared, place: string, of = system) =>
  (requiredBySheet(sheet, of).get(place) ?? []).map(({ topic }) => topic)

describe('what is required by a statement of a sheet', () => {
  test('of an end unit follows from the piece that it is about', () => {
    expect(topicsAt(flared, 'posts[1].stub')).toEqual(['stub-height'])
    expect(topicsAt(flared, 'posts[2]')).toEqual(['post-kind', 'block', 'hinge-side', 'slot-set'])
    expect(topicsAt(flared, 'flare.offset')).toEqual(['flare-offset'])
    expect(topicsAt(flared, 'panels.own[0]')).toEqual(['panel-length', 'slotted-panel'])
    // Both the rule and its limits say how far the cable may move.
    expect(topicsAt(flared, 'parts[anchor-cable].rules[cable-play]')).toEqual(['cable-play'])
    expect(topicsAt(flared, 'parts[anchor-cable].rules[cable-play].look.limits')).toEqual(['cable-play'])
  })

  test('is said of every adapter, of which a run has one', () => {
    const lengths = ['panels.adapters[0]', 'panels.adapters[1]'].flatMap((place) =>
      requiredBySheet(flared, system)
        .get(place)!
        .map(({ must }) => print.say(must)),
    )
    expect(lengths).toEqual([expect.stringContaining('9 ft 4 1/2 in'), expect.stringContaining('15 ft 7 1/2 in')])
  })

  test('of a system covers moved posts and gaps, which few runs have', () => {
    expect(topicsAt(postSplice, 'movedPost.newSlot')).toEqual(['new-slot'])
    expect(topicsAt(postSplice, 'omissions[0]')).toEqual(expect.arrayContaining(['nested', 'post-kind']))
    expect(topicsAt(system, 'omissions[0].nestedAtCurb')).toEqual(['curb'])
    expect(
      requiredBySheet(system, system)
        .get('splice')!
        .map(({ must }) => print.say(must)),
    ).toEqual(['The splice lies midway between two posts.'])
  })

  test('says the limits of the sheet that it is asked of', () => {
    const higher = { ...flared, railHeight: { ...flared.railHeight, low: 33, nominal: 34, high: 35 } }
    expect(
      requiredBySheet(higher, system)
        .get('railHeight')!
        .map(({ must }) => print.say(must)),
    ).toEqual(['The top of the rail stands 33 in to 35 in, 34 in nominal above finish grade.'])
  })

  test.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
    'is found for every rule of %s that a piece of it comes under, and for nothing that the sheet does not state',
    (_, sheet) => {
      // Of a unit of one panel every splice belongs to the run, whose own sheet asks for its bolts.
      const isOnePanel = sheet.kind !== 'longitudinal' && panelsOfUnit(sheet) === 1
      const of = sheet.kind === 'longitudinal' ? sheet : system
      const required = requiredBySheet(sheet, of)
      const places = statementsOf(sheet).map(({ place }) => place)
      expect(places.filter((place) => place.startsWith('parts[') && !required.has(place))).toEqual(
        isOnePanel ? ['parts[rail].rules[splice-bolts]'] : [],
      )
      expect([...required.keys()].filter((place) => !places.includes(place))).toEqual([])
    },
  )
})
