import { describe, expect, it } from 'vitest'
import { byHand } from '../../../test/fixtures/by-hand.ts'
import { sampleReading } from '../../../test/fixtures/record-inputs.ts'
import { sourceSaying } from '../hardware/hardware-saying.ts'
import type { Dimension } from '../hardware/hardware-sheet.ts'
import { instruments } from '../measurement/instruments.ts'
import type { Answer, Reading } from '../measurement/reading.ts'
import type { Computation, Place, Requirement, RequirementLook } from '../requirements/requirement.ts'
import { exactLength } from '../units/exact-length.ts'
import { failureHistories } from './failure-histories.ts'
import { judgeRequirements } from './judge-requirements.ts'

const cited = { measured: '', source: 'test', confirmation: 'published', unit: 'in' } as const

function requirement(place: Place, topic: string, look: RequirementLook): Requirement {
  const text = { must: byHand(''), how: byHand(''), why: byHand(''), remedy: byHand('') }
  return {
    ...{
      id: `${place.id}/${topic}`,
      topic,
      place,
      look,
      ...text,
      hold: false,
      maySetAside: false,
      figure: null,
      severity: 'notStated',
    },
    ...{
      sheet: 'test',
      sheetVersion: '1',
      source: sourceSaying({ title: '', edition: '' }),
      confirmation: 'published',
    },
  }
}
const post: Place = { id: 'post-1', kind: 'post', number: 1, alongInches: 0, own: null }
const between: Place = { id: 'space-3', kind: 'space', number: 3, alongInches: 187.5 }
const bolt = requirement(post, 'bolt', { kind: 'confirm' })
const measured = (place: Place, topic: string, limits: Dimension, orFrom: Computation | null = null) =>
  requirement(place, topic, { kind: 'measure', limits, orFrom })
const within = (low: number, high: number): Dimension => ({ nominal: 'notStated', low, high, role: 'centre', ...cited })
/** 74 to 76 in, measured or from where posts 3 and 4 stand. */
const spacing = measured(between, 'spacing', within(74, 76), {
  ...{ kind: 'difference', from: 'post-3/along', to: 'post-4/along' },
})
/** Within 3 in of the line through posts 2, 3 and 4, which stand 100 in apart. */
const flare = measured(post, 'flare-offset', within(-3, 3), {
  kind: 'offset from line',
  point: { reading: 'post-1/lateral-offset', alongInches: 0 },
  line: [2, 3, 4].map((n) => ({ reading: `post-${n}/lateral-offset`, alongInches: 100 * (n - 1) })),
})

const yes = (is: boolean): Answer => ({ kind: 'confirmed', yes: is })
const inches = (value: number): Answer => ({
  ...{ kind: 'measured', value: exactLength(value, 'in'), unit: 'in', resolution: null, side: 'away' },
})

/** What is told of each as [failed by, last since, closed by]; readings are named by their place in the log, from 1. */
function told(requirements: readonly Requirement[], log: readonly (readonly [string, Answer, Partial<Reading>?])[]) {
  const readings = log.map(([of, answer, more], i) => sampleReading(`${i + 1}`, of, answer, more))
  const rules = { rule: { kind: 'simple' }, instruments } as const
  const verdicts = judgeRequirements(requirements, readings, rules)
  const histories = failureHistories(requirements, verdicts, readings, rules)
  return Object.fromEntries(
    [...histories].map(([id, { failed, since, closedBy }]) => [
      id,
      [failed?.reading.id ?? null, since?.reading.id ?? null, closedBy?.reading.id ?? null],
    ]),
  )
}

describe('a failure', () => {
  it('is none where nothing ever failed', () => {
    expect(told([bolt], [])).toEqual({})
    const sound = [
      [bolt.id, yes(true)],
      [bolt.id, yes(true)],
    ] as const
    expect(told([bolt], sound)).toEqual({})
  })

  it('stands by its last reading that fails', () => {
    expect(told([bolt], [[bolt.id, yes(false)]])).toEqual({ [bolt.id]: ['1', null, null] })
    const worse = [
      [bolt.id, yes(true)],
      [bolt.id, yes(false)],
      [bolt.id, yes(false)],
    ] as const
    expect(told([bolt], worse)).toEqual({ [bolt.id]: ['3', null, null] })
  })

  it('is closed by a reading that meets and names it, and by no other', () => {
    const then = (last: Partial<Reading>, answer = yes(true)) =>
      told(
        [bolt],
        [
          [bolt.id, yes(false)],
          [bolt.id, answer, last],
        ],
      )
    expect(then({ rechecks: bolt.id })).toEqual({ [bolt.id]: ['1', '2', '2'] })
    expect(then({})).toEqual({ [bolt.id]: ['1', '2', null] })
    expect(then({ rechecks: bolt.id }, { kind: 'cannot see' })).toEqual({ [bolt.id]: ['1', '2', null] })
  })

  it('opens again by a later reading that fails, and stays closed by one that meets', () => {
    const thirdRead = (is: boolean) =>
      told(
        [bolt],
        [
          [bolt.id, yes(false)],
          [bolt.id, yes(true), { rechecks: bolt.id }],
          [bolt.id, yes(is)],
        ],
      )
    expect(thirdRead(false)).toEqual({ [bolt.id]: ['3', null, null] })
    expect(thirdRead(true)).toEqual({ [bolt.id]: ['1', '3', '2'] })
  })

  it('is taken back by a correction of its reading', () => {
    const log = [
      [bolt.id, yes(false)],
      [bolt.id, yes(true), { corrects: '1' }],
    ] as const
    expect(told([bolt], log)).toEqual({})
  })

  it('of a stub is closed by a reading of it that names the finding on its post, which is named by the rail', () => {
    const [rail, stub] = [measured(post, 'rail-height', within(30, 32)), measured(post, 'stub-height', within(0, 4))]
    const log = [
      [stub.id, inches(5)],
      [stub.id, inches(3), { rechecks: rail.id }],
    ] as const
    expect(told([rail, stub], log)).toEqual({ [stub.id]: ['1', '2', '2'] })
    expect(told([stub], log)).toEqual({ [stub.id]: ['1', '2', null] })
  })
})

describe('a failure by the count of what stands', () => {
  const counted = requirement(between, 'spacing', { ...spacing.look, counted: 70 } as RequirementLook)

  it('is answered by a reading of the piece or of its posts, and closed by one that names it', () => {
    const own = (rechecks: string | null) => [counted.id, inches(75), { rechecks }] as const
    expect(told([counted], [])).toEqual({ [counted.id]: [null, null, null] })
    expect(told([counted], [own(null)])).toEqual({ [counted.id]: [null, '1', null] })
    expect(told([counted], [own(counted.id)])).toEqual({ [counted.id]: [null, '1', '1'] })
    const posts = [
      ['post-3/along', inches(0)],
      ['post-4/along', inches(75)],
    ] as const
    expect(told([counted], [posts[0]])).toEqual({ [counted.id]: [null, null, null] })
    expect(told([counted], posts)).toEqual({ [counted.id]: [null, '2', null] })
  })
})

describe('a failure of what is computed', () => {
  it('comes of the reading after which it fails, in the order of the log', () => {
    const log = [
      ['post-4/along', inches(75)],
      ['post-3/along', inches(0)],
      ['post-3/along', inches(5)],
    ] as const
    expect(told([spacing], log)).toEqual({ [spacing.id]: ['3', null, null] })
  })

  it('is what the readings say at the end, as long as nothing was read twice', () => {
    const posts = [
      ['post-3/along', inches(0)],
      ['post-4/along', inches(70)],
    ] as const
    expect(told([spacing], posts)).toEqual({ [spacing.id]: ['2', null, null] })
  })

  it('is answered by a reading of the space itself, which closes it where it names it', () => {
    const posts = [
      ['post-3/along', inches(0)],
      ['post-4/along', inches(70)],
    ] as const
    const itself = (rechecks: string | null) => [spacing.id, inches(75), { rechecks }] as const
    expect(told([spacing], [...posts, itself(null)])).toEqual({ [spacing.id]: ['2', '3', null] })
    expect(told([spacing], [...posts, itself(spacing.id)])).toEqual({ [spacing.id]: ['2', '3', '3'] })
    expect(told([spacing], [...posts, itself(null), itself(null)])).toEqual({ [spacing.id]: ['2', '4', null] })
    expect(told([spacing], [...posts, posts[1], itself(spacing.id)])).toEqual({ [spacing.id]: ['3', '4', '4'] })
    const moved = ['post-4/along', inches(75)] as const
    expect(told([spacing], [...posts, moved, itself(null)])).toEqual({ [spacing.id]: ['2', '4', null] })
  })

  // Post 1 is 4 in off the level line through posts 2 and 3. With post 4 at 6 in toward traffic the fitted line is
  // -2 - 0.03 (x - 200) in, and so 4 in at post 1, which lies on it.
  const half = [
    ['post-1/lateral-offset', inches(4)],
    ['post-2/lateral-offset', inches(0)],
    ['post-3/lateral-offset', inches(0)],
  ] as const
  const last = ['post-4/lateral-offset', { ...inches(6), side: 'toward' } as Answer] as const

  it('is none where it came of half a line, and the rest of it says otherwise', () => {
    expect(told([flare], half)).toEqual({ [flare.id]: ['3', null, null] })
    expect(told([flare], [...half, last])).toEqual({})
    expect(told([flare], [...half, half[2], last])).toEqual({})
    expect(told([flare], [...half, last, half[2]])).toEqual({})
  })

  it('stays where a reading that it stands on was taken again', () => {
    const moved = ['post-1/lateral-offset', inches(1)] as const
    expect(told([flare], [...half, moved])).toEqual({ [flare.id]: ['3', '4', null] })
    expect(told([flare], [...half, [...moved, { rechecks: flare.id }]])).toEqual({ [flare.id]: ['3', '4', '4'] })
    // What then is read for the first time takes nothing back.
    expect(told([flare], [...half, moved, ['post-4/lateral-offset', inches(0)]])).toEqual({
      [flare.id]: ['3', '5', null],
    })
  })
})
