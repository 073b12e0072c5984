import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, fsyncSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { setTimeout as wait } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { sql } from 'kysely'
import { afterAll, afterEach, describe, expect, it } from 'vitest'
import { lockFolder } from '../../src/store/embedded/folder-lock.ts'
import { openEmbedded } from '../../src/store/embedded/open-embedded.ts'
import { openStore } from '../../src/store/store.ts'
import { answered, append, reading } from './sample-entries.ts'

const scratch = mkdtempSync(join(tmpdir(), 'lapwise-durability-'))
afterAll(() => rmSync(scratch, { recursive: true, force: true }))

const children = new Set<ChildProcess>()
afterEach(() => {
  for (const child of children) child.kill('SIGKILL')
})

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

  it('is refused to a second process, which is told who has it', async () => {
    const store = answered(await openStore({ kind: 'embedded', folder }))
    answered(await store.createProject({ id: 'p', name: 'P' }))
    await append(store, [reading('p', 'a')])
    const second = startChild(folder, 'second')
    expect(await nextLine(second)).toEqual(['refused', { kind: 'folder-in-use', folder, pid: process.pid }])
    await append(store, [reading('p', 'b')])
    await store.close()
    const third = startChild(folder, 'third')
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
      const holder = startChild(folder, `holder-${round}`)
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

  it('cannot be one that is a file', async () => {
    const refused = await openStore({ kind: 'embedded', folder: fileURLToPath(import.meta.url) })
    expect(refused).toMatchObject({ ok: false, error: { kind: 'cannot-open' } })
  })
})

describe('a process that is killed', () => {
  const rounds = 20

  it(`keeps every acknowledged entry, once, through ${rounds} kills at any moment`, async () => {
    const folder = join(scratch, 'held')
    const random = seededRandom(20_260_504)
    const acknowledged: string[] = []
    for (let round = 0; round < rounds; round++) {
      const child = startChild(folder, `round-${round}`)
      const lines = linesOf(child)
      const [word, kept] = parse((await lines.next()).value)
      expect(word).toBe('kept')
      expectKept(kept, acknowledged)
      const killed = wait(20 + random() * 400).then(() => kill(child))
      for await (const line of lines) acknowledged.push(...parse(line)[1])
      await killed
    }
    const store = answered(await openStore({ kind: 'embedded', folder }))
    const kept = answered(await store.entries({ project: 'p', limit: 1_000_000 }))
    expectKept(
      kept.map((entry) => entry.id),
      acknowledged,
    )
    await store.close()
    expect(acknowledged.length).toBeGreaterThan(rounds)
  }, 300_000) // half a minute on a quiet machine; a ceiling for a busy one

  it('leaves a folder that opens, when it is killed while it makes the database', async () => {
    const folder = join(scratch, 'killed-early')
    const half = join(folder, 'database.unfinished', 'PG_VERSION')
    const child = startChild(folder, 'early')
    while (!existsSync(half)) await wait(5)
    await kill(child)
    expect(existsSync(join(folder, 'database'))).toBe(false)
    const store = answered(await openStore({ kind: 'embedded', folder }))
    answered(await store.createProject({ id: 'p', name: 'P' }))
    expect(await append(store, [reading('p', 'a')])).toMatchObject([{ outcome: 'stored' }])
    await store.close()
  })
})

/** Every acknowledged id is kept, and none is kept twice. */
function expectKept(kept: readonly string[], acknowledged: readonly string[]): void {
  const present = new Set(kept)
  expect(acknowledged.filter((id) => !present.has(id))).toEqual([])
  expect(present.size).toBe(kept.length)
}

function startChild(folder: string, prefix: string): ChildProcess {
  const script = fileURLToPath(new URL('append-until-killed.ts', import.meta.url))
  const child = spawn(process.execPath, ['--import', 'tsx', script, folder, prefix], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  children.add(child)
  child.once('exit', () => children.delete(child))
  return child
}

async function kill(child: ChildProcess): Promise<void> {
  const gone = once(child, 'exit')
  child.kill('SIGKILL')
  await gone
}

function linesOf(child: ChildProcess): AsyncIterableIterator<string> {
  return createInterface({ input: child.stdout! })[Symbol.asyncIterator]()
}

async function nextLine(child: ChildProcess): Promise<[string, unknown]> {
  return parse((await linesOf(child).next()).value)
}

function parse(line: string): [string, string[]] {
  const space = line.indexOf(' ')
  return [line.slice(0, space), JSON.parse(line.slice(space + 1))]
}

/** Numbers in [0, 1) that come out the same each time: a linear congruential generator (Numerical Recipes, 7.1). */
function seededRandom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}
