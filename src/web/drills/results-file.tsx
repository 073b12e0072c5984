import { writeResults } from '../../formats/drill/results-file.ts'
import { rememberedVisit } from '../data/device.ts'
import type { DrillRow } from '../data/drill-row.ts'
import { m } from '../messages.ts'
import { download } from '../parts/download.ts'
import { words } from './words.ts'

/** Hands the results of this device over as a file, to be read on a trainer's page. */
export function ResultsFile({ rows }: { readonly rows: readonly DrillRow[] }) {
  const w = words().class
  const save = (): void => {
    const results = rows.flatMap(({ number, beganAt, endedAt, minutes, result }) =>
      result === null || endedAt === null ? [] : [{ number, beganAt, endedAt, minutes, ...result }],
    )
    const person = rememberedVisit().by.trim() || m.runs.authorNotSaid
    download(new Blob([writeResults({ person, results })]), w.resultsFile)
  }
  return (
    <p>
      <button type="button" class="button" onClick={save}>
        {w.handOver}
      </button>
    </p>
  )
}
