import type { JudgedRun } from '../../operations/judge-readings.ts'
import { later } from '../data/later.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { say } from '../messages.ts'

/** That the shelf has other sheets under the names of those that the run holds, by which it is judged all the same. */
export function ShelfNote({ judged: { run } }: { readonly judged: JudgedRun }) {
  // Nothing is said while the shelf is not here: nothing follows from it.
  const [shelf] = useLoaded('shelf', () => later(() => import('../../operations/sheet-differences.ts')))
  if (shelf.state !== 'loaded') return null
  return shelf.value.sheetDifferences(run).map(({ sheet, pinned, onShelf, isNewer }) => (
    <p key={sheet} class="hint">
      {say({ kind: 'other sheet on shelf', sheet, pinned, onShelf, isNewer })}
    </p>
  ))
}
