import { createHash } from 'node:crypto'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { entriesOf } from '../../src/server/backup/entries-of.ts'
import { readBackup } from '../../src/server/backup/read-backup.ts'
import { restoreBackup } from '../../src/server/backup/restore-backup.ts'
import { verifyEntries } from '../../src/server/backup/verify-entries.ts'
import { writeBackup } from '../../src/server/backup/write-backup.ts'
import type { StoredEntry } from '../../src/store/entry.ts'
import { openStore, type Store } from '../../src/store/store.ts'
import { isInstalled, outputOf } from '../cases/documents/outside-programs.ts'
import { type Databases, kindsOfDatabase } from './databases.ts'
import { answered, append, reading } from './sample-entries.ts'

const hashOf = (text: string): string => createHash('sha256').update(text).digest('hex')

const at = new Date('2026-05-12T10:00:00Z')

describe.each(kindsOfDatabase)('a backup of a store in $name', ({ start }) => {
  let databases: Databases
  let folder: string
  let store: Store
  const opened: Store[] = []
  const pathOf = (...names: readonly string[]): string => join(folder, ...names)

  const newStore = async (): Promise<Store> => {
    const made = answered(await openStore(await databases.newDatabase()))
    opened.push(made)
    return made
  }
  const everything = async (of: Store) => ({
    projects: answered(await of.projects()),
    entries: answered(await of.entries({ limit: 10_000 })),
  })
  const backUp = (name: string) => writeBackup(store, pathOf('photos'), pathOf(name), at, '1.2.3')
  const changed = (name: string, part: string, from: string, to: string): string => {
    const copy = `${name}-changed`
    cpSync(pathOf(name), pathOf(copy), { recursive: true })
    const text = readFileSync(pathOf(copy, part), 'utf8')
    expect(text).toContain(from)
    writeFileSync(pathOf(copy, part), text.replace(from, to))
    return copy
  }

  beforeAll(async () => {
    databases = await start()
    folder = mkdtempSync(join(tmpdir(), 'lapwise-backup-'))
    mkdirSync(pathOf('photos', 'uploads'), { recursive: true })
    for (const content of ['one', 'two']) writeFileSync(pathOf('photos', hashOf(content)), content)
    store = answered(await openStore(await databases.newDatabase()))
    for (const id of ['p', 'q']) answered(await store.createProject({ id, name: `Project ${id}` }))
    // What ends a line elsewhere, what has no character of its own in a file, and a number that must come back as it is.
    const body = { note: 'first\u2028second\r\nthird \\ "x"', value: 0.1 + 0.2, kept: [null, true, -0.5e-7] }
    await append(store, [reading('p', 'a', { body }), reading('q', 'b', { run: null, supersedes: 'p/a' })])
    // More than are read in one go, and a number in the order of storing that was given and not used.
    await append(store, [reading('no-project', 'x')])
    for (let i = 0; i < 3; i++)
      await append(
        store,
        Array.from({ length: 400 }, (_, k) => reading('p', `${i}-${k}`)),
      )
  })
  afterEach(async () => {
    for (const one of opened.splice(0)) await one.close()
  })
  afterAll(async () => {
    await store.close()
    await databases.stop()
    rmSync(folder, { recursive: true, force: true })
  })

  it('puts everything back as it was, in the same order and times; what comes next is stored after it', async () => {
    expect(await backUp('whole')).toEqual({
      ok: true,
      value: { to: pathOf('whole'), entries: 1202, photos: 2, damaged: [] },
    })
    const again = await newStore()
    const restored = await restoreBackup(again, pathOf('photos-again'), pathOf('whole'))
    expect(restored).toEqual({ ok: true, value: { entries: 1202, photos: 2, missing: [] } })
    const [before, after] = [await everything(store), await everything(again)]
    expect(after).toEqual(before)
    expect(readdirSync(pathOf('photos-again')).sort()).toEqual([hashOf('one'), hashOf('two')].sort())
    expect(readFileSync(pathOf('photos-again', hashOf('two')), 'utf8')).toBe('two')
    const [next] = await append(again, [reading('p', 'next')])
    expect(next).toMatchObject({ outcome: 'stored', seq: before.entries.at(-1)!.seq + 1 })
    // What was there is recognised, so a phone that sends it again is told that it is stored.
    expect(await append(again, [reading('p', '0-0')])).toMatchObject([{ outcome: 'already' }])
    expect(answered(await again.summaries(1)).old.map(({ run }) => run)).toEqual(['run-1'])
  })

  it('leaves a store alone that has anything in it, and a folder that is there', async () => {
    answered(await backUp('once'))
    expect(await backUp('once')).toMatchObject({ ok: false, error: expect.stringContaining('is there already') })
    const taken = await newStore()
    answered(await taken.createProject({ id: 'own', name: 'Own' }))
    const refused = await restoreBackup(taken, pathOf('photos-taken'), pathOf('once'))
    expect(refused).toMatchObject({ ok: false, error: expect.stringContaining('has something in it') })
    expect((await everything(taken)).entries).toEqual([])
  })

  it('is refused, and nothing of it is put back, where a line is not as it was written', async () => {
    answered(await backUp('sound'))
    const empty = await newStore()
    const refusedBy = async (name: string) => {
      const answer = await restoreBackup(empty, pathOf('photos-none'), pathOf(name))
      expect(await everything(empty)).toEqual({ projects: [], entries: [] })
      return answer.ok ? 'put back' : answer.error
    }
    const one = changed('sound', 'entries.jsonl', '27.75', '27.00')
    expect(await refusedBy(one)).toBe('entries.jsonl: expected the bytes of which manifest.json holds the hash')
    // Whoever writes the hash of the file anew meets the hash of the entry.
    const text = readFileSync(pathOf(one, 'entries.jsonl'), 'utf8')
    const manifest = JSON.parse(readFileSync(pathOf(one, 'manifest.json'), 'utf8'))
    writeFileSync(
      pathOf(one, 'manifest.json'),
      JSON.stringify({ ...manifest, entries: { ...manifest.entries, sha256: hashOf(text) } }),
    )
    expect(await refusedBy(one)).toMatch(/^entries.jsonl: entry q\/b: its body is not the one that was stored$/)
    rmSync(pathOf(one), { recursive: true })
    expect(await refusedBy(changed('sound', 'manifest.json', 'backup/1', 'backup/2'))).toContain('manifest.json')
    expect(await refusedBy('not-there')).toContain('manifest.json')
  })

  it('has a head that shows what was changed before it', async () => {
    answered(await backUp('headed'))
    const entries = answered(await store.entries({ limit: 10_000 }))
    const pieces = async function* (of: readonly StoredEntry[]) {
      yield of
    }
    const whole = await verifyEntries(entriesOf(store), 1000)
    expect(whole).toMatchObject({ head: { count: 1202 }, changed: [], photos: [] })
    expect((await verifyEntries((await readBackup(pathOf('headed'))).entries(), null)).head).toEqual(whole.head)
    expect((await verifyEntries(pieces(entries.slice(0, 1000)), null)).head.hash).toBe(whole.then)
    // Each entry before the head is in it: left out, in another order, by another person or at another time.
    const [first, second, ...rest] = entries
    for (const others of [
      [second!, ...rest],
      [second!, first!, ...rest],
      [{ ...first!, author: 'Somebody else' }, second!, ...rest],
      [{ ...first!, storedAt: '2026-01-01T00:00:00.000Z' }, second!, ...rest],
    ])
      expect((await verifyEntries(pieces(others), 1000)).then).not.toBe(whole.then)
    const reworded = { ...second!, body: { value: 31 } }
    expect(await verifyEntries(pieces([first!, reworded, ...rest]), null)).toMatchObject({ changed: [second!.id] })
  })

  it.skipIf(!isInstalled('python3'))('has a head that another program computes from its lines', async () => {
    answered(await backUp('told'))
    const script = `
import hashlib, json, sys
head = '0' * 64
for line in open(sys.argv[1], encoding='utf-8', newline='\\n'):
    entry = json.loads(line)
    del entry['body']
    told = json.dumps(entry, sort_keys=True, separators=(',', ':'), ensure_ascii=False)
    head = hashlib.sha256((head + '\\n' + told).encode()).hexdigest()
print(head)`
    expect(outputOf('python3', '-c', script, pathOf('told', 'entries.jsonl')).trim()).toBe(
      (await verifyEntries(entriesOf(store), null)).head.hash,
    )
  })

  it('names the photos that are not what their names say, on either way', async () => {
    const wrong = hashOf('another')
    writeFileSync(pathOf('photos', wrong), 'changed')
    expect(await backUp('damaged')).toMatchObject({ ok: true, value: { photos: 2, damaged: [wrong] } })
    rmSync(pathOf('photos', wrong))
    writeFileSync(pathOf('damaged', 'photos', hashOf('one')), 'eins')
    rmSync(pathOf('damaged', 'photos', hashOf('two')))
    const restored = await restoreBackup(await newStore(), pathOf('photos-damaged'), pathOf('damaged'))
    expect(restored).toMatchObject({ ok: true, value: { entries: 1202, photos: 0 } })
    expect(restored.ok && [...restored.value.missing].sort()).toEqual([hashOf('one'), hashOf('two')].sort())
    expect(readdirSync(pathOf('photos-damaged'))).toEqual([])
  })
})
