import * as z from 'zod/mini'
import type { Result } from '../../core/result.ts'
import type { InputProblem } from '../input-problem.ts'
import { readJson } from '../read-json.ts'

const text = z.string().check(z.maxLength(400))
const count = z.int().check(z.minimum(0), z.maximum(10_000))
const moment = z.iso.datetime({ offset: true })

const result = z.strictObject({
  /** Null of a run of the device, which no other device has. */
  number: z.nullable(text),
  beganAt: moment,
  endedAt: moment,
  /** Of an exam, the time that it might take. */
  minutes: z.nullable(count),
  ...{ found: count, faults: count, falseAlarms: count, sound: count },
  kinds: z.readonly(z.array(z.strictObject({ kind: text, there: count, found: count })).check(z.maxLength(200))),
  /** What was decided, by requirement: `meets`, `fails` or `too close`. */
  verdicts: z.record(text, z.enum(['meets', 'fails', 'too close'])),
})

/** How the drills of one person came out, to be handed to a trainer. It is of practice, and names no real run. */
export const resultsShape = z.strictObject({
  format: z.literal('lapwise-practice-results/1'),
  person: text,
  results: z.array(result).check(z.maxLength(1000)),
})

export type PracticeResults = z.output<typeof resultsShape>

export const readResults = (file: string, json: string): Result<PracticeResults, readonly InputProblem[]> =>
  readJson(file, json, resultsShape)

export const writeResults = (results: Omit<PracticeResults, 'format'>): string =>
  `${JSON.stringify({ format: 'lapwise-practice-results/1', ...results } satisfies PracticeResults, null, 2)}\n`
