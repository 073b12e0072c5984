import { useMemo } from 'preact/hooks'
import { readWish } from '../data/list-wish.ts'
import type { RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'

/** Where a store puts runs that say nothing of it: no names that somebody would choose. */
const ofStores = ['own', 'demo']

/** Projects that runs of this device are listed under, to choose from; none as long as they are not known. */
export function useProjects(source: RunSource): readonly string[] {
  const [list] = useLoaded('projects', () => source.runs(readWish(''), 0))
  return useMemo(
    () => (list.state === 'loaded' ? list.value.projects.filter((one) => !ofStores.includes(one)) : []),
    [list],
  )
}
