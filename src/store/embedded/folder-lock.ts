import { randomBytes, randomInt } from 'node:crypto'
import { lstatSync, readdirSync, rmSync } from 'node:fs'
import type { Server } from 'node:net'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { err, ok, type Result } from '../../core/result.ts'
import { sha256 } from '../sha256.ts'
import { askListener, type Listener, listenAs, type Standing } from './local-socket.ts'

export interface FolderLock {
  /** False once the name by which others see the hold is gone, as by somebody's tidying: then another may have come in. */
  isHeld(): boolean
  release(): Promise<void>
}

/** Who has the folder; the number is missing when the holder was too busy to answer. */
export interface Holder {
  readonly pid: number | null
}

/**
 * The hold on `folder`, until it is released or the process ends in whatever way; or who has it already.
 *
 * The hold is a listening local socket, which the system closes with its process. On Windows that is a named pipe,
 * which only one process can make. Elsewhere it is a file in the folder, so that containers which share the folder see
 * it too. Two machines that share the folder over a network do not see each other's hold. A name can be deleted under
 * its holder: `isHeld` then says so, and whoever writes asks it first.
 *
 * @param folder  the real path: no symbolic links in it
 */
export async function lockFolder(folder: string): Promise<Result<FolderLock, Holder>> {
  if (process.platform === 'win32') return holdPipe(`\\\\.\\pipe\\${nameOf(folder)}`)
  const inFolder = { directory: folder, prefix: 'in-use-' }
  const byName = { directory: '/tmp', prefix: `${nameOf(folder)}-` }
  const fits = Buffer.byteLength(newAddress(inFolder)) <= longestAddress
  return (fits && (await holdAmong(inFolder))) || (await holdAmong(byName)) || noSockets()
}

function nameOf(folder: string): string {
  return `lapwise-${sha256(folder).slice(0, 32)}`
}

function noSockets(): never {
  throw new Error('neither the folder nor /tmp can hold a local socket')
}

async function holdPipe(address: string): Promise<Result<FolderLock, Holder>> {
  const server = await listenAs(address, () => 'holding')
  return typeof server === 'string'
    ? err({ pid: (await askListener(address))?.pid ?? null })
    : ok(lockOf(server, () => true))
}

/** Where the sockets of all who want one folder stand: each has a name of its own that begins alike. */
interface Meeting {
  readonly directory: string
  readonly prefix: string
}

/** Longest path of a socket, bytes: macOS allows 103 and Linux 107, beyond which the system cuts it off silently. */
const longestAddress = 103

function newAddress({ directory, prefix }: Meeting): string {
  return join(directory, `${prefix}${randomBytes(6).toString('hex')}.socket`)
}

/** How often to ask again when several ask at the same moment: our judgement, some seconds in all. */
const attempts = 30

/**
 * The hold, or who has it; null where the file system has no sockets.
 *
 * Whoever wants the hold first shows itself and then looks around; it has the hold if nobody else is there. Of two
 * who come together at least one sees the other, so both never have it; who sees only others that are asking as well
 * steps back for a moment of random length. Names are never used twice, so clearing away what a killed process left
 * cannot hit anyone alive, save one that has shown itself and does not listen yet: it finds its name gone.
 */
async function holdAmong(meeting: Meeting): Promise<Result<FolderLock, Holder> | null> {
  let rival: Listener = { standing: 'asking', pid: null }
  for (let attempt = 0; attempt < attempts; attempt++) {
    let standing: Standing = 'asking'
    const address = newAddress(meeting)
    const server = await listenAs(address, () => standing)
    if (typeof server === 'string') return null
    const seen = await othersThan(address, meeting)
    if (seen === 'alone') {
      standing = 'holding'
      const own = fileNumberAt(address)
      return ok(lockOf(server, () => own !== null && fileNumberAt(address) === own))
    }
    await ended(server)
    if (seen === 'overlooked') continue
    rival = seen
    if (rival.standing === 'holding') break
    await wait(randomInt(10, 200))
  }
  return err({ pid: rival.pid })
}

/** Who else is alive at the meeting, a holder before one who asks; `overlooked` if others cleared our name away. */
async function othersThan(address: string, meeting: Meeting): Promise<Listener | 'alone' | 'overlooked'> {
  const addresses = readdirSync(meeting.directory)
    .filter((name) => name.startsWith(meeting.prefix) && name.endsWith('.socket'))
    .map((name) => join(meeting.directory, name))
  if (!addresses.includes(address)) return 'overlooked'
  let asking: Listener | null = null
  for (const other of addresses) {
    if (other === address) continue
    const listener = await askListener(other)
    if (listener === null) rmSync(other, { force: true })
    else if (listener.standing === 'holding') return listener
    else asking = listener
  }
  return asking ?? 'alone'
}

function fileNumberAt(address: string): bigint | null {
  return lstatSync(address, { bigint: true, throwIfNoEntry: false })?.ino ?? null
}

function lockOf(server: Server, isHeld: () => boolean): FolderLock {
  return { isHeld, release: () => ended(server) }
}

function ended(server: Server): Promise<void> {
  return new Promise((resolve) => server.close(() => resolve()))
}
