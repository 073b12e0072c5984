import { readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { ok, type Result } from '../core/result.ts'
import { theirs } from '../core/theirs.ts'
import { groupBy } from '../documents/group-by.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { parseJson } from '../formats/read-json.ts'
import { type RunFile, runFromValue } from '../formats/run/run-file.ts'
import { runHistory } from '../operations/run-history.ts'
import type { StoredEntry } from '../store/entry.ts'
import { withoutSecrets } from '../store/postgres/open-postgres.ts'
import type { StoreProblem, StoreUnavailable } from '../store/problem.ts'
import { openStore, type Store } from '../store/store.ts'
import { BadInput } from './command.ts'
import { readText, soundValue } from './io.ts'

/** A run in its version in force, and where it was found: its file, or its id in a store. */
export interface FoundRun {
  readonly where: string
  readonly run: RunFile
}

/** The runs of a folder: every file in it that says it is one. */
export async function runsInFolder(folder: string): Promise<readonly FoundRun[]> {
  const names = (await expectFolder(folder, () => readdir(folder))).filter((name) => name.endsWith('.json')).sort()
  const runs: FoundRun[] = []
  for (const name of names) {
    const where = join(folder, name)
    const raw = soundValue(parseJson(where, await readText(where)))
    if (isRun(raw)) runs.push({ where, run: soundValue(runFromValue(where, raw)) })
  }
  return runs
}

const isRun = (raw: unknown): boolean =>
  typeof raw === 'object' && raw !== null && 'format' in raw && /^lapwise-run\//.test(String(raw.format))

/**
 * The runs of a server's store; those that can no longer be read are passed over, and named on the server's list.
 * @param place  the server's folder of data, or the address of its database
 */
export async function runsInStore(place: string): Promise<readonly FoundRun[]> {
  const isAddress = /^postgres(ql)?:/.test(place)
  // A store is made where there is none, and that of a name misspelt would have no runs.
  if (!isAddress) await expectFolder(place, () => stat(join(place, 'database')))
  const opened = await openStore(isAddress ? { kind: 'postgres', url: place } : { kind: 'embedded', folder: place })
  // An address has the password in it.
  const shown = isAddress ? (withoutSecrets(place) ?? 'PostgreSQL') : place
  const unreadableStore = (found: string): BadInput =>
    unreadable(shown, found, isAddress ? 'readable database' : 'readable folder')
  if (!opened.ok) throw unreadableStore(troubleText(opened.error))
  try {
    const entries = await everyVersion(opened.value)
    if (!entries.ok) throw unreadableStore(entries.error.reason)
    return groupBy(entries.value, ({ run }) => run ?? '').flatMap((versions) => {
      const where = versions[0].run ?? ''
      const history = runHistory(where, versions as readonly (StoredEntry & Entry)[])
      return history?.ok ? [{ where, run: history.value.run }] : []
    })
  } finally {
    await opened.value.close()
  }
}

async function everyVersion(store: Store): Promise<Result<readonly StoredEntry[], StoreUnavailable>> {
  const entries: StoredEntry[] = []
  for (;;) {
    const page = await store.entries({ kinds: ['run'], after: entries.at(-1)?.seq ?? 0, limit: 1000 })
    if (!page.ok) return page
    entries.push(...page.value)
    if (page.value.length < 1000) return ok(entries)
  }
}

function troubleText(problem: StoreProblem): string {
  switch (problem.kind) {
    case 'folder-in-use':
      return `a store in use${problem.pid === null ? '' : ` by process ${problem.pid}`}: end the server first`
    case 'cannot-open':
      return problem.reason
    case 'newer-store':
      return `a store of a newer version, ${problem.storeVersion}`
    default:
      return problem satisfies never
  }
}

async function expectFolder<T>(folder: string, look: () => Promise<T>): Promise<T> {
  try {
    return await look()
  } catch (cause) {
    throw unreadable(folder, (cause as NodeJS.ErrnoException).code ?? String(cause), 'readable folder')
  }
}

const unreadable = (file: string, found: string, kind: 'readable folder' | 'readable database'): BadInput =>
  new BadInput([{ file, place: '', expected: { kind }, found: theirs(found) }])
