import { readFileSync } from 'node:fs'
import { type Browser, type CDPSession, expect, type Page } from '@playwright/test'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { openPage } from './offline-device.ts'
import type { RunningServer } from './serve.ts'

/** Most memory that was in use at a time, bytes. */
export interface Peak {
  /** Of the scripts of the page and its worker, with the buffers that they hold. */
  readonly scripts: number
  /** Of the process that they run in, as the system counts it. */
  readonly process: number
}

export interface HandedOn {
  /** Bytes of the file. */
  readonly bytes: number
  readonly writing: Peak
  readonly reading: Peak
}

/**
 * Hands a run with so many photos from one device to another as one file, without a network, and looks every moment at
 * the memory that it takes.
 */
export async function handOnPhotos(
  browser: Browser,
  server: RunningServer,
  count: number,
  bytesOfEach: number,
): Promise<HandedOn> {
  const screen = { viewport: { width: 390, height: 844 } }
  const contexts = [await browser.newContext(screen), await browser.newContext(screen)] as const
  const [from, to] = [await contexts[0].newPage(), await contexts[1].newPage()]
  for (const page of [from, to]) await openPage(page, server.address)
  await server.stop()
  const file = { ...JSON.parse(demoProject().run), name: 'Many photos' }
  await from.getByLabel('Add a run from a file').setInputFiles({
    ...{ name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) },
  })
  await from.waitForURL(/\/runs\//)
  const run = new URL(from.url()).pathname.split('/')[2]!
  await fillPhotos(from, run, count, bytesOfEach)

  await from.goto(`${server.address}/runs/${run}/record`)
  const button = from.getByRole('button', { name: 'Hand over this run' })
  await expect(button).toBeVisible()
  const patience = { timeout: 170_000 }
  const writing = await peakWhile(from, async () => {
    await button.click()
    await expect(from.locator('.hand-over')).toContainText('The file is made', patience)
  })
  const saving = from.waitForEvent('download', patience)
  await from.getByRole('button', { name: 'Save it', exact: true }).click()
  const path = await (await saving).path()
  await from.close()

  const reading = await peakWhile(to, async () => {
    await to.getByLabel('Add a run from a file').setInputFiles(path)
    await to.getByRole('button', { name: 'Take it in', exact: true }).click(patience)
    await expect(to.locator('.take-in')).toContainText(`${count} photos; 0 were here already`, patience)
  })
  const bytes = readFileSync(path).length
  for (const one of contexts) await one.close()
  return { bytes, writing, reading }
}

/** Puts photos where a device keeps them: a small picture each, with as many random bytes beside it as make it so long. */
async function fillPhotos(page: Page, run: string, count: number, bytesOfEach: number): Promise<void> {
  const picture = readFileSync(new URL('fieldwork-sideways.jpg', import.meta.url)).toString('base64')
  await page.evaluate(
    async ([run, picture, count, bytesOfEach]) => {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open('lapwise')
        opening.onsuccess = () => resolve(opening.result)
        opening.onerror = () => reject(opening.error)
      })
      const small = Uint8Array.from(atob(picture), (letter) => letter.charCodeAt(0))
      for (let n = 0; n < count; n += 1) {
        // Comments of a JPEG file (ITU-T T.81, B.2.4.5) after its first marker.
        const content = new Uint8Array(bytesOfEach)
        content.set(small.subarray(0, 2))
        let at = 2
        for (let rest = bytesOfEach - small.length; rest > 0; ) {
          const length = Math.min(rest, 65_000)
          content.set([0xff, 0xfe, (length - 2) >> 8, (length - 2) & 0xff], at)
          crypto.getRandomValues(content.subarray(at + 4, at + length))
          at += length
          rest -= length
        }
        content.set(small.subarray(2), at)
        const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content))
        const sha256 = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
        const body = {
          ...{ sha256, type: 'image/jpeg', bytes: bytesOfEach, width: 120, height: 240, takenAt: null },
          ...{ position: null, of: 'post-8/rail-height', drawnOn: null, note: null },
        }
        const adding = database.transaction(['entries', 'photos', 'photoBytes'], 'readwrite')
        adding.objectStore('entries').add({
          ...{
            id: run.replace(/.{5}$/, (100 + n).toString(16).padStart(5, '0')),
            run,
            kind: 'photo',
            schemaVersion: 1,
          },
          ...{ author: 'R. Quist', device: 'phone', capturedAt: '2026-05-04T15:30:00.000Z', supersedes: null, body },
          ...{ project: 'own', seq: null, state: 'here', reason: null },
        })
        const row = { sha256, type: 'image/jpeg', bytes: bytesOfEach, state: 'here', uploadUrl: null }
        adding.objectStore('photos').add(row)
        adding.objectStore('photoBytes').add({ sha256, content: content.buffer })
        await new Promise<void>((resolve, reject) => {
          adding.oncomplete = () => resolve()
          adding.onabort = () => reject(adding.error)
        })
      }
      database.close()
    },
    [run, picture, count, bytesOfEach] as const,
  )
}

/** The most memory in use while `act` goes on, looked at ten times a second. */
async function peakWhile(page: Page, act: () => Promise<void>): Promise<Peak> {
  const session = await page.context().newCDPSession(page)
  const ask = await scriptsOf(session)
  const system = await page.context().browser()!.newBrowserCDPSession()
  const peak = { scripts: 0, process: 0 }
  let isOver = false
  const looking = (async () => {
    while (!isOver) {
      peak.scripts = Math.max(peak.scripts, await ask())
      peak.process = Math.max(peak.process, await largestRenderer(system))
      await new Promise((resolve) => setTimeout(resolve, 100))
    }
  })()
  await act()
  isOver = true
  await looking
  await session.detach()
  return peak
}

interface HeapUsage {
  readonly usedSize: number
  readonly embedderHeapUsedSize?: number
  readonly backingStorageSize?: number
}

const inUse = ({ usedSize, embedderHeapUsedSize = 0, backingStorageSize = 0 }: HeapUsage): number =>
  usedSize + embedderHeapUsedSize + backingStorageSize

/** What asks the page and its workers for what their scripts use. */
async function scriptsOf(session: CDPSession): Promise<() => Promise<number>> {
  const workers = new Set<string>()
  const waiting = new Map<number, (usage: HeapUsage) => void>()
  session.on('Target.attachedToTarget', ({ sessionId }) => workers.add(sessionId))
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { id?: number; result: HeapUsage }
    if (id !== undefined) waiting.get(id)?.(result)
  })
  await session.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: false, flatten: false })
  let asked = 0
  const ofWorker = async (sessionId: string): Promise<number> => {
    asked += 1
    const id = asked
    const answer = new Promise<HeapUsage>((resolve) => waiting.set(id, resolve))
    const message = JSON.stringify({ id, method: 'Runtime.getHeapUsage' })
    await session.send('Target.sendMessageToTarget', { sessionId, message })
    return inUse(await answer)
  }
  return async () => {
    expect(workers.size).toBeGreaterThan(0)
    const own = inUse((await session.send('Runtime.getHeapUsage')) as HeapUsage)
    const others = await Promise.all([...workers].map(ofWorker))
    return others.reduce((sum, one) => sum + one, own)
  }
}

/** Resident bytes of the largest process that shows a page. */
async function largestRenderer(system: CDPSession): Promise<number> {
  const { processInfo } = await system.send('SystemInfo.getProcessInfo')
  const sizes = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => residentOf(id))
  return sizes.reduce((a, b) => Math.max(a, b), 0)
}

/** Linux alone says it so; 0 elsewhere. */
function residentOf(pid: number): number {
  try {
    return 1024 * Number(/^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0)
  } catch {
    return 0
  }
}
