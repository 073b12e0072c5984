import { ok } from '../../core/result.ts'
import { withoutPlace } from './device-entry.ts'
import type { DeviceStore } from './device-store.ts'
import { start } from './merge-entries.ts'
import type { Answer } from './run-source.ts'
import { batchSize, fetchEntries, sendEntries } from './server-peer.ts'
import { fromStore } from './store-trouble.ts'

/** Another end of the sync: the server or, in a test, what stands for it. */
export interface Peer {
  readonly send: typeof sendEntries
  readonly fetch: typeof fetchEntries
}

const server: Peer = { send: sendEntries, fetch: fetchEntries }

/**
 * Fetches what the server has, sends what it lacks, and fetches what came between. Resolves with the runs that have
 * something new here. It may end at any point and be repeated: every step is on the disk before the next begins.
 */
export async function syncEntries(store: DeviceStore, peer: Peer = server): Answer<readonly string[]> {
  const before = await pull(store, peer)
  if (!before.ok) return before
  const sent = await push(store, peer)
  if (!sent.ok) return sent
  if (!sent.value) return before
  const after = await pull(store, peer)
  return after.ok ? ok([...new Set([...before.value, ...after.value])]) : after
}

async function pull(store: DeviceStore, peer: Peer): Answer<readonly string[]> {
  const changed = new Set<string>()
  for (;;) {
    const kept = await store.get('cursor')
    // Without knowing how far it has read, a device may not read at all: it would begin anew as if it were empty.
    if (!kept.ok) return fromStore(kept.error)
    const cursor = kept.value ?? start
    const page = await peer.fetch(cursor.seq)
    if (!page.ok) return page
    if (cursor.seq > 0 && page.value.at !== cursor.id) {
      const anew = await store.startOver()
      if (!anew.ok) return fromStore(anew.error)
      continue
    }
    const taken = await store.takePage(page.value)
    if (!taken.ok) return fromStore(taken.error)
    for (const run of taken.value) changed.add(run)
    if (!page.value.more) return ok([...changed])
  }
}

/** Sends all that is unsent; whether there was anything. */
async function push(store: DeviceStore, peer: Peer): Answer<boolean> {
  for (let sent = false; ; sent = true) {
    const unsent = await store.unsent(batchSize)
    if (!unsent.ok) return fromStore(unsent.error)
    if (unsent.value.length === 0) return ok(sent)
    const answers = await peer.send(unsent.value.map(withoutPlace))
    if (!answers.ok) return answers
    const answered = new Set(answers.value.map(({ id }) => id))
    if (!unsent.value.every(({ id }) => answered.has(id))) throw new Error('the server left entries without an answer')
    const taken = await store.takeAnswers(answers.value)
    if (!taken.ok) return fromStore(taken.error)
  }
}
