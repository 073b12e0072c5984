import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { solveLayout } from '../core/layout/solve-layout.ts'
import { ok, type Result } from '../core/result.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { bareRuns } from '../formats/entry/run-versions.ts'
import { schemaVersions } from '../formats/entry/sign-off.ts'
import { entryIdAfter } from '../formats/entry-id.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { runFromValue } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import { pinRun } from './pin-run.ts'

/** The device of the entries by which runs recorded without a layout were pinned. */
const migrationDevice = 'migration'

/** Hexadecimal SHA-256 of a text in UTF-8. */
type Hash = (text: string) => string | Promise<string>

/**
 * The entries that pin the runs among `entries` which were recorded without a layout and which no version follows. One
 * that can no longer be laid out has none: it stays as it is, and is shown as that.
 *
 * @param entries  with all versions of each run that there are
 * @param landed   the editions on the shelf when such runs were recorded
 */
export async function pinsOf(
  entries: readonly Entry[],
  landed: readonly HardwareSheet[],
  sha256: Hash,
): Promise<readonly Entry[]> {
  const pins: Entry[] = []
  for (const entry of bareRuns(entries)) {
    const pinned = await pinEntry(entry, landed, sha256)
    if (pinned.ok) pins.push(pinned.value)
  }
  return pins
}

/**
 * The entry that pins a run which was recorded without a layout: a version of it, by its author and of its time. The
 * same run and sheets make the same entry wherever it is made, so that two who make it hold one.
 */
async function pinEntry(
  entry: Entry,
  landed: readonly HardwareSheet[],
  sha256: Hash,
): Promise<Result<Entry, readonly InputProblem[]>> {
  const file = `run ${entry.id}`
  const read = runFromValue(file, entry.body)
  if (!read.ok) return read
  const shelf = new Map(landed.map((sheet) => [sheet.id, sheet]))
  const pinned = pinRun(file, read.value, '-', { shelf, solve: solveLayout, keepsClear: false })
  if (!pinned.ok) return pinned
  const hash = await sha256(canonicalJson(pinned.value))
  const bytes = Uint8Array.from({ length: 10 }, (_, i) => Number.parseInt(hash.slice(2 * i, 2 * i + 2), 16))
  const id = entryIdAfter([entry.id], bytes)
  const { run, author, capturedAt } = entry
  return ok({
    ...{ id, run, kind: 'run', schemaVersion: schemaVersions.run, author, device: migrationDevice, capturedAt },
    supersedes: entry.id,
    body: runToValue({ ...pinned.value, version: { ...pinned.value.version!, id } }),
  })
}
