import type { EntryAnswer } from '../../protocol/entries.ts'
import type { Page, ServerEntry } from './merge-entries.ts'

export type Written = Omit<ServerEntry, 'seq'>

/** A server as it has to be: it appends what it does not have yet, and reads on from a cursor. */
export class ModelServer {
  readonly log: ServerEntry[] = []

  push(batch: readonly Written[]): EntryAnswer[] {
    return batch.map((entry) => {
      const kept = this.log.find(({ id }) => id === entry.id)
      if (kept !== undefined) return { id: entry.id, outcome: 'already', seq: kept.seq }
      // Not consecutive: a transaction that fails uses a number up.
      const seq = (this.log.at(-1)?.seq ?? 0) + 1 + (this.log.length % 3)
      this.log.push({ ...entry, seq })
      return { id: entry.id, outcome: 'stored', seq }
    })
  }

  page(after: number, limit: number): Page {
    const entries = this.log.filter(({ seq }) => seq > after).slice(0, limit)
    const last = entries.at(-1) ?? this.log.findLast(({ seq }) => seq <= after)
    return { after, cursor: { seq: last?.seq ?? 0, id: last?.id ?? null }, entries }
  }
}
