import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { problemInWords } from '../../../src/formats/input-problem.ts'
import { type RunFile, readRun } from '../../../src/formats/run/run-file.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { judgeKnown } from '../../../src/operations/judge-readings.ts'
import { pinRun } from '../../../src/operations/pin-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'

const runs = ['terminal-only-sound', 'as-counted-splices-wrong', 'unknown-hardware']
const fileOf = (name: string) => JSON.parse(readFileSync(new URL(`${name}/run.json`, import.meta.url), 'utf8'))

function read(file: object): RunFile {
  const run = readRun('run.json', JSON.stringify(file))
  if (!run.ok) throw new Error(JSON.stringify(run.error.map((one) => problemInWords(one, english(null)))))
  return run.value
}

function findingsOf(run: RunFile) {
  const required = requireRun('run.json', run)
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  return judgeKnown(required.value, []).judgement.findings
}

const found = (run: RunFile) =>
  findingsOf(run).map(({ requirements, what }) => [requirements.join(), english(null).say(what)])

describe('a run as it was counted', () => {
  it.each(runs)('%s is pinned by content, and asks and finds the same ever after', (name) => {
    const run = read(fileOf(name))
    const pinned = pinRun('run.json', run, 'v1')
    if (!pinned.ok) throw new Error('not pinned')
    const again = read(JSON.parse(writeRun(pinned.value)))
    expect(again).toEqual(pinned.value)
    const asked = [run, again].map((one) => {
      const required = requireRun('run.json', one)
      return required.ok && required.value.requirements
    })
    expect(asked[1]).toEqual(asked[0])
    expect(found(again)).toEqual(found(run))
  })

  const whole = { ...fileOf('as-counted-splices-wrong') }
  const panels = [150, 150, 112.5, 150, 150, 112.5]
  const places = Array.from({ length: 12 }, (_, i) => i * 75)

  it('is a lawful layout where one has just these pieces', () => {
    for (const posts of [12, places]) {
      const required = requireRun('run.json', read({ ...whole, counted: { panels, posts } }))
      expect(required.ok && required.value.model.layout.asCounted).toBe(undefined)
      expect(found(read({ ...whole, counted: { panels, posts } }))).toEqual([])
    }
  })

  it('lacks a post: by number somewhere, by measure between two posts', () => {
    const posts = places.filter((_, i) => i !== 6)
    expect(found(read({ ...whole, counted: { panels, posts: 11 } }))).toEqual([
      ['run/post-count', 'Found: 11 posts counted, 12 asked for. Must be: Every post that the sheets ask for stands.'],
    ])
    expect(found(read({ ...whole, counted: { panels, posts } }))).toEqual([
      ['run/post-count', 'Found: 11 posts counted, 12 asked for. Must be: Every post that the sheets ask for stands.'],
      [
        'space-6/spacing',
        'Found: 150 in, measured at the count. Must be: The posts stand 6 ft 3 in apart, centre to centre.',
      ],
    ])
  })

  it('has a panel that no sheet knows, and of where its splices lie without its posts nothing is said', () => {
    const counted = { panels: [150, 150, 112.5, 150, 141, 112.5], posts: 12 }
    expect(found(read({ ...whole, counted })).map(([requirements]) => requirements)).toEqual(['panel-5/panel-length'])
  })

  it('ends in a unit that joins another system: that is found, not refused', () => {
    const first = { sheet: 'flared-terminal-27-3-4' }
    const counted = { panels: [150, 150, 150, 150, 150, 112.5], posts: 12 }
    expect(found(read({ ...whole, first, counted })).map(([requirements]) => requirements)).toContain('run/end-joins')
  })

  it('covers its need, or falls short of it by so much', () => {
    const need = (from: number, to: number) =>
      found(read({ ...whole, need: { from, to }, counted: { panels, posts: 12 } }))
    expect(need(150, 375)).toEqual([])
    expect(need(149, 375)[0]).toEqual([
      'run/need',
      'Found: 1 in short at the first end. Must be: The rail that counts covers the whole stretch that has to be shielded.',
    ])
    expect(need(150, 376)[0]?.[1]).toContain('1 in short at the second end')
  })
})

describe('a run file with a count', () => {
  const problems = (change: object): readonly string[] => {
    const run = readRun('run.json', JSON.stringify({ ...fileOf('terminal-only-sound'), ...change }))
    return run.ok ? [] : run.error.map((one) => `${one.place}: ${problemInWords(one, english(null)).expected}`)
  }

  it.each([
    [
      { counted: undefined },
      'second: a sheet or a standing splice: only of a run that was counted (`counted`) an end may be unknown',
    ],
    [{ standing: { postOneAt: 0, panels: [150], postsDriven: 2 } }, 'standing: nothing, where the run was counted'],
    [
      { first: { unknown: 'not looked at' } },
      'second.unknown: an end that somebody looked at: of a run that was counted at least one',
    ],
    [
      { first: { standingSplice: { at: 0, position: 'post' } } },
      'first: a sheet, or `unknown` where the run was counted',
    ],
    [{ counted: { panels: [150], posts: [5, 75] } }, 'counted.posts[0]: 0, as of post 1'],
    [{ counted: { panels: [150], posts: [0, 75, 75] } }, 'counted.posts[2]: more than 75'],
    [{ counted: { panels: [150], posts: 1 } }, 'counted.posts'],
    [{ second: { unknown: 'no sheet fits', posts: 7, panels: 0 } }, 'second.posts: at most 6, as many as were counted'],
    [{ second: { unknown: 'not looked at', at: 400 } }, 'second.at: 412.5'],
  ])('is refused where it contradicts itself: %j', (change, expected) => {
    expect(problems(change).join('\n')).toContain(expected)
  })

  it('is read where it does not', () => {
    expect(problems({ second: { unknown: 'not looked at', at: 412.5 } })).toEqual([])
  })
})
