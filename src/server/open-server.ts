import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { err, ok, type Result } from '../core/result.ts'
import { openStore, type Store } from '../store/store.ts'
import { english } from '../words/english.ts'
import { createApp } from './app.ts'
import { serveBackups } from './backup/asked-backup.ts'
import { writeBackup } from './backup/write-backup.ts'
import { checkDataFolder } from './data-folder.ts'
import { createDemo, lacksDemo } from './demo.ts'
import { machineNames } from './lan/machine-names.ts'
import { doorsOf } from './own-names.ts'
import { openPacketFolder } from './packet-folder.ts'
import { packetProcess } from './packet-process.ts'
import { openPhotoFolder } from './photo-folder.ts'
import { pictureCheck } from './picture-check.ts'
import { pinStoredRuns } from './pin-stored-runs.ts'
import { programVersion } from './program-version.ts'
import type { Settings } from './settings.ts'
import { storeWords } from './store-words.ts'

const builtPage = fileURLToPath(new URL('../../dist/web', import.meta.url))

/** How long requests under way may take to end when the server is told to, milliseconds: our judgement. */
const grace = 5_000

export interface OpenServer {
  /** Where it is to be asked, without a slash at its end. */
  readonly address: string
  /** Why the store cannot go on until the server is started again; waits for as long as it can. */
  readonly stopped: Promise<string>
  /** Ends what is under way, then lets go of the store. */
  close(): Promise<void>
}

/**
 * A server that listens, its store open and the demo run in it; or, in words that name the setting, why the store or a
 * port cannot be had. Then nothing is left open.
 *
 * @param isLan       for the local network, instead of for this machine alone
 * @param say         told of what takes a while
 * @param pageFolder  of the page that it hands out
 */
export async function openServer(
  settings: Settings,
  isLan: boolean,
  say: (text: string) => void,
  pageFolder = builtPage,
): Promise<Result<OpenServer, string>> {
  const { store: config, dataFolder } = settings
  const checked = checkDataFolder(settings)
  if (!checked.ok) return checked
  say(config.kind === 'embedded' ? `Opening the store in ${dataFolder} …` : 'Opening the store in PostgreSQL …')
  const opened = await openStore(config)
  if (!opened.ok) return err(storeWords(config.kind, opened.error))
  const store = opened.value
  const listening = await listen(store, settings, isLan, say, pageFolder).catch(async (cause: unknown) => {
    await store.close()
    throw cause
  })
  if (!listening.ok) await store.close()
  return listening
}

async function listen(
  store: Store,
  settings: Settings,
  isLan: boolean,
  say: (text: string) => void,
  pageFolder: string,
): Promise<Result<OpenServer, string>> {
  if (await lacksDemo(store)) {
    say('Creating the demo project …')
    await createDemo(store, new Date())
  }
  const pinned = await pinStoredRuns(store)
  if (!pinned.ok) throw new Error(english(null).say(pinned.error.message))
  const pictures = pictureCheck()
  const photos = await openPhotoFolder(join(settings.dataFolder, 'photos'), pictures.faultIn)
  const packets = await openPacketFolder(join(settings.dataFolder, 'packets'))
  const makers = packetProcess()
  const version = await programVersion()
  const now = (): Date => new Date()
  const { port, trustPort, origin } = settings
  // What makes keys and certificates is loaded where they are used.
  const lan = isLan ? await (await import('./lan/lan-server.ts')).openLanServer(settings.dataFolder, now, say) : null
  const host = lan === null ? settings.host : '0.0.0.0'
  const doors = doorsOf(host, origin, () => machineNames().all)
  const app = await createApp({ store, photos, packets, makers, pageFolder, now, version, doors, lan })
  let address: string
  let trust: { close(): Promise<void> } | undefined
  let opening = { setting: 'LAPWISE_PORT', port, host }
  try {
    address = await app.listen({ port, host })
    opening = { setting: 'LAPWISE_TRUST_PORT', port: trustPort, host }
    trust = await lan?.start(app, Number(new URL(address).port), trustPort)
  } catch (cause) {
    const words = listenWords(cause as NodeJS.ErrnoException, opening)
    if (words === null) throw cause
    await app.close()
    return err(words)
  }
  // A backup is made by whoever holds the store; a PostgreSQL server serves any number.
  const stopBackups =
    settings.store.kind === 'embedded'
      ? serveBackups(settings.dataFolder, (to) =>
          writeBackup(store, join(settings.dataFolder, 'photos'), to, now(), version),
        )
      : () => {}
  const shown = lan === null ? address : `https://${machineNames().stable}:${new URL(address).port}`
  return ok({
    address: shown,
    stopped: store.stopped,
    close: async () => {
      // Whoever holds a connection open with a request that does not end cannot hold the server.
      const cut = setTimeout(() => app.server.closeAllConnections(), grace)
      await Promise.all([app.close(), trust?.close()])
      clearTimeout(cut)
      pictures.close()
      makers.close()
      stopBackups()
      await store.close()
    },
  })
}

/** Why a port could not be opened, with the setting that names it; null where the fault is of another kind. */
function listenWords(
  { code }: NodeJS.ErrnoException,
  { setting, port, host }: { readonly setting: string; readonly port: number; readonly host: string },
): string | null {
  switch (code) {
    case 'EADDRINUSE':
      return `${setting}: port ${port} of ${host} is taken by another program; set another, or 0 for any free one`
    case 'EACCES':
      return `${setting}: this user may not open port ${port}; set one above 1023`
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return `LAPWISE_HOST: this machine has no address ${host}`
    default:
      return null
  }
}
