import 'fake-indexeddb/auto'
import { readFileSync } from 'node:fs'
import { describe, expect, test, vi } from 'vitest'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import { pinsOf } from '../../operations/pin-entry.ts'
import { landedSheets } from '../../sheets/landed-sheets.ts'
import { sha256 } from '../../store/sha256.ts'
import { withoutPlace } from './device-entry.ts'
import { type DeviceStore, openDeviceStore } from './device-store.ts'
import { openTables } from './device-tables.ts'
import { openedRun } from './drawn-run.ts'
import { readKeptRun } from './kept-run.ts'
import { pinnedVersions } from './pinned-versions.ts'
import { takeInFile } from './take-in-file.ts'

// What a phone held on the day before runs held their layout.
const landed = readFileSync(new URL('../../../test/cases/landed/demo/device.json', import.meta.url), 'utf8')
const { entries } = JSON.parse(landed) as { readonly entries: readonly Entry[] }
const [first] = entries.filter(({ kind }) => kind === 'run') as [Entry]
const expected = JSON.parse(
  readFileSync(new URL('../../../test/cases/landed/demo/expected.json', import.meta.url), 'utf8'),
) as { readonly verdicts: readonly { readonly requirement: string; readonly verdict: string }[] }

let made = 0
const landedStore = async (): Promise<DeviceStore> => {
  const store = openDeviceStore(() => openTables(`pinned-${++made}`))
  const added = await store.add(entries.map((entry) => ({ ...entry, project: 'demo' })))
  if (!added.ok) throw new Error(added.error.reason)
  return store
}
async function keptVersions(store: DeviceStore) {
  const versions = await store.entries('run', first.id)
  const readings = await store.entries('reading', first.id)
  if (!versions.ok || !readings.ok) throw new Error('the store does not answer')
  return { versions: versions.value, readings: readings.value }
}
async function pinned(store: DeviceStore) {
  const versions = await pinnedVersions(store, first.id, (await keptVersions(store)).versions)
  if (!versions.ok) throw new Error('the run cannot be pinned')
  return versions.value
}

describe('a run that lies on a phone without a layout', () => {
  test('is pinned by the phone with the entry that the server makes of it', async () => {
    const versions = await pinned(await landedStore())
    // The server hashes by its own means.
    const byServer = await pinsOf(entries, landedSheets, sha256)
    expect(byServer).toHaveLength(1)
    expect(versions.map(withoutPlace)).toEqual([first, ...byServer])
    expect(versions[1]).toMatchObject({ project: 'demo', state: 'here' })
  })

  test('is pinned once, however often it is opened', async () => {
    const store = await landedStore()
    const once = await pinned(store)
    expect(await pinned(store)).toEqual(once)
    expect((await keptVersions(store)).versions).toHaveLength(2)
  })

  test('is judged as it was then', async () => {
    const store = await landedStore()
    await pinned(store)
    const { versions, readings } = await keptVersions(store)
    const kept = readKeptRun(first.id, versions, readings)
    if (!kept?.ok) throw new Error('the run cannot be read')
    expect(kept.value.version).toBe(versions[1]!.id)
    const { drawn } = openedRun(kept.value)
    if (!drawn.ok) throw new Error('the run cannot be laid out')
    const { verdicts } = drawn.value.judged.judgement
    expect(verdicts.map(({ requirement, verdict }) => ({ requirement, verdict }))).toEqual(
      expected.verdicts.map(({ requirement, verdict }) => ({ requirement, verdict })),
    )
  })

  test('takes in a file whose readings name the version by which it is pinned', async () => {
    const [pin] = (await pinsOf(entries, landedSheets, sha256)) as [Entry]
    const id = first.id.replace(/^(.{9})..../, '$10fff')
    const reading = (version: string) => ({
      ...{ ...first, id, kind: 'reading', schemaVersion: 3, supersedes: null },
      body: { id, of: 'post-1/stub-height', value: '3 in', by: first.author, at: first.capturedAt, version },
    })
    const file = (version: string) =>
      new File([JSON.stringify({ ...JSON.parse(landed), entries: [reading(version)], photos: [] })], 'd.json')
    // A browser's own; one without locks.
    vi.stubGlobal('navigator', {})
    const store = await landedStore()
    expect(await takeInFile(store, file('another version'))).toMatchObject({
      ok: true,
      value: {
        entries: 0,
        left: [{ problems: [{ place: 'entries[0].body.version', expected: { kind: 'version of run' } }] }],
      },
    })
    expect(await takeInFile(store, file(pin.id))).toMatchObject({ ok: true, value: { entries: 1, left: [] } })
  })
})
