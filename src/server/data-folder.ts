import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { err, ok, type Result } from '../core/result.ts'
import type { Settings } from './settings.ts'

/** What stands beside the embedded database, and without it where the records are in PostgreSQL. */
const besideDatabase = ['photos', 'packets', 'lan']

/**
 * Whether the data folder is one to go on with, or to begin in; or why not, in words that name the setting. A folder that
 * was misspelt, or whose disk is not there, is not made anew without a word: records would go where nobody looks for them.
 */
export function checkDataFolder({
  dataFolder,
  isFolderNamed,
  store,
}: Pick<Settings, 'dataFolder' | 'isFolderNamed' | 'store'>): Result<void, string> {
  const names = namesIn(dataFolder)
  if (names === null) {
    if (!isFolderNamed) return ok(undefined)
    return err(`LAPWISE_DATA: there is no folder ${dataFolder}; for a new store make it first, empty`)
  }
  if (store.kind !== 'embedded' || names.some((name) => name.startsWith('database'))) return ok(undefined)
  const found = besideDatabase.filter(
    (name) => names.includes(name) && (namesIn(join(dataFolder, name)) ?? []).length > 0,
  )
  if (found.length === 0) return ok(undefined)
  return err(
    `LAPWISE_DATA: ${dataFolder} holds ${found.join(' and ')} and no database. Were its records in PostgreSQL, set DATABASE_URL; was the database lost, put it back from a copy; for a new store take an empty folder`,
  )
}

function namesIn(folder: string): readonly string[] | null {
  try {
    return readdirSync(folder)
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw cause
  }
}
