import type { StoreConfig } from '../../src/store/store.ts'
import type { Databases } from '../store/databases.ts'
import { copyPrepared, dropFolder, type RunningServer, startServer, temporaryFolder } from './web/serve.ts'

/** What a server stands on: a data folder, and in it or on a PostgreSQL server its database. */
export interface ServerPlace {
  readonly folder: string
  readonly config: StoreConfig
  /** How a server is told of it. */
  readonly settings: Readonly<Record<string, string>>
  /** A server here; the next one may be started when it has ended. */
  start(): Promise<RunningServer>
  drop(): Promise<void>
}

/** A place with nothing in it; or prepared, where a folder holds what a server makes at its first start. */
export async function newServerPlace(
  databases: Databases,
  is: 'empty' | 'prepared' = 'prepared',
): Promise<ServerPlace> {
  const config = await databases.newDatabase()
  if (is === 'prepared' && config.kind === 'embedded') await copyPrepared(config.folder)
  const folder = config.kind === 'embedded' ? config.folder : await temporaryFolder()
  const settings = {
    LAPWISE_DATA: folder,
    ...(config.kind === 'embedded' ? {} : { DATABASE_URL: config.url }),
  }
  return {
    folder,
    config,
    settings,
    start: () => startServer(folder, '0', settings),
    drop: () => dropFolder(folder),
  }
}
