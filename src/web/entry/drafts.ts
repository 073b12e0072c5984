import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Trouble } from '../data/run-source.ts'
import { type Draft, isEmpty } from './draft.ts'

interface FailedSave {
  /** What was read, and the requirement at which it was entered. */
  readonly of: string
  readonly requirement: string
  readonly trouble: Pick<Trouble, 'message' | 'problems'>
}

/** What is entered and not yet saved, by what is read: it outlives the panel it was entered in. */
export interface Drafts {
  get(of: string): Draft | undefined
  set(of: string, draft: Draft): void
  /**
   * The reading to send for `of`. The same reading keeps its id and time when it is sent again: should it have arrived
   * the first time, it is not stored twice.
   */
  toSend(unsent: Reading, id: () => string, at: () => string): Reading
  readonly failed: readonly FailedSave[]
  fail(save: FailedSave): void
  /** Forgets the draft, or only that saving it failed. */
  settle(of: string, what: 'all' | 'failure'): void
}

export function useDrafts(): Drafts {
  const [kept] = useState(() => new Map<string, Draft>())
  const [sent] = useState(() => new Map<string, { readonly as: string; readonly reading: Reading }>())
  const [failed, setFailed] = useState<readonly FailedSave[]>([])
  useEffect(() => {
    const warn = (event: BeforeUnloadEvent): void => {
      if (kept.size > 0) event.preventDefault()
    }
    window.addEventListener('beforeunload', warn)
    return () => window.removeEventListener('beforeunload', warn)
  }, [kept])
  return useMemo(
    () => ({
      get: (of) => kept.get(of),
      set: (of, draft) => {
        if (isEmpty(draft)) kept.delete(of)
        else kept.set(of, draft)
      },
      toSend: (unsent, id, at) => {
        const as = JSON.stringify(unsent)
        const before = sent.get(unsent.of)
        if (before?.as === as) return before.reading
        const reading = { ...unsent, id: id(), at: at() }
        sent.set(unsent.of, { as, reading })
        return reading
      },
      failed,
      fail: (save) => setFailed((before) => [...before.filter(({ of }) => of !== save.of), save]),
      settle: (of, what) => {
        if (what === 'all') {
          kept.delete(of)
          sent.delete(of)
        }
        setFailed((before) => (before.some((one) => one.of === of) ? before.filter((one) => one.of !== of) : before))
      },
    }),
    [kept, sent, failed],
  )
}
