import { existsSync, fsyncSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { sql } from 'kysely'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { lockFolder } from '../../src/store/embedded/folder-lock.ts'
import { openEmbedded } from '../../src/store/embedded/open-embedded.ts'
import { openStore } from '../../src/store/store.ts'
import { copyEmpty } from '../acceptance/web/serve.ts'
import { buildChild, dropChild, kill, killChildren, linesOf, nextLine, startChild } from './child.ts'
import { answered, append, reading } from './sample-entries.ts'

const scratch = mkdtempSync(join(tmpdir(), 'lapwise-durability-'))
beforeAll(buildChild)
afterAll(() => {
  dropChild()
  rmSync(scratch, { recursive: true, force: true })
})

afterEach(killChildren)

describe('a commit in a folder', () => {
  const folder = join(scratch, 'syncs')
  const synced: number[] = []
  let failing = false
  const syncFile = (descriptor: number): void => {
    if (failing) throw Object.assign(new Error('EIO: the disk failed'), { code: 'EIO' })
    synced.push(descriptor)
    fsyncSync(descriptor)
  }

  it('is on the disk before it is acknowledged: one fsync of the log for each', async () => {
    const { db, close } = answered(await openEmbedded(folder, syncFile))
    await sql`create table fact (n integer)`.execute(db)
    for (let n = 0; n < 50; n++) {
      synced.length = 0
      await sql`insert into fact values (${n})`.execute(db)
      expect(synced.length).toBeGreaterThanOrEqual(1)
    }
    synced.length = 0
    await sql`select count(*) from fact`.execute(db)
    expect(synced).toHaveLength(0)
    await close()
  })

  it('runs with the settings that durability rests on', async () => {
    const { db, close } = answered(await openEmbedded(folder, syncFile))
    const names = ['fsync', 'synchronous_commit', 'full_page_writes', 'wal_sync_method']
    const { rows } = await sql<{ name: string; setting: string }>`
      select name, setting from pg_settings where name = any(${names}::text[])`.execute(db)
    expect(Object.fromEntries(rows.map(({ name, setting }) => [name, setting]))).toEqual({
      fsync: 'on',
      synchronous_commit: 'on',
      full_page_writes: 'on',
      wal_sync_method: 'fsync',
    })
    await close()
  })

  it('fails, and every query after it, when the disk refuses; the folder can be opened again', async () => {
    const { db, close } = answered(await openEmbedded(folder, syncFile))
    failing = true
    await expect(sql`insert into fact values (50)`.execute(db)).rejects.toThrow('could not fsync file')
    failing = false
    await expect(sql`select 1`.execute(db)).rejects.toThrow('could not fsync file')
    await close()
    const again = answered(await openEmbedded(folder, syncFile))
    const { rows } = await sql<{ n: number }>`select n from fact where n < 50 order by n`.execute(again.db)
    expect(rows.map(({ n }) => n)).toEqual(Array.from({ length: 50 }, (_, n) => n))
    await again.close()
  })
})

describe('a folder in use', () => {
  const folder = join(scratch, 'held')
  beforeAll(() => copyEmpty(folder))

  it('is refused to a second process, which is told who has it', async () => {
    const store = answered(await openStore({ kind: 'embedded', folder }))
    answered(await store.createProject({ id: 'p', name: 'P' }))
    await append(store, [reading('p', 'a')])
    const second = startChild({ kind: 'embedded', folder }, 'second')
    expect(await nextLine(second)).toEqual(['refused', { kind: 'folder-in-use', folder, pid: process.pid }])
    await append(store, [reading('p', 'b')])
    await store.close()
    const third = startChild({ kind: 'embedded', folder }, 'third')
    expect(await nextLine(third)).toEqual(['kept', ['p/a', 'p/b']])
    expect(await openStore({ kind: 'embedded', folder })).toMatchObject({ ok: false, error: { pid: third.pid } })
    await kill(third)
  })

  it('is refused to the same process, and under another name', async () => {
    const store = answered(await openStore({ kind: 'embedded', folder }))
    const otherName = join(scratch, 'other-name')
    symlinkSync(folder, otherName)
    for (const name of [folder, otherName]) {
      expect(await openStore({ kind: 'embedded', folder: name })).toEqual({
        ok: false,
        error: { kind: 'folder-in-use', folder, pid: process.pid },
      })
    }
    await store.close()
  })

  it('is never had by two, however many ask at the moment after its holder was killed', async () => {
    for (let round = 0; round < 5; round++) {
      const holder = startChild({ kind: 'embedded', folder }, `holder-${round}`)
      await nextLine(holder)
      await kill(holder)
      const answers = await Promise.all(Array.from({ length: 8 }, () => lockFolder(folder)))
      expect(answers.filter((answer) => answer.ok)).toHaveLength(1)
      for (const answer of answers) {
        if (answer.ok) await answer.value.release()
        else expect(answer.error).toEqual({ pid: process.pid })
      }
      expect(readdirSync(folder)).toEqual(['database'])
    }
  })

  it('is held even where its path is too long for the name of a socket', async () => {
    const deep = join(scratch, 'a-long-name-'.repeat(8))
    mkdirSync(deep)
    const first = answered(await lockFolder(deep))
    expect(await lockFolder(deep)).toEqual({ ok: false, error: { pid: process.pid } })
    await first.release()
    await answered(await lockFolder(deep)).release()
  })

  it('gives its holder nothing more to write once the file that shows the hold is deleted: nothing of a second is lost', async () => {
    const first = answered(await openStore({ kind: 'embedded', folder }))
    answered(await first.createProject({ id: 'p', name: 'P' }))
    await append(first, [reading('p', 'before')])
    for (const name of readdirSync(folder).filter((name) => name.startsWith('in-use-'))) rmSync(join(folder, name))
    const second = startChild({ kind: 'embedded', folder }, 'second-in')
    const said = linesOf(second)
    expect((await said.next()).value).toEqual(['kept', expect.arrayContaining(['p/before'])])
    const [, stored] = (await said.next()).value
    expect(await first.append([reading('p', 'late')])).toEqual({
      ok: false,
      error: { kind: 'unavailable', reason: expect.stringContaining('another may have taken the folder') },
    })
    expect(await first.stopped).toContain(folder)
    await first.close()
    await kill(second)
    const third = answered(await openStore({ kind: 'embedded', folder }))
    const ids = answered(await third.entries({ project: 'p', limit: 10_000 })).map(({ id }) => id)
    expect(ids).toEqual(expect.arrayContaining(['p/before', ...stored]))
    expect(ids).not.toContain('p/late')
    await third.close()
  })

  it('gives one that writes nothing more a good end, and leaves what a second stored', async () => {
    const first = answered(await openStore({ kind: 'embedded', folder }))
    answered(await first.createProject({ id: 'p', name: 'P' }))
    await append(first, [reading('p', 'dirty')])
    for (const name of readdirSync(folder).filter((name) => name.startsWith('in-use-'))) rmSync(join(folder, name))
    const second = answered(await openStore({ kind: 'embedded', folder }))
    await append(second, [reading('p', 'of-the-second')])
    await second.close()
    await first.close()
    const third = answered(await openStore({ kind: 'embedded', folder }))
    const ids = answered(await third.entries({ project: 'p', limit: 10_000 })).map(({ id }) => id)
    expect(ids).toEqual(expect.arrayContaining(['p/dirty', 'p/of-the-second']))
    await third.close()
  })

  it('cannot be one that is a file', async () => {
    const refused = await openStore({ kind: 'embedded', folder: fileURLToPath(import.meta.url) })
    expect(refused).toMatchObject({ ok: false, error: { kind: 'cannot-open' } })
  })
})

describe('a process that is killed', () => {
  it('leaves a folder that opens, when it is killed while it makes the database', async () => {
    const folder = join(scratch, 'killed-early')
    const half = join(folder, 'database.unfinished', 'PG_VERSION')
    const child = startChild({ kind: 'embedded', folder }, 'early')
    while (!existsSync(half)) await wait(5)
    await kill(child)
    expect(existsSync(join(folder, 'database'))).toBe(false)
    const store = answered(await openStore({ kind: 'embedded', folder }))
    answered(await store.createProject({ id: 'p', name: 'P' }))
    expect(await append(store, [reading('p', 'a')])).toMatchObject([{ outcome: 'stored' }])
    await store.close()
  })
})
