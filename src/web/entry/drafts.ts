import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Begun } from '../data/begun.ts'
import { now } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { type Draft, emptyDraft, isEmpty } from './draft.ts'

interface FailedSave {
  /** What was read, and the requirement at which it was entered. */
  readonly of: string
  readonly requirement: string
  readonly trouble: Pick<Trouble, 'message' | 'problems'>
}

/**
 * What is entered and not yet saved, by what is read: it outlives the panel it was entered in, and at each key it goes to
 * this device's disk, where it outlives the page too.
 */
export interface Drafts {
  get(of: string): Draft | undefined
  set(of: string, requirement: string, draft: Draft): void
  /** What was begun before this page was opened, and is neither taken up nor dropped: nothing of it is applied by itself. */
  readonly begun: readonly Begun[]
  /** Takes up what was begun. */
  takeUp(begun: Begun): void
  drop(begun: Begun): void
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

export function useDrafts(source: RunSource, run: string, version: string): Drafts {
  const [begun, setBegun] = useState<readonly Begun[]>([])
  const [kept] = useState(() => new Map<string, Draft>())
  const [sent] = useState(() => new Map<string, { readonly as: string; readonly reading: Reading }>())
  const [failed, setFailed] = useState<readonly FailedSave[]>([])
  useEffect(() => {
    void source.begun(run).then((answer) => {
      // What is entered here already is of this page.
      if (!answer.ok) return
      const others = answer.value.filter((one) => 'draft' in one).filter(({ of }) => !kept.has(of))
      // One that lay here before a draft had all its fields of today says nothing in the others.
      setBegun(others.map((one) => ({ ...one, draft: { ...emptyDraft, ...one.draft } })))
    })
  }, [source, run, kept])
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
      set: (of, requirement, draft) => {
        // Where the disk takes none it is still on the screen, as before; what is saved says so itself when it is not kept.
        if (isEmpty(draft)) {
          kept.delete(of)
          // What was begun before and is still shown stays on the disk: only a hand drops it.
          const earlier = begun.find((one) => one.of === of)
          void (earlier === undefined ? source.dropBegun(run, of) : source.keepBegun(earlier))
        } else {
          kept.set(of, draft)
          void source.keepBegun({ run, of, requirement, version, at: now(), draft })
        }
      },
      begun,
      takeUp: (taken) => {
        kept.set(taken.of, taken.draft)
        setBegun((before) => before.filter((one) => one !== taken))
      },
      drop: (dropped) => {
        setBegun((before) => before.filter((one) => one !== dropped))
        if (!kept.has(dropped.of)) void source.dropBegun(run, dropped.of)
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
    [source, run, version, kept, sent, failed, begun],
  )
}
