import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { StoreProblem } from '../store/problem.ts'
import { openStore, type Store } from '../store/store.ts'
import { english } from '../words/english.ts'
import { createApp } from './app.ts'
import { createDemo, lacksDemo } from './demo.ts'
import { openDeviceList } from './lan/device-list.ts'
import { lanFolder, openLanServer } from './lan/lan-server.ts'
import { machineNames } from './lan/machine-names.ts'
import { doorsOf } from './own-names.ts'
import { openPacketFolder } from './packet-folder.ts'
import { openPhotoFolder } from './photo-folder.ts'
import { pictureCheck } from './picture-check.ts'
import { pinStoredRuns } from './pin-stored-runs.ts'
import { readSettings, type Settings, settingsTable } from './settings.ts'

const packageFile = new URL('../../package.json', import.meta.url)
const pageFolder = fileURLToPath(new URL('../../dist/web', import.meta.url))

/** How long requests under way may take to end when the server is told to, milliseconds: our judgement. */
const grace = 5_000

/** Starts the server and keeps it until the process is told to end; `words` are what the command line says. */
export async function main(words: readonly string[]): Promise<void> {
  const wish = readWords(words)
  if (wish === 'help' || wish === 'unknown') return tellSettings(words, wish)
  const settings = readSettings(process.env)
  if (!settings.ok) {
    for (const { setting, expected, found } of settings.error)
      say(`${setting}: expected ${expected}, found ${JSON.stringify(found)}`)
    process.exit(2)
  }
  if (typeof wish === 'object') return tendDevices(settings.value.dataFolder, wish)
  const { store: config, dataFolder } = settings.value
  say(config.kind === 'embedded' ? `Opening the store in ${dataFolder} …` : 'Opening the store in PostgreSQL …')
  const opened = await openStore(config)
  if (!opened.ok) {
    say(storeWords(config.kind === 'embedded' ? 'LAPWISE_DATA' : 'DATABASE_URL', opened.error))
    process.exit(2)
  }
  const store = opened.value
  await serve(store, settings.value, wish === 'lan').catch(async (cause: unknown) => {
    await store.close()
    throw cause
  })
}

async function serve(store: Store, settings: Settings, isLan: boolean): Promise<void> {
  if (await lacksDemo(store)) {
    say('Creating the demo project …')
    await createDemo(store, new Date())
  }
  const pinned = await pinStoredRuns(store)
  if (!pinned.ok) throw new Error(english(null).say(pinned.error.message))
  const pictures = pictureCheck()
  const photos = await openPhotoFolder(join(settings.dataFolder, 'photos'), pictures.faultIn)
  const packets = await openPacketFolder(join(settings.dataFolder, 'packets'))
  const { version } = JSON.parse(await readFile(packageFile, 'utf8')) as { readonly version: string }
  const now = (): Date => new Date()
  const { port, trustPort, origin } = settings
  const lan = isLan ? await openLanServer(settings.dataFolder, now, say) : null
  const host = lan === null ? settings.host : '0.0.0.0'
  const doors = doorsOf(host, origin, () => machineNames().all)
  const app = await createApp({ store, photos, packets, pageFolder, now, version, doors, lan })
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
    say(words)
    await app.close()
    await store.close()
    process.exit(2)
  }
  let isEnding = false
  const end = (): void => {
    if (isEnding) return
    isEnding = true
    say('Closing …')
    // Whoever holds a connection open with a request that does not end cannot hold the server.
    const cut = setTimeout(() => app.server.closeAllConnections(), grace)
    void Promise.all([app.close(), trust?.close()])
      .then(() => clearTimeout(cut))
      .then(() => pictures.close())
      .then(() => store.close())
      .then(() => process.exit(0))
  }
  process.on('SIGTERM', end)
  process.on('SIGINT', end)
  const shown = lan === null ? address : `https://${machineNames().stable}:${new URL(address).port}`
  process.stdout.write(`Lapwise is ready at ${shown}/\n`)
}

/** What the words of the command line ask for, when they are known. */
type Wish = 'serve' | 'lan' | 'help' | 'unknown' | { readonly revoke: string | null }

function readWords(words: readonly string[]): Wish {
  const [first, second] = words
  if (first === undefined) return 'serve'
  if (words.every((word) => word === '--help' || word === '-h')) return 'help'
  if (first === '--lan' && words.length === 1) return 'lan'
  if (first === 'devices' && words.length === 1) return { revoke: null }
  return first === 'shut-out' && second !== undefined && words.length === 2 ? { revoke: second } : 'unknown'
}

/** Lists the devices that were let in, or shuts those of one name out, also while the server runs. */
async function tendDevices(dataFolder: string, { revoke }: { readonly revoke: string | null }): Promise<void> {
  const devices = openDeviceList(lanFolder(dataFolder))
  if (revoke === null) {
    for (const { name, since } of await devices.list()) process.stdout.write(`${name}\tlet in ${since}\n`)
    return
  }
  const count = await devices.revoke(revoke)
  if (count > 0) return say(`Shut out: ${revoke}`)
  say(`No device ${JSON.stringify(revoke)} was let in.`)
  process.exitCode = 1
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

function storeWords(setting: 'LAPWISE_DATA' | 'DATABASE_URL', problem: StoreProblem): string {
  switch (problem.kind) {
    case 'folder-in-use': {
      const by = problem.pid === null ? 'another process' : `process ${problem.pid}`
      return `${setting}: ${problem.folder} is in use by ${by}; end that one, or set another folder`
    }
    case 'cannot-open':
      return `${setting}: the store in ${problem.place} cannot be opened: ${problem.reason}`
    case 'newer-store':
      return `${setting}: the store was written by a newer Lapwise (version ${problem.storeVersion} of its tables; this one knows ${problem.programVersion})`
  }
}

/** What `--help` prints; anything else on the command line is refused, since nothing there would count. */
function tellSettings(words: readonly string[], wish: 'help' | 'unknown'): void {
  const wide = Math.max(...settingsTable.map(({ name }) => name.length))
  const lines = settingsTable.map(
    ({ name, standard, meaning }) => `  ${name.padEnd(wide)}  ${meaning}${standard === '' ? '' : ` (${standard})`}`,
  )
  const help = [
    'Starts the Lapwise server, for this machine alone.',
    '  --lan          for phones on the local network: encrypted, by an authority of its own, each device let in by a code',
    '  devices        lists the devices that were let in',
    '  shut-out NAME  ends what lets the devices of that name in',
    'It is told of what it needs by environment variables:',
    ...lines,
  ].join('\n')
  if (wish === 'help') {
    process.stdout.write(`${help}\n`)
    return
  }
  say(`The server takes no ${words.join(' ')}.\n${help}`)
  process.exit(2)
}

const say = (text: string): void => {
  process.stderr.write(`${text}\n`)
}
