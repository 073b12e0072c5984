import type { JudgedRun } from '../../operations/judge-readings.ts'
import { sheetDifferences } from '../../operations/sheet-differences.ts'
import { say } from '../messages.ts'

/** That the shelf has other sheets under the names of those that the run holds, by which it is judged all the same. */
export function ShelfNote({ judged }: { readonly judged: JudgedRun }) {
  return sheetDifferences(judged.run).map(({ sheet, pinned, onShelf, isNewer }) => (
    <p key={sheet} class="hint">
      {say({ kind: 'other sheet on shelf', sheet, pinned, onShelf, isNewer })}
    </p>
  ))
}
