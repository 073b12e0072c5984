import { canonicalJson } from '../../formats/canonical-json.ts'
import type { Entry } from '../../formats/entry/entry-kinds.ts'
import type { EntryAnswer, KeptEntry } from '../../protocol/entries.ts'
import type { Saying } from '../../words/saying.ts'

/** An entry as the server keeps it; when that was is not asked. */
export interface ServerEntry extends Entry, Pick<KeptEntry, 'seq' | 'project'> {}

/** An entry as this device keeps it. */
export interface DeviceEntry extends Entry {
  /** Its place in this device's order of keeping. */
  readonly local: number
  /** Its place in the server's order; null as long as the server did not confirm it. */
  readonly seq: number | null
  /** Where the server files its run; this device's own word for it until then. */
  readonly project: string
  /** `here`: to be sent. `sent`: the server has it. `refused`: the server will not have it, and it stays here. */
  readonly state: 'here' | 'sent' | 'refused'
  /** Why the server refused it; null unless it did. A text is what an earlier version of the page was told. */
  readonly reason: Saying | string | null
}

/** What the server said of one entry that it was sent, as this page says it. */
export type HeardAnswer =
  | Exclude<EntryAnswer, { readonly outcome: 'rejected' }>
  | { readonly id: string; readonly outcome: 'rejected'; readonly reason: Saying }

/** Where in the server's order a device has read to, and which entry is there; null before the first. */
export interface Cursor {
  readonly seq: number
  readonly id: string | null
}

export const start: Cursor = { seq: 0, id: null }

/** A piece of the server's order: all that it stored after `after`, up to and with `cursor`. */
export interface Page {
  readonly after: number
  readonly cursor: Cursor
  readonly entries: readonly ServerEntry[]
}

/** Named apart: the type of every saying, spread into an entry of any kind, is more than the compiler holds. */
const refusedFor = (reason: Saying): Pick<DeviceEntry, 'state' | 'reason'> => ({ state: 'refused', reason })

/** The entry after the server's answer to it. An answer that comes late or twice changes nothing more. */
export function withAnswer<E extends DeviceEntry>(entry: E, answer: HeardAnswer): E {
  if (entry.state === 'sent') return entry
  if (answer.outcome === 'rejected') return { ...entry, ...refusedFor(answer.reason) }
  return { ...entry, state: 'sent', seq: answer.seq, reason: null }
}

/**
 * What this device keeps under the id of an entry that arrived. One that was made here and differs from it stays as it
 * is, refused: the server has the other, and nothing that was acknowledged here is overwritten.
 *
 * @param known  what is kept under that id; undefined for nothing
 */
export function withArrived(
  known: DeviceEntry | undefined,
  arrived: ServerEntry,
): Omit<DeviceEntry, 'local'> & { readonly local?: number } {
  const taken = { ...arrived, state: 'sent', reason: null } as const
  if (known === undefined) return taken
  if (known.state === 'sent' || isSameFact(known, arrived)) return { ...taken, local: known.local }
  return { ...known, state: 'refused', reason: { kind: 'same id stored' } }
}

/**
 * What an entry in a file is to this device. Like one that arrives by the server it never overwrites what is kept under
 * its id; unlike that, nobody but this device is to send it on.
 * @param known  what is kept under that id; undefined for nothing
 */
export function standingOf(known: DeviceEntry | undefined, carried: Entry): 'new' | 'already' | 'another' {
  if (known === undefined) return 'new'
  return isSameFact(known, carried) ? 'already' : 'another'
}

/** How far this device has read the server's order. A page that begins beyond what is known would leave a gap. */
export const cursorAfter = (cursor: Cursor, page: Page): Cursor =>
  page.after > cursor.seq || page.cursor.seq <= cursor.seq ? cursor : page.cursor

/** By id of an entry: all that supersede it, when there are several. Who corrected at once is never overruled. */
export function rivalsAmong(
  entries: readonly Pick<DeviceEntry, 'id' | 'supersedes'>[],
): ReadonlyMap<string, readonly string[]> {
  const by = new Map<string, string[]>()
  for (const { id, supersedes } of entries)
    if (supersedes !== null) by.set(supersedes, [...(by.get(supersedes) ?? []), id])
  return new Map([...by].filter(([, ids]) => ids.length > 1))
}

function isSameFact(a: Entry, b: Entry): boolean {
  const fact = ({ run, kind, schemaVersion, author, device, supersedes, capturedAt, body }: Entry): string =>
    canonicalJson({
      ...{ run, kind, schemaVersion, author, device, supersedes, body },
      at: new Date(capturedAt).getTime(),
    })
  return fact(a) === fact(b)
}
