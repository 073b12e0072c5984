import { spawnSync } from 'node:child_process'
import { createHash, randomBytes } from 'node:crypto'
import { once } from 'node:events'
import { get } from 'node:http'
import { connect, createServer } from 'node:net'
import { brotliDecompressSync, gunzipSync } from 'node:zlib'
import { unzipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { entryId } from '../../src/formats/entry-id.ts'
import { openStore } from '../../src/store/store.ts'
import { ditchRun } from '../fixtures/run-files.ts'
import { kindsOfDatabase } from '../store/databases.ts'
import { servedOn } from './served.ts'
import { newServerPlace } from './server-place.ts'
import { serverProgram, spawnServer } from './web/serve.ts'

const run = entryId(Date.now(), randomBytes(10))

/** An own run as a device hands it in. */
const runEntry = {
  ...{ id: run, run, kind: 'run', schemaVersion: 1, author: 'R. Quist', device: 'phone', supersedes: null },
  capturedAt: '2026-05-04T15:30:00.000Z',
  body: ditchRun,
}

describe.each(kindsOfDatabase)('a server on $name', ({ start }) => {
  const served = servedOn(start)
  const { ask } = served

  describe('the list of runs', () => {
    test('shows the demo run of a new store, not acceptable with four findings and nothing unread', async () => {
      const { status, body } = await ask('/api/runs')
      expect(status).toBe(200)
      expect(body.runs[0]).toMatchObject({ project: 'demo', route: 'County Road 14' })
      expect(body.runs[0].judged).toMatchObject({
        acceptance: { kind: 'not acceptable' },
        findings: 4,
        counts: { unread: 0 },
      })
    })
  })

  test('a run stored by other rules than those of today is listed with what is wrong, and holds up no other', async () => {
    const own = await newServerPlace(served.databases)
    const first = await own.start()
    await first.stop()
    const opened = await openStore(own.config)
    if (!opened.ok) throw new Error('the store does not open')
    const run = {
      ...{ format: 'lapwise-run/1', name: 'Old run', system: 'w-beam-midspan-31', need: { from: 0, to: 600 } },
      ...{ first: { sheet: 'flared-terminal-31' }, second: { sheet: 'trailing-anchor-31' } },
    }
    const entry = { project: 'demo', schemaVersion: 1, author: 'R. Quist', device: 'tablet', supersedes: null }
    const capturedAt = '2026-05-04T13:20:00.250-05:00'
    const at = { by: 'R. Quist', at: '2026-05-04T13:20:00.250-05:00' }
    const coarse = { id: 'old-reading', of: 'post-3/rail-height', value: '31 in', resolution: '1000 ft', ...at }
    const appended = await opened.value.append([
      { ...entry, id: 'old-1', run: 'old-1', kind: 'run', capturedAt, body: { ...run, road: { speed: 9999 } } },
      { ...entry, id: 'old-2', run: 'old-2', kind: 'run', capturedAt, body: { ...run, name: 'Old readings' } },
      { ...entry, id: 'old-reading', run: 'old-2', kind: 'reading', capturedAt, body: coarse },
    ])
    const dayLog = {
      day: '0001-01-01',
      done: '-',
      postsDriven: [],
      panelsHung: [],
      crew: [],
      openEnds: 'none',
      openEndsNote: null,
    }
    const logged = await opened.value.append([
      { ...entry, id: 'old-3', run: 'old-3', kind: 'run', capturedAt, body: { ...run, name: 'Old log' } },
      { ...entry, id: 'old-log', run: 'old-3', kind: 'day-log', capturedAt, body: dayLog },
    ])
    expect(logged).toMatchObject({ ok: true, value: Array(2).fill({ outcome: 'stored' }) })
    expect(appended).toMatchObject({ ok: true, value: Array(3).fill({ outcome: 'stored' }) })
    await opened.value.close()

    const again = await own.start()
    const get = async (path: string) => {
      const response = await fetch(again.address + path)
      return { status: response.status, body: (await response.json()) as object }
    }
    for (let time = 0; time < 2; time++)
      expect(await get('/api/runs')).toMatchObject({
        status: 200,
        body: {
          runs: [
            { project: 'demo', judged: { acceptance: { kind: 'not acceptable' } } },
            { id: 'old-1', name: 'Old run', judged: null, problems: [{ place: 'road.speed', found: '9999' }] },
            { id: 'old-2', name: 'Old readings', judged: null, problems: [{ place: 'readings[0].resolution' }] },
            { id: 'old-3', name: 'Old log', problems: [] },
          ],
        },
      })
    expect((await get('/api/runs/old-1')).status).toBe(400)
    expect((await get('/api/runs/old-2/record.pdf')).status).toBe(400)
    expect(await get('/api/runs/old-3/record.pdf')).toMatchObject({
      status: 400,
      body: { error: { problems: [{ place: 'day' }] } },
    })
    await again.stop()
    await own.drop()
  })

  test('a run of 10 miles is taken in and judged once for all lists', async () => {
    const id = '0190a1b2-0000-7000-8000-00000000000a'
    const run = {
      ...{ format: 'lapwise-run/1', name: 'Ten miles', system: 'w-beam-midspan-31', need: { from: 0, to: '52800 ft' } },
      ...{ first: { sheet: 'tangent-terminal-31' }, second: { sheet: 'tangent-terminal-31' } },
    }
    const entry = { id, run: id, kind: 'run', schemaVersion: 1, author: 'R. Quist', device: 'phone', supersedes: null }
    const sent = await ask('/api/entries', { entries: [{ ...entry, capturedAt: '2026-05-04T13:20:00Z', body: run }] })
    expect(sent.body.answers[0].outcome).toBe('stored')
    const listed = await ask('/api/runs')
    expect(listed.body.runs.at(-1).judged.counts.unread).toBeGreaterThan(50_000)
    const before = performance.now()
    expect((await ask('/api/runs')).body).toEqual(listed.body)
    // Judging it takes seconds; what is kept takes no part of one.
    expect(performance.now() - before).toBeLessThan(500)
  })

  describe('documents', () => {
    test('are the record as PDF and the strip as SVG', async () => {
      const record = await ask(`/api/runs/${served.demo}/record.pdf?page=A4`)
      expect(record.headers.get('content-type')).toBe('application/pdf')
      expect(record.body.slice(0, 5)).toBe('%PDF-')
      const strip = await ask(`/api/runs/${served.demo}/strip.svg?page=letter`)
      expect(strip.headers.get('content-type')).toContain('image/svg+xml')
      // Letter paper, landscape: 11 in are 279.4 mm.
      expect(strip.body).toContain('width="279.4mm"')
    })

    test('of an unknown paper are refused, and of an unknown run not found', async () => {
      const paper = await ask(`/api/runs/${served.demo}/record.pdf?page=A5`)
      expect(paper.status).toBe(400)
      expect(paper.body.error.problems[0]).toMatchObject({ place: 'page' })
      expect((await ask('/api/runs/nowhere/record.pdf')).status).toBe(404)
      expect((await ask('/api/runs/nowhere')).body.error.message).toBe('There is no run nowhere.')
    })
  })

  describe('the packet', () => {
    const wish = { page: 'letter', author: 'R. Quist', rounding: '1 ft', photos: true, zone: 'America/Denver' }

    test('is told of file by file, and comes as a ZIP whose files are those of its manifest', async () => {
      const { status, body, headers } = await ask(`/api/runs/${served.demo}/packet`, wish)
      expect(status).toBe(200)
      expect(headers.get('content-type')).toBe('application/x-ndjson')
      const lines = (body as string)
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line))
      const steps = lines.slice(0, -1).map(({ making }) => making)
      expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1))
      expect(steps.every(({ of }) => of === steps.length)).toBe(true)

      const response = await fetch(`${served.address}/api/packets/${lines.at(-1).packet}`)
      expect(response.headers.get('content-type')).toBe('application/zip')
      const files = unzipSync(new Uint8Array(await response.arrayBuffer()))
      const [top] = /^Alder-Creek-culvert-right-side-packet-\d{4}-\d\d-\d\d-v1\//.exec(Object.keys(files)[0]!)!
      expect(Object.keys(files)).toEqual(steps.map(({ file }) => top + file))
      const manifest = JSON.parse(new TextDecoder().decode(files[`${top}manifest.json`]))
      expect(manifest).toMatchObject({ acceptance: 'not acceptable', author: 'R. Quist' })
      expect(manifest.pay.rounding).toContain('1 ft')
      expect(manifest.files.map(({ name }: { name: string }) => top + name)).toEqual(Object.keys(files).slice(0, -1))
      for (const { name, sha256 } of manifest.files)
        expect(
          createHash('sha256')
            .update(files[top + name]!)
            .digest('hex'),
          name,
        ).toBe(sha256)
    })

    test('of an unknown run, with an unknown rounding or not kept any longer is refused', async () => {
      expect((await ask('/api/runs/nowhere/packet', wish)).status).toBe(404)
      const { status, body } = await ask(`/api/runs/${served.demo}/packet`, { ...wish, rounding: '2 ft' })
      expect(status).toBe(400)
      expect(body.error.problems[0]).toMatchObject({ place: 'rounding' })
      const nowhere = await ask(`/api/runs/${served.demo}/packet`, { ...wish, zone: 'Moon/Tycho' })
      expect(nowhere.body.error.problems[0]).toMatchObject({ place: 'zone' })
      expect((await ask('/api/packets/00000000-0000-4000-8000-000000000000')).status).toBe(404)
    })
  })

  describe('the page', () => {
    test('comes for the addresses of its views, and says what may run in it', async () => {
      for (const path of ['/', `/runs/${served.demo}`, `/runs/${served.demo}/walk/post-1/stub-height`]) {
        const { status, body, headers } = await ask(path)
        expect(status).toBe(200)
        expect(body).toContain('<div id="page">')
        expect(headers.get('content-security-policy')).toContain("default-src 'self'")
        expect(headers.get('cache-control')).toBe('no-cache')
      }
      expect((await ask('/roads')).status).toBe(404)
      expect((await ask('/api/roads')).status).toBe(404)
    })

    test('has scripts that may be kept for ever, since their names change with them', async () => {
      const script = /assets\/[\w-]+\.js/.exec((await ask('/')).body)![0]
      const { headers } = await ask(`/${script}`)
      expect(headers.get('cache-control')).toContain('immutable')
      expect(headers.get('x-content-type-options')).toBe('nosniff')
    })

    test('is asked for anew as long as its name stays, also its worker', async () => {
      expect((await ask('/sw.js')).headers.get('cache-control')).toBe('no-cache')
      expect((await ask('/manifest.webmanifest')).headers.get('cache-control')).toBe('no-cache')
    })

    test.each(['br', 'gzip'])(
      'is sent packed as %s, and so are answers, to whoever says that it can unpack',
      async (kind) => {
        const script = /assets\/page-[\w-]+\.js/.exec((await ask('/')).body)![0]
        for (const path of [`/${script}`, '/api/entries', `/api/runs/${served.demo}`]) {
          const plain = await sent(path, 'identity')
          const packed = await sent(path, kind)
          expect(plain.kind).toBeUndefined()
          expect(packed.kind).toBe(kind)
          expect(packed.bytes.length).toBeLessThan(0.5 * plain.bytes.length)
          const unpacked = kind === 'br' ? brotliDecompressSync(packed.bytes) : gunzipSync(packed.bytes)
          expect(unpacked.equals(plain.bytes)).toBe(true)
        }
      },
    )
  })

  /** An answer as it comes over the line; `fetch` would unpack it. */
  const sent = (path: string, encoding: string): Promise<{ kind: string | undefined; bytes: Buffer }> =>
    new Promise((resolve, reject) => {
      get(served.address + path, { headers: { 'accept-encoding': encoding } }, (answer) => {
        const pieces: Buffer[] = []
        answer.on('data', (piece: Buffer) => pieces.push(piece))
        answer.on('end', () => resolve({ kind: answer.headers['content-encoding'], bytes: Buffer.concat(pieces) }))
      }).on('error', reject)
    })

  describe('the start', () => {
    test('says that it is alive and ready', async () => {
      expect((await ask('/healthz')).body).toEqual({ state: 'alive' })
      expect((await ask('/readyz')).body).toEqual({ state: 'ready' })
    })

    test('stops when the port is taken, and lets go of the store', async () => {
      const other = createServer()
      const port = await new Promise<number>((resolve) =>
        other.listen(0, '127.0.0.1', () => resolve((other.address() as { port: number }).port)),
      )
      const own = await newServerPlace(served.databases)
      const { code, messages } = await spawnServer({ ...own.settings, LAPWISE_PORT: String(port) }).ended
      expect(code).toBe(2)
      expect(messages).toContain(`LAPWISE_PORT: port ${port} of 127.0.0.1 is taken`)
      other.close()
      const again = await own.start()
      await again.stop()
      await own.drop()
    })

    test('ends when it is told to, also while requests are begun and never ended', async () => {
      const own = await newServerPlace(served.databases)
      const waiting = await own.startProcess()
      const { port } = new URL(waiting.address)
      const silent = connect(Number(port), '127.0.0.1')
      const half = connect(Number(port), '127.0.0.1')
      const cut = [silent, half].map((socket) => new Promise((resolve) => socket.on('close', resolve)))
      await Promise.all([silent, half].map((socket) => new Promise((resolve) => socket.on('connect', resolve))))
      half.write(
        `POST /api/entries HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\ncontent-type: application/json\r\ncontent-length: 900\r\n\r\n{`,
      )
      // By then the server has begun to read the half request.
      expect((await fetch(`${waiting.address}/healthz`)).status).toBe(200)
      await waiting.stop()
      await Promise.all(cut)
      await own.drop()
    })

    test('keeps what was acknowledged when it is killed', async () => {
      const own = await newServerPlace(served.databases)
      const first = await own.startProcess()
      const sent = await fetch(`${first.address}/api/entries`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ entries: [runEntry] }),
      })
      expect(await sent.json()).toMatchObject({ answers: [{ id: runEntry.id, outcome: 'stored' }] })
      first.process.kill('SIGKILL')
      await once(first.process, 'close')
      const again = await own.start()
      const { runs } = (await (await fetch(`${again.address}/api/runs`)).json()) as { runs: { id: string }[] }
      expect(runs.map(({ id }) => id)).toContain(runEntry.id)
      await again.stop()
      await own.drop()
    })

    test('keeps what was stored, and makes the demo run only once', async () => {
      const own = await newServerPlace(served.databases, 'empty')
      const first = await own.start()
      const list = async (address: string) => (await (await fetch(`${address}/api/runs`)).json()) as { runs: unknown[] }
      const before = await list(first.address)
      await first.stop()
      const second = await own.start()
      expect(await list(second.address)).toEqual(before)
      await second.stop()
      await own.drop()
    })
  })
})

const ended = (...words: readonly string[]) =>
  spawnSync(process.execPath, [serverProgram, 'serve', ...words], { encoding: 'utf8' })

describe('the start of the program', () => {
  test('stops with the name of each setting that makes no sense', async () => {
    const { code, messages } = await spawnServer({ LAPWISE_PORT: '70000', LAPWISE_DATA: ' ' }).ended
    expect(code).toBe(2)
    expect(messages).toContain('LAPWISE_PORT: expected a whole number from 0 (any free port) to 65535, found "70000"')
    expect(messages).toContain('LAPWISE_DATA')
  })

  test('prints its settings when asked, and refuses words that would not count', () => {
    const help = ended('--help')
    expect(help).toMatchObject({ status: 0 })
    expect(help.stdout).toMatch(/DATABASE_URL +a database on a PostgreSQL server/)
    const wrong = ended('--port', '80')
    expect(wrong).toMatchObject({ status: 2 })
    expect(wrong.stderr).toContain(
      'expected an option of serve (lapwise serve --help lists them), found unknown option',
    )
  })
})
