import { useEffect, useRef, useState } from 'preact/hooks'
import type { Answer, RunSource } from '../data/run-source.ts'
import type { Draft } from '../form/draft.ts'

/** What came out for a draft: its layouts, or what is wrong with it. */
export interface Tried {
  readonly draft: Draft
  readonly answer: Awaited<ReturnType<RunSource['layOut']>>
}

/**
 * The layouts of the newest draft for which they were looked for, which may be an earlier one; null until there are any.
 * One is looked for at a time: what was changed meanwhile comes next.
 */
export function useLayouts(source: RunSource, draft: Draft | null): Tried | null {
  const [tried, setTried] = useState<Tried | null>(null)
  const wanted = useRef(draft)
  const isBusy = useRef(false)
  wanted.current = draft
  useEffect(() => {
    const work = async (): Promise<void> => {
      isBusy.current = true
      for (let done: Draft | null = null; wanted.current !== null && wanted.current !== done; ) {
        done = wanted.current
        const answer: Awaited<Answer<unknown>> = await source.layOut(done)
        setTried({ draft: done, answer: answer as Tried['answer'] })
      }
      isBusy.current = false
    }
    if (!isBusy.current && draft !== null) void work()
  }, [source, draft])
  return tried
}
