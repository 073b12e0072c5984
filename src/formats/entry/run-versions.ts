import { canonicalJson, isPlainRecord } from '../canonical-json.ts'
import type { Entry } from './entry-kinds.ts'
import { inLogOrder } from './log-order.ts'

type VersionEntry = Pick<Entry, 'id' | 'run' | 'kind' | 'schemaVersion' | 'supersedes' | 'body'>

/** The versions of one run. */
export interface RunVersions<E> {
  /** What the run was added as; its id is the run's. */
  readonly first: E
  readonly inForce: E
  /** From the first to the one in force. */
  readonly chain: readonly E[]
  /** Those that the one in force did not come from: two people made one each from the same. None is dropped. */
  readonly forks: readonly E[]
  /** Every version whose predecessor is there: also one that holds what another holds, and so is no fork. */
  readonly all: readonly E[]
}

/**
 * The versions among the entries of a run, whatever order they come in; null while its first is not there. In force is
 * the last in the order of the log: it was made by whoever knew most, or, where two made one each from the same
 * version, by the later of them. One whose predecessor is not there yet waits for it.
 */
export function runVersions<E extends VersionEntry>(run: string, entries: readonly E[]): RunVersions<E> | null {
  const log = inLogOrder(entries.filter((entry) => entry.kind === 'run' && entry.run === run))
  const first = log.find(({ id }) => id === run)
  if (first === undefined) return null
  const known = new Map([[first.id, first]])
  for (const entry of log) if (entry.supersedes !== null && known.has(entry.supersedes)) known.set(entry.id, entry)
  const versions = [...known.values()]
  const inForce = versions.at(-1)!
  const chain: E[] = []
  for (let at: E | undefined = inForce; at !== undefined; at = known.get(at.supersedes ?? '')) chain.unshift(at)
  const contents = new Set(chain.map(contentOf))
  return {
    first,
    inForce,
    chain,
    forks: versions.filter((one) => !chain.includes(one) && !contents.has(contentOf(one))),
    all: versions,
  }
}

/** The entries that brought a run without a layout and that no version of it follows. */
export function bareRuns<E extends Pick<Entry, 'id' | 'run' | 'kind' | 'schemaVersion' | 'supersedes'>>(
  entries: readonly E[],
): readonly E[] {
  const versions = entries.filter(({ kind }) => kind === 'run')
  const superseded = new Set(versions.map(({ supersedes }) => supersedes))
  return versions.filter(({ id, run, schemaVersion }) => id === run && schemaVersion === 1 && !superseded.has(id))
}

/** What a version holds, whoever wrote it down. */
const contentOf = ({ body }: VersionEntry): string =>
  canonicalJson(isPlainRecord(body) ? { ...body, version: undefined } : body)
