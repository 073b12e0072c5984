import { useRef } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { m, troubleWords } from '../messages.ts'
import type { Drafts } from './drafts.ts'

/** Appends readings, and tells of each that was not taken in: nothing is acknowledged that is not on the disk. */
export function useSaving(source: RunSource, run: string, drafts: Drafts, requirement: string) {
  const isSaving = useRef(false)
  return async (readings: readonly Reading[]): Promise<readonly Reading[]> => {
    if (isSaving.current) return []
    isSaving.current = true
    const answered = await source.append(run, readings)
    isSaving.current = false
    const taken: Reading[] = []
    for (const [i, reading] of readings.entries()) {
      const answer = answered.ok ? answered.value[i] : undefined
      if (answer !== undefined && answer.outcome !== 'rejected') taken.push(reading)
      else drafts.fail({ of: reading.of, requirement, trouble: troubleOf(answered, answer) })
    }
    return taken
  }
}

type Answered = Awaited<ReturnType<RunSource['append']>>

function troubleOf(
  answered: Answered,
  answer: Extract<Answered, { ok: true }>['value'][number] | undefined,
): Pick<Trouble, 'message' | 'problems'> {
  if (!answered.ok) return answered.error
  const refused = answer?.outcome === 'rejected' ? answer : { reason: '', problems: [] }
  return { message: m.entry.rejected(troubleWords(refused.reason)), problems: refused.problems }
}
