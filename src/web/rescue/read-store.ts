/** A row of a table of the device's store, as it lies there. */
export interface Row {
  readonly key: string
  readonly value: unknown
}

/** What could not be read, and why in the browser's words. */
export interface Unread {
  readonly table: string
  /** Null when not even the keys of the table can be read. */
  readonly key: string | null
  readonly reason: string
}

export interface Table {
  readonly rows: readonly Row[]
  readonly unread: readonly Unread[]
}

/** The device's store as the browser gives it, without whatever the page does with it; null when there is none. */
export function openStore(name = 'lapwise'): Promise<IDBDatabase | null> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(name)
    let isNew = false
    opening.onupgradeneeded = () => {
      // There was none, and to look must not make one.
      isNew = true
      opening.transaction?.abort()
    }
    opening.onerror = () => (isNew ? resolve(null) : reject(opening.error))
    opening.onsuccess = () => resolve(opening.result)
  })
}

/** Each row in a transaction of its own: one that cannot be read stops no other. */
export async function readTable(store: IDBDatabase, table: string): Promise<Table> {
  const rows: Row[] = []
  const unread: Unread[] = []
  const keys = await attempt(() => store.transaction(table).objectStore(table).getAllKeys())
  if (!keys.ok) return { rows, unread: [{ table, key: null, reason: keys.reason }] }
  for (const key of keys.value) {
    const row = await readRow(store, table, key)
    if (row.ok) rows.push({ key: String(key), value: row.value })
    else unread.push({ table, key: String(key), reason: row.reason })
  }
  return { rows, unread }
}

/** `undefined` when there is none under that key. */
export const readRow = (store: IDBDatabase, table: string, key: IDBValidKey): Promise<Attempt<unknown>> =>
  attempt(() => store.transaction(table).objectStore(table).get(key))

export type Attempt<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string }

function attempt<T>(ask: () => IDBRequest<T>): Promise<Attempt<T>> {
  return new Promise((resolve) => {
    try {
      const asking = ask()
      asking.onsuccess = () => resolve({ ok: true, value: asking.result })
      asking.onerror = () => resolve({ ok: false, reason: String(asking.error) })
    } catch (error) {
      resolve({ ok: false, reason: String(error) })
    }
  })
}
