import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { runFromValue } from '../../../src/formats/run/run-file.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'

// An invented terminal that no code knows of: other post places, a 18 ft 9 in panel, a parabola, another lap, a part in millimetres.
const sheet: unknown = JSON.parse(readFileSync(new URL('invented-terminal-31.json', import.meta.url), 'utf8'))
const run = {
  format: 'lapwise-run/1',
  name: 'a run with an added terminal',
  system: 'w-beam-midspan-31',
  first: { sheet: 'trailing-anchor-31' },
  second: { sheet: 'invented-terminal-31' },
  need: { from: 0, to: 1200 },
  sheets: [sheet],
}

function required() {
  const read = runFromValue('run.json', run)
  const result = read.ok ? requireRun('run.json', read.value) : read
  if (!result.ok) throw new Error(result.error.map((one) => printProblem(one, english(null))).join('\n'))
  return result.value
}

describe('a terminal added by a data file alone', () => {
  it('is laid out with its own posts and panel, mirrored at the second end', () => {
    const { posts, panels } = required().model.layout
    expect(posts.slice(-4).map(({ alongInches }) => posts.at(-1)!.alongInches - alongInches)).toEqual([
      187.5, 120, 75, 0,
    ])
    expect(panels.at(-1)).toMatchObject({ inches: 225, unit: 'second', ownNumber: 1 })
  })

  it('brings its own requirements, its own numbers and its own lap', () => {
    const { requirements, model } = required()
    const last = model.layout.posts.length
    const gap = requirements.find(({ topic }) => topic === 'tell-tale-gap')
    expect(gap?.id).toBe(`post-${last - 2}/tell-tale-gap`)
    expect(english(null).say(gap!.place)).toBe(`post ${last - 2} (post 3 of the terminal)`)
    expect(requirements.filter(({ topic }) => topic === 'hinge-side').map(({ id }) => id)).toEqual([
      `post-${last - 1}/hinge-side`,
      `post-${last}/hinge-side`,
    ])
    expect(requirements.some(({ topic }) => topic === 'bearing-plate')).toBe(false)
  })

  it('is judged in its own unit', () => {
    const one = required()
    const of = one.requirements.find(({ topic }) => topic === 'tell-tale-gap')!.id
    const file = {
      format: 'lapwise-readings/1',
      run: run.name,
      visit: { by: 'x', at: '2026-01-01T10:00' },
      readings: [{ of, value: '30.5 mm', uncertainty: '0.1 mm' }],
    }
    const readings = readingsFromValue('readings.json', file)
    if (!readings.ok) throw new Error(readings.error.map((one) => printProblem(one, english(null))).join('\n'))
    const judged = judgeReadings('readings.json', one, readings.value.readings)
    const verdict = judged.ok
      ? judged.value.judgement.verdicts.find(({ requirement }) => requirement === of)
      : undefined
    expect(verdict).toMatchObject({
      verdict: 'fails',
      sheet: 'invented-terminal-31',
      sheetVersion: '0.1.0',
      because: { unit: 'mm', margin: -0.5 },
    })
  })
})
