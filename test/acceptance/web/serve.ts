import { type ChildProcess, spawn } from 'node:child_process'
import { cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { openServer } from '../../../src/server/open-server.ts'
import { readSettings } from '../../../src/server/settings.ts'

export const serverProgram = fileURLToPath(new URL('../../../bin/lapwise.mjs', import.meta.url))

export interface RunningServer {
  /** Without a slash at its end. */
  readonly address: string
  stop(): Promise<void>
}

/** One that is a process of its own, which can be killed. */
export interface ServerProcess extends RunningServer {
  readonly process: ChildProcess
  readonly ended: Promise<Ended>
}

export const temporaryFolder = (): Promise<string> => mkdtemp(join(tmpdir(), 'lapwise-test-'))

/** A data folder as a server left it that was started once: the demo run is in it, and nothing else. */
export async function preparedFolder(): Promise<string> {
  const folder = await temporaryFolder()
  await copyPrepared(folder)
  return folder
}

/** Makes a data folder whose database has nothing in it, not even tables. */
export const copyEmpty = (folder: string): Promise<void> =>
  cp(process.env.LAPWISE_TEST_EMPTY!, folder, { recursive: true })

export const copyPrepared = (folder: string): Promise<void> =>
  cp(process.env.LAPWISE_TEST_PREPARED!, folder, { recursive: true })

export const dropFolder = (folder: string): Promise<void> => rm(folder, { recursive: true, force: true })

/**
 * A server in this process: to load the program takes longer than all else at its start. Where the process itself is what
 * is tested (its settings, its end, a kill), or the program is another, `startServerProcess` starts one.
 */
export async function startServer(
  dataFolder: string,
  port = '0',
  more: Readonly<Record<string, string>> = {},
  pageFolder?: string,
): Promise<RunningServer> {
  const settings = readSettings({ LAPWISE_PORT: port, LAPWISE_DATA: dataFolder, ...more })
  if (!settings.ok) throw new Error(JSON.stringify(settings.error))
  const opened = await openServer(settings.value, false, () => {}, pageFolder)
  if (!opened.ok) throw new Error(opened.error)
  const { address, close } = opened.value
  let ended: Promise<void> | null = null
  // As with a process, one that has ended is not ended again.
  const stop = (): Promise<void> => {
    ended ??= close()
    return ended
  }
  return { address, stop }
}

/**
 * The server as a person starts it, once it has printed its address.
 * @param program  of another Lapwise than this one
 */
export async function startServerProcess(
  dataFolder: string,
  more: Readonly<Record<string, string>> = {},
  program = serverProgram,
): Promise<ServerProcess> {
  const { child, ended } = spawnServer({ LAPWISE_PORT: '0', LAPWISE_DATA: dataFolder, ...more }, program)
  const address = await new Promise<string>((resolve, reject) => {
    let said = ''
    child.stdout?.on('data', (bytes: Buffer) => {
      said += bytes.toString()
      const found = /http:\/\/\S+(?=\/)/.exec(said)
      if (found) resolve(found[0])
    })
    void ended.then(({ code, messages }) => reject(new Error(`the server ended with ${code}:\n${messages}`)))
  })
  return {
    address,
    process: child,
    ended,
    async stop() {
      child.kill('SIGTERM')
      await ended
    },
  }
}

interface Ended {
  readonly code: number | null
  readonly messages: string
}

/** Starts the server with these settings alone; `ended` tells how it ended and what it said meanwhile. */
export function spawnServer(
  settings: Readonly<Record<string, string>>,
  program = serverProgram,
): {
  child: ChildProcess
  ended: Promise<Ended>
} {
  const child = spawn(process.execPath, [program, 'serve'], {
    env: { ...process.env, ...settings },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let messages = ''
  child.stderr?.on('data', (bytes: Buffer) => {
    messages += bytes.toString()
  })
  const ended = new Promise<Ended>((resolve) => child.on('close', (code) => resolve({ code, messages })))
  return { child, ended }
}
