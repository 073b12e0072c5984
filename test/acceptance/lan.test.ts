import { spawnSync } from 'node:child_process'
import { X509Certificate } from 'node:crypto'
import { readFile, stat } from 'node:fs/promises'
import { request as askPlain, type IncomingHttpHeaders } from 'node:http'
import { request as askEncrypted } from 'node:https'
import { join } from 'node:path'
import { SaxesParser } from 'saxes'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { dropFolder, preparedFolder, serverProgram } from './web/serve.ts'
import { type LanServer, startLanServer } from './web/serve-lan.ts'

let folder: string
let server: LanServer

beforeAll(async () => {
  folder = await preparedFolder()
  server = await startLanServer(folder)
})

afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
})

interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly body: Buffer
}

interface Asked {
  readonly method?: string
  readonly headers?: Readonly<Record<string, string>>
  readonly json?: unknown
}

function ask(port: number, path: string, { method, headers, json }: Asked = {}, isPlain = false): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const options = {
      ...{ host: '127.0.0.1', port, path, method: method ?? (json === undefined ? 'GET' : 'POST') },
      headers: {
        host: `localhost:${port}`,
        ...(json === undefined ? {} : { 'content-type': 'application/json' }),
        ...headers,
      },
    }
    const sent = isPlain
      ? askPlain(options)
      : askEncrypted({ ...options, ca: server.authority, servername: 'localhost' })
    sent.on('error', reject)
    sent.on('response', (response) => {
      const pieces: Buffer[] = []
      response.on('data', (piece: Buffer) => pieces.push(piece))
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(pieces) }),
      )
    })
    sent.end(json === undefined ? undefined : JSON.stringify(json))
  })
}

const letIn = (code: string, device: string) => ask(server.port, '/api/let-in', { json: { code, device } })
const cookieOf = ({ headers }: Answer): string => headers['set-cookie']![0]!.split(';')[0]!

test('the keys can be read by their owner alone', async () => {
  for (const name of ['authority', 'server'])
    expect((await stat(join(folder, 'lan', `${name}.json`))).mode & 0o077).toBe(0)
})

describe('without having been let in', () => {
  test.each(['/api/runs', '/api/entries', '/api/photos/abc', '/%61pi/runs', '/ap%69/entries'])(
    'a device gets nothing of %s',
    async (path) => {
      expect((await ask(server.port, path)).status).toBe(401)
    },
  )

  test('it gives nothing either', async () => {
    expect((await ask(server.port, '/api/entries', { json: { entries: [] } })).status).toBe(401)
  })

  test('a made-up token is worth nothing', async () => {
    const headers = { cookie: `__Host-lapwise-device=${'A'.repeat(43)}` }
    expect((await ask(server.port, '/api/runs', { headers })).status).toBe(401)
  })

  test('it gets the page, which holds no data, and what tells that the line is trusted', async () => {
    expect((await ask(server.port, '/')).status).toBe(200)
    expect((await ask(server.port, '/lan-check')).headers['access-control-allow-origin']).toBe('*')
  })
})

describe('the code', () => {
  test('lets one device in, once, and the next is another', async () => {
    const code = server.code()
    const first = await letIn(code.toLowerCase(), 'phone of R. Quist')
    expect(first.status).toBe(200)
    expect(first.headers['set-cookie']![0]).toMatch(/; Path=\/; Secure; HttpOnly; SameSite=Strict/)
    const runs = await ask(server.port, '/api/runs', { headers: { cookie: cookieOf(first) } })
    expect(JSON.parse(runs.body.toString()).runs).toHaveLength(1)
    expect((await letIn(code, 'another phone')).status).toBe(403)
    await expect.poll(() => server.code()).not.toBe(code)
  })

  test('is not written where the devices are kept, nor is any token', async () => {
    const answer = await letIn(server.code(), 'tablet')
    const token = cookieOf(answer).split('=')[1]!
    expect(await readFile(join(folder, 'lan', 'devices.json'), 'utf8')).not.toContain(token)
  })

  test('cannot be guessed: after ten wrong ones even the right one has to wait', async () => {
    for (let i = 0; i < 10; i++) await letIn('AAAA-AAAA', 'guesser')
    expect((await letIn(server.code(), 'guesser')).status).toBe(429)
  })
})

test('a device that is shut out by the command gets nothing from then on, while the server runs', async () => {
  const own = await preparedFolder()
  const other = await startLanServer(own)
  try {
    const cookie = await letInAt(other, 'lost phone')
    expect((await askOther(other, '/api/runs', { cookie })).status).toBe(200)
    const words = (...args: readonly string[]) =>
      spawnSync(process.execPath, [serverProgram, 'serve', ...args], {
        env: { ...process.env, LAPWISE_DATA: own },
        encoding: 'utf8',
      })
    expect(words('devices').stdout).toMatch(/^lost phone\tlet in /)
    expect(words('shut-out', 'no such phone').status).toBe(1)
    expect(words('shut-out', 'lost phone').status).toBe(0)
    expect((await askOther(other, '/api/runs', { cookie })).status).toBe(401)
  } finally {
    await other.stop()
    await dropFolder(own)
  }
})

describe('pages of other sites', () => {
  test('that came by a name of their own for this machine are not answered', async () => {
    const { status, body } = await ask(server.port, '/', { headers: { host: `rebound.example:${server.port}` } })
    expect(status).toBe(421)
    expect(body.toString()).toContain('rebound.example')
  })

  test('may send nothing', async () => {
    const headers = { origin: 'https://other.example' }
    expect((await ask(server.port, '/api/let-in', { headers, json: {} })).status).toBe(403)
    expect((await ask(server.port, '/api/runs', { headers })).status).toBe(403)
  })
})

describe('the plain address', () => {
  test('shows how to trust the other one, and hands out its authority', async () => {
    const page = await ask(server.trustPort, '/anything', {}, true)
    expect([page.status, page.headers.location]).toEqual([302, '/trust'])
    const file = await ask(server.trustPort, '/trust/authority.crt', {}, true)
    expect(new X509Certificate(file.body).fingerprint256).toBe(new X509Certificate(server.authority).fingerprint256)
    const trust = await ask(server.trustPort, '/trust', {}, true)
    expect(trust.body.toString()).toContain(new X509Certificate(server.authority).fingerprint256)
  })

  test('has a profile for the phones that want one, with the same certificate', async () => {
    const { body, headers } = await ask(server.trustPort, '/trust/authority.mobileconfig', {}, true)
    expect(headers['content-type']).toBe('application/x-apple-aspen-config')
    const data = /<data>([^<]+)<\/data>/.exec(body.toString())![1]!.replaceAll(/\s/g, '')
    expect(new X509Certificate(Buffer.from(data, 'base64')).fingerprint256).toBe(
      new X509Certificate(server.authority).fingerprint256,
    )
    const parser = new SaxesParser()
    parser.write(body.toString()).close()
  })

  test.each(['/api/runs', '/index.html', '/assets/'])('serves nothing of %s', async (path) => {
    expect((await ask(server.trustPort, path, {}, true)).status).toBe(302)
    expect((await ask(server.trustPort, path, { json: {} }, true)).status).toBe(404)
  })
})

test('a port for the plain address that is taken is named by its setting', async () => {
  const own = await preparedFolder()
  const env = { ...process.env, LAPWISE_DATA: own, LAPWISE_PORT: '0', LAPWISE_TRUST_PORT: `${server.trustPort}` }
  const { status, stderr } = spawnSync(process.execPath, [serverProgram, 'serve', '--lan'], { env, encoding: 'utf8' })
  expect(stderr).toContain(`LAPWISE_TRUST_PORT: port ${server.trustPort} of 0.0.0.0 is taken by another program`)
  expect(status).toBe(2)
  await dropFolder(own)
})

test('the authority stays when the server starts again, and so does who was let in', async () => {
  const own = await preparedFolder()
  const first = await startLanServer(own)
  const cookie = await letInAt(first, 'phone')
  await first.stop()
  const second = await startLanServer(own)
  try {
    expect(second.authority).toBe(first.authority)
    expect((await askOther(second, '/api/runs', { cookie })).status).toBe(200)
  } finally {
    await second.stop()
    await dropFolder(own)
  }
})

async function letInAt(other: LanServer, device: string): Promise<string> {
  const answer = await withServer(other, () => letIn(other.code(), device))
  return cookieOf(answer)
}

const askOther = (other: LanServer, path: string, headers: Readonly<Record<string, string>>): Promise<Answer> =>
  withServer(other, () => ask(other.port, path, { headers }))

/** Asks another server than the one of this file. */
async function withServer<T>(other: LanServer, asked: () => Promise<T>): Promise<T> {
  const before = server
  server = other
  try {
    return await asked()
  } finally {
    server = before
  }
}
