import type { StoreConfig } from '../../src/store/store.ts'
import type { Databases } from '../store/databases.ts'
import {
  dropFolder,
  type RunningServer,
  type ServerProcess,
  startServer,
  startServerProcess,
  temporaryFolder,
} from './web/serve.ts'

/** What a server stands on: a data folder, and in it or on a PostgreSQL server its database. */
export interface ServerPlace {
  readonly folder: string
  readonly config: StoreConfig
  /** How a server is told of it. */
  readonly settings: Readonly<Record<string, string>>
  /** A server here; the next one may be started when it has ended. */
  start(): Promise<RunningServer>
  /** The same as a process of its own. */
  startProcess(): Promise<ServerProcess>
  drop(): Promise<void>
}

/** A place with nothing in it; or prepared, where a folder holds what a server makes at its first start. */
export async function newServerPlace(
  databases: Databases,
  is: 'empty' | 'prepared' = 'prepared',
): Promise<ServerPlace> {
  const config = await databases.newDatabase(is)
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
    startProcess: () => startServerProcess(folder, settings),
    drop: () => dropFolder(folder),
  }
}
