import { readFile, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
}

export interface PlainHost {
  /** Of the folder, with a slash at its end. */
  readonly address: string
  /** Every address that was asked for and is no file of the folder. */
  readonly missed: readonly string[]
  stop(): Promise<void>
}

/** Hands out the files of `folder` below a path of its own, and does nothing else: no rewrites, no headers, no API. */
export async function startPlainHost(folder: string): Promise<PlainHost> {
  const prefix = '/some/prefix/'
  const missed: string[] = []
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host')
    const below = pathname.startsWith(prefix) ? pathname.slice(prefix.length) : '..'
    const file = join(folder, normalize(below === '' ? 'index.html' : below))
    const isFile = file.startsWith(folder) && ((await stat(file).catch(() => null))?.isFile() ?? false)
    if (request.method !== 'GET' || !isFile) {
      missed.push(`${request.method} ${pathname}`)
      response.writeHead(404).end()
      return
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' })
    response.end(await readFile(file))
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${prefix}`,
    missed,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}
