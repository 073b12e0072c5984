import { createHash, randomBytes } from 'node:crypto'
import { once } from 'node:events'
import fs from 'node:fs'
import { readdir, readFile } from 'node:fs/promises'
import { type AddressInfo, connect, createServer, type Server } from 'node:net'
import { join } from 'node:path'
import { Writable } from 'node:stream'
import { encode } from 'jpeg-js'
import { Upload } from 'tus-js-client'
import { describe, expect, test, vi } from 'vitest'
import { entryId } from '../../src/formats/entry-id.ts'
import { pngOf } from '../cases/documents/png-of.ts'
import { runAllowing } from '../fixtures/roadside.ts'
import { ditchRun } from '../fixtures/run-files.ts'
import { kindsOfDatabase } from '../store/databases.ts'
import { servedOn } from './served.ts'

describe.each(kindsOfDatabase)('a server on $name', ({ start }) => {
  const served = servedOn(start)
  const { ask } = served

  const newId = (): string => entryId(Date.now(), randomBytes(10))

  const at = '2026-05-04T15:30:00.000Z'

  const entry = <T extends object>(id: string, run: string, changes: T) => ({
    ...{ id, run, schemaVersion: 1, author: 'R. Quist', device: 'phone', capturedAt: at, supersedes: null },
    ...changes,
  })

  const runEntry = (id: string, body: object = ditchRun) => entry(id, id, { kind: 'run', body })

  const readingEntry = (id: string, run: string, more: object = { value: '31 in' }, corrects: string | null = null) =>
    entry(id, run, {
      kind: 'reading',
      supersedes: corrects,
      body: { id, of: 'post-3/rail-height', by: 'R. Quist', at, corrects, ...more },
    })

  const dayLog = {
    ...{ day: '2026-05-04', done: 'Posts 1 to 6', postsDriven: [1, 2, 3, 4, 5, 6], panelsHung: [], crew: ['R. Quist'] },
    ...{ openEnds: 'protected', openEndsNote: null },
  }

  const send = (...entries: object[]) => ask('/api/entries', { entries })

  /** Every entry from `after` on, page by page. */
  async function readOn(after: number, limit: number) {
    const entries = []
    for (let cursor = after; ; ) {
      const { body } = await ask(`/api/entries?after=${cursor}&limit=${limit}`)
      entries.push(...body.entries)
      cursor = body.cursor
      if (!body.more) return { entries, cursor }
    }
  }

  describe('entries handed in', () => {
    test('are stored once: a run, its readings and what else a device records, in one batch', async () => {
      const run = newId()
      const batch = [runEntry(run), readingEntry(newId(), run), entry(newId(), run, { kind: 'day-log', body: dayLog })]
      const first = await send(...batch)
      expect(first.body.answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual([
        'stored',
        'stored',
        'stored',
      ])
      const again = await send(...batch.toReversed())
      const seqs = first.body.answers.map(({ seq }: { seq: number }) => seq)
      expect(again.body.answers).toEqual(
        batch.map(({ id }, i) => ({ id, outcome: 'already', seq: seqs[i] })).toReversed(),
      )
      // As it came: a later version that filled in more would no longer find it to be the same.
      const { entries } = await readOn(0, 1000)
      const here = entries.filter((one: { run: string }) => one.run === run)
      expect(here.slice(0, 3).map(({ body }: { body: unknown }) => body)).toEqual(batch.map(({ body }) => body))
      // A device of before sends a run without its layout: the server pins it by one more entry, once.
      expect(here.slice(3)).toMatchObject([{ kind: 'run', supersedes: run, device: 'migration' }])
      const { body } = await ask('/api/runs')
      expect(body.runs.at(-1)).toMatchObject({ id: run, name: 'Ditch at mile 3' })
    })

    test('without a unit are millimetres of a metric run when they are taken in and ever after', async () => {
      const run = newId()
      const metric = runEntry(run, { ...ditchRun, units: 'metric' })
      const { body } = await send(metric, readingEntry(newId(), run, { value: 730 }))
      expect(body.answers).toMatchObject([{ outcome: 'stored' }, { outcome: 'stored' }])
      // 730 mm lies between 27 3/4 in and 30 in, which are 704.85 mm and 762 mm.
      const { runs } = (await ask('/api/runs')).body
      expect(runs.find(({ id }: { id: string }) => id === run)).toMatchObject({ problems: [], judged: { findings: 0 } })
    })

    test('of an offset are taken in from a device of before without a side, and from one of today only with it', async () => {
      const run = newId()
      const of = 'post-1/flare-offset'
      const offset = (schemaVersion: number, more: object) => {
        const reading = readingEntry(newId(), run, { of, value: '48 in', ...more })
        return { ...reading, schemaVersion }
      }
      const [old, bare, sided] = [offset(1, {}), offset(2, {}), offset(2, { side: 'away' })]
      const { body } = await send(runEntry(run), old, bare, offset(1, { side: 'away' }), sided)
      const outcomes = body.answers.map(({ outcome }: { outcome: string }) => outcome)
      expect(outcomes).toEqual(['stored', 'stored', 'rejected', 'rejected', 'stored'])
      expect(body.answers[2].problems).toMatchObject([{ place: 'readings[0].side' }])
      // As it came, also when it is handed in again; what is read of it says that no side is stated.
      expect((await send(old)).body.answers).toMatchObject([{ outcome: 'already' }])
      const { entries } = await readOn(0, 1000)
      expect(entries.find(({ id }: { id: string }) => id === old.id).body).toEqual(old.body)
      const { readings } = (await ask(`/api/runs/${run}`)).body
      const sides = new Map(readings.map(({ id, side }: { id: string; side: string }) => [id, side]))
      expect([sides.size, sides.get(old.id), sides.get(sided.id)]).toEqual([2, 'not stated', 'away'])
    })

    test('of a run that cannot be read or laid out are refused with every problem, and nothing of it is kept', async () => {
      const before = (await ask('/api/runs')).body.runs.length
      const [one, other] = [newId(), newId()]
      const { body } = await send(
        runEntry(one, { ...ditchRun, need: { from: '6-3', to: 'far' } }),
        readingEntry(newId(), one),
        runEntry(other, { ...ditchRun, system: 'no-such-system' }),
      )
      expect(body.answers).toMatchObject([{ outcome: 'rejected' }, { outcome: 'rejected' }, { outcome: 'rejected' }])
      expect(body.answers[0].problems.map(({ place }: { place: string }) => place)).toEqual(['need.from', 'need.to'])
      expect(body.answers[2].problems).toMatchObject([{ place: 'system', found: '"no-such-system"' }])
      expect((await ask('/api/runs')).body.runs).toHaveLength(before)
    })

    test('that are wrong are refused with their problems, and do not hold up the others', async () => {
      const good = newId()
      const [noRun, badLength, badChoice, badBody, otherAuthor] = [newId(), newId(), newId(), newId(), newId()]
      const { body } = await send(
        readingEntry(noRun, 'nowhere'),
        readingEntry(badLength, served.demo, { value: '31 furlongs' }),
        readingEntry(badChoice, served.demo, { of: 'post-3/no-such-thing', value: '31 in' }),
        entry(badBody, served.demo, { kind: 'day-log', body: { ...dayLog, openEnds: 'perhaps' } }),
        { ...readingEntry(otherAuthor, served.demo), author: 'Somebody else' },
        { id: 'no envelope' },
        readingEntry(good, served.demo),
      )
      expect(body.answers.map(({ id, outcome }: { id: string; outcome: string }) => [id, outcome])).toEqual([
        [noRun, 'rejected'],
        [badLength, 'rejected'],
        [badChoice, 'rejected'],
        [badBody, 'rejected'],
        [otherAuthor, 'rejected'],
        ['no envelope', 'rejected'],
        [good, 'stored'],
      ])
      expect(body.answers[0].reason).toContain('there is no run nowhere')
      expect(body.answers[1].problems[0].place).toContain('value')
      expect(body.answers[3].problems[0].place).toBe('body.openEnds')
      expect(body.answers[4].problems[0].place).toBe('author')
    })

    test('under the id of something else are refused', async () => {
      const id = newId()
      await send(readingEntry(id, served.demo))
      const { body } = await send(readingEntry(id, served.demo, { value: '30 in' }))
      expect(body.answers).toMatchObject([
        {
          ...{ id, outcome: 'rejected', reason: 'something else is stored under its id' },
          saying: { kind: 'same id stored' },
        },
      ])
      const run = newId()
      await send(runEntry(run))
      const { runs } = (await ask('/api/runs')).body
      expect(runs.at(-1)).toMatchObject({ id: run, judged: { acceptance: { kind: 'not yet known' }, findings: 0 } })
      const another = await send(runEntry(run, { ...ditchRun, name: 'Another ditch' }))
      expect(another.body.answers).toMatchObject([
        { outcome: 'rejected', reason: 'something else is stored under its id' },
      ])
    })

    test('open in every version of their kind that was ever written, and in no other', async () => {
      const common = { name: 'J. Okafor', role: 'inspector', recordHash: '0'.repeat(64), acceptance: 'acceptable' }
      const rest = { unproven: [], statement: null }
      const first = { ...common, strokes: [[[0, 0.3]]], upTo: served.demo, ...rest }
      const second = { ...common, signature: { kind: 'typed' }, readings: [], ...rest }
      const signOff = (schemaVersion: number, body: object) => ({
        ...entry(newId(), served.demo, { kind: 'sign-off', body }),
        schemaVersion,
      })
      const third = { ...second, acceptance: { kind: 'acceptable except', setAside: 1, by: ['M. Reyes'] } }
      const fourth = { ...third, hashRule: 2, version: served.demo, photos: [] }
      const sound = [signOff(1, first), signOff(2, second), signOff(3, third), signOff(4, fourth)]
      const { body } = await send(
        ...sound,
        signOff(1, second),
        signOff(2, third),
        signOff(3, second),
        signOff(4, third),
        signOff(4, { ...fourth, hashRule: 1 }),
        signOff(5, fourth),
      )
      const outcomes = body.answers.map(({ outcome }: { outcome: string }) => outcome)
      const rejected = Array.from({ length: 6 }, () => 'rejected')
      expect(outcomes).toEqual(['stored', 'stored', 'stored', 'stored', ...rejected])
    })

    test('name posts and panels by number in the first version of a log, by place in the second', async () => {
      const placed = { ...dayLog, version: served.demo, postsDriven: ['post-1', 'post-2'], panelsHung: ['panel-1'] }
      const dates = { calledOn: '2026-05-01', validFrom: '2026-05-04', validThrough: '2026-05-11' }
      const ticketOf = (mark: object) => ({
        number: 'A-100',
        ...dates,
        marks: [{ name: 'gas', alongInches: 3, ...mark }],
      })
      const of = (kind: string, schemaVersion: number, body: object) => ({
        ...entry(newId(), served.demo, { kind, body }),
        schemaVersion,
      })
      const sound = [
        ...[of('day-log', 1, dayLog), of('day-log', 2, placed)],
        ...[of('locate-ticket', 1, ticketOf({})), of('locate-ticket', 2, ticketOf({ from: 'post-1' }))],
      ]
      const { body } = await send(
        ...sound,
        ...[of('day-log', 1, placed), of('day-log', 2, dayLog)],
        of('day-log', 2, { ...placed, postsDriven: ['panel-1'] }),
        ...[of('locate-ticket', 1, ticketOf({ from: 'post-1' })), of('locate-ticket', 2, ticketOf({}))],
      )
      const outcomes = body.answers.map(({ outcome }: { outcome: string }) => outcome)
      expect(outcomes).toEqual([...Array(4).fill('stored'), ...Array(5).fill('rejected')])

      // However well it is formed: what the run never had nobody drove, hung or measured from.
      const unfit = await send(
        of('day-log', 2, { ...placed, postsDriven: ['post-1', 'post-2~0a1b2c'], panelsHung: ['panel-99'] }),
        of('day-log', 1, { ...dayLog, postsDriven: [1, 999] }),
        of('locate-ticket', 2, ticketOf({ from: 'post-999' })),
        of('day-log', 2, { ...placed, version: newId() }),
      )
      const places = unfit.body.answers.map(({ problems }: { problems: { place: string }[] }) =>
        problems.map(({ place }) => place),
      )
      expect(places).toEqual([
        ['body.postsDriven[1]', 'body.panelsHung[0]'],
        ['body.postsDriven[1]'],
        ['body.marks[0].from'],
        ['body.version'],
      ])
      const again = await send(...sound)
      expect(again.body.answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual(Array(4).fill('already'))
    })

    test('need a time with its zone, an answer that is on offer and a correction of the same thing', async () => {
      const [local, choice, wrong, stray] = [newId(), newId(), newId(), newId()]
      const at = '2026-05-04T10:30'
      const { body } = await send(
        { ...readingEntry(local, served.demo, { value: '31 in', at }), capturedAt: at },
        readingEntry(choice, served.demo, { of: 'post-2/block', choice: 'no-such-choice' }),
        readingEntry(wrong, served.demo),
        readingEntry(stray, served.demo, { of: 'post-6/rail-height', value: '31 in' }, wrong),
      )
      expect(body.answers).toMatchObject([
        { id: local, outcome: 'rejected', problems: [{ place: 'at' }] },
        { id: choice, outcome: 'rejected', problems: [{ expected: expect.stringContaining('"block"') }] },
        { id: wrong, outcome: 'stored' },
        { id: stray, outcome: 'rejected', problems: [{ place: 'corrects' }] },
      ])
    })

    test('recheck only a finding that they can prove put right', async () => {
      const [low, astray, right] = [newId(), newId(), newId()]
      const { body } = await send(
        readingEntry(low, served.demo, { of: 'post-7/rail-height', value: '20 in' }),
        readingEntry(astray, served.demo, { of: 'post-7/rail-height', value: '31 in', rechecks: 'splice-2/lap' }),
        readingEntry(right, served.demo, { of: 'post-7/rail-height', value: '31 in', rechecks: 'post-7/rail-height' }),
      )
      expect(body.answers).toMatchObject([
        { id: low, outcome: 'stored' },
        {
          id: astray,
          outcome: 'rejected',
          reason: 'it is not a reading of this run',
          problems: [{ place: 'rechecks' }],
        },
        { id: right, outcome: 'stored' },
      ])
      expect(body.answers[1].problems[0].expected).toContain('post-7/rail-height')
    })

    test('set nothing aside of which no sheet says so, nor what the run file decides', async () => {
      const answer = { doesNotApply: 'by order' }
      const [block, criteria, hold] = [newId(), newId(), newId()]
      const { body } = await send(
        readingEntry(block, served.demo, { of: 'post-6/block', ...answer }),
        readingEntry(criteria, served.demo, { of: 'first/criteria', ...answer }),
        readingEntry(hold, served.demo, { of: 'post-1/lower-post-seen', ...answer }),
      )
      const refused = { outcome: 'rejected', problems: [{ place: 'doesNotApply' }] }
      expect(body.answers).toMatchObject([refused, refused, refused])
      const run = newId()
      const file = JSON.parse(runAllowing(JSON.stringify(ditchRun), ['block']))
      const taken = await send(runEntry(run, file), readingEntry(newId(), run, { of: 'post-6/block', ...answer }))
      expect(taken.body.answers).toMatchObject([{ outcome: 'stored' }, { outcome: 'stored' }])
    })

    test('may correct the same reading twice: both corrections stay', async () => {
      const [wrong, one, other] = [newId(), newId(), newId()]
      const { body } = await send(
        readingEntry(wrong, served.demo),
        readingEntry(one, served.demo, { value: '30 in' }, wrong),
        readingEntry(other, served.demo, { value: '30 1/2 in' }, wrong),
      )
      expect(body.answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual(['stored', 'stored', 'stored'])
      const stray = newId()
      const refused = await send(readingEntry(stray, served.demo, { value: '30 in' }, newId()))
      expect(refused.body.answers).toMatchObject([{ id: stray, outcome: 'rejected' }])
    })

    test('that are too many for one request are refused as a whole', async () => {
      const batch = Array.from({ length: 1001 }, () => readingEntry(newId(), served.demo))
      expect((await send(...batch)).status).toBe(400)
    })
  })

  describe('entries read on', () => {
    test('come in the order of storing over all runs, whatever the devices said of the time', async () => {
      const { cursor } = await readOn(0, 1000)
      const [run, early, late] = [newId(), newId(), newId()]
      await send(runEntry(run), readingEntry(late, run))
      const wrongClock = { ...readingEntry(early, run), capturedAt: '2026-05-03T15:30:00.000Z' }
      await send({ ...wrongClock, body: { ...wrongClock.body, at: '2026-05-03T15:30:00.000Z' } })
      const on = await readOn(cursor, 1)
      const [pin] = on.entries.filter(({ device }: { device: string }) => device === 'migration')
      expect(on.entries.map(({ id }: { id: string }) => id)).toEqual([run, late, pin.id, early])
      const all = (await readOn(0, 7)).entries.map(({ seq }: { seq: number }) => seq)
      expect(all).toEqual([...all].sort((a, b) => a - b))
      expect(new Set(all).size).toBe(all.length)
    })

    test('say what stands at the cursor, so that a device notices another store', async () => {
      const { entries } = await readOn(0, 1000)
      const last = entries.at(-1)
      expect((await ask(`/api/entries?after=${last.seq}`)).body).toMatchObject({
        at: last.id,
        entries: [],
        more: false,
      })
      expect((await ask(`/api/entries?after=${last.seq + 1000}`)).body).toMatchObject({ at: null, entries: [] })
      expect((await ask('/api/entries')).body.at).toBeNull()
    })
  })

  /** A picture of so many bytes, most of them appended to it as cameras append a film. */
  function picture(bytes: number): Buffer {
    const { data } = encode({ width: 8, height: 8, data: Buffer.alloc(256, 128) }, 80)
    return Buffer.concat([data, randomBytes(bytes - data.length)])
  }

  const hashOf = (content: Buffer): string => createHash('sha256').update(content).digest('hex')

  /** Uploads until it is done, or until the connection breaks; where it goes on, and the status that refused it. */
  function upload(content: Buffer, options: { sha256?: string; base?: string; uploadUrl?: string | null } = {}) {
    const { sha256 = hashOf(content), base = served.address, uploadUrl = null } = options
    return new Promise<{ url: string | null; status: number | null; said?: string; done: boolean }>((resolve) => {
      const sending = new Upload(content, {
        endpoint: `${base}/api/photos/uploads`,
        ...{ uploadUrl, metadata: { sha256 }, chunkSize: 256 * 1024, retryDelays: null },
        headers: { accept: 'application/json' },
        onSuccess: () => resolve({ url: sending.url, status: null, done: true }),
        onError: (error) => {
          const response = 'originalResponse' in error ? error.originalResponse : null
          resolve({
            url: sending.url,
            status: response?.getStatus() ?? null,
            said: response?.getBody() ?? '',
            done: false,
          })
        },
      })
      sending.start()
    })
  }

  /** Passes bytes on to the server until it saw so many from the client, then cuts every connection. */
  async function cuttingProxy(bytes: number): Promise<{ base: string; proxy: Server }> {
    const target = new URL(served.address)
    let seen = 0
    const proxy = createServer((client) => {
      const upstream = connect(Number(target.port), target.hostname)
      client.on('data', (piece) => {
        seen += piece.length
        if (seen > bytes) {
          client.destroy()
          upstream.destroy()
        } else upstream.write(piece)
      })
      upstream.on('data', (piece) => client.write(piece))
      for (const [one, other] of [
        [client, upstream],
        [upstream, client],
      ] as const) {
        one.on('error', () => other.destroy())
        one.on('close', () => other.destroy())
      }
    })
    proxy.listen(0, '127.0.0.1')
    await once(proxy, 'listening')
    return { base: `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`, proxy }
  }

  describe('a photo', () => {
    test('whose upload was cut in the middle is completed from where it broke off, and its hash is checked', async () => {
      const content = picture(1_500_000)
      const { base, proxy } = await cuttingProxy(700_000)
      const cut = await upload(content, { base })
      proxy.close()
      expect(cut).toMatchObject({ done: false, status: null })
      expect((await fetch(`${served.address}/api/photos/${hashOf(content)}`)).status).toBe(404)

      const uploadUrl = served.address + new URL(cut.url!).pathname
      const head = await fetch(uploadUrl, { method: 'HEAD', headers: { 'tus-resumable': '1.0.0' } })
      const kept = Number(head.headers.get('upload-offset'))
      expect(kept).toBeGreaterThan(0)
      expect(kept).toBeLessThan(content.length)

      expect(await upload(content, { uploadUrl })).toMatchObject({ done: true })
      const answer = await fetch(`${served.address}/api/photos/${hashOf(content)}`)
      expect(Buffer.from(await answer.arrayBuffer()).equals(content)).toBe(true)
      expect(answer.headers.get('content-type')).toBe('image/jpeg')
      expect(answer.headers.get('content-disposition')).toBe(`attachment; filename="${hashOf(content)}.jpg"`)
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff')
      expect(hashOf(await readFile(join(served.folder, 'photos', hashOf(content))))).toBe(hashOf(content))
      // Asked which of several it has, the server lists those whose bytes are there.
      const listed = await fetch(`${served.address}/api/photos/stored`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ photos: ['a'.repeat(64), hashOf(content)] }),
      })
      expect(await listed.json()).toEqual({ stored: [hashOf(content)] })
    })

    test('for which the server has no room is refused in words, kept by the device, and goes through later', async () => {
      const content = picture(300_000)
      const full = Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC' })
      const writing = vi
        .spyOn(fs, 'createWriteStream')
        .mockImplementation(() => new Writable({ write: (_piece, _encoding, done) => done(full) }) as fs.WriteStream)
      const refused = await upload(content)
      writing.mockRestore()
      expect(refused).toMatchObject({ done: false, status: 507 })
      expect(JSON.parse(refused.said!)).toMatchObject({
        error: { message: expect.stringContaining('disk may be full') },
      })
      expect(await upload(content, { uploadUrl: refused.url })).toMatchObject({ done: true })
    })

    test('that the server no longer takes up begins anew', async () => {
      const content = picture(300_000)
      const uploadUrl = `${served.address}/api/photos/uploads/0123456789abcdef0123456789abcdef`
      expect(await upload(content, { uploadUrl })).toMatchObject({ done: true })
      expect((await fetch(`${served.address}/api/photos/${hashOf(content)}`, { method: 'HEAD' })).status).toBe(200)
    })

    test('that arrived with another hash than it should have is not kept', async () => {
      const [content, other] = [picture(5000), picture(5000)]
      expect(await upload(content, { sha256: hashOf(other) })).toMatchObject({ done: false, status: 422 })
      expect((await fetch(`${served.address}/api/photos/${hashOf(other)}`)).status).toBe(404)
      expect(await readdir(join(served.folder, 'photos', 'uploads'))).toEqual([])
    })

    test('that is none by its content is not kept, whatever it was called', async () => {
      const page = Buffer.from('<!doctype html><script>alert(1)</script>')
      expect(await upload(page)).toMatchObject({ done: false, status: 422 })
      expect((await fetch(`${served.address}/api/photos/${hashOf(page)}`)).status).toBe(404)
    })

    test.each<[string, Uint8Array]>([
      ['of three bytes', Uint8Array.from([0xff, 0xd8, 0xff])],
      ['cut short', picture(2000).subarray(0, 300)],
      ['of 49,922 x 49,922 pixels in a hundred bytes', pngOf(2, 2).with(18, 0xc3).with(22, 0xc3)],
      ['spoilt in its pixels', pngOf(2, 2).with(45, 0xff)],
    ])('%s is refused on arrival, in words', async (_, content) => {
      const sha256 = hashOf(Buffer.from(content))
      expect(await upload(Buffer.from(content))).toMatchObject({ done: false, status: 422 })
      expect((await fetch(`${served.address}/api/photos/${sha256}`)).status).toBe(404)
    })

    test('is looked at apart, so that others are answered meanwhile, and the next one is looked at too', async () => {
      const large = Buffer.from(pngOf(8000, 6000))
      const sending = upload(large)
      const waited: number[] = []
      let isDone = false
      void sending.then(() => {
        isDone = true
      })
      while (!isDone) {
        const before = performance.now()
        await fetch(`${served.address}/healthz`)
        waited.push(performance.now() - before)
      }
      expect(await sending).toMatchObject({ done: true })
      expect(Math.max(...waited)).toBeLessThan(1000)
      expect(await upload(picture(3000))).toMatchObject({ done: true })
    })

    test('that is too large, or does not say its hash, is refused before it is sent', async () => {
      const create = (headers: Record<string, string>) =>
        fetch(`${served.address}/api/photos/uploads`, {
          method: 'POST',
          headers: { 'tus-resumable': '1.0.0', ...headers },
        })
      const metadata = `sha256 ${Buffer.from('0'.repeat(64)).toString('base64')}`
      expect((await create({ 'upload-length': `${26 * 1024 * 1024}`, 'upload-metadata': metadata })).status).toBe(413)
      expect((await create({ 'upload-length': '1000' })).status).toBe(400)
      expect((await fetch(`${served.address}/api/photos/..%2fdatabase`)).status).toBe(400)
    })
  })

  describe('what no honest device sends', () => {
    const refusal = async (path: string, body?: string) => {
      const sent = { method: 'POST', headers: { 'content-type': 'application/json' }, body: body ?? '' }
      const response = await fetch(served.address + path, body === undefined ? {} : sent)
      return { status: response.status, answer: JSON.stringify(await response.json()) }
    }

    test('a NUL in the id of a run is refused and named, not a fault', async () => {
      for (const path of ['/api/runs/a%00b', '/api/runs/a%00b/strip.svg', '/api/runs/a%00b/record.pdf'])
        expect(await refusal(path)).toMatchObject({ status: 400, answer: expect.stringContaining('U+0000') })
      const packet = JSON.stringify({ page: 'letter', author: '', rounding: '0.1 ft', photos: false, zone: 'UTC' })
      expect((await refusal('/api/runs/a%00b/packet', packet)).status).toBe(400)
      const { status, body } = await send(entry(newId(), 'a\u0000b', { kind: 'day-log', body: dayLog }))
      expect([status, body.answers[0].outcome, body.answers[0].problems[0].place]).toEqual([200, 'rejected', 'run'])
    })

    test('nesting without end, and a body that is no JSON, are refused with the place', async () => {
      const deep = `{"entries":[${'['.repeat(100_000)}${']'.repeat(100_000)}]}`
      expect(await refusal('/api/entries', deep)).toMatchObject({
        status: 400,
        answer: expect.stringContaining('at most 100 levels of nesting'),
      })
      expect(await refusal('/api/entries', '{"entries": [}')).toMatchObject({
        status: 400,
        answer: expect.stringContaining('line 1, column 14'),
      })
    })

    test('an id that nobody counted is refused, and what comes after it is ordered as before', async () => {
      const run = newId()
      const far = 'ffffffff-ffff-7fff-bfff-ffffffffffff'
      const { body } = await send(
        runEntry(run),
        readingEntry(far, run, { value: '20 in' }),
        readingEntry(newId(), run),
        entry(newId().replace(/-7(?=...-[89ab])/, '-4'), run, { kind: 'day-log', body: dayLog }),
      )
      expect(body.answers.map(({ outcome }: { outcome: string }) => outcome)).toEqual([
        ...['stored', 'rejected', 'stored', 'rejected'],
      ])
      expect(body.answers[1].problems[0]).toMatchObject({ place: 'id', found: JSON.stringify(far) })
      const late = await send(runEntry(far))
      expect(late.body.answers[0]).toMatchObject({ outcome: 'rejected', problems: [{ place: 'id' }] })
    })

    test('a run of more than 10 miles is refused with what to do instead', async () => {
      const { body } = await send(runEntry(newId(), { ...ditchRun, need: { from: 0, to: '47 ft' } }))
      expect(body.answers[0].outcome).toBe('stored')
      const long = await send(runEntry(newId(), { ...ditchRun, need: { from: 0, to: '58080 ft' } }))
      expect(long.body.answers[0]).toMatchObject({ outcome: 'rejected', problems: [{ place: 'need.to' }] })
      expect(long.body.answers[0].problems[0].expected).toContain('split a longer one')
    })
  })
})
