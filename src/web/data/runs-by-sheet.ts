import { runVersions } from '../../formats/entry/run-versions.ts'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import type { DeviceEntry } from './merge-entries.ts'
import type { RunBySheet } from './run-source.ts'

/** The runs whose version in force holds an edition of the sheet, in the order of the list of runs. */
export function runsBySheet(
  sheet: string,
  entries: readonly DeviceEntry[],
  summaries: readonly SummarisedRun[],
): readonly RunBySheet[] {
  const byRun = new Map<string, DeviceEntry[]>()
  for (const entry of entries) byRun.set(entry.run, [...(byRun.get(entry.run) ?? []), entry])
  return summaries.flatMap(({ id, name, judged, archived }) => {
    const own = byRun.get(id) ?? []
    const body = runVersions(id, own)?.inForce.body as { readonly sheets?: unknown } | undefined
    const sheets = Array.isArray(body?.sheets) ? (body.sheets as readonly Held[]) : []
    const held = sheets.find((one) => one.id === sheet)
    if (held === undefined) return []
    const unsent = own.filter(({ state }) => state === 'here').length
    const isArchived = archived !== null
    return [{ id, name, version: held.version, acceptance: judged?.acceptance ?? null, isArchived, unsent }]
  })
}

interface Held {
  readonly id: string
  readonly version: string
}
