import { describe, expect, it } from 'vitest'
import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { runFromValue } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { shippedSheets } from '../sheets/shipped-sheets.ts'
import { countedRun, panelsBySheet, postsBySheets } from './counted-run.ts'
import { asSeen, countedSpaces, type SeenSpace } from './counted-spaces.ts'
import { requireRun } from './require-run.ts'

const sheet = (id: string) => shippedSheets.find((one) => one.id === id)!
const first = sheet('flared-terminal-31') as EndSheet
const second = sheet('trailing-anchor-31') as EndSheet
const system = sheet('w-beam-midspan-31') as LongitudinalSheet
const hardware = {
  system,
  first: { kind: 'unit', sheet: first, atInches: null },
  second: { kind: 'unit', sheet: second, atInches: null },
} as const
const panels = [
  ...panelsBySheet(first),
  ...Array.from({ length: 12 }, () => 150),
  ...panelsBySheet(second).toReversed(),
]
const counted = { panels, posts: postsBySheets(hardware, panels) }

function required(seen: ReadonlyMap<number, SeenSpace>) {
  const { posts, reduced, obstructions } = asSeen(hardware, counted, seen, (gap) => `pipe ${gap}`)
  const run = countedRun({
    ...{ name: 'Seen', units: 'us', system, first, second, counted: { panels, posts }, reduced, obstructions },
    ...{ opposingReaches: false, side: null, letting: null, datumStation: null, position: null, unknownPanels: 0 },
    sheets: [],
  })
  const read = runFromValue('seen', runToValue(run))
  const got = read.ok ? requireRun('seen', read.value) : read
  if (!got.ok) throw new Error(JSON.stringify(got.error))
  return got.value
}

/** What the requirements say must be between two posts, inches, by the number of the first. */
const wanted = (run: ReturnType<typeof required>, number: number): number | null => {
  const one = run.requirements.find(({ id }) => id === `space-${number}/spacing`)
  return one?.look.kind === 'measure' && one.look.limits.nominal !== 'notStated' ? one.look.limits.nominal : null
}

describe('what is seen between the posts of the run', () => {
  const spaces = countedSpaces(hardware, counted)

  it('can be said of every space that is not of an end unit', () => {
    expect(spaces[0]).toEqual({ number: first.posts.length, ways: ['full', 'half', 'quarter', 'open'] })
    expect(spaces.at(-1)?.ways).toEqual(['full', 'half', 'quarter'])
    expect(spaces).toHaveLength(counted.posts - first.posts.length - second.posts.length + 1)
  })

  it('at half spacing, as the sheet has it, is a lawful run, and its posts are asked for one by one', () => {
    const [from] = spaces.slice(6)
    const run = required(new Map([0, 1, 2, 3].map((i) => [from!.number + i, 'half' as const])))
    expect(run.model.layout.asCounted).toBe(undefined)
    expect(run.model.layout.posts).toHaveLength(counted.posts + 4)
    expect([wanted(run, from!.number - 1), wanted(run, from!.number), wanted(run, from!.number + 8)]).toEqual([
      75, 37.5, 75,
    ])
  })

  it('a post left out as the sheet allows it is no fault, and what the sheet asks there is asked', () => {
    const number = spaces[10]!.number
    const run = required(new Map([[number, 'open']]))
    expect(run.model.layout.asCounted).toBe(undefined)
    expect(run.model.layout.omitted).toHaveLength(1)
    expect(wanted(run, number)).toBe(150)
  })

  it('two gaps are two', () => {
    const [one, other] = [spaces[2]!.number, spaces.at(-4)!.number]
    const { obstructions } = asSeen(
      hardware,
      counted,
      new Map([
        [one, 'open'],
        [other, 'open'],
      ]),
      String,
    )
    expect(obstructions.map(({ name }) => name)).toEqual(['1', '2'])
  })

  it('more posts in a row left out than the sheet allows are a fault', () => {
    const most = Math.max(...system.omissions.map((rule) => rule.most))
    const number = spaces[8]!.number
    const run = required(new Map(Array.from({ length: most + 1 }, (_, i) => [number + i, 'open'])))
    expect(run.model.layout.asCounted).toBe('posts placed')
    expect(wanted(run, number)).toBe(75)
  })
})
