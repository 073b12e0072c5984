import fc from 'fast-check'
import { sql } from 'kysely'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { NewEntry } from '../../src/store/entry.ts'
import { migrations } from '../../src/store/migrations.ts'
import type { OpenDatabase } from '../../src/store/schema.ts'
import { sha256 } from '../../src/store/sha256.ts'
import { storableJson } from '../../src/store/storable-json.ts'
import { openStore, type Store, type StoreConfig } from '../../src/store/store.ts'
import { type Databases, kindsOfDatabase, openDirectly } from './databases.ts'
import { answered, append, reading } from './sample-entries.ts'

/** What a store promises, whichever database it stands on. */
describe.each(kindsOfDatabase)('a store on $name', ({ start }) => {
  let databases: Databases
  let config: StoreConfig
  let store: Store

  beforeAll(async () => {
    databases = await start()
    config = await databases.newDatabase()
    store = answered(await openStore(config))
  })
  afterAll(async () => {
    await store.close()
    await databases.stop()
  })

  /** Lets go of the store while `step` has the database to itself. */
  async function meanwhile(
    step: (database: OpenDatabase) => Promise<void>,
    afterwards: 'reopen' | 'leave closed' = 'reopen',
  ): Promise<void> {
    await store.close()
    const database = await openDirectly(config)
    try {
      await step(database)
    } finally {
      await database.close()
      if (afterwards === 'reopen') store = answered(await openStore(config))
    }
  }

  /** A project of its own for one test. */
  async function project(id: string): Promise<string> {
    answered(await store.createProject({ id, name: `Project ${id}` }))
    return id
  }

  it('makes a project once, and tells when another has its id', async () => {
    const id = 'route-9'
    expect(await store.createProject({ id, name: 'Route 9' })).toEqual({ ok: true, value: 'stored' })
    expect(await store.createProject({ id, name: 'Route 9' })).toEqual({ ok: true, value: 'already' })
    expect(await store.createProject({ id, name: 'Route 10' })).toEqual({
      ok: false,
      error: { kind: 'same-id-different-name', storedName: 'Route 9' },
    })
    expect(answered(await store.projects()).filter((each) => each.id === id)).toMatchObject([{ name: 'Route 9' }])
  })

  it('refuses a project without a name', async () => {
    const refused = await store.createProject({ id: 'nameless', name: '' })
    expect(refused).toMatchObject({ ok: false, error: { kind: 'unstorable', problems: [{ place: 'name' }] } })
  })

  it('gives back what was handed in, its time in UTC', async () => {
    const p = await project('there-and-back')
    const before = reading(p, 'a', { run: null, supersedes: 'not-here-yet' })
    const [answer] = await append(store, [before])
    const [after] = answered(await store.entries({ project: p, limit: 10 }))
    expect(answer).toEqual({ id: before.id, outcome: 'stored', seq: after?.seq })
    expect(after).toEqual({
      ...before,
      capturedAt: '2026-05-04T18:20:00.250Z',
      seq: after?.seq,
      storedAt: expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/),
      bodyHash: sha256('{"requirement":"rail-height@12+37.50","unit":"in","value":27.75}'),
    })
  })

  it('gives back any JSON body unchanged, so that its hash can be checked for ever', async () => {
    const p = await project('any-json')
    const storable = fc.jsonValue().filter((body) => storableJson(body).ok)
    const bodies = fc.sample(storable, { numRuns: 300, seed: 31 })
    const extremes = [null, 0, -0.5, 1e-7, 1e21, 5e-324, Number.MAX_VALUE, 0.1 + 0.2, 'text', '', [], {}]
    const entries = [...bodies, ...extremes].map((body, i) => reading(p, `${i}`, { body }))
    for (const answer of await append(store, entries)) expect(answer.outcome).toBe('stored')
    const kept = answered(await store.entries({ project: p, limit: 1_000 }))
    expect(kept).toHaveLength(entries.length)
    for (const [i, entry] of kept.entries()) {
      expect(answered(storableJson(entry.body))).toBe(answered(storableJson(entries[i]?.body)))
      expect(sha256(answered(storableJson(entry.body)))).toBe(entry.bodyHash)
    }
  })

  it('stores an entry once, however often it is handed in', async () => {
    const p = await project('resent')
    const batch = [reading(p, 'a'), reading(p, 'b')]
    const first = await append(store, batch)
    const again = await append(store, [...batch, reading(p, 'c'), reading(p, 'c')])
    expect(again.map((answer) => answer.outcome)).toEqual(['already', 'already', 'stored', 'already'])
    expect(again.slice(0, 2).map(seqOf)).toEqual(first.map(seqOf))
    expect(answered(await store.entries({ project: p, limit: 10 }))).toHaveLength(3)
  })

  it('takes the same fact as the same, whatever zone its time is written in and order its body', async () => {
    const p = await project('same-fact')
    await append(store, [reading(p, 'a', { body: { value: 1, unit: 'in' } })])
    const same = { capturedAt: '2026-05-04T18:20:00.250Z', body: { unit: 'in', value: 1 } }
    expect(await append(store, [reading(p, 'a', same)])).toMatchObject([{ outcome: 'already' }])
  })

  it('rejects another body under a stored id, keeps the first, and stores the rest of the batch', async () => {
    const p = await project('two-bodies')
    await append(store, [reading(p, 'a', { body: 27.75 })])
    const answers = await append(store, [reading(p, 'a', { body: 28 }), reading(p, 'b')])
    expect(answers).toMatchObject([
      { outcome: 'rejected', reason: { kind: 'same-id-different-body', storedHash: sha256('27.75') } },
      { outcome: 'stored' },
    ])
    const kept = answered(await store.entries({ project: p, limit: 10 }))
    expect(kept.map((entry) => entry.body)).toEqual([27.75, reading(p, 'b').body])
  })

  it('rejects another body under an id of the same batch', async () => {
    const p = await project('two-bodies-at-once')
    const answers = await append(store, [reading(p, 'a', { body: 1 }), reading(p, 'a', { body: 2 })])
    expect(answers).toMatchObject([{ outcome: 'stored' }, { outcome: 'rejected' }])
    expect(answered(await store.entries({ project: p, limit: 10 })).map((entry) => entry.body)).toEqual([1])
  })

  it('rejects a stored id with the same body under another name or run, and says what differs', async () => {
    const p = await project('other-author')
    await append(store, [reading(p, 'a')])
    expect(await append(store, [reading(p, 'a', { author: 'K. Osei', run: null })])).toMatchObject([
      { outcome: 'rejected', reason: { kind: 'same-id-different-fields', fields: ['run', 'author'] } },
    ])
  })

  it.each<[string, Partial<NewEntry>, string]>([
    ['an empty id', { id: '' }, 'id'],
    ['an id too long for an index', { id: 'x'.repeat(201) }, 'id'],
    ['U+0000 in a name', { author: 'R.\u0000Moreno' }, 'author'],
    ['half of a surrogate pair', { device: 'tablet \ud83d' }, 'device'],
    ['a time without a zone', { capturedAt: '2026-05-04T13:20:00' }, 'capturedAt'],
    ['a time that is none', { capturedAt: '2026-02-30T25:00:00Z' }, 'capturedAt'],
    ['a year that PostgreSQL does not have', { capturedAt: '0000-05-04T13:20:00Z' }, 'capturedAt'],
    ['a version that is no whole number', { schemaVersion: 1.5 }, 'schemaVersion'],
    ['a body that is no JSON', { body: { value: Number.NaN } }, 'body.value'],
    ['U+0000 in the body', { body: { note: '\u0000' } }, 'body.note'],
  ])('rejects %s and stores the rest of the batch', async (title, changes, where) => {
    const p = await project(`unstorable: ${title}`)
    const answers = await append(store, [reading(p, 'before'), reading(p, 'x', changes), reading(p, 'after')])
    expect(answers.map((answer) => answer.outcome)).toEqual(['stored', 'rejected', 'stored'])
    expect(answers[1]).toMatchObject({ reason: { kind: 'unstorable', problems: [{ place: where }] } })
  })

  it('rejects an entry of a project it does not know', async () => {
    expect(await append(store, [reading('nowhere', 'a')])).toMatchObject([
      { outcome: 'rejected', reason: { kind: 'unknown-project', project: 'nowhere' } },
    ])
  })

  it('numbers a large batch in its own order', async () => {
    const p = await project('large')
    const entries = Array.from({ length: 2_500 }, (_, i) => reading(p, `${i}`))
    const seqs = (await append(store, entries)).map(seqOf)
    expect(seqs).toEqual([...seqs].sort((a, b) => a - b))
    const kept = answered(await store.entries({ project: p, limit: 5_000 }))
    expect(kept.map((entry) => entry.id)).toEqual(entries.map((entry) => entry.id))
  })

  it('reads by run and kind, and on from a cursor', async () => {
    const p = await project('choices')
    const other = await project('choices-elsewhere')
    await append(store, [
      reading(p, '1'),
      reading(p, '2', { run: null, kind: 'decision' }),
      reading(p, '3', { run: 'run-2' }),
      reading(p, '4', { kind: 'sign-off' }),
      reading(other, '5'),
      reading(p, '6'),
    ])
    const ids = async (query: Partial<Parameters<Store['entries']>[0]>): Promise<readonly string[]> => {
      const chosen = answered(await store.entries({ project: p, limit: 10, ...query }))
      return chosen.map((entry) => entry.id.slice(p.length + 1))
    }
    expect(await ids({})).toEqual(['1', '2', '3', '4', '6'])
    expect(await ids({ runs: ['run-1'] })).toEqual(['1', '4', '6'])
    expect(await ids({ runs: ['run-1'], kinds: ['reading'] })).toEqual(['1', '6'])
    expect(await ids({ limit: 2 })).toEqual(['1', '2'])
    const [, second] = answered(await store.entries({ project: p, limit: 2 }))
    expect(await ids({ after: second!.seq, limit: 2 })).toEqual(['3', '4'])
  })

  it('reads the entries of several runs and kinds at once, over all projects, in the order of storing', async () => {
    const [one, other] = [await project('at-once'), await project('at-once-elsewhere')]
    const run = (id: string) => ({ run: `at-once/${id}` })
    const stored = await append(store, [
      reading(one, '1', run('a')),
      reading(other, '2', run('b')),
      reading(one, '3', { ...run('b'), kind: 'decision' }),
      reading(other, '4', { ...run('a'), kind: 'sign-off' }),
      reading(one, '5', run('c')),
      reading(one, '6', run('a')),
      reading(other, '7', { run: null }),
    ])
    const runs = ['at-once/b', 'at-once/a', 'at-once/nowhere']
    const chosen = answered(await store.entries({ runs, kinds: ['reading', 'decision'], limit: 10 }))
    expect(chosen.map(({ id }) => id)).toEqual([`${one}/1`, `${other}/2`, `${one}/3`, `${one}/6`])
    const all = answered(await store.entries({ after: seqOf(stored[0]!) - 1, limit: 10 }))
    expect(all.map(({ seq }) => seq)).toEqual(stored.map(seqOf))
  })

  it('says of which runs a summary is old as soon as an entry is stored, and keeps none that was made of less', async () => {
    const p = await project('summaries')
    const [one, other] = [{ run: 'summaries/a' }, { run: 'summaries/b' }]
    const stored = await append(store, [reading(p, '1', one), reading(p, '2', other), reading(p, '3', one)])
    const seqs = stored.map(seqOf)
    const kept = async (rule = 1) => answered(await store.summaries(rule))
    const oldNow = async (rule = 1) => (await kept(rule)).old.filter(({ run }) => run.startsWith('summaries/'))
    const first = { ...one, newest: seqs[2] }
    const second = { ...other, newest: seqs[1] }
    expect(await oldNow()).toEqual([first, second])
    const keep = async (upTo: number, content: string, rule = 1) =>
      answered(await store.keepSummaries([{ ...one, upTo, rule, content }]))
    await keep(seqs[0]!, '"of the first"')
    expect(await oldNow()).toEqual([first, second])
    await keep(seqs[2]!, '"of both"')
    expect(await oldNow()).toEqual([second])
    expect((await kept()).list).toContain('"of both"')
    await keep(seqs[0]!, '"of the first"')
    expect((await kept()).list).toContain('"of both"')
    expect(await oldNow(2)).toEqual([first, second])
    const [fourth] = await append(store, [reading(p, '4', one)])
    expect(await oldNow()).toEqual([{ ...one, newest: seqOf(fourth!) }, second])
    expect((await kept()).list).not.toContain('"of both"')
  })

  it('shows a reader who follows the cursor every entry once, while many append', async () => {
    const p = await project('crowd')
    const writers = 8
    const batches = 25
    const stores = config.kind === 'embedded' ? [store] : [store, answered(await openStore(config))]
    let writing = true
    const written = Promise.all(
      Array.from({ length: writers }, async (_, w) => {
        for (let b = 0; b < batches; b++) {
          const batch = Array.from({ length: 1 + ((w + b) % 4) }, (_, i) => reading(p, `${w}-${b}-${i}`))
          await append(stores[w % stores.length]!, batch)
        }
      }),
    ).then(() => {
      writing = false
    })
    const seen: string[] = []
    let cursor = 0
    for (let last = false; !last; ) {
      last = !writing
      const page = answered(await store.entries({ project: p, after: cursor, limit: 1_000 }))
      seen.push(...page.map((entry) => entry.id))
      cursor = page.at(-1)?.seq ?? cursor
    }
    await written
    for (const extra of stores.slice(1)) await extra.close()
    const kept = answered(await store.entries({ project: p, limit: 5_000 }))
    expect(kept).toHaveLength(500) // 8 writers, 25 batches of 1 to 4 entries in turn: 8 x 25 x 2.5
    expect(seen).toEqual(kept.map((entry) => entry.id))
  })

  it('finishes what is under way before it closes, and takes nothing afterwards', async () => {
    const p = await project('closing')
    const underWay = Array.from({ length: 20 }, (_, i) => append(store, [reading(p, `${i}`)]))
    await store.close()
    for (const answers of await Promise.all(underWay)) expect(answers[0]?.outcome).toBe('stored')
    await expect(store.projects()).rejects.toThrow('the store is closed')
    store = answered(await openStore(config))
    expect(answered(await store.entries({ project: p, limit: 50 }))).toHaveLength(20)
  })

  it.each([
    ['changed', "update entry set author = 'someone else'"],
    ['deleted', 'delete from entry'],
    ['cleared away', 'truncate entry'],
  ])('lets no entry be %s, even past its own door', async (_, statement) => {
    const p = await project(`append-only: ${statement}`)
    await append(store, [reading(p, 'a')])
    await meanwhile(async ({ db }) => {
      await expect(sql.raw(statement).execute(db)).rejects.toThrow('an entry is never changed or deleted')
    })
    expect(answered(await store.entries({ project: p, limit: 10 }))).toMatchObject([{ author: 'R. Moreno' }])
  })

  it('names each step of its schema in the table migration', async () => {
    await meanwhile(async ({ db }) => {
      const steps = await db.selectFrom('migration').select(['version', 'name']).orderBy('version').execute()
      expect(steps).toEqual(migrations.map(({ version, name }) => ({ version, name })))
    })
  })

  it('is not opened by a program older than itself, and not touched', async () => {
    const programVersion = migrations.at(-1)!.version
    const later = { version: programVersion + 1, name: 'of a later program' }
    await meanwhile(async ({ db }) => {
      await db.insertInto('migration').values(later).execute()
    }, 'leave closed')
    expect(await openStore(config)).toEqual({
      ok: false,
      error: { kind: 'newer-store', storeVersion: later.version, programVersion },
    })
    const { db, close } = await openDirectly(config)
    await db.deleteFrom('migration').where('version', '=', later.version).execute()
    await close()
    store = answered(await openStore(config))
  })
})

function seqOf(answer: { readonly outcome: string; readonly seq?: number }): number {
  return answer.seq ?? expect.fail(`expected a stored entry, got ${answer.outcome}`)
}
