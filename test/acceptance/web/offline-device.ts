import { spawn } from 'node:child_process'
import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { type Browser, chromium, expect, type Page } from '@playwright/test'
import type { DeviceEntry } from '../../../src/web/data/merge-entries.ts'

/** A page whose files are all on the device: from here on it needs no network. */
export async function openPage(page: Page, address: string): Promise<void> {
  await page.goto(address)
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller === null)
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      )
  })
}

/** Opens what is to be read at one place of a run. */
export const openReading = (page: Page, address: string, run: string, requirement: string): Promise<unknown> =>
  page.goto(`${address}/runs/${run}/walk/${requirement}`)

/** Who reads is asked once a visit; afterwards it is folded away and has to be opened. */
export async function sayWho(page: Page, by: string): Promise<void> {
  await expect(async () => {
    await page.locator('details.visit').evaluate((visit) => visit.setAttribute('open', ''))
    await page.getByLabel('Read by').fill(by, { timeout: 1000 })
  }).toPass()
}

/** Types a length and saves it; it is acknowledged on screen when this resolves. */
export async function readLength(page: Page, by: string, length: string): Promise<void> {
  await sayWho(page, by)
  await page.getByLabel(/^Length/).fill(length)
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('Saved on this device')
}

/** How many entries the page says are on this device only. */
export const expectUnsent = (page: Page, count: number): Promise<void> =>
  expect(page.locator('.device-state')).toHaveAttribute('data-unsent', `${count}`)

/** Waits until the browser takes, or refuses, something more on this device: it looks at the room only now and then. */
export const expectRoom = (page: Page, wanted: boolean): Promise<void> =>
  expect
    .poll(
      () =>
        page.evaluate(
          () =>
            new Promise<boolean>((resolve) => {
              const opening = indexedDB.open('room')
              opening.onupgradeneeded = () => opening.result.createObjectStore('pieces', { autoIncrement: true })
              opening.onerror = () => resolve(false)
              opening.onsuccess = () => {
                const adding = opening.result.transaction('pieces', 'readwrite')
                const end = (hasRoom: boolean) => () => {
                  opening.result.close()
                  resolve(hasRoom)
                }
                adding.oncomplete = end(true)
                adding.onabort = end(false)
                adding.objectStore('pieces').add('a piece')
              }
            }),
        ),
      { timeout: 90_000 },
    )
    .toBe(wanted)

/** A picture that no format can shrink: noise, some three bytes for each pixel. */
export async function noise(page: Page, width: number, height: number) {
  const bytes = await page.evaluate(
    async ([width, height]) => {
      const canvas = document.createElement('canvas')
      Object.assign(canvas, { width, height })
      const context = canvas.getContext('2d')!
      const image = context.createImageData(width, height)
      for (let row = 0; row < height; row++)
        crypto.getRandomValues(image.data.subarray(row * width * 4, (row + 1) * width * 4))
      for (let alpha = 3; alpha < image.data.length; alpha += 4) image.data[alpha] = 255
      context.putImageData(image, 0, 0)
      const blob = await new Promise<Blob>((resolve) => canvas.toBlob((made) => resolve(made!), 'image/png'))
      return [...new Uint8Array(await blob.arrayBuffer())]
    },
    [width, height] as const,
  )
  return { name: 'noise.png', mimeType: 'image/png', buffer: Buffer.from(bytes) }
}

export const syncNow = (page: Page): Promise<void> => page.getByRole('button', { name: 'Send and fetch now' }).click()

export interface KeptReading {
  readonly id: string
  readonly seq: number | null
  readonly state: string
  readonly supersedes: string | null
  readonly body: { readonly of: string; readonly value?: string; readonly by: string }
}

/** What a table on the device's disk answers, without the page's help. */
const askTable = (page: Page, table: string, ask: 'getAll' | 'count'): Promise<unknown> =>
  page.evaluate(
    ([table, ask]) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('lapwise')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const asking: IDBRequest = opening.result.transaction(table).objectStore(table)[ask]()
          asking.onerror = () => reject(asking.error)
          asking.onsuccess = () => {
            opening.result.close()
            resolve(asking.result)
          }
        }
      }),
    [table, ask] as const,
  )

/** Names, and so contents, of the photos on the device's disk. */
export const keptPhotos = async (page: Page): Promise<readonly string[]> =>
  ((await askTable(page, 'photos', 'getAll')) as { readonly sha256: string }[]).map(({ sha256 }) => sha256)

/** What was drawn on photos, entry by entry in the order of keeping. */
export async function keptStrokes(page: Page): Promise<readonly { kind: string; points: number[][] }[][]> {
  const all = (await askTable(page, 'entries', 'getAll')) as { kind: string; body: { strokes: never } }[]
  return all.flatMap(({ kind, body }) => (kind === 'photo-strokes' ? [body.strokes] : []))
}

/** Every entry on the device's disk, as it lies there. */
export const keptEntries = (page: Page): Promise<readonly DeviceEntry[]> =>
  askTable(page, 'entries', 'getAll') as Promise<readonly DeviceEntry[]>

/** Every reading on the device's disk, in the order that counts. */
export async function keptReadings(page: Page): Promise<readonly KeptReading[]> {
  const all = await askTable(page, 'entries', 'getAll')
  return (all as readonly (KeptReading & { kind: string; local: number })[])
    .filter(({ kind }) => kind === 'reading')
    .sort((a, b) => (a.seq ?? Number.MAX_VALUE) - (b.seq ?? Number.MAX_VALUE) || a.local - b.local)
    .map(({ local: _, ...reading }) => reading)
}

/** Makes every photo entry on the device's disk so much older, milliseconds. */
export const backdatePhotos = (page: Page, by: number): Promise<void> =>
  page.evaluate(
    (by) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lapwise')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const changing = opening.result.transaction('entries', 'readwrite')
          changing.onabort = () => reject(changing.error)
          changing.oncomplete = () => {
            opening.result.close()
            resolve()
          }
          changing.objectStore('entries').openCursor().onsuccess = ({ target }) => {
            const cursor = (target as IDBRequest<IDBCursorWithValue | null>).result
            if (cursor === null) return
            const { kind, capturedAt } = cursor.value as { kind: string; capturedAt: string }
            if (kind === 'photo')
              cursor.update({ ...cursor.value, capturedAt: new Date(Date.parse(capturedAt) - by).toISOString() })
            cursor.continue()
          }
        }
      }),
    by,
  )

/** What is on the device's disk as begun: what is read, and the text that was typed. */
export async function keptBegun(page: Page): Promise<readonly string[]> {
  const all = (await askTable(page, 'begun', 'getAll')) as readonly { of: string; draft: { text: string } }[]
  return all.map(({ of, draft }) => `${of} ${draft.text}`)
}

/** Puts a piece of an entry where whole ones lie, as a disk that failed may leave it. */
export const tearEntry = (page: Page, run: string): Promise<void> =>
  page.evaluate(
    (of) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lapwise')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const adding = opening.result.transaction('entries', 'readwrite')
          adding.objectStore('entries').add({ id: 'torn', run: of, kind: 'reading', state: 'sent' })
          adding.onabort = () => reject(adding.error)
          adding.oncomplete = () => {
            opening.result.close()
            resolve()
          }
        }
      }),
    run,
  )

/** How many pictures have their bytes on the device's disk. */
export const keptPictures = async (page: Page): Promise<number> =>
  (await askTable(page, 'photoBytes', 'count')) as number

export interface KillableBrowser {
  readonly browser: Browser
  /** Kills it with all its processes at once, and resolves when they are gone. */
  kill(): Promise<void>
}

/** A browser of its own processes and folder, which can be killed; it keeps pages that are left, to go back to. */
export async function startBrowser(folder: string): Promise<KillableBrowser> {
  const { executablePath, args } = JSON.parse(process.env.LAPWISE_TEST_BROWSER!)
  const words = [...args, '--headless', `--user-data-dir=${folder}`, '--remote-debugging-port=0', 'about:blank']
  const child = spawn(executablePath, words, { stdio: ['ignore', 'ignore', 'pipe'], detached: true })
  // A test that fails kills nothing: what it leaves goes with the process that ran it, and slows no later test.
  const killAll = (): void => void process.kill(-child.pid!, 'SIGKILL')
  process.once('exit', killAll)
  child.once('exit', () => process.off('exit', killAll))
  const address = await new Promise<string>((resolve, reject) => {
    let said = ''
    child.stderr.on('data', (bytes: Buffer) => {
      said += bytes.toString()
      const found = /ws:\/\/\S+/.exec(said)
      if (found) resolve(found[0])
    })
    child.on('exit', (code) => reject(new Error(`the browser ended with ${code}:\n${said}`)))
  })
  return {
    browser: await chromium.connectOverCDP(address),
    async kill() {
      const ended = new Promise((resolve) => child.once('close', resolve))
      killAll()
      await ended
    },
  }
}

/** The server with a newer build of the page from the moment on that `release` is called. */
export async function startWithBuilds(target: string): Promise<{ address: string; release(): void; stop(): void }> {
  let isNew = false
  const change = (path: string, text: string): string => {
    if (path === '/sw.js')
      return text.replace(/"revision":"[0-9a-f]+","url":"index.html"/, '"revision":"2","url":"index.html"')
    return text.replace('</head>', '<meta name="build" content="second"></head>')
  }
  const pass = (asked: IncomingMessage, answer: ServerResponse): void => {
    const path = asked.url ?? '/'
    const onward = request(new URL(path, target), { method: asked.method!, headers: asked.headers }, (said) => {
      if (!isNew || !['/sw.js', '/index.html'].includes(path)) {
        answer.writeHead(said.statusCode!, said.headers)
        said.pipe(answer)
        return
      }
      const pieces: Buffer[] = []
      said.on('data', (piece: Buffer) => pieces.push(piece))
      said.on('end', () => {
        const { 'content-length': _, etag: _e, ...headers } = said.headers
        answer.writeHead(said.statusCode!, headers)
        answer.end(change(path, Buffer.concat(pieces).toString()))
      })
    })
    onward.on('error', () => answer.destroy())
    asked.pipe(onward)
  }
  const proxy = createServer((asked, answer) => {
    // What is unchanged by its own word is changed by ours.
    delete asked.headers['if-none-match']
    delete asked.headers['if-modified-since']
    // And a text is changed as it is, not as it is packed.
    delete asked.headers['accept-encoding']
    pass(asked, answer)
  })
  await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve))
  return {
    address: `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`,
    release: () => {
      isNew = true
    },
    stop: () => {
      proxy.closeAllConnections()
      proxy.close()
    },
  }
}
