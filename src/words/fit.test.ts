import { describe, expect, it } from 'vitest'
import { check, facts, feet, inches, noGround, sheet } from '../../test/fixtures/fit-facts.ts'
import type { FitFacts } from '../core/fit/fit.ts'
import type { FitCheck } from '../core/fit/fit-check.ts'
import type { EndSheet } from '../core/hardware/hardware-sheet.ts'
import { nameOf } from '../core/hardware/sheet-text.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

const said = ({ what, limit, value, smallestChange }: FitCheck, print = english(null)) => ({
  what: print.say(what),
  limit: print.say(limit),
  value: print.say(value),
  change: smallestChange === null ? null : print.say(smallestChange),
})

describe('checks of hardware', () => {
  it('say which test is needed, and which contracts its date binds', () => {
    const terminal = { sheet: nameOf(sheet('flared-terminal-31')) }
    expect(said(check('crash test of sheet', { letting: '2018-07-01' }, terminal))).toEqual({
      what: 'crash test of Flared cable-anchored terminal, 31 in for this work and speed',
      limit:
        "one test to MASH 2016 or later at level 3 or higher, for 55 mi/h; new work let 2018-07-01; MASH 2016 or later after 2018-06-30 (W-beam terminal); the date binds contracts on the National Highway System; exceptions by memorandum exist; a state's own date may differ",
      value: 'NCHRP 350, test level 3; new work, let 2018-07-01',
      change: 'a terminal with one test to MASH 2016 or later at level 3 or higher',
    })
  })

  it('say how to meet a run of the other height family', () => {
    expect(said(check('against adjoining run', { adjoining: { railHeight: inches(27.75), splice: 'post' } }))).toEqual({
      what: 'rail height and splices against the adjoining run',
      limit: '31 in within 1 in, splices midway between posts',
      value: '27 3/4 in, splices at posts',
      change:
        'change height by 3 1/4 in over 25 ft to 50 ft of rail, outside the terminal and its stopping distance; one odd panel (9 ft 4 1/2 in or 15 ft 7 1/2 in) shifts the splices by half a post space',
    })
  })

  it('say how much rail is missing', () => {
    const bridge = { approach: sheet('tangent-terminal-31') as EndSheet, departure: sheet('bridge-end-31') as EndSheet }
    expect(said(check('barrier before transition', { ...bridge, runLength: feet(25 + 50) })).change).toBe(
      '12 ft 6 in more plain rail between terminal and transition',
    )
    expect(said(check('length of run', { runLength: feet(74.99) }))).toMatchObject({
      limit:
        'at least 75 ft 0 in, the shortest tested; of that only about 25 ft 0 in redirects; at least 175 ft 0 in is recommended',
      // 74.99 ft is 74 ft 11.88 in
      value: '74 ft 11 7/8 in',
      change: '12 ft 6 in more rail',
    })
  })

  const room = (clear: number, changes: Partial<FitFacts>) =>
    said(check('room behind rail', { nearest: { ...facts.nearest!, clear: inches(clear) }, ...changes }))

  it.each([
    [48.99, 'full', 'half spacing for 56 ft 3 in: needs 3 ft 8 in'],
    [
      43.99,
      'full',
      'quarter spacing for 56 ft 3 in: needs 2 ft 11 in, with 12 ft 6 in of half spacing before and after it',
    ],
    [34, 'full', 'move the rail 1 ft 3 in farther from the pier'],
    // never 0 in where something is missing
    [34.99, 'quarter', 'move the rail 1/16 in farther from the pier'],
  ] as const)('with %d in behind the rail at %s spacing: %s', (clear, spacing, change) => {
    expect(room(clear, { spacing }).change).toBe(change)
  })

  it('never print a length short of its limit as the limit', () => {
    expect(room(48.99, {})).toMatchObject({
      limit: 'at least 4 ft 1 in from the front face of the rail, under NCHRP 350',
      value: '4 ft 0 15/16 in',
    })
  })

  it('say both texts on curbs, and where they differ', () => {
    const curb = { height: inches(6), face: 'sloping', faceSlope: null, toRail: inches(6) } as const
    const speed = { value: 65, unit: 'mi/h' } as const
    expect(said(check('curb before rail', { curb, speed }, { by: 'guide' }))).toEqual({
      what: 'curb before the rail',
      limit:
        'rail flush (to 6 in behind, as the 31 in run was tested); curb of at most 4 in with a sloping face of 1V:3H or flatter; the 31 in run passed NCHRP 350 test level 3 with its rail 6 in behind a 6-in curb: text and test differ',
      value: 'rail 6 in behind a sloping curb of 6 in, slope of its face not said',
      change: 'a curb of 4 in',
    })
    const far = { ...curb, height: inches(4), toRail: feet(13) }
    expect(
      said(check('curb before rail', { curb: far, speed: { value: 45, unit: 'mi/h' } }, { by: 'guide' })).limit,
    ).toContain(
      'or 13 ft 0 in or more behind; curb of at most 4 in with a sloping face; NCHRP Report 537, page 93, finds a risk',
    )
  })

  it('give the other system beside every length, as it stands in the sentence', () => {
    const broken = check('ground to slope break', { ground: { ...noGround, slopeBehind: 1, breakBehindPost: 0 } })
    expect(said(broken, english('metric')).change).toBe(
      'widen the ground behind the posts to 609.6 mm (2 ft 0 in), or 2.4384 m (8-ft) or 2.7432 m (9-ft) posts 304.8 mm (1 ft) before the break',
    )
    expect(said(broken, spanish('metric')).change).toBe(
      'ensanche el terreno detrás de los postes a 609.6 mm (2 ft 0 in), o postes de 2.4384 m (8 ft) o 2.7432 m (9 ft), 304.8 mm (1 ft) antes del quiebre',
    )
  })

  it('leave the name that a person gave a hazard as it is, though it is words of the trade with a length in them', () => {
    const near = { hazard: 'post, 6 ft off', clear: inches(34), length: feet(4) }
    expect(said(check('room behind rail', { nearest: near }), spanish('metric'))).toMatchObject({
      what: 'espacio detrás de la baranda hasta post, 6 ft off, con separación entera',
      change: 'aleje la baranda 381 mm (1 ft 3 in) más de post, 6 ft off',
    })
  })
})
