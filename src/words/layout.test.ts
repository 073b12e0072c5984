import { describe, expect, it } from 'vitest'
import { byHand } from '../../test/fixtures/by-hand.ts'
import type { LayoutSaying } from '../core/layout/layout-saying.ts'
import { english } from './english.ts'
import { spanish } from './spanish.ts'

describe('why a layout is refused, or is as it is', () => {
  const terminal = byHand('Flared cable-anchored terminal, 31 in')

  it.each<[LayoutSaying, string]>([
    [
      { kind: 'splice position', unit: terminal, panel: 150, at: 'post', post: 7, wanted: 'midspan' },
      "Flared cable-anchored terminal, 31 in joined by a 12 ft 6 in panel: splice would fall on post 7, and this system's splices lie midway between posts",
    ],
    [
      { kind: 'splice position', unit: terminal, panel: null, at: 'midspan', post: 8, wanted: 'post' },
      "Flared cable-anchored terminal, 31 in joined as it is: splice would fall midway between posts 8 and 9, and this system's splices lie at posts",
    ],
    [
      { kind: 'too many posts obstructed', obstructions: ['the culvert'], posts: 5, most: 3, firstPost: 9 },
      'the culvert: 5 posts from post 9 on cannot stand, and the sheet lets at most 3 in a row be left out or moved',
    ],
    [
      { kind: 'reduced part in unit', unit: null, spacing: 'half' },
      'half spacing would fall within the standing run, whose posts stand as tested',
    ],
    [
      { kind: 'hung panel differs', panel: 3, hung: 150, expected: 112.5, unit: terminal },
      'panel 3 as hung is 12 ft 6 in, the Flared cable-anchored terminal, 31 in has 9 ft 4 1/2 in there',
    ],
    [
      { kind: 'hung length', panel: 5, hung: 75, endOnly: true },
      'panel 5 as hung is 6 ft 3 in, which may only be the first or the last panel of the run',
    ],
    [
      { kind: 'stands elsewhere', by: 1 / 16 },
      'post 1 as it stands puts the first end 1/16 in away from where it is fixed',
    ],
    [
      { kind: 'stands otherwise', state: 'special', atInches: 1950 },
      'a special post stands at 162 ft 6 in from the datum, and this layout has none there',
    ],
    [
      { kind: 'ends do not meet', between: 1010, nearestShorter: null, nearestLonger: 1012.5 },
      'the fixed ends lie 84 ft 2 in apart, and no lawful run has that length (nearest: 84 ft 4 1/2 in)',
    ],
    [
      { kind: 'need covered', atBegin: 12, atEnd: 150 },
      'the rail that counts covers the need with 1 ft 0 in to spare at its begin and 12 ft 6 in at its end',
    ],
    [
      { kind: 'pieces of run', changedPosts: 1, oddPanels: 2, railInches: 300, pieces: 3 },
      '1 post left out, moved or replaced; 2 panels of other than standard length; 25 ft 0 in of rail in 3 pieces',
    ],
  ])('%o', (saying, text) => {
    expect(english(null).say(saying)).toBe(text)
  })

  it('obstructions of one gap are joined by the word of the language, whatever stands in their names', () => {
    const saying = { kind: 'splice on omitted post', obstructions: ['pipe and valve', 'a pit'] } as const
    expect(english(null).say(saying)).toMatch(/^pipe and valve and a pit: /)
    expect(spanish(null).say(saying)).toMatch(/^pipe and valve y a pit: /)
  })

  it('an obstruction keeps its name, though it is a word of the trade with a length in it', () => {
    const saying = { kind: 'splice on omitted post', obstructions: ['post of the 6 ft fence'] } as const
    expect(spanish('metric').say(saying)).toBe(
      'post of the 6 ft fence: un empalme caería en un poste que se omite o se mueve',
    )
  })
})
