import { Dexie, type EntityTable, type Table } from 'dexie'
import type { Begun } from './begun.ts'
import type { Cursor, DeviceEntry } from './merge-entries.ts'

/** An entry as it is kept; `local` is given by the table, in the order of keeping. */
export type EntryRow = Omit<DeviceEntry, 'local'> & { local: number }

/** What is known of a photo's bytes, apart from them, so that a change of state does not write them anew. */
export interface PhotoRow {
  readonly sha256: string
  readonly type: string
  readonly bytes: number
  /** `here`: to be sent. `sent`: the server has it too. `freed`: only the server has it, and its bytes are let go. */
  readonly state: 'here' | 'sent' | 'freed'
  /** Where its upload goes on; null before it began. */
  readonly uploadUrl: string | null
}

/** Bytes as ArrayBuffer: some browsers fail to store a Blob. */
interface PhotoBytes {
  readonly sha256: string
  readonly content: ArrayBuffer
}

/** Single values of this device. */
export interface Kept {
  device: string
  cursor: Cursor
  lastSync: string
  persisted: boolean
}

export interface DeviceTables extends Dexie {
  readonly entries: EntityTable<EntryRow, 'local'>
  readonly photos: EntityTable<PhotoRow, 'sha256'>
  readonly photoBytes: EntityTable<PhotoBytes, 'sha256'>
  readonly begun: Table<Begun, [run: string, of: string]>
  readonly kept: Table<{ readonly name: string; readonly value: unknown }, string>
}

/**
 * The tables of this device. Every transaction is on the disk before it counts as complete: without `strict` the
 * browsers built on Chromium report it done as soon as the system has it, and a dead battery can take it back.
 */
export function openTables(name: string): DeviceTables {
  const db = new Dexie(name, { chromeTransactionDurability: 'strict' }) as DeviceTables
  db.version(1).stores({
    entries: '++local, &id, [run+kind], kind, state',
    photos: 'sha256, state',
    photoBytes: 'sha256',
    kept: 'name',
  })
  db.version(2).stores({ begun: '[run+of], run' })
  return db
}
