import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { check, facts, feet, inches } from '../../test/fixtures/fit-facts.ts'
import { demoRun } from '../../test/fixtures/roadside.ts'
import { soundReading } from '../../test/fixtures/sound-reading.ts'
import type { FitCheck } from '../core/fit/fit-check.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { readingsInForce } from '../core/record/readings-in-force.ts'
import { readableIn } from '../core/requirements/readable-in.ts'
import { runFacts } from '../documents/run-facts.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import { parseJson } from '../formats/read-json.ts'
import type { MadeOf } from '../formats/run/made-of.ts'
import { type RunFile, readRun, runFromValue } from '../formats/run/run-file.ts'
import { runToValue, writeRun } from '../formats/run/write-run.ts'
import { siteFromValue } from '../formats/site/read-site.ts'
import { english } from '../words/english.ts'
import { computeNeed } from './compute-need.ts'
import { judgeKnown } from './judge-readings.ts'
import { pinRun } from './pin-run.ts'
import { requireRun } from './require-run.ts'
import { reviseRun } from './revise-run.ts'
import { recordInput } from './write-record.ts'

const parsed = parseJson('site', readFileSync(new URL('../../examples/site.json', import.meta.url), 'utf8'))
if (!parsed.ok) throw new Error('the example is no JSON')
const file = parsed.value as MadeOf['site']
const site = siteFromValue('site', file)
if (!site.ok) throw new Error('the example is no site')
const found = computeNeed(site.value, file)
if (!found.ok) throw new Error('the example has no need')
const need = found.value
const made = runFromValue('run', JSON.parse(JSON.stringify(need.run)))
if (!made.ok) throw new Error('the need gives no run', { cause: made.error })

const curb = { height: inches(8), face: 'vertical', faceSlope: null, toRail: feet(3) } as const
const failing = [
  check('clear area', { ground: { ...facts.ground, recoveryLength: feet(30) } }, { extent: 'length' }),
  check('curb before rail', { curb }, { by: 'guide' }),
]
const meeting = check('clear area', { ground: { ...facts.ground, recoveryLength: feet(300) } }, { extent: 'length' })
const unread = check('foreslope beside platform', {})

const { required: plain } = demoRun()
const withChecks = (checks: readonly FitCheck[]): RunFile => ({
  ...plain.run,
  madeOf: { ...made.value.madeOf!, checks },
})

/** The demo run, made of a site with these checks, everything read and right but for what the readings given say. */
function judged(checks: readonly FitCheck[], instead: readonly Reading[] = []) {
  const required = requireRun('run', withChecks(checks))
  if (!required.ok) throw new Error('the demo run is not laid out')
  return judgeKnown(required.value, [...required.value.requirements.flatMap(soundReading), ...instead]).judgement
}

const [template] = plain.requirements.flatMap(soundReading)
const of = (number: number): string => `run/site-check-${number}`
const reading = (number: number, answer: Reading['answer']): Reading => ({
  ...{ ...template!, id: `of check ${number}`, of: of(number), instrument: null, uncertainty: null, photos: [] },
  ...{ by: 'R. Quist', answer },
})
const aside = (number: number) => reading(number, { kind: 'does not apply', because: 'the ground was graded since' })

describe('a run that is made of a site', () => {
  test('carries its file word for word, its need, and each of its checks once', () => {
    const { madeOf } = made.value
    expect(JSON.stringify(madeOf!.site)).toBe(JSON.stringify(file))
    expect(madeOf!.need).toMatchObject({ unit: need.unit, approach: { lengthOfNeed: need.approach.lengthOfNeed } })
    expect(madeOf!.need.departure?.station).toBe(need.departure?.station)
    expect(new Set(need.checks.map((one) => canonicalJson(one)))).toEqual(
      new Set(madeOf!.checks.map((one) => canonicalJson(one))),
    )
    expect(madeOf!.checks).toHaveLength(new Set(need.checks.map(contentOf)).size)
  })

  test('is read back as it was written; one that is made of none says nothing of it', () => {
    expect(runToValue(made.value)).toEqual(JSON.parse(JSON.stringify(need.run)))
    expect(readRun('run', writeRun(made.value))).toEqual(made)
    expect(plain.run).not.toHaveProperty('madeOf')
    expect(runToValue(plain.run)).not.toHaveProperty('madeOf')
  })

  test('stays made of it when it is pinned and revised, also where what is asked anew does not say so', () => {
    const pinned = pinRun('run', made.value, 'one')
    if (!pinned.ok) throw new Error('not pinned')
    const { madeOf: _, ...asked } = { ...made.value, mayExtendInches: 1200 }
    const revised = reviseRun({ before: 'run', asked: 'asked' }, pinned.value, asked, '7f')
    expect(revised.ok && revised.value.run.madeOf).toEqual(made.value.madeOf)
  })
})

test('record and workbook name the site, its need, how its checks came out, and what was not said', () => {
  const required = requireRun('run', withChecks([failing[0]!, meeting, unread]))
  if (!required.ok) throw new Error('the demo run is not laid out')
  const input = recordInput(judgeKnown(required.value, []), english('us'))
  const fact = runFacts(input).find(({ id }) => id === 'site')
  // Lengths of need as the guide of the designer prints them, to the tenth.
  expect(fact?.value).toMatch(/^Example: culvert at Alder Creek; length of need 109\.\d+ ft, for opposing traffic \d+/)
  expect(fact?.value).toContain(
    '; 3 checks when the run was made: 1 fails, 1 meets; not said: foreslope beside the platform',
  )
  expect(runFacts(recordInput(judgeKnown(plain, []), english('us'))).some(({ id }) => id === 'site')).toBe(false)
})

describe('what failed of the site', () => {
  test('is a finding each, with what was found, what it must be and the smallest change', () => {
    const { findings } = judged([meeting, failing[0]!, unread, failing[1]!])
    expect(findings.map(({ id }) => id)).toEqual([of(2), of(4)])
    const print = english('us')
    const [area] = findings
    expect(print.say(area!.what)).toBe(
      'Found: 30 ft 0 in, as the site had it when the run was made. Must be: Clear area behind the gating end, length: at least 75 ft 0 in.',
    )
    expect(print.say({ kind: 'remedy', steps: area!.steps })).toMatch(/clear 75 ft 0 in behind the end/i)
  })

  test('keeps a run from being acceptable until each of it is set aside by name, and then stands in the acceptance', () => {
    const kind = (...instead: readonly Reading[]) => judged(failing, instead).acceptance.kind
    expect(judged([]).acceptance).toEqual({ kind: 'acceptable' })
    expect(judged([meeting, unread]).acceptance).toEqual({ kind: 'acceptable' })
    expect(kind()).toBe('not acceptable')
    expect(kind(aside(1))).toBe('not acceptable')
    expect(kind(aside(2))).toBe('not acceptable')
    expect(kind(reading(1, { kind: 'cannot see' }), reading(2, { kind: 'cannot see' }))).toBe('not acceptable')
    expect(judged(failing, [aside(1), aside(2)]).acceptance).toEqual({
      ...{ kind: 'acceptable except', setAside: 2, by: ['R. Quist'] },
    })
    expect(judged(failing, [aside(1), aside(2)]).findings).toEqual([])
  })

  test('is what is stored, whatever the site would give today', () => {
    const today = made.value.madeOf!.checks.filter(({ verdict }) => verdict === 'fails')
    expect(today.length).toBeGreaterThan(0)
    const stored = today.map((one) => ({ ...one, verdict: 'meets', smallestChange: null }) as const)
    expect(judged(stored).findings).toEqual([])
  })

  test('is not set aside by what was said of another check at its place', () => {
    const pinned = pinRun('run', withChecks([failing[0]!]), 'one')
    if (!pinned.ok) throw new Error('not pinned')
    const next = (checks: readonly FitCheck[]) => {
      const { version: _, ...asked } = { ...pinned.value, ...withChecks(checks) }
      const revised = reviseRun({ before: 'run', asked: 'asked' }, pinned.value, asked, '7f')
      const required = revised.ok ? requireRun('run', revised.value.run) : null
      if (required === null || !required.ok) throw new Error('not revised')
      const { run } = required.value
      const said = { ...aside(1), version: 'one' }
      return readingsInForce(run.version!, readableIn(required.value), [said], new Map()).judged.length
    }
    expect(next([failing[0]!])).toBe(1)
    expect(next([failing[1]!])).toBe(0)
  })
})
