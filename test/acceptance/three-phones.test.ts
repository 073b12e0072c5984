import 'fake-indexeddb/auto'
import { readFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { err, ok } from '../../src/core/result.ts'
import type { Entry } from '../../src/formats/entry/entry-kinds.ts'
import { entryId, entryIdAfter } from '../../src/formats/entry-id.ts'
import type { RunFile } from '../../src/formats/run/run-file.ts'
import { writeRun } from '../../src/formats/run/write-run.ts'
import type { JudgedRun } from '../../src/operations/judge-readings.ts'
import { entriesAfter } from '../../src/server/stored-entries.ts'
import { soundRun } from '../../src/server/stored-runs.ts'
import { takeInEntries } from '../../src/server/take-in-entries.ts'
import { openStore, type Store } from '../../src/store/store.ts'
import { withoutPlace } from '../../src/web/data/device-entry.ts'
import { type DeviceStore, type FreshEntry, openDeviceStore } from '../../src/web/data/device-store.ts'
import { openTables } from '../../src/web/data/device-tables.ts'
import { openedRun } from '../../src/web/data/drawn-run.ts'
import { heardAnswer } from '../../src/web/data/heard.ts'
import { readKeptRun } from '../../src/web/data/kept-run.ts'
import { pinnedVersions } from '../../src/web/data/pinned-versions.ts'
import { type Peer, syncEntries } from '../../src/web/data/sync.ts'
import { demoVersions } from '../fixtures/three-versions.ts'
import { copyEmpty } from './web/serve.ts'

let folder: string
let store: Store

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lapwise-phones-'))
  await copyEmpty(folder)
  const opened = await openStore({ kind: 'embedded', folder })
  if (!opened.ok) throw new Error('the store cannot be opened', { cause: opened.error })
  store = opened.value
})

afterAll(async () => {
  await store.close()
  await rm(folder, { recursive: true })
})

const orders = [
  [0, 1, 2],
  [0, 2, 1],
  [1, 0, 2],
  [1, 2, 0],
  [2, 0, 1],
  [2, 1, 0],
] as const

/** The server, asked by function instead of over a network. */
const server: Peer = {
  async send(entries) {
    const answers = await takeInEntries(store, entries)
    if (!answers.ok) return err({ kind: 'fault', message: 'no answer', problems: [] })
    return ok(await Promise.all(answers.value.map((one) => heardAnswer(JSON.parse(JSON.stringify(one))))))
  },
  async fetch(after) {
    const page = await entriesAfter(store, after, 500)
    if (!page.ok) return err({ kind: 'fault', message: 'no answer', problems: [] })
    const { entries, cursor, cursorId, more, at } = page.value
    return ok({ after, more, at, cursor: { seq: cursor, id: cursorId }, entries: entries as never })
  },
}

/** What a phone holds that was offline since it came by its version: all versions up to that, and what it read. */
interface Week {
  readonly versions: readonly RunFile[]
  readonly held: readonly (readonly FreshEntry[])[]
}

/**
 * A week of three phones. The same in each run but for the count in the ids, so that one store holds all six of them.
 * The phones hold versions 1, 2 and 3. Each reads the height of every post of its version, and then corrects what it
 * read at the first, at post 12 and at the last.
 */
function weekOf(seed: number): Week {
  let made = 0
  const random = (): Uint8Array => Uint8Array.from({ length: 10 }, (_, i) => (++made * 37 + i * 11) % 256)
  const start = 1_790_000_000_000 + seed * 100_000
  const run = entryId(start, random())
  const ids = [run, entryId(start + 1, random()), entryId(start + 2, random())]
  const versions = demoVersions(ids)
  const common = (id: string, phone: number) => ({
    ...{ id, run, project: 'own', author: 'R. Quist', device: `phone ${phone}` },
    capturedAt: '2026-05-04T15:30:00.000Z',
  })
  const runEntries = versions.map(
    (file, i): FreshEntry => ({
      ...({ ...common(ids[i]!, i), kind: 'run', schemaVersion: 2 } as const),
      ...{ supersedes: ids[i - 1] ?? null, body: JSON.parse(writeRun(file)) },
    }),
  )
  const held = versions.map((file, phone) => {
    // Whoever had a later version had seen more.
    let last = entryId(start + 1000 * (phone + 1), random())
    const reading = (of: string, value: string, corrects: string | null): FreshEntry => {
      last = entryIdAfter([last], random())
      const { author: by, capturedAt: at } = common(last, phone)
      return {
        ...({ ...common(last, phone), kind: 'reading', schemaVersion: 3, supersedes: corrects } as const),
        body: { id: last, of, value, by, at, corrects, version: ids[phone] },
      }
    }
    const { posts } = file.version!.layout
    const first = posts.map(({ id }) => reading(`${id}/rail-height`, `${30 + phone / 4} in`, null))
    const again = [posts[0]!, posts.find(({ id }) => id === 'post-12')!, posts.at(-1)!].map(({ id }) => {
      const { of } = first.map(({ body }) => body as { of: string }).find((one) => one.of === `${id}/rail-height`)!
      const before = first.find(({ body }) => (body as { of: string }).of === of)!
      return reading(of, `${31 + phone / 4} in`, before.id)
    })
    return [...runEntries.slice(0, phone + 1), ...first, ...again]
  })
  return { versions, held }
}

const isReading = ({ kind }: FreshEntry): boolean => kind === 'reading'

/** What stands where, whatever it is called: which end or the run, by whose sheet, so many inches from the datum. */
function standing({ system, first, second, version }: RunFile): ReadonlyMap<string, string> {
  const sheets = {
    run: system,
    first: 'sheet' in first ? first.sheet : '',
    second: 'sheet' in second ? second.sheet : '',
  }
  const { posts, postOneAtInches } = version!.layout
  return new Map(
    posts.map(({ id, unit, alongInches }) => [id, `${unit} ${sheets[unit]} ${postOneAtInches + alongInches}`]),
  )
}

let phones = 0
async function syncedIn(order: readonly number[], { held }: Week): Promise<readonly DeviceStore[]> {
  const devices = held.map(() => openDeviceStore(() => openTables(`phone-${++phones}`)))
  for (const [i, device] of devices.entries()) expect(await device.add(held[i]!)).toMatchObject({ ok: true })
  for (const phone of order) expect(await syncEntries(devices[phone]!, server)).toMatchObject({ ok: true })
  // Once more, for what came after.
  for (const device of devices) expect(await syncEntries(device, server)).toMatchObject({ ok: true })
  return devices
}

async function judgedOn(device: DeviceStore, run: string): Promise<JudgedRun> {
  const [versions, readings] = [await device.entries('run', run), await device.entries('reading', run)]
  if (!versions.ok || !readings.ok) throw new Error('the phone does not answer')
  const kept = readKeptRun(run, versions.value, readings.value)
  if (!kept?.ok) throw new Error('the run cannot be read')
  const { drawn } = openedRun(kept.value)
  if (!drawn.ok) throw new Error('the run cannot be laid out')
  return drawn.value.judged
}

const stateOf = ({ run, log, readings, askedEarlier, judgement }: JudgedRun) => ({
  ...{ version: run.version, log, readings, askedEarlier, judgement },
})
/** Without the count in each id, by which alone the weeks differ. */
const withoutCount = (state: unknown): unknown =>
  JSON.parse(JSON.stringify(state).replaceAll(/[0-9a-f]{8}-[0-9a-f]{4}-(7[0-9a-f]{3}-[89ab][0-9a-f]{3}-)/g, '$1'))

describe('three phones that hold three versions of a run, offline for a week', () => {
  const states: unknown[] = []

  test.each(orders.map((order, i) => [order.map((phone) => phone + 1).join(', '), order, i] as const))(
    'sync in the order %s: each phone and the server hold and judge the same',
    async (_, order, i) => {
      const week = weekOf(i)
      const run = week.held[0]![0]!.id
      const devices = await syncedIn(order, week)
      const stored = await soundRun(store, run)
      if (!stored.ok) throw new Error('the run cannot be judged', { cause: stored.error })
      const judged = stored.value

      for (const device of devices) {
        const counts = await device.counts()
        expect(counts).toMatchObject({ ok: true, value: { unsent: 0, refused: [] } })
        expect(stateOf(await judgedOn(device, run))).toEqual(stateOf(judged))
        device.close()
      }
      states.push(withoutCount(stateOf(judged)))

      // The third version is in force, and nothing that anybody read is gone.
      const read = week.held.flatMap((held) => held.filter(isReading))
      expect(judged.run.version!.id).toBe(week.versions[2]!.version!.id)
      expect(judged.log.map(({ id }) => id).sort()).toEqual(read.map(({ id }) => id).sort())
      expect(judged.readings.length + judged.askedEarlier.length).toBe(read.length)

      // What was read of a post that stands where it stood is judged; all else is listed with the version it was read at.
      const now = new Set(standing(week.versions[2]!).values())
      const moved = week.versions.flatMap((file, phone) => {
        const stood = standing(file)
        return week.held[phone]!.filter(isReading).flatMap(({ id, body }) => {
          const { of, version } = body as { readonly of: string; readonly version: string }
          return now.has(stood.get(of.split('/')[0]!)!) ? [] : [{ id, version }]
        })
      })
      const listed = judged.askedEarlier.map(({ reading: { id }, version }) => ({ id, version }))
      expect(listed.sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(moved.sort((a, b) => (a.id < b.id ? -1 : 1)))
      // Both ends of the first version are gone, and the first end of the second.
      expect(moved.filter(({ version }) => version === run).length).toBeGreaterThan(10)
      expect(new Set(moved.map(({ version }) => version)).size).toBe(2)
      expect(judged.askedEarlier.every(({ because }) => because === 'place gone')).toBe(true)

      // Of a post that all three have, what the phone read that had seen most governs, as it corrected it.
      const heightOf = (post: string): unknown => {
        const verdict = judged.judgement.verdicts.find(({ requirement }) => requirement === `${post}/rail-height`)!
        return verdict.because.kind === 'measured' ? verdict.because.value : verdict.because
      }
      expect(['post-10', 'post-12', 'post-18'].map(heightOf)).toEqual([30.5, 31.5, 30.5])
    },
  )

  test('come to one state, whatever the order', () => {
    expect(states).toHaveLength(orders.length)
    for (const state of states) expect(state).toEqual(states[0])
  })
})

describe('a run that lies on a phone and on the server without a layout', () => {
  // What a phone held on the day before runs held their layout.
  const landed = new URL('../cases/landed/demo/device.json', import.meta.url)
  const { entries } = JSON.parse(readFileSync(landed, 'utf8')) as { readonly entries: readonly Entry[] }
  const { run } = entries[0]!

  test('is pinned by each of them with one and the same entry, whoever comes first', async () => {
    const device = openDeviceStore(() => openTables('landed'))
    const fresh = entries.map((entry) => ({ ...entry, project: 'own' }))
    expect(await device.add(fresh)).toMatchObject({ ok: true })
    const bare = await device.entries('run', run)
    if (!bare.ok) throw new Error('the phone does not answer')
    const pinned = await pinnedVersions(device, run, bare.value)
    if (!pinned.ok) throw new Error('the phone does not answer')
    expect(pinned.value.map(({ state }) => state)).toEqual(['here', 'here'])

    // The server comes by the run another way, and pins it by itself.
    const taken = await takeInEntries(store, entries)
    if (!taken.ok) throw new Error('the store does not answer')
    expect(taken.value.every(({ outcome }) => outcome === 'stored')).toBe(true)
    const stored = await store.entries({ runs: [run], kinds: ['run'], limit: 10 })
    if (!stored.ok) throw new Error('the store does not answer')
    expect(stored.value.map(({ id }) => id)).toEqual(pinned.value.map(({ id }) => id))

    expect(await syncEntries(device, server)).toMatchObject({ ok: true })
    expect(await device.counts()).toMatchObject({ ok: true, value: { unsent: 0, refused: [] } })
    const both = await device.entries('run', run)
    expect(both.ok && both.value.map(withoutPlace)).toEqual(pinned.value.map(withoutPlace))
    const answered = await soundRun(store, run)
    expect(stateOf(await judgedOn(device, run))).toEqual(answered.ok && stateOf(answered.value))
    device.close()
  })
})
