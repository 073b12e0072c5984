import type { HeldVersion } from '../core/record/version.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { type RunVersions, runVersions } from '../formats/entry/run-versions.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'

export type VersionEntry = Pick<Entry, 'id' | 'run' | 'kind' | 'schemaVersion' | 'supersedes' | 'body'>

/** A run with all the versions of it that are at hand. */
export interface RunHistory<E = VersionEntry> extends RunVersions<E> {
  /** The version in force. */
  readonly run: RunFile
  /** Every version by its id. What was added without a layout stands for the version that it was first pinned as. */
  readonly files: ReadonlyMap<string, RunFile>
  /** What was added, where that was without a layout; null where the run was pinned from the first. */
  readonly asked: RunFile | null
  /** The same while no version but that of the migration followed: what was signed before it is still what stands. */
  readonly firstAsked: RunFile | null
}

/** The run that `entries` are of, in its version in force; null while its first entry is not there. */
export function runHistory<E extends VersionEntry>(
  run: string,
  entries: readonly E[],
): Result<RunHistory<E>, readonly InputProblem[]> | null {
  const versions = runVersions(run, entries)
  if (versions === null) return null
  const files = new Map<string, RunFile>()
  for (const { id, body } of versions.all) {
    const read = runFromValue(`run ${id}`, body)
    if (!read.ok) return err(read.error)
    files.set(id, read.value)
  }
  const first = files.get(run)!
  const pinned = versions.chain[1]
  if (first.version === undefined && pinned !== undefined) files.set(run, files.get(pinned.id)!)
  const asked = first.version === undefined ? first : null
  return ok({
    ...versions,
    files,
    run: files.get(versions.inForce.id)!,
    asked,
    firstAsked: versions.chain.length <= 2 ? asked : null,
  })
}

/** A version with the file that holds it. */
export interface VersionAtHand extends HeldVersion {
  readonly file: RunFile
}

/** The versions by their ids, as `judgeKnown` takes them. */
export const versionsOf = ({ files }: Pick<RunHistory, 'files'>): ReadonlyMap<string, VersionAtHand> =>
  new Map(
    [...files].flatMap(([id, file]) =>
      file.version === undefined ? [] : [[id, { ...file.version, sheets: file.sheets, file }] as const],
    ),
  )
