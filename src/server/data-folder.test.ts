import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { checkDataFolder } from './data-folder.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lapwise-data-folder-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const embedded = (dataFolder: string, isFolderNamed = true) =>
  checkDataFolder({ dataFolder, isFolderNamed, store: { kind: 'embedded', folder: dataFolder } })
const beside = (dataFolder: string) =>
  checkDataFolder({ dataFolder, isFolderNamed: true, store: { kind: 'postgres', url: 'postgres://a@b/c' } })
const fill = (...path: readonly string[]): void => {
  mkdirSync(join(folder, ...path.slice(0, -1)), { recursive: true })
  writeFileSync(join(folder, ...path), '')
}

test('a folder that was named and is not there is refused, for either database', () => {
  const missing = join(folder, 'misspelt')
  expect(embedded(missing)).toEqual({ ok: false, error: expect.stringContaining(`no folder ${missing}`) })
  expect(beside(missing).ok).toBe(false)
})

test('the folder that nobody named is made with the first start', () => {
  expect(embedded(join(folder, 'data'), false).ok).toBe(true)
})

test('an empty folder is for a new store, one with a database for the one in it', () => {
  expect(embedded(folder).ok).toBe(true)
  mkdirSync(join(folder, 'photos', 'uploads'), { recursive: true })
  mkdirSync(join(folder, 'database'))
  fill('photos', 'one')
  expect(embedded(folder).ok).toBe(true)
})

test('a folder whose photos stand without a database is refused, unless the records are in PostgreSQL', () => {
  fill('photos', 'one')
  expect(embedded(folder)).toEqual({
    ok: false,
    error: expect.stringMatching(/holds photos and no database.*DATABASE_URL/),
  })
  expect(embedded(folder, false).ok).toBe(false)
  expect(beside(folder).ok).toBe(true)
})

test('a first start that was cut off while the database was made goes on', () => {
  mkdirSync(join(folder, 'database.unfinished'))
  fill('photos', 'uploads', 'none')
  expect(embedded(folder).ok).toBe(true)
})
