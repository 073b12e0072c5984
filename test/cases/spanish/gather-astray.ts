import type { InputProblem } from '../../../src/formats/input-problem.ts'
import { readingsFromValue } from '../../../src/formats/readings/readings-file.ts'
import { judgeKnown, judgeReadings } from '../../../src/operations/judge-readings.ts'
import type { Saying } from '../../../src/words/saying.ts'
import { requiredRun } from './gather-runs.ts'

/** Readings that say what they may not say, one for each way. */
const astray: readonly object[] = [
  { id: 'a', of: 'post-1/stub-height', value: '5 in' },
  { of: 'post-2/stub-height', value: '3 in', corrects: 'a' },
  { of: 'post-1/stub-height', value: '3 in', rechecks: 'splice-2/lap' },
  { of: 'post-4/along', value: '225 in', rechecks: 'splice-2/lap' },
  { of: 'post-2/stub-hight', value: '3 in' },
  { of: 'post-2/stub-hight', value: '3 in', rechecks: 'post-2/stub-height' },
  { of: 'post-1/stub-height', confirmed: true },
  { of: 'first/manual', value: '3 in' },
  { of: 'post-1/block', value: '3 in' },
  { of: 'post-1/block', choice: 'no-such' },
  { of: 'first/criteria', choice: 'block' },
  { of: 'first/criteria', doesNotApply: 'it is another kind' },
  { of: 'post-9/block', doesNotApply: 'it is another kind' },
]

function readAstray() {
  const required = requiredRun({})
  const visit = { by: 'J. Okafor', at: '2016-05-12T10:05:00-06:00' }
  const file = { format: 'lapwise-readings/1', run: required.run.name, visit, readings: astray }
  const read = readingsFromValue('readings', file)
  if (!read.ok) throw new Error(JSON.stringify(read.error))
  return { required, readings: read.value.readings }
}

/** Why readings are not taken in. */
export function astrayReadings(): readonly InputProblem[] {
  const { required, readings } = readAstray()
  const judged = judgeReadings('readings', required, readings)
  if (judged.ok) throw new Error('readings that say what they may not say were taken in')
  return judged.error
}

/** What of them counts for nothing in a log that holds them. */
export function sayingsOfAstrayReadings(): Saying[] {
  const { required, readings } = readAstray()
  const { withoutEffect, verdicts } = judgeKnown(required, readings).judgement
  return [...withoutEffect, ...verdicts.map(({ because }) => because)]
}
