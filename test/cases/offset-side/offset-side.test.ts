import { describe, expect, it, test } from 'vitest'
import { remedyOf } from '../../../src/core/verdicts/saying.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import type { RequiredRun } from '../../../src/operations/require-by.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'
import { spanish } from '../../../src/words/spanish.ts'
import { englishIn } from '../spanish/english-left.ts'

type End = 'first' | 'second'
type Units = 'us' | 'metric'

/** A run with the end unit at one of its ends, on one side of the road. */
function runWith(sheet: string, end: End, side: 'left' | 'right', simple = false): RequiredRun {
  const other = end === 'first' ? 'second' : 'first'
  const run = {
    format: 'lapwise-run/1',
    name: 'a run with an end that is flared',
    road: { side, traffic: 'two-way' },
    system: 'w-beam-midspan-31',
    [end]: { sheet },
    [other]: { sheet: 'trailing-anchor-31' },
    need: { from: 0, to: 1200 },
    ...(simple ? { decisionRule: { kind: 'simple' } } : {}),
  }
  const read = runFromValue('run.json', run)
  const required = read.ok ? requireRun('run.json', read.value) : read
  if (!required.ok) throw new Error(required.error.map((one) => printProblem(one, english(null))).join('\n'))
  return required.value
}

const fileOf = (readings: readonly object[], version: 1 | 2, units: Units = 'us') => ({
  format: `lapwise-readings/${version}`,
  run: 'a run with an end that is flared',
  units,
  visit: { by: 'R. Quist', at: '2026-05-04T10:30', instrument: 'tape' },
  readings,
})

function judged(required: RequiredRun, readings: readonly object[], version: 1 | 2 = 2, units: Units = 'us') {
  const read = readingsFromValue('readings.json', fileOf(readings, version, units))
  const result = read.ok ? judgeReadings('readings.json', required, read.value.readings) : read
  if (!result.ok) throw new Error(result.error.map((one) => printProblem(one, english(null))).join('\n'))
  return result.value.judgement
}

const flareOf = ({ requirements }: RequiredRun) => requirements.find(({ topic }) => topic === 'flare-offset')!

function verdictOn(required: RequiredRun, id: string, readings: readonly object[], version: 1 | 2 = 2, units?: Units) {
  const { verdicts } = judged(required, readings, version, units)
  return verdicts.find(({ requirement }) => requirement === id)!
}

const flared = runWith('flared-terminal-31', 'first', 'right')
const tangent = runWith('tangent-terminal-31', 'first', 'right')

// The sheets: 45 to 51 in, and 0 to 24 in. U = 2u = 1/4 in, stated, so that the guard band is known.
const uncertainty = '1/8 in'

describe('an end read directly from the line of the run', () => {
  it.each([
    ['48 in', 'away', 'meets'],
    ['48 in', 'toward', 'fails'],
    ['12 in', 'toward', 'fails'],
    // By hand, U = 1/4 in: meets from 45 1/4 to 50 3/4, fails below 44 3/4 and above 51 1/4.
    ['45 1/4 in', 'away', 'meets'],
    ['45 7/32 in', 'away', 'too close'],
    ['45 in', 'away', 'too close'],
    ['44 3/4 in', 'away', 'too close'],
    ['44 23/32 in', 'away', 'fails'],
    ['50 3/4 in', 'away', 'meets'],
    ['51 1/4 in', 'away', 'too close'],
    ['51 9/32 in', 'away', 'fails'],
    ['45 1/4 in', 'toward', 'fails'],
  ])('flared 45 to 51 in: %s %s %s', (value, side, verdict) => {
    const of = flareOf(flared).id
    expect(verdictOn(flared, of, [{ of, value, side, uncertainty }]).verdict).toBe(verdict)
  })

  it.each([
    ['12 in', 'away', 'meets'],
    ['12 in', 'toward', 'fails'],
    ['1/4 in', 'away', 'meets'],
    ['1/4 in', 'toward', 'too close'],
    ['9/32 in', 'toward', 'fails'],
    ['0', undefined, 'too close'],
    ['24 in', 'toward', 'fails'],
  ])('hardly flared, 0 to 24 in: %s %s %s', (value, side, verdict) => {
    const of = flareOf(tangent).id
    expect(verdictOn(tangent, of, [{ of, value, side, uncertainty }]).verdict).toBe(verdict)
  })

  it.each([
    ['1143 mm', 'away', 'meets'],
    ['1142.9 mm', 'away', 'fails'],
    ['1295.4 mm', 'away', 'meets'],
    ['1295.5 mm', 'away', 'fails'],
    ['1219.2 mm', 'toward', 'fails'],
    ['304.8 mm', 'toward', 'fails'],
  ])(
    'with simple acceptance and in millimetres, 45 in and 51 in being 1143 and 1295.4: %s %s %s',
    (value, side, verdict) => {
      const simple = runWith('flared-terminal-31', 'first', 'right', true)
      const of = flareOf(simple).id
      expect(verdictOn(simple, of, [{ of, value, side }], 2, 'metric').verdict).toBe(verdict)
    },
  )

  it('says the side in its reason', () => {
    const of = flareOf(flared).id
    const reason = (side: string) => english(null).say(verdictOn(flared, of, [{ of, value: '48 in', side }]).because)
    expect(reason('away')).toMatch(/^48 in away from traffic, 3 in inside the limit;/)
    expect(reason('toward')).toMatch(/^48 in toward traffic, 93 in outside the limit;/)
  })
})

/** Offsets of post 1 of the unit and of every post of the run from one string. */
function offsets(required: RequiredRun, end: number, run: number): object[] {
  const { posts } = required.model.layout
  const reading = (post: number, inches: number) => ({
    of: `post-${post}/lateral-offset`,
    value: `${Math.abs(inches)} in`,
    ...(inches === 0 ? {} : { side: inches < 0 ? 'toward' : 'away' }),
    uncertainty: '1/32 in',
  })
  const line = posts.filter(({ unit }) => unit === 'run').map(({ number }) => reading(number, run))
  return [reading(flareOf(required).place.number, end), ...line]
}

describe('an end computed from offsets of one string', () => {
  for (const end of ['first', 'second'] as const)
    for (const side of ['left', 'right'] as const)
      it.each([
        [48, 0, 'meets'],
        [-48, 0, 'fails'],
        [-12, 0, 'fails'],
        [60, 12, 'meets'],
        [-12, -60, 'meets'],
        [12, 60, 'fails'],
      ])(`at the ${end} end on the ${side}: %d in with the run at %d in %s`, (own, line, verdict) => {
        const required = runWith('flared-terminal-31', end, side)
        const { id } = flareOf(required)
        expect(verdictOn(required, id, offsets(required, own, line)).verdict).toBe(verdict)
      })

  it('of a head 12 in toward traffic fails where 0 to 24 in away is right', () => {
    expect(verdictOn(tangent, flareOf(tangent).id, offsets(tangent, -12, 0)).verdict).toBe('fails')
    expect(verdictOn(tangent, flareOf(tangent).id, offsets(tangent, 12, 0)).verdict).toBe('meets')
  })
})

const withoutSides = (readings: readonly object[]) =>
  readings.map(({ side: _, ...rest }: { readonly side?: string }) => rest)

describe('readings that do not say their side', () => {
  it('are refused in a file of the version of today, each at its place', () => {
    const of = flareOf(flared).id
    const readings = [{ of, value: '48 in' }, ...withoutSides(offsets(flared, 48, 1)).slice(0, 2)]
    const read = readingsFromValue('readings.json', fileOf(readings, 2))
    expect(read.ok ? [] : read.error.map((one) => printProblem(one, english(null)))).toEqual(
      [0, 1, 2].map(
        (i) =>
          `readings.json: readings[${i}].side: expected on which side of the line: "away" (from traffic), "toward" (traffic), or "not stated", found nothing`,
      ),
    )
  })

  it.each([1, 2] as const)(
    'never meet, in version %d: direct or computed, whichever sign they were written with',
    (version) => {
      const unsaid = version === 1 ? {} : { side: 'not stated' }
      for (const required of [flared, tangent]) {
        const { id } = flareOf(required)
        for (const value of ['48 in', '-48 in', '12 in', '-12 in', '20 in']) {
          const direct = verdictOn(required, id, [{ of: id, value, ...unsaid }], version)
          expect(direct.verdict, value).not.toBe('meets')
          const line = withoutSides(offsets(required, 0, 0)).map((one, i) =>
            i === 0 ? { ...one, value, ...unsaid } : one,
          )
          expect(verdictOn(required, id, line, version).verdict, value).toBe(direct.verdict)
        }
      }
    },
  )

  it('are unread where one side would meet, and say so', () => {
    const of = flareOf(flared).id
    const { verdict, because } = verdictOn(flared, of, [{ of, value: '48 in' }], 1)
    expect(verdict).toBe('unread')
    expect(english(null).say(because)).toBe('side not stated: whether it lies away from traffic or toward it')
  })

  it('fail where they would fail on either side: what was found stays found', () => {
    const of = flareOf(flared).id
    const { verdict, because } = verdictOn(flared, of, [{ of, value: '12 in' }], 1)
    expect(verdict).toBe('fails')
    expect(english(null).say(because)).toMatch(/^12 in, side not stated, 33 in outside the limit on either side;/)
    // The other way round, as somebody wrote it who gave the side away from traffic the minus sign.
    expect(english(null).say(verdictOn(flared, of, [{ of, value: '-12 in' }], 1).because)).toMatch(
      /^12 in, side not stated, 33 in/,
    )
  })

  it('do not stand together with readings that do', () => {
    const { id } = flareOf(flared)
    const [own, ...line] = offsets(flared, 49, 1)
    const mixed = [...withoutSides([own!]).map((one) => ({ ...one, side: 'not stated' })), ...line]
    expect(verdictOn(flared, id, mixed)).toMatchObject({ verdict: 'unread', because: { kind: 'side not stated' } })
  })

  it('prove a panel straight all the same: its middle ordinate has no side', () => {
    const panel = flared.requirements.find(
      ({ topic, look }) => topic === 'straightness' && look.kind === 'measure' && look.orFrom !== null,
    )!
    const from =
      panel.look.kind === 'measure' && panel.look.orFrom?.kind === 'middle ordinate' ? panel.look.orFrom.points : []
    const read = (bow: number) =>
      from.map(({ reading: of, alongInches }, i) => ({
        of,
        value: 48 - alongInches * (48 / 450) + (i === 1 ? bow : 0),
        uncertainty: '1/64 in',
      }))
    expect(verdictOn(flared, panel.id, read(0), 1).verdict).toBe('meets')
    expect(verdictOn(flared, panel.id, read(2), 1).verdict).toBe('fails')
    expect(verdictOn(flared, panel.id, read(-2), 1).verdict).toBe('fails')
  })
})

describe('the remedy of an end that is off', () => {
  it.each([
    [
      '12 in',
      'toward',
      /^Move post 1 by 60 in away from traffic, .*it then stands 48 in off the line of the run, away from traffic\. A reading of /,
    ],
    ['40 in', 'away', /^Move post 1 by 8 in away from traffic, /],
    ['60 1/2 in', 'away', /^Move post 1 by 12 1\/2 in toward traffic, /],
  ])('%s %s is moved by what the sheet asks for', (value, side, remedy) => {
    const of = flareOf(flared).id
    const { findings } = judged(flared, [{ of, value, side }])
    const finding = findings.find(({ requirements }) => requirements.includes(of))!
    expect(english(null).say(remedyOf(finding))).toMatch(remedy)
  })

  it('asks for the side first where nobody said it, and names the post by the number of the run', () => {
    const second = runWith('flared-terminal-31', 'second', 'left')
    const of = flareOf(second).id
    const { findings } = judged(second, [{ of, value: '12 in' }], 1)
    const post = second.model.layout.posts.length
    expect(of).toBe(`post-${post}/flare-offset`)
    expect(english(null).say(remedyOf(findings.find(({ id }) => id === of)!))).toMatch(
      new RegExp(`^Read again on which side of the line of the run post ${post} stands: the way in which to move it`),
    )
  })

  it.each([
    ['in', 44, 'away'],
    ['in', 52, 'away'],
    ['in', 3, 'toward'],
    ['mm', 1000, 'toward'],
    ['mm', 1400, 'away'],
  ] as const)('carried out makes it meet: %s %d %s', (unit, size, side) => {
    const of = flareOf(flared).id
    const { findings } = judged(flared, [{ of, value: size, unit, side }])
    const [, moved, way] = /by (.+?) in (away from|toward) traffic/.exec(english(null).say(remedyOf(findings[0]!)))!
    const inches = moved!
      .split(' ')
      .reduce(
        (sum, part) =>
          sum + (part.includes('/') ? Number(part.split('/')[0]) / Number(part.split('/')[1]) : Number(part)),
        0,
      )
    const before = (side === 'away' ? 1 : -1) * (unit === 'in' ? size : size / 25.4)
    const after = before + (way === 'away from' ? 1 : -1) * inches
    // As near to the nominal as it can be set out.
    expect(Math.abs(after - 48)).toBeLessThan(1 / 8)
    expect(verdictOn(flared, of, [{ of, value: after, unit: 'in', side: 'away' }]).verdict).toBe('meets')
  })
})

test('reasons and remedies of offsets are said in Spanish', () => {
  const of = flareOf(flared).id
  const logs = [
    [[{ of, value: '40 in', side: 'away' }], 2],
    [[{ of, value: '60 1/2 in', side: 'away' }], 2],
    [[{ of, value: '12 in', side: 'toward' }], 2],
    [[{ of, value: '12 in' }], 1],
    [[{ of, value: '48 in' }], 1],
    [offsets(flared, -12, 0), 2],
  ] as const
  for (const [readings, version] of logs) {
    const { verdicts, findings } = judged(flared, readings, version)
    const { because } = verdicts.find(({ requirement }) => requirement === of)!
    expect(englishIn([because, ...findings.map(remedyOf)].map(spanish(null).say))).toEqual([])
  }
})
