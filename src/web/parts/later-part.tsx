import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { later } from '../data/later.ts'
import type { Answer } from '../data/run-source.ts'
import { fetchWords, m } from '../messages.ts'
import { TroubleNote } from './trouble-note.tsx'

/** A part of the page that is fetched when it is first shown, and drawn at once from then on. */
export interface Part<T> {
  /** Null until it was fetched. */
  here(): Awaited<Answer<T>> | null
  fetch(): Answer<T>
}

/** A part says what the model says, so that the words for that come with it. */
export function partOf<T>(fetchPart: () => Promise<T>): Part<T> {
  let here: Awaited<Answer<T>> | null = null
  return {
    here: () => here,
    fetch: async () => {
      const answer = await later(async () => (await Promise.all([fetchPart(), fetchWords()]))[0])
      if (answer.ok) here = answer
      return answer
    },
  }
}

interface Props<T> {
  readonly part: Part<T>
  /** What it is that could not be shown. */
  readonly title: string
  readonly children: (part: T) => ComponentChildren
}

/** Shows a part once it is here; one that cannot be fetched says so. */
export function LaterPart<T>({ part, title, children }: Props<T>) {
  const [answer, setAnswer] = useState(part.here)
  const fetch = (): void => {
    setAnswer(null)
    void part.fetch().then(setAnswer)
  }
  useEffect(() => {
    if (answer === null) fetch()
  }, [])
  if (answer === null)
    return (
      <p role="status" class="loading">
        {m.page.loading}
      </p>
    )
  return answer.ok ? children(answer.value) : <TroubleNote title={title} trouble={answer.error} again={fetch} />
}
