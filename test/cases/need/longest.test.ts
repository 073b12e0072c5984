// The longest run, 10 miles (52,800 ft, 16 093.44 m), at its limit and just beyond, in both unit systems.
import { describe, expect, test } from 'vitest'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { siteFromValue } from '../../../src/formats/site/read-site.ts'
import { computeNeed, needProblem } from '../../../src/operations/compute-need.ts'
import { layOutRun } from '../../../src/operations/lay-out-run.ts'
import { writePlan } from '../../../src/operations/write-site-drawings.ts'
import { english } from '../../../src/words/english.ts'

const site = (units: 'us' | 'metric', to: number) => ({
  format: 'lapwise-site/1',
  units,
  road: { speed: units === 'us' ? 55 : 90, adt: 4750, traffic: 'one-way', lanes: 1, laneWidth: 3.6, shoulderWidth: 2 },
  clearZone: 10,
  runoutLength: 100,
  hazards: [{ name: 'river', from: 0, to, near: 5, far: 8 }],
  barrier: { offset: 4 },
})

/** Half the runout length lies before the hazard: X = 100 (8 - 4) / 8 = 50. */
const upstream = 50

describe('a need', () => {
  test.each([
    ['us', 52_800 - upstream, true],
    ['us', 52_800 - upstream + 0.01, false],
    ['us', 47 * 5280, false],
    ['metric', 16_093.44 - upstream, true],
    ['metric', 16_093.44 - upstream + 0.01, false],
  ] as const)('of a %s site with hazards over %f is computed: %s', (units, to, expected) => {
    const read = siteFromValue('site.json', site(units, to))
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
    const need = computeNeed(read.value)
    expect(need.ok).toBe(expected)
    if (!need.ok)
      expect(printProblem(needProblem('site.json', need.error, units), english(null))).toContain('split the site')
  })
})

test.each(['us', 'metric'] as const)(
  'a %s site too long for a need is drawn all the same, to the last station',
  (units) => {
    const file = {
      ...site(units, 5_000_000),
      hazards: [{ name: 'river', from: -5_000_000, to: 5_000_000, near: 5, far: 8 }],
    }
    const read = siteFromValue('site.json', file)
    if (!read.ok) throw new Error(read.error.map((one) => printProblem(one, english(null))).join('\n'))
    expect(computeNeed(read.value)).toMatchObject({ ok: false, error: { kind: 'longer-than-one-run' } })
    expect(writePlan(read.value, null, 'web', english(null))).toContain(units === 'us' ? '50000+00' : '5000+000')
  },
)

const run = (changes: object) => ({
  ...{ format: 'lapwise-run/1', name: 'long', system: 'w-beam-midspan-31' },
  ...{ first: { sheet: 'tangent-terminal-31' }, second: { sheet: 'tangent-terminal-31' }, ...changes },
})

describe('a run', () => {
  test.each([
    [{ need: { from: 0, to: 633_600 } }, null],
    [{ need: { from: 0, to: 633_600.0625 } }, 'need.to'],
    [{ need: { from: -1, to: '16093.44 m' } }, 'need.to'],
    [{ need: { from: -1000, to: '16000 m' } }, null],
    [{ need: { from: 0, to: 1000 }, decision: { postOneAt: 0, panels: Array(4225).fill(150) } }, 'decision.panels'],
    [{ first: { sheet: 'tangent-terminal-31', at: -1 }, need: { from: 0, to: 633_600 } }, 'need'],
    [{ need: { from: 0, to: 360_000 }, reduced: [{ from: 0, to: 360_000, spacing: 'half' }] }, null],
    // 750 000 in at full spacing would be 10 000 posts; 400 000 in at half spacing are 10 667.
    [{ need: { from: 0, to: 400_000 }, reduced: [{ from: 0, to: 400_000, spacing: 'half' }] }, 'reduced'],
  ])('%j is refused at %s', (changes, place) => {
    const read = runFromValue('run.json', run(changes))
    const laid = read.ok ? layOutRun('run.json', read.value, 1) : read
    expect(laid.ok ? null : laid.error[0]?.place).toBe(place)
  })
})
