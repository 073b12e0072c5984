import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
} from 'node:fs'
import { join } from 'node:path'
import type { PGlite } from '@electric-sql/pglite'
import { Kysely, PostgresDialect } from 'kysely'
import { err, ok, type Result } from '../../core/result.ts'
import { outageReason, type StoreProblem } from '../problem.ts'
import type { OpenDatabase, Tables } from '../schema.ts'
import type { Disk, SyncFile } from './durable-node-fs.ts'
import { startEngine } from './engine.ts'
import { type FolderLock, lockFolder } from './folder-lock.ts'
import { singleConnectionPool } from './single-connection.ts'

/**
 * The database in `folder`, which is made when it is not there; this process then holds the folder until `close`.
 * @param syncFile  what brings a file onto the disk; a test puts its own here to see when that happens
 */
export async function openEmbedded(
  folder: string,
  syncFile: SyncFile = fsyncSync,
): Promise<Result<OpenDatabase, StoreProblem>> {
  try {
    mkdirSync(folder, { recursive: true })
    const realFolder = realpathSync(folder)
    const lock = await lockFolder(realFolder)
    if (!lock.ok) return err({ kind: 'folder-in-use', folder: realFolder, pid: lock.error.pid })
    try {
      const disk = { syncFile, mayWrite: whileHeld(lock.value, realFolder) }
      const pool = singleConnectionPool(await engineIn(realFolder, disk))
      const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) })
      const close = (): Promise<void> => pool.end().finally(() => lock.value.release())
      return ok({ db, close, stopped: pool.stopped })
    } catch (error) {
      await lock.value.release()
      throw error
    }
  } catch (error) {
    return err({ kind: 'cannot-open', place: folder, reason: outageReason(error) })
  }
}

/** What lets nothing more be written to `folder` once another process may have it. */
function whileHeld(lock: FolderLock, folder: string): Disk['mayWrite'] {
  return () => {
    if (lock.isHeld()) return
    const words = `the file by which this process holds ${folder} was deleted, so that another may have taken the folder`
    throw Object.assign(new Error(words), { code: 'EROFS' })
  }
}

/**
 * The engine on `<folder>/database`. A new database is made beside it and takes its name only when all of it is on the
 * disk, so that a power cut while it is being made leaves nothing half done.
 */
async function engineIn(folder: string, disk: Disk): Promise<PGlite> {
  const database = join(folder, 'database')
  const { syncFile } = disk
  if (!existsSync(database)) {
    const unfinished = join(folder, 'database.unfinished')
    rmSync(unfinished, { recursive: true, force: true })
    await (await startEngine(unfinished, disk)).close()
    syncTree(unfinished, syncFile)
    renameSync(unfinished, database)
    syncFolder(folder, syncFile)
  }
  return startEngine(database, disk)
}

function syncTree(folder: string, syncFile: SyncFile): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) syncTree(path, syncFile)
    else syncPath(path, 'r+', syncFile)
  }
  syncFolder(folder, syncFile)
}

/** Windows opens no folder as a file, and so has nothing to sync here. */
function syncFolder(folder: string, syncFile: SyncFile): void {
  if (process.platform !== 'win32') syncPath(folder, 'r', syncFile)
}

function syncPath(path: string, flags: 'r' | 'r+', syncFile: SyncFile): void {
  const descriptor = openSync(path, flags)
  try {
    syncFile(descriptor)
  } finally {
    closeSync(descriptor)
  }
}
