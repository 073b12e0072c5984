import { useCallback, useEffect, useRef, useState } from 'preact/hooks'
import type { Answer, Trouble } from './run-source.ts'

/** What is known of something that has to be fetched. A failure is never an empty value. */
export type Loaded<T> =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly trouble: Trouble }
  | { readonly state: 'loaded'; readonly value: T }

/**
 * Fetches when it appears, and again whenever `again` is called or `key` changes. Fetched again under the same key,
 * the value that is there stays until the next one is.
 */
export function useLoaded<T>(key: string, fetchIt: () => Answer<T>): readonly [Loaded<T>, again: () => void] {
  const [loaded, setLoaded] = useState<Loaded<T>>({ state: 'loading' })
  const [round, setRound] = useState(0)
  const shown = useRef(key)
  useEffect(() => {
    let isWanted = true
    const isOther = shown.current !== key
    shown.current = key
    setLoaded((before) => (before.state === 'loaded' && !isOther ? before : { state: 'loading' }))
    void fetchIt().then((answer) => {
      if (!isWanted) return
      setLoaded(answer.ok ? { state: 'loaded', value: answer.value } : { state: 'failed', trouble: answer.error })
    })
    return () => {
      isWanted = false
    }
  }, [key, round])
  return [loaded, useCallback(() => setRound((n) => n + 1), [])]
}
