import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Judgement } from '../../../src/core/verdicts/verdict.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { judgeReadings } from '../../../src/operations/judge-readings.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import { english } from '../../../src/words/english.ts'
import { readBoundaries } from './read-boundaries.ts'

/** What stands in an expected.json, as README.md here explains. */
interface Expected {
  readonly claim: string
  readonly worked: readonly string[]
  readonly acceptance: string
  readonly verdicts: Readonly<Record<string, string>>
  readonly findings?: readonly (readonly string[])[]
  readonly unproven?: readonly string[]
  readonly absent?: readonly string[]
}

const textOf = (path: string): string => readFileSync(new URL(path, import.meta.url), 'utf8')

function judge(run: string, readings: string): Judgement {
  const file = readRun('run.json', run)
  const required = file.ok ? requireRun('run.json', file.value) : file
  const list = readReadings('readings.json', readings)
  const judged = !required.ok
    ? required
    : !list.ok
      ? list
      : judgeReadings('readings.json', required.value, list.value.readings)
  if (!judged.ok) throw new Error(judged.error.map((one) => printProblem(one, english(null))).join('\n'))
  return judged.value.judgement
}

const verdictOn = ({ verdicts }: Judgement, id: string): string | undefined =>
  verdicts.find(({ requirement }) => requirement === id)?.verdict

const cases = readdirSync(new URL('.', import.meta.url), { withFileTypes: true })
  .filter((one) => one.isDirectory() && one.name !== 'boundaries')
  .map(({ name }) => {
    const expected = JSON.parse(textOf(`${name}/expected.json`)) as Expected
    return [name, expected.claim, expected] as const
  })

describe('a case', () => {
  it.each(cases)('%s: %s', (name, _, expected) => {
    const judgement = judge(textOf(`${name}/run.json`), textOf(`${name}/readings.json`))
    const ids = Object.keys(expected.verdicts)
    expect(ids.length * expected.worked.length).toBeGreaterThan(0)
    expect(Object.fromEntries(ids.map((id) => [id, verdictOn(judgement, id)]))).toEqual(expected.verdicts)
    expect(judgement.acceptance.kind).toBe(expected.acceptance)
    for (const id of expected.absent ?? []) expect([id, verdictOn(judgement, id)]).toEqual([id, undefined])
    if (expected.unproven !== undefined)
      expect(judgement.unproven.map(({ requirement }) => requirement).toSorted()).toEqual(expected.unproven.toSorted())
    if (expected.findings === undefined) return
    const found = judgement.findings.map(({ requirements }) => requirements.toSorted())
    expect(found.toSorted()).toEqual(expected.findings.map((one) => one.toSorted()).toSorted())
  })
})

const boundaries = readBoundaries(textOf('boundaries.txt')).map((one) => [one.line, one] as const)

describe('a boundary', () => {
  it.each(boundaries)('%s', (_, { run, of, side, doubt, cases: values }) => {
    const file = JSON.parse(textOf(`boundaries/${run}.json`))
    const rule = doubt === null ? { decisionRule: { kind: 'simple' } } : {}
    const got = values.map(({ value }) => {
      const reading = {
        of,
        value,
        ...(side === null ? {} : { side }),
        ...(doubt === null ? {} : { uncertainty: doubt }),
      }
      const readings = {
        ...{ format: 'lapwise-readings/2', run: file.name, visit: { by: 'R. Quist', at: '2026-05-04T10:30' } },
        readings: [reading],
      }
      const verdict = verdictOn(judge(JSON.stringify({ ...file, ...rule }), JSON.stringify(readings)), of)
      return { value, verdict }
    })
    expect(got).toEqual(values)
  })
})
