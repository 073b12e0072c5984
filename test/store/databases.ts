import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openEmbedded } from '../../src/store/embedded/open-embedded.ts'
import { openPostgres } from '../../src/store/postgres/open-postgres.ts'
import type { OpenDatabase } from '../../src/store/schema.ts'
import type { StoreConfig } from '../../src/store/store.ts'
import { copyEmpty, copyPrepared } from '../acceptance/web/serve.ts'
import { testServer } from './postgres-server.ts'
import { answered } from './sample-entries.ts'

/** Where a file of tests gets its databases: each is nobody else's. */
export interface Databases {
  /** One with nothing in it, not even tables; or prepared, where a folder can be copied that a server left. */
  newDatabase(is?: 'empty' | 'prepared'): Promise<StoreConfig>
  stop(): Promise<void>
}

/** What a store can stand on. Whatever is promised of a store or a server is tried on each. */
export const kindsOfDatabase: readonly { readonly name: string; start(): Promise<Databases> }[] = [
  { name: 'a folder', start: startFolders },
  { name: 'a PostgreSQL server', start: startPostgres },
]

async function startFolders(): Promise<Databases> {
  const scratch = await mkdtemp(join(tmpdir(), 'lapwise-folders-'))
  let made = 0
  return {
    newDatabase: async (is) => {
      const folder = join(scratch, `${++made}`)
      await (is === 'prepared' ? copyPrepared(folder) : copyEmpty(folder))
      return { kind: 'embedded', folder }
    },
    stop: () => rm(scratch, { recursive: true, force: true }),
  }
}

async function startPostgres(): Promise<Databases> {
  const server = testServer()
  return {
    newDatabase: async () => ({ kind: 'postgres', url: await server.newDatabase() }),
    stop: () => server.drop(),
  }
}

/** The database itself, past the store's own door. */
export async function openDirectly(config: StoreConfig): Promise<OpenDatabase> {
  return answered(config.kind === 'embedded' ? await openEmbedded(config.folder) : await openPostgres(config.url))
}
