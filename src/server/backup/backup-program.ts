import { existsSync } from 'node:fs'
import { mkdir } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import type { ServerTeller } from '../../protocol/server-program.ts'
import { openStore } from '../../store/store.ts'
import { checkDataFolder } from '../data-folder.ts'
import { hashOfFile } from '../hash-of-file.ts'
import { programVersion } from '../program-version.ts'
import type { Settings } from '../settings.ts'
import { storeWords } from '../store-words.ts'
import { askForBackup } from './asked-backup.ts'
import { photosName } from './backup-shape.ts'
import { entriesOf, StoreSilent } from './entries-of.ts'
import { NotSo, readBackup } from './read-backup.ts'
import { restoreBackup } from './restore-backup.ts'
import { type Verified, verifyEntries } from './verify-entries.ts'
import { type BackupMade, writeBackup } from './write-backup.ts'

/**
 * Copies store and photos into a new folder, by the running server where one holds the store; tells how many there were.
 * @param wanted  the folder; null for one with the time in its name, in `backups` of the data folder
 * @returns       2 where there is none, or it cannot be made; 1 where a photo was damaged
 */
export async function backUp(settings: Settings, wanted: string | null, tell: ServerTeller): Promise<0 | 1 | 2> {
  const { dataFolder, store: config } = settings
  if (!hasStore(settings)) return refuse(tell, `LAPWISE_DATA: there is no store in ${dataFolder}`)
  const now = new Date()
  const to = resolve(wanted ?? join(dataFolder, 'backups', now.toISOString().replaceAll(':', '-')))
  await mkdir(dirname(to), { recursive: true })
  const opened = await openStore(config)
  if (!opened.ok && opened.error.kind !== 'folder-in-use') return refuse(tell, storeWords(config.kind, opened.error))
  if (!opened.ok) {
    tell.note('The server that holds the store makes it …')
    const answer = await askForBackup(dataFolder, to)
    if (answer === null) return refuse(tell, `${storeWords(config.kind, opened.error)}. It made no backup`)
    return answer.ok ? told(answer.value, tell) : refuse(tell, `No backup was made: ${answer.error}`)
  }
  const made = await writeBackup(opened.value, join(dataFolder, 'photos'), to, now, await programVersion())
  await opened.value.close()
  return made.ok ? told(made.value, tell) : refuse(tell, `No backup was made: ${made.error}`)
}

function refuse(tell: ServerTeller, words: string): 2 {
  tell.say(words)
  return 2
}

/** A store is made where there is none, and that of a name misspelt would have nothing in it. */
const hasStore = ({ dataFolder, store }: Settings): boolean =>
  store.kind === 'postgres' || existsSync(join(dataFolder, 'database'))

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
  const checked = checkDataFolder(settings)
  if (!checked.ok) return refuse(tell, checked.error)
  const opened = await openStore(config)
  if (!opened.ok) return refuse(tell, storeWords(config.kind, opened.error))
  const done = await restoreBackup(opened.value, join(dataFolder, 'photos'), from)
  await opened.value.close()
  if (!done.ok) return refuse(tell, `Nothing was put back: ${done.error}`)
  const { entries, photos, missing } = done.value
  tell.print(`${entries} entries, ${photos} photos`)
  for (const name of missing) tell.say(`photo ${name}: the backup does not hold it as it was`)
  return missing.length === 0 ? 0 : 1
}

/**
 * Recomputes every hash of a backup, or of the store that the settings name while no server holds it, and tells its head.
 * @param from  the backup; null for the store
 * @param head  an earlier head, as COUNT:HASH
 * @returns     2 where it cannot be read, or the earlier head is none; 1 where anything is not as it was stored
 */
export async function verify(
  settings: Settings,
  from: string | null,
  head: string | null,
  tell: ServerTeller,
): Promise<0 | 1 | 2> {
  const [, count, hash] = /^(\d{1,15}):([0-9a-f]{64})$/.exec(head ?? '') ?? []
  if (head !== null && hash === undefined)
    return refuse(tell, `--head: expected COUNT:HASH, as verify prints it, found ${head}`)
  const counted = count === undefined ? null : Number(count)
  try {
    const [verified, photos] = from === null ? await verifyStore(settings, counted) : await verifyBackup(from, counted)
    const wrong = [
      ...verified.changed.map((id) => `entry ${id}: its body is not the one that was stored`),
      ...(await wrongPhotos(photos, verified.photos)),
      ...(counted === null || verified.then === hash
        ? []
        : [`the first ${counted} entries are not those of that head`]),
    ]
    for (const words of wrong) tell.say(words)
    tell.print(`${verified.head.count} entries, ${verified.photos.length} photos: ${wrong.length} not as stored`)
    tell.print(`head ${verified.head.count}:${verified.head.hash}`)
    return wrong.length === 0 ? 0 : 1
  } catch (cause) {
    const isOutside = cause instanceof NotSo || cause instanceof StoreSilent || cause instanceof NoStore
    if (isOutside || (cause as NodeJS.ErrnoException).code !== undefined) return refuse(tell, (cause as Error).message)
    throw cause
  }
}

class NoStore extends Error {}

async function verifyBackup(from: string, counted: number | null): Promise<readonly [Verified, string]> {
  return [await verifyEntries((await readBackup(from)).entries(), counted), join(from, photosName)]
}

async function verifyStore(settings: Settings, counted: number | null): Promise<readonly [Verified, string]> {
  const { dataFolder, store: config } = settings
  if (!hasStore(settings)) throw new NoStore(`LAPWISE_DATA: there is no store in ${dataFolder}`)
  const opened = await openStore(config)
  if (!opened.ok)
    throw new NoStore(
      `${storeWords(config.kind, opened.error)}${opened.error.kind === 'folder-in-use' ? ', or verify a backup, which is made while it runs' : ''}`,
    )
  try {
    return [await verifyEntries(entriesOf(opened.value), counted), join(dataFolder, 'photos')]
  } finally {
    await opened.value.close()
  }
}

async function wrongPhotos(folder: string, names: readonly string[]): Promise<readonly string[]> {
  const wrong: string[] = []
  for (const name of names) {
    const found = existsSync(join(folder, name)) ? await hashOfFile(join(folder, name)) : null
    if (found === null) wrong.push(`photo ${name}: it is not there`)
    else if (found !== name) wrong.push(`photo ${name}: its content has another hash`)
  }
  return wrong
}
