import { useEffect, useState } from 'preact/hooks'
import type { Saying } from '../../words/saying.ts'
import { later } from '../data/later.ts'
import { fetchWords, haveWords, m, troubleWords } from '../messages.ts'

/** What went wrong, in words; empty until they are here. */
export function useTrouble(said: Saying | string): string {
  const words = useFetchedWords(typeof said !== 'string')
  if (typeof said === 'string' || words === 'here') return troubleWords(said)
  return words === 'to come' ? '' : m.trouble.site
}

/** Whether all that the model says can be said by now; where it `isNeeded` and is not here yet, it is fetched. */
export function useFetchedWords(isNeeded: boolean): 'here' | 'to come' | 'not to be had' {
  const [isLost, setLost] = useState<boolean | null>(null)
  const isWanted = isNeeded && !haveWords()
  useEffect(() => {
    if (isWanted) void later(fetchWords).then((answer) => setLost(!answer.ok))
  }, [isWanted])
  if (haveWords()) return 'here'
  return isLost === true ? 'not to be had' : 'to come'
}
