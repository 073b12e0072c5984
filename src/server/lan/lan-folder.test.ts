import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { openLanKeys } from './lan-folder.ts'

const now = new Date('2026-05-04T12:00:00Z')
const later = (days: number): Date => new Date(now.getTime() + days * 86_400_000)
const names = (...addresses: readonly string[]) => ({
  stable: 'depot.local',
  all: ['depot.local', 'depot', ...addresses],
  addresses,
})

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lapwise-lan-'))
})
afterAll(() => rm(folder, { recursive: true }))

it('keeps the authority for its ten years and the certificate while it is good for the names', async () => {
  const first = await openLanKeys(folder, names('192.168.1.7'), now)
  expect(first.isReplaced).toBe(false)
  expect(await openLanKeys(folder, names('192.168.1.7'), later(59))).toEqual(first)
  const moved = await openLanKeys(folder, names('10.0.0.5'), later(59))
  expect(moved.authority).toEqual(first.authority)
  expect(moved.server.certificate).not.toBe(first.server.certificate)
  const renewed = await openLanKeys(folder, names('10.0.0.5'), later(59 + 61))
  expect(renewed.authority).toEqual(first.authority)
  expect(renewed.server.certificate).not.toBe(moved.server.certificate)
  const over = await openLanKeys(folder, names('10.0.0.5'), later(3649))
  expect(over.isReplaced).toBe(true)
  expect(over.authority.certificate).not.toBe(first.authority.certificate)
})

it('names a file that cannot be read instead of making another authority, which no phone would trust', async () => {
  await writeFile(join(folder, 'authority.json'), '{"certificate"')
  await expect(openLanKeys(folder, names(), now)).rejects.toThrow(/authority\.json cannot be read/)
})
