import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { ok } from '../../core/result.ts'
import { serveBackups } from './asked-backup.ts'

let folder: string
beforeEach(() => {
  vi.useFakeTimers()
  folder = mkdtempSync(join(tmpdir(), 'lapwise-asked-'))
})
afterEach(() => {
  vi.useRealTimers()
  rmSync(folder, { recursive: true, force: true })
})

const made = (to: string) => ok({ to, entries: 1, photos: 0, damaged: [] })
const ask = (name: string, wish: unknown = { to: `/${name}` }): void =>
  writeFileSync(join(folder, `backup-wanted-${name}`), JSON.stringify(wish))
const answerTo = (name: string): unknown => JSON.parse(readFileSync(join(folder, `backup-answer-${name}`), 'utf8'))

test('whoever asked and is gone before the backup is made ends no server; the next wish is done', async () => {
  let finish = (): void => {}
  const stop = serveBackups(folder, (to) =>
    to === '/slow'
      ? new Promise((resolve) => {
          finish = () => resolve(made(to))
        })
      : Promise.resolve(made(to)),
  )
  ask('slow')
  await vi.advanceTimersByTimeAsync(500)
  expect(readdirSync(folder)).toEqual(['backup-taken-slow'])
  rmSync(join(folder, 'backup-taken-slow'))
  await vi.advanceTimersByTimeAsync(1000)
  finish()
  ask('next')
  await vi.advanceTimersByTimeAsync(1000)
  expect(answerTo('next')).toEqual(made('/next'))
  stop()
})

test('a wish that is none, and a backup that breaks off, leave the server ready for the next', async () => {
  const stop = serveBackups(folder, (to) =>
    to === '/broken' ? Promise.reject(new Error('no')) : Promise.resolve(made(to)),
  )
  ask('odd', { into: 'somewhere' })
  await vi.advanceTimersByTimeAsync(500)
  expect(answerTo('odd')).toEqual({ ok: false, error: expect.stringContaining('"to"') })
  ask('broken')
  await vi.advanceTimersByTimeAsync(1000)
  ask('whole')
  await vi.advanceTimersByTimeAsync(1000)
  expect(answerTo('whole')).toEqual(made('/whole'))
  stop()
})
