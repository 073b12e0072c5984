import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { serverProgram } from './serve.ts'

export interface LanServer {
  readonly port: number
  readonly trustPort: number
  /** Certificate of its authority, PEM. */
  readonly authority: string
  /** The same of the server itself. */
  readonly certificate: string
  /** The code that the console shows now. */
  code(): string
  stop(): Promise<void>
}

/** The server for a local network as a person starts it, once it has said that it is ready. */
export async function startLanServer(dataFolder: string): Promise<LanServer> {
  const child = spawn(process.execPath, [serverProgram, 'serve', '--lan'], {
    env: { ...process.env, LAPWISE_DATA: dataFolder, LAPWISE_PORT: '0', LAPWISE_TRUST_PORT: '0' },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve))
  let said = ''
  const ready = new Promise<void>((resolve, reject) => {
    for (const stream of [child.stdout, child.stderr])
      stream.on('data', (bytes: Buffer) => {
        said += bytes.toString()
        if (said.includes('Lapwise is ready')) resolve()
      })
    void ended.then((code) => reject(new Error(`the server ended with ${code}:\n${said}`)))
  })
  await ready
  const certificateOf = async (name: string): Promise<string> =>
    JSON.parse(await readFile(join(dataFolder, 'lan', `${name}.json`), 'utf8')).certificate
  return {
    port: Number(/ready at https:\/\/[^:]+:(\d+)/.exec(said)![1]),
    trustPort: Number(/http:\/\/[^:]+:(\d+)\/trust/.exec(said)![1]),
    authority: await certificateOf('authority'),
    certificate: await certificateOf('server'),
    code: () => [...said.matchAll(/next device in: (\S+)/g)].at(-1)![1]!,
    stop: async () => {
      child.kill('SIGTERM')
      await ended
    },
  }
}
