import { inputOf } from './input-of.ts'
import { subjects } from './subjects.ts'

/** One input to try. */
export interface Job {
  readonly subject: string
  readonly seed: number
  readonly n: number
}

/** What became of it; `trace` is null where nothing was thrown. */
export interface Report extends Job {
  readonly outcome: 'refused' | 'through' | 'trace'
  readonly trace: string | null
  readonly milliseconds: number
}

process.on('message', async (job: Job) => {
  const subject = subjects.find(({ name }) => name === job.subject)!
  const before = performance.now()
  const report = (outcome: Report['outcome'], trace: string | null): void => {
    process.send!({ ...job, outcome, trace, milliseconds: performance.now() - before } satisfies Report)
  }
  try {
    report(await subject.exercise(inputOf(subject, job.seed, job.n)), null)
  } catch (cause) {
    report('trace', cause instanceof Error ? (cause.stack ?? cause.message) : String(cause))
  }
})
process.send!('ready')
