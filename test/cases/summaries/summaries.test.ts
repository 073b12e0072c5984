import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Reading } from '../../../src/core/measurement/reading.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { summariseRun } from '../../../src/operations/summarise-run.ts'
import { summaryRule } from '../../../src/operations/summary-rule.ts'
import { runSummary } from '../../../src/protocol/runs.ts'

function sound<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error))
  return result.value
}

const demo = demoProject()
const run = sound(readRun('run', demo.run))
const required = sound(requireRun('run', run))
const { readings } = sound(readReadings('readings', demo.readings))
const archive = [
  { author: 'R. Quist', capturedAt: '2026-06-01T08:00:00-06:00', body: { archived: true, reason: 'rail taken down' } },
  { author: 'M. Peña', capturedAt: '2026-06-02T08:00:00-06:00', body: { archived: false } },
]
const summarise = (list: readonly Reading[], archived = 0) =>
  summariseRun(
    { id: 'demo-1', project: 'demo', run, archive: archive.slice(0, archived) },
    judgeReadings('readings', required, list),
  )

describe('the summary of a run', () => {
  it('is what was made by this rule of the same entries; where it is to be another, the rule is raised with it', () => {
    const expected = JSON.parse(readFileSync(new URL('expected.json', import.meta.url), 'utf8'))
    expect({ rule: summaryRule, summaries: [summarise(readings), summarise([], 1)] }).toEqual(expected)
    for (const summary of expected.summaries) expect(runSummary.parse(summary)).toEqual(summary)
  })

  it('is under the project that the run names, and else where the store has it', () => {
    const named = { id: 'demo-1', project: 'demo', run: { ...run, project: 'resurfacing' }, archive: [] }
    expect(summariseRun(named, judgeReadings('readings', required, [])).project).toBe('resurfacing')
    expect(summarise([]).project).toBe('demo')
  })

  it('has on its face the bend of the terminal, and every stretch to be read before anybody was there', () => {
    const { bends, stretches } = summarise([]).judged!.face
    const { panels, posts } = required.model.layout
    // The terminal of the demo project: two panels of 12 ft 6 in and an adapter of 9 ft 4 1/2 in.
    const rail = panels.reduce((sum, { inches }) => sum + inches, 0)
    expect(bends.first).toBeCloseTo((150 + 150 + 112.5) / rail, 2)
    expect(stretches).toBe('2'.repeat(posts.length))
  })

  it('has what fails where it fails, and nowhere else', () => {
    const low = readings
      .filter(({ of }) => of === 'post-8/rail-height')
      .map((reading): Reading => {
        return { ...reading, answer: { kind: 'measured', value: 20 * 25_400_000, unit: 'in', resolution: null } }
      })
    expect(low).toHaveLength(1)
    const { stretches } = summarise(low).judged!.face
    expect([...stretches].filter((digit) => digit === '0')).toHaveLength(1)
    const { posts, panels } = required.model.layout
    const along = posts.find(({ id }) => id === 'post-8')!.alongInches / panels.at(-1)!.toInches
    expect(Math.abs((stretches.indexOf('0') + 0.5) / stretches.length - along)).toBeLessThan(1 / stretches.length)
  })

  it('is put away by the last word on it, and names who was there last by the clock', () => {
    const [first] = readings
    const at = (time: string, by: string): Reading => ({ ...first!, id: by, at: time, by })
    const log = [at('2026-05-04T10:00:00-06:00', 'M. Peña'), at('2026-05-04T15:30:00Z', 'R. Quist')]
    expect(summarise(log, 1)).toMatchObject({
      archived: { by: 'R. Quist', reason: 'rail taken down' },
      // 10:00 at six hours behind is 16:00.
      lastVisit: { by: 'M. Peña' },
    })
    expect(summarise([], 2)).toMatchObject({ archived: null, lastVisit: null })
  })
})
