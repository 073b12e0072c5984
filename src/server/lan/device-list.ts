import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'
import { readFile, rename, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { z } from 'zod'

const deviceShape = z.object({
  name: z.string(),
  /** SHA-256 of the token, hexadecimal: who reads this file cannot pass for the device. */
  token: z.string(),
  /** ISO 8601. */
  since: z.string(),
})
const listShape = z.object({ format: z.literal('lapwise-devices/1'), devices: z.array(deviceShape) })

/** A device that was let in. */
export type LetInDevice = z.output<typeof deviceShape>

/** The devices that were let in, in a file that a command can change while the server runs. */
export interface DeviceList {
  /** The device whose token this is, or null. */
  of(token: string): Promise<LetInDevice | null>
  /** A new token for a device of this name, whose earlier tokens stay. */
  add(name: string, now: Date): Promise<string>
  list(): Promise<readonly LetInDevice[]>
  /** Ends every token of the devices of this name; how many there were. */
  revoke(name: string): Promise<number>
}

/** Where a server for the local network keeps its keys, and who was let in. */
export const lanFolder = (dataFolder: string): string => join(dataFolder, 'lan')

export function openDeviceList(folder: string): DeviceList {
  const path = join(folder, 'devices.json')
  let known: { readonly stamp: string; readonly devices: readonly LetInDevice[] } | null = null
  let last: Promise<unknown> = Promise.resolve()

  async function read(): Promise<readonly LetInDevice[]> {
    const stamp = await stat(path).then(
      ({ mtimeMs, size, ino }) => `${mtimeMs} ${size} ${ino}`,
      (cause: NodeJS.ErrnoException) => {
        if (cause.code === 'ENOENT') return null
        throw cause
      },
    )
    if (stamp === null) return []
    if (known?.stamp !== stamp)
      known = { stamp, devices: listShape.parse(JSON.parse(await readFile(path, 'utf8'))).devices }
    return known.devices
  }

  async function write(devices: readonly LetInDevice[]): Promise<void> {
    const text = `${JSON.stringify({ format: 'lapwise-devices/1', devices }, null, 2)}\n`
    await writeFile(`${path}.new`, text, { mode: 0o600, flush: true })
    await rename(`${path}.new`, path)
  }

  /** One change after the other, so that none is lost. */
  function inTurn<T>(change: () => Promise<T>): Promise<T> {
    const next = last.then(change, change)
    last = next
    return next
  }

  return {
    list: read,
    of: async (token) => {
      const hash = Buffer.from(hashOf(token))
      return (await read()).find((device) => timingSafeEqual(Buffer.from(device.token), hash)) ?? null
    },
    add: (name, now) =>
      inTurn(async () => {
        const token = randomBytes(32).toString('base64url')
        await write([...(await read()), { name, token: hashOf(token), since: now.toISOString() }])
        return token
      }),
    revoke: (name) =>
      inTurn(async () => {
        const devices = await read()
        const left = devices.filter((device) => device.name !== name)
        if (left.length < devices.length) await write(left)
        return devices.length - left.length
      }),
  }
}

const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex')
