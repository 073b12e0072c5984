import { lanFolder, openDeviceList } from './lan/device-list.ts'
import { readSettings, settingsTable } from './settings.ts'

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
  // Loaded when all that was said makes sense: to list devices, or to say what is wrong, nothing of it is needed.
  const { openServer } = await import('./open-server.ts')
  const server = await openServer(settings.value, wish === 'lan', say)
  if (!server.ok) {
    say(server.error)
    process.exit(2)
  }
  let isEnding = false
  const end = (): void => {
    if (isEnding) return
    isEnding = true
    say('Closing …')
    void server.value.close().then(() => process.exit(0))
  }
  process.on('SIGTERM', end)
  process.on('SIGINT', end)
  process.stdout.write(`Lapwise is ready at ${server.value.address}/\n`)
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
