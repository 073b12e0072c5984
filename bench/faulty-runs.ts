import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Reading } from '../src/core/measurement/reading.ts'
import type { Requirement } from '../src/core/requirements/requirement.ts'
import { stepsPer } from '../src/core/units/quantity-kinds.ts'
import { writeReadings } from '../src/formats/readings/readings-file.ts'
import { readRun } from '../src/formats/run/run-file.ts'
import { judgeKnown } from '../src/operations/judge-readings.ts'
import { requireRun } from '../src/operations/require-run.ts'
import { type BenchRow, figure, milliseconds } from './measure.ts'
import { goodReading } from './verdicts.ts'

const name = 'faulty run'

/** How long it takes to judge a long run with a fault at every twentieth thing read, and how that grows. */
export function benchFaultyRuns(): readonly BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'lapwise-bench-'))
  try {
    return [5000, 20_000, 50_000].flatMap((feet) => rowsOf(folder, feet))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function rowsOf(folder: string, feet: number): readonly BenchRow[] {
  const run = runText(feet)
  const read = readRun(name, run)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  const required = requireRun(name, read.value)
  if (!required.ok) throw new Error(JSON.stringify(required.error))
  const readings = faultyReadings(required.value.requirements)
  const judging = milliseconds(() => judgeKnown(required.value, readings))
  const files = [join(folder, 'run.json'), join(folder, 'readings.json')] as const
  writeFileSync(files[0], run)
  writeFileSync(files[1], writeReadings({ run: name, readings, findings: [], photoStrokes: [] }))
  const whole = milliseconds(() => judgeCommand(files))
  const what = `judge of ${figure(feet)} ft, ${figure(readings.length)} readings, a twentieth of them failing`
  return [
    { what, figure: `${figure(judging)} ms`, aim: '' },
    { what: '  the whole command', figure: `${figure(whole)} ms`, aim: feet === 50_000 ? 'under 3,000 ms' : '' },
  ]
}

function judgeCommand(files: readonly string[]): void {
  const { status, stderr } = spawnSync(process.execPath, ['bin/lapwise.mjs', 'judge', ...files], {
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  })
  if (status !== 1) throw new Error(`judge ended with ${status}: ${stderr}`)
}

const runText = (feet: number): string =>
  JSON.stringify({
    format: 'lapwise-run/1',
    name,
    units: 'us',
    work: 'new',
    letting: '2016-03-15',
    system: 'w-beam-midspan-31',
    first: { sheet: 'flared-terminal-31' },
    second: { sheet: 'trailing-anchor-31' },
    need: { from: 0, to: `${feet} ft` },
    obstructions: [{ name: 'the culvert', from: '40 ft', to: '47 ft 6 in' }],
  })

/** Each kind of thing in turn: good readings, and a wrong one for every twentieth of its kind. */
function faultyReadings(requirements: readonly Requirement[]): readonly Reading[] {
  const counts = new Map<string, number>()
  return requirements.flatMap((requirement) => {
    const { look, topic } = requirement
    const count = (counts.get(topic) ?? 0) + 1
    counts.set(topic, count)
    const direct = look.kind === 'measure' ? { ...requirement, look: { ...look, orFrom: null } } : requirement
    return goodReading(direct).map((reading) => (count % 20 === 10 ? wrong(reading, requirement) : reading))
  })
}

function wrong(reading: Reading, { look }: Requirement): Reading {
  const { answer } = reading
  if (answer.kind === 'measured')
    return { ...reading, answer: { ...answer, value: answer.value + 3 * stepsPer(answer.unit) } }
  if (look.kind === 'choose')
    return { ...reading, answer: { kind: 'choice', choice: look.choices.find(({ right }) => !right)!.id } }
  return { ...reading, answer: { kind: 'confirmed', yes: false } }
}
