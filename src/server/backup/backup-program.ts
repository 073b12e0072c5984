import { existsSync } from 'node:fs'
import { mkdir } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { ServerTeller } from '../../protocol/server-program.ts'
import { openStore } from '../../store/store.ts'
import { checkDataFolder } from '../data-folder.ts'
import { programVersion } from '../program-version.ts'
import type { Settings } from '../settings.ts'
import { storeWords } from '../store-words.ts'
import { askForBackup } from './asked-backup.ts'
import { restoreBackup } from './restore-backup.ts'
import { type BackupMade, writeBackup } from './write-backup.ts'

/**
 * Copies store and photos into a new folder, by the running server where one holds the store; tells how many there were.
 * @param wanted  the folder; null for one with the time in its name, in `backups` of the data folder
 * @returns       2 where there is none, or it cannot be made; 1 where a photo was damaged
 */
export async function backUp(settings: Settings, wanted: string | null, tell: ServerTeller): Promise<0 | 1 | 2> {
  const { dataFolder, store: config } = settings
  const refuse = (words: string): 2 => {
    tell.say(words)
    return 2
  }
  if (config.kind === 'embedded' && !existsSync(join(dataFolder, 'database')))
    return refuse(`LAPWISE_DATA: there is no store in ${dataFolder}`)
  const now = new Date()
  const to = resolve(wanted ?? join(dataFolder, 'backups', now.toISOString().replaceAll(':', '-')))
  await mkdir(dirname(to), { recursive: true })
  const opened = await openStore(config)
  if (!opened.ok && opened.error.kind !== 'folder-in-use') return refuse(storeWords(config.kind, opened.error))
  if (!opened.ok) {
    tell.note('The server that holds the store makes it …')
    const answer = await askForBackup(dataFolder, to)
    if (answer === null) return refuse(`${storeWords(config.kind, opened.error)}. It made no backup`)
    return answer.ok ? told(answer.value, tell) : refuse(`No backup was made: ${answer.error}`)
  }
  const made = await writeBackup(opened.value, join(dataFolder, 'photos'), to, now, await programVersion())
  await opened.value.close()
  return made.ok ? told(made.value, tell) : refuse(`No backup was made: ${made.error}`)
}

function told({ to, entries, photos, damaged }: BackupMade, tell: ServerTeller): 0 | 1 {
  tell.print(`${to}: ${entries} entries, ${photos} photos`)
  for (const name of damaged) tell.say(`photo ${name}: its content has another hash; it is not in the backup`)
  return damaged.length === 0 ? 0 : 1
}

/**
 * Puts a backup into the empty store that the settings name, while no server holds it.
 * @returns  2 where nothing was put back; 1 where photos are missing
 */
export async function restore(settings: Settings, from: string, tell: ServerTeller): Promise<0 | 1 | 2> {
  const { dataFolder, store: config } = settings
  const refuse = (words: string): 2 => {
    tell.say(words)
    return 2
  }
  const checked = checkDataFolder(settings)
  if (!checked.ok) return refuse(checked.error)
  const opened = await openStore(config)
  if (!opened.ok) return refuse(storeWords(config.kind, opened.error))
  const done = await restoreBackup(opened.value, join(dataFolder, 'photos'), from)
  await opened.value.close()
  if (!done.ok) return refuse(`Nothing was put back: ${done.error}`)
  const { entries, photos, missing } = done.value
  tell.print(`${entries} entries, ${photos} photos`)
  for (const name of missing) tell.say(`photo ${name}: the backup does not hold it as it was`)
  return missing.length === 0 ? 0 : 1
}
