import type { ServerProgram, ServerTeller } from '../protocol/server-program.ts'
import { lanFolder, openDeviceList } from './lan/device-list.ts'
import { readSettings, type Settings, settingsTable } from './settings.ts'

/** How a process ends that somebody has to look at, or a supervisor to start again. */
const storeStopped = 1

/** Starts the server and keeps it until the process is told to end, or tends the devices that were let in. */
export const serve: ServerProgram['serve'] = async (wish, tell) => {
  const settings = soundSettings(tell)
  if (settings === null) return 2
  if (wish.kind !== 'start') return tendDevices(settings.dataFolder, wish.kind === 'devices' ? null : wish.device, tell)
  // Loaded when all that was said makes sense: to list devices, or to say what is wrong, nothing of it is needed.
  const { openServer } = await import('./open-server.ts')
  // The codes that let phones in are asked for, and told even to whoever wants to hear little.
  const server = await openServer(settings, wish.isLan, wish.isLan ? tell.say : tell.note)
  if (!server.ok) {
    tell.say(server.error)
    return 2
  }
  let isEnding = false
  const end = (code: number): void => {
    if (isEnding) return
    isEnding = true
    tell.note('Closing …')
    void server.value.close().then(() => process.exit(code))
  }
  process.on('SIGTERM', () => end(0))
  process.on('SIGINT', () => end(0))
  // What is acknowledged is kept. A server that went on would refuse all from here on; one that ends is started again.
  void server.value.stopped.then((reason) => {
    tell.say(
      `The store stopped, and with it this server: ${reason}. Nothing that was acknowledged is lost; start it again.`,
    )
    end(storeStopped)
  })
  tell.print(`Lapwise is ready at ${server.value.address}/`)
  return 0
}

export const backUp: ServerProgram['backUp'] = async (to, tell) => {
  const settings = soundSettings(tell)
  return settings === null ? 2 : (await import('./backup/backup-program.ts')).backUp(settings, to, tell)
}

export const restore: ServerProgram['restore'] = async (from, tell) => {
  const settings = soundSettings(tell)
  return settings === null ? 2 : (await import('./backup/backup-program.ts')).restore(settings, from, tell)
}

export const verify: ServerProgram['verify'] = async (from, head, tell) => {
  const settings = soundSettings(tell)
  return settings === null ? 2 : (await import('./backup/backup-program.ts')).verify(settings, from, head, tell)
}

/** What the environment sets; null where something of it makes no sense, which is told. */
function soundSettings(tell: ServerTeller): Settings | null {
  const settings = readSettings(process.env)
  if (settings.ok) return settings.value
  for (const { setting, expected, found } of settings.error)
    tell.say(`${setting}: expected ${expected}, found ${JSON.stringify(found)}`)
  return null
}

/** Lists the devices that were let in, or shuts those of one name out, also while the server runs. */
async function tendDevices(dataFolder: string, shutOut: string | null, tell: ServerTeller): Promise<0 | 1> {
  const devices = openDeviceList(lanFolder(dataFolder))
  if (shutOut === null) {
    for (const { name, since } of await devices.list()) tell.print(`${name}\tlet in ${since}`)
    return 0
  }
  const count = await devices.revoke(shutOut)
  tell.say(count > 0 ? `Shut out: ${shutOut}` : `No device ${JSON.stringify(shutOut)} was let in.`)
  return count > 0 ? 0 : 1
}

export const settings: ServerProgram['settings'] = () => {
  const wide = Math.max(...settingsTable.map(({ name }) => name.length))
  return settingsTable.map(
    ({ name, standard, meaning }) => `  ${name.padEnd(wide)}  ${meaning}${standard === '' ? '' : ` (${standard})`}`,
  )
}
