import { readRow, readTable, type Table, type Unread } from './read-store.ts'

/** What lies on a device, as files to save. */
export interface Rescued {
  /** Everything that is sound, as a file from a device (`lapwise-device/1`), which another one takes in. */
  readonly file: Blob
  readonly entries: number
  readonly photos: number
  /** Rows that were read and are not as they have to be, as they lie; null when there is none. */
  readonly rest: Blob | null
  readonly left: readonly Unread[]
  /** Files that wait on the device until they can be taken in, as they are. */
  readonly held: readonly { readonly name: string; readonly file: Blob }[]
  /** Hardware sheets of this device, each as the file that it takes in. */
  readonly sheets: readonly { readonly name: string; readonly file: Blob }[]
}

/**
 * Everything that can be read, row by row.
 * @param writtenAt  ISO 8601, by the device's clock
 */
export async function rescue(store: IDBDatabase, writtenAt: string): Promise<Rescued> {
  const [entries, kept, photos] = [
    await readTable(store, 'entries'),
    await readTable(store, 'kept'),
    await readTable(store, 'photos'),
  ]
  const left: Unread[] = [...entries.unread, ...kept.unread, ...photos.unread]
  const rest: unknown[] = []
  const leave = (table: string, key: string, reason: string, value: unknown): void => {
    left.push({ table, key, reason })
    rest.push({ table, key, value })
  }

  const sound: string[] = []
  for (const { key, value } of entries.rows) {
    const entry = soundEntry(value)
    if (entry === null) leave('entries', key, 'not whole', value)
    else sound.push(`\n${JSON.stringify(entry)}`)
  }
  const head = JSON.stringify({ format: 'lapwise-device/1', device: deviceName(kept), writtenAt }).slice(0, -1)
  const pieces: Blob[] = [new Blob([`${head},\n"entries":[${sound.join(',')}],\n"photos":[`])]
  let count = 0
  // One at a time: all of them may be more than a phone can hold.
  for (const { key, value } of photos.rows) {
    const bytes = await readRow(store, 'photoBytes', key)
    if (!bytes.ok) left.push({ table: 'photoBytes', key, reason: bytes.reason })
    else if (bytes.value !== undefined) {
      const { photo, isSound } = await photoInFile(key, value, bytes.value)
      if (!isSound) leave('photoBytes', key, 'not whole', photo)
      else {
        pieces.push(new Blob([`${count === 0 ? '' : ','}\n${JSON.stringify(photo)}`]))
        count += 1
      }
    }
  }
  pieces.push(new Blob([']}\n']))
  const held = await heldFiles(store)
  const sheets = await sheetFiles(store)
  left.push(...held.unread, ...sheets.unread)
  return {
    ...{ held: held.files, sheets: sheets.files },
    file: new Blob(pieces, { type: 'application/json' }),
    entries: sound.length,
    photos: count,
    rest: rest.length === 0 ? null : new Blob([JSON.stringify(rest, null, 1)], { type: 'application/json' }),
    left,
  }
}

/** A file of which a piece cannot be read is no file. Stores of earlier versions of the page hold none. */
async function heldFiles(store: IDBDatabase) {
  const files: { name: string; file: Blob }[] = []
  if (!store.objectStoreNames.contains('held')) return { files, unread: [] }
  const table = await readTable(store, 'held')
  const unread = [...table.unread]
  for (const { key, value } of table.rows) {
    const { name, pieces } = value as { readonly name?: unknown; readonly pieces?: unknown }
    const parts: Blob[] = []
    for (let piece = 0; piece < Number(pieces); piece += 1) {
      const row = await readRow(store, 'heldBytes', [key, piece])
      const content = row.ok ? (row.value as { readonly content?: unknown } | undefined)?.content : null
      if (content instanceof ArrayBuffer) parts.push(new Blob([content]))
      else unread.push({ table: 'heldBytes', key: `${key}, ${piece}`, reason: row.ok ? 'not whole' : row.reason })
    }
    if (parts.length === pieces) files.push({ name: String(name), file: new Blob(parts) })
  }
  return { files, unread }
}

/** Stores of earlier versions of the page hold none. */
async function sheetFiles(store: IDBDatabase) {
  if (!store.objectStoreNames.contains('sheets')) return { files: [], unread: [] }
  const { rows, unread } = await readTable(store, 'sheets')
  const files = rows.map(({ key, value }) => ({
    name: `${key.replace(',', '-')}.json`,
    file: new Blob([JSON.stringify((value as { readonly body?: unknown }).body, null, 2)], {
      type: 'application/json',
    }),
  }))
  return { files, unread }
}

function deviceName(kept: Table): string {
  const value = kept.rows.find(({ key }) => key === 'device')?.value
  const name = typeof value === 'object' && value !== null && 'value' in value ? value.value : null
  return typeof name === 'string' && name !== '' ? name : 'unknown'
}

/** The fact alone, without where it stands on the device; null when a part of it is missing. */
function soundEntry(row: unknown): object | null {
  if (typeof row !== 'object' || row === null) return null
  const { id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body } = row as Record<string, unknown>
  const isWhole =
    [id, run, kind, author, device, capturedAt].every((part) => typeof part === 'string' && part !== '') &&
    typeof schemaVersion === 'number' &&
    (supersedes === null || typeof supersedes === 'string') &&
    typeof body === 'object' &&
    body !== null
  return isWhole ? { id, run, kind, schemaVersion, author, device, capturedAt, supersedes, body } : null
}

/** The photo as a file holds it, and whether its bytes are those that were taken. */
async function photoInFile(
  sha256: string,
  row: unknown,
  bytes: unknown,
): Promise<{ readonly photo: object; readonly isSound: boolean }> {
  const type = typeof row === 'object' && row !== null && 'type' in row ? row.type : null
  const content = typeof bytes === 'object' && bytes !== null && 'content' in bytes ? bytes.content : null
  if (!(content instanceof ArrayBuffer)) return { photo: { sha256, type }, isSound: false }
  const photo = { sha256, type, base64: await base64Of(content) }
  return { photo, isSound: typeof type === 'string' && (await hasHash(content, sha256)) }
}

/** Where the browser computes no hash, at an address that is not encrypted, whoever takes the file in looks. */
async function hasHash(content: ArrayBuffer, sha256: string): Promise<boolean> {
  const { subtle } = crypto as { readonly subtle?: SubtleCrypto }
  if (subtle === undefined) return true
  const hash = [...new Uint8Array(await subtle.digest('SHA-256', content))]
  return hash.map((byte) => byte.toString(16).padStart(2, '0')).join('') === sha256
}

/** By the browser's own means, which take pictures of any size. */
function base64Of(content: ArrayBuffer): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onerror = () => reject(reader.error)
    reader.onload = () => resolve(String(reader.result).slice(String(reader.result).indexOf(',') + 1))
    reader.readAsDataURL(new Blob([content]))
  })
}
