import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { strFromU8, unzipSync } from 'fflate'
import { pngOf } from '../../cases/documents/png-of.ts'
import {
  backdatePhotos,
  expectRoom,
  expectUnsent,
  keptBegun,
  keptPictures,
  keptReadings,
  noise,
  openPage,
  openReading,
  readLength,
  sayWho,
  startBrowser,
  startWithBuilds,
  syncNow,
  tearEntry,
} from './offline-device.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer, temporaryFolder } from './serve.ts'

let folder: string
let server: RunningServer
let run: string

// Each test has a server and a folder of its own.
test.describe.configure({ mode: 'parallel' })

test.beforeEach(async () => {
  folder = await preparedFolder()
  server = await startServer(folder)
  run = (await (await fetch(`${server.address}/api/runs`)).json()).runs[0].id
})

test.afterEach(async () => {
  await server.stop()
  await dropFolder(folder)
})

const toldOf = (program: string, ...words: readonly string[]): string =>
  execFileSync(program, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })

const port = (): string => new URL(server.address).port

interface OnServer {
  readonly id: string
  readonly by: string
  readonly of: string
  readonly value?: string
  readonly corrects: string | null
}

/** What the server has of one person's readings, in its order. */
async function onServer(by: string): Promise<readonly OnServer[]> {
  const { readings } = await (await fetch(`${server.address}/api/runs/${run}`)).json()
  return readings.filter((reading: OnServer) => reading.by === by)
}

/** How many photos the server has, bytes and all. */
async function picturesOnServer(): Promise<number> {
  const { entries } = await (await fetch(`${server.address}/api/entries`)).json()
  const photos = entries.filter(({ kind }: { kind: string }) => kind === 'photo')
  const asked = photos.map(({ body }: { body: { sha256: string } }) =>
    fetch(`${server.address}/api/photos/${body.sha256}`, { method: 'HEAD' }),
  )
  return (await Promise.all<Response>(asked)).filter(({ ok }) => ok).length
}

const photosOf = (page: Page) => page.getByRole('region', { name: 'Photos' })
const pickPhotos = (page: Page) => page.locator('.photos input[type=file][multiple]')

const newest = (page: Page) => page.locator('.past-reading').first()

/** A page that needs no network, with the run on its device. */
async function openWithRun(page: Page): Promise<void> {
  await openPage(page, server.address)
  await expect(page.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
}

test('a run is read without a network after the first load, survives a reload, and is sent later', {
  tag: '@phone',
}, async ({ page }) => {
  await openWithRun(page)
  await server.stop()

  for (const post of [8, 9, 10]) {
    await openReading(page, server.address, run, `post-${post}/rail-height`)
    await readLength(page, 'R. Quist', `31 ${post - 7}/16`)
  }
  await openReading(page, server.address, run, 'post-11/rail-bolt')
  await sayWho(page, 'R. Quist')
  await page.getByRole('button', { name: 'Cannot see it' }).click()
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('could not be seen')
  await expectUnsent(page, 4)

  await page.reload()
  await expect(newest(page)).toContainText('R. Quist')
  await openReading(page, server.address, run, 'post-9/rail-height')
  await expect(newest(page)).toContainText('31 1/8 in')
  await page.goto(`${server.address}/runs/${run}/findings`)
  await expect(page.locator('.title-verdict')).toHaveText('not acceptable')
  await page.goto(server.address)
  await expect(page.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
  await expectUnsent(page, 4)

  // Words that nobody has asked for yet: those of the page, of its drawings and of the device, which its worker says.
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  await page.goto(`${server.address}/runs/${run}/walk/post-9/rail-height`)
  await expect(page.locator('.figure svg').first()).toContainText('rasante terminada')
  // What is said of a run in English, which a page that began in Spanish did without.
  await page.goto(`${server.address}/runs/${run}/findings`)
  await expect(page.locator('.finding').first()).toContainText('no cumple')
  await page.getByLabel('Idioma').selectOption('en')
  await expect(page.locator('.finding').first()).toContainText('fails')
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('.finding').first()).toContainText('no cumple')
  await page.goto(`${server.address}/runs/none/walk`)
  await expect(page.getByText('No hay ningún tramo none')).toBeVisible()
  await page.getByLabel('Idioma').selectOption('en')
  await expect(page.locator('html')).toHaveAttribute('lang', 'en')

  server = await startServer(folder, port())
  await syncNow(page)
  await expectUnsent(page, 0)
  expect((await onServer('R. Quist')).map(({ of }) => of)).toEqual([
    'post-8/rail-height',
    'post-9/rail-height',
    'post-10/rail-height',
    'post-11/rail-bolt',
  ])
})

test('the record waits for the server, and says so', { tag: '@phone' }, async ({ page }) => {
  await openWithRun(page)
  await server.stop()
  await page.goto(`${server.address}/runs/${run}/record`)
  await page.getByRole('button', { name: 'Download the record' }).click()
  await expect(page.getByRole('alert')).toContainText('can be made later')
})

test('a first visit without an answer of the server is no empty list', { tag: '@phone' }, async ({ page }) => {
  await page.route('**/api/entries*', (route) => route.abort())
  await page.goto(server.address)
  await expect(page.getByRole('alert').first()).toContainText('has not fetched anything yet')
  await expect(page.getByText('There is no run yet')).toHaveCount(0)
  await page.unroute('**/api/entries*')
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(page.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
})

/** A browser of its own that has the page and the run on its disk, and no server to ask; with what ends all that. */
async function killableDevice() {
  const profile = await temporaryFolder()
  let { browser, kill } = await startBrowser(profile)
  const page = await browser.contexts()[0]!.newPage()
  await openWithRun(page)
  await server.stop()
  return {
    page,
    /** Killed, and started again on the same disk. */
    async killed(): Promise<Page> {
      await kill()
      ;({ browser, kill } = await startBrowser(profile))
      return browser.contexts()[0]!.newPage()
    },
    async end(): Promise<void> {
      await kill()
      await dropFolder(profile)
      server = await startServer(folder, port())
    },
  }
}

test('nothing that was acknowledged is gone after the browser is killed in the middle of readings', {
  tag: '@phone',
}, async () => {
  const device = await killableDevice()
  let { page } = device
  const acknowledged: string[] = []
  for (let round = 0; round < 3; round++) {
    for (let n = 0; n < 4; n++) {
      const [post, length] = [3 + ((round * 4 + n) % 12), `${30 + round} ${n + 1}/16 in`]
      await openReading(page, server.address, run, `post-${post}/rail-height`)
      await readLength(page, 'R. Quist', length)
      acknowledged.push(`post-${post}/rail-height`)
    }
    // The last one is only just on screen, and another one half typed.
    await page.getByLabel(/^Length/).fill('2')
    page = await device.killed()
    await page.goto(server.address)
    const kept = (await keptReadings(page)).filter(({ body }) => body.by === 'R. Quist')
    expect(kept.map(({ body }) => body.of)).toEqual(acknowledged)
  }
  await openReading(page, server.address, run, 'post-6/rail-height')
  await expect(newest(page)).toContainText('R. Quist')
  await device.end()
})

test('what is typed and not saved is still there after the browser is killed, is not applied by itself, and ends when saved', {
  tag: '@phone',
}, async () => {
  const device = await killableDevice()
  let { page } = device
  const again = async (requirement: string): Promise<void> => {
    page = await device.killed()
    await openReading(page, server.address, run, requirement)
  }
  await openReading(page, server.address, run, 'post-3/rail-height')
  await page.getByLabel(/^Length/).pressSequentially('30 1/2')
  await expect.poll(() => keptBegun(page)).toEqual(['post-3/rail-height 30 1/2'])

  await again('post-4/rail-height')
  await page.locator('.begun a').click()
  await expect(page.locator('.begun')).toContainText('30 1/2')
  await expect(page.getByLabel(/^Length/)).toHaveValue('')
  // Something else typed and taken back does not take it along.
  await page.getByLabel(/^Length/).pressSequentially('9')
  await expect.poll(() => keptBegun(page)).toEqual(['post-3/rail-height 9'])
  await page.getByLabel(/^Length/).press('Backspace')
  await expect.poll(() => keptBegun(page)).toEqual(['post-3/rail-height 30 1/2'])
  await page.getByRole('button', { name: 'Go on with it' }).click()
  await expect(page.getByLabel(/^Length/)).toHaveValue('30 1/2')
  await readLength(page, 'R. Quist', '30 1/4 in')
  expect(await keptBegun(page)).toEqual([])

  await page.getByLabel(/^Length/).pressSequentially('2')
  await expect.poll(() => keptBegun(page)).toEqual(['post-3/rail-height 2'])
  await again('post-3/rail-height')
  await page.getByRole('button', { name: 'Drop it' }).click()
  await expect(page.locator('.begun')).toHaveCount(0)
  await expect.poll(() => keptBegun(page)).toEqual([])
  await device.end()
})

test('a page that the browser kept while it was left goes on when it is gone back to', {
  tag: '@phone',
}, async ({ page }) => {
  await openPage(page, server.address)
  await openReading(page, server.address, run, 'post-3/rail-height')
  await readLength(page, 'R. Quist', '31 in')
  await server.stop()
  await page.evaluate(() => {
    for (const type of ['pagehide', 'pageshow'])
      window.dispatchEvent(new PageTransitionEvent(type, { persisted: true }))
  })
  await readLength(page, 'R. Quist', '30 in')
  const kept = (await keptReadings(page)).filter(({ body }) => body.by === 'R. Quist')
  expect(kept).toHaveLength(2)
  await page.reload()
  await expect(newest(page)).toContainText('30 in')
  server = await startServer(folder, port())
})

test('a device that is full says so, keeps what was typed and all that was saved, and goes on when there is room', {
  tag: '@phone',
}, async ({ page }) => {
  await openPage(page, server.address)
  await openReading(page, server.address, run, 'post-8/rail-height')
  await readLength(page, 'R. Quist', '31')
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: server.address, quotaSize: 1 })
  // The browser goes by what it knew of the room for half a minute.
  await expectRoom(page, false)
  await page.getByLabel(/^Length/).fill('31 1/8')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByRole('alert').first()).toContainText('no room left')
  await expect(page.getByLabel(/^Length/)).toHaveValue('31 1/8')
  expect((await keptReadings(page)).filter(({ body }) => body.by === 'R. Quist')).toHaveLength(1)
  await pickPhotos(page).setInputFiles(await noise(page, 40, 40))
  await expect(photosOf(page).getByRole('alert')).toContainText('no room left for the photo')
  await expect(photosOf(page).getByRole('img')).toHaveCount(0)
  await devtools.send('Storage.overrideQuotaForOrigin', { origin: server.address })
  await expectRoom(page, true)
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(page.locator('.saved')).toContainText('31 1/8 in')
})

test('a photo taken without a network is sent later, in pieces, from where a broken connection left it', {
  tag: '@phone',
}, async ({ page, browser }) => {
  await openWithRun(page)
  await server.stop()
  await openReading(page, server.address, run, 'post-8/rail-height')
  await readLength(page, 'R. Quist', '31')
  const picture = await noise(page, 800, 600)
  expect(picture.buffer.length).toBeGreaterThan(1_200_000)
  await page.getByText('Size and position').click()
  await page.getByRole('checkbox', { name: /original/ }).check()
  await pickPhotos(page).setInputFiles(picture)
  await expect(photosOf(page).getByRole('img')).toHaveCount(1)
  const state = page.locator('.device-state')
  await expect(state).toHaveAttribute('data-unsent-photos', '1')

  // The first piece gets through; then the connection is gone, and the page with it.
  let pieces = 0
  await page.route('**/api/photos/uploads/*', (route) => {
    if (route.request().method() === 'PATCH') pieces += 1
    return pieces > 1 ? route.abort() : route.continue()
  })
  server = await startServer(folder, port())
  await syncNow(page)
  await expect.poll(() => pieces).toBeGreaterThan(1)
  await page.close()

  const again = await page.context().newPage()
  const asked: { readonly method: string; readonly offset: string | undefined }[] = []
  again.on('request', (request) => {
    if (request.url().includes('/api/photos/uploads'))
      asked.push({ method: request.method(), offset: request.headers()['upload-offset'] })
  })
  await again.goto(server.address)
  await expect(again.locator('.device-state')).toHaveAttribute('data-unsent-photos', '0', { timeout: 20_000 })
  expect(asked.map(({ method }) => method)).not.toContain('POST')
  expect(asked.find(({ method }) => method === 'PATCH')?.offset).toBe(`${512 * 1024}`)
  const { entries } = await (await fetch(`${server.address}/api/entries`)).json()
  const { body } = entries.findLast(({ kind }: { kind: string }) => kind === 'photo')
  expect(createHash('sha256').update(picture.buffer).digest('hex')).toBe(body.sha256)
  const kept = await (await fetch(`${server.address}/api/photos/${body.sha256}`)).arrayBuffer()
  expect(Buffer.from(kept).equals(picture.buffer)).toBe(true)

  // Another device shows it from the server.
  const second = await browser.newContext()
  const other = await second.newPage()
  await openReading(other, server.address, run, 'post-8/rail-height')
  const image = photosOf(other).getByRole('img')
  await expect.poll(() => image.evaluate((one: HTMLImageElement) => one.naturalWidth)).toBe(800)
  await second.close()
})

test('a device lets go of pictures of days before that the server has, when that is pressed', {
  tag: '@phone',
}, async ({ page }) => {
  await openPage(page, server.address)
  await openReading(page, server.address, run, 'post-8/rail-height')
  await sayWho(page, 'R. Quist')
  await pickPhotos(page).setInputFiles(await noise(page, 400, 300))
  const state = page.locator('.device-state')
  await expect(photosOf(page).getByRole('img')).toHaveCount(1)
  await expect.poll(picturesOnServer).toBe(1)
  await expect(state).toHaveAttribute('data-unsent-photos', '0')
  await page.getByText('More about this device').click()
  const free = page.getByRole('button', { name: /^Free room/ })
  // It was taken today.
  await expect(page.getByLabel('Take in a file from a device')).toBeVisible()
  await expect(free).toHaveCount(0)

  await server.stop()
  await pickPhotos(page).setInputFiles(await noise(page, 300, 400))
  await expect(photosOf(page).getByRole('img')).toHaveCount(2)
  await expect(state).toHaveAttribute('data-unsent-photos', '1')
  // The next day, or as if they had been taken the day before; how much room there is in truth this browser does not tell.
  await backdatePhotos(page, 24 * 3_600_000)
  await page.reload()
  await page.getByText('More about this device').click()
  await expect(free).toHaveText(/^Free room: 1 photo, .* [kM]B, already on the server$/)
  // Without an answer of the server nothing goes.
  await free.click()
  await expect(page.locator('.device-room')).toContainText('The server did not answer')
  expect(await keptPictures(page)).toBe(2)

  server = await startServer(folder, port())
  await free.click()
  await expect(page.locator('.device-room')).toContainText('on the server only now')
  await expect(free).toHaveCount(0)
  await syncNow(page)
  await expect(state).toHaveAttribute('data-unsent-photos', '0')
  expect(await keptPictures(page)).toBe(1)
  // Both are shown, one of them from the server.
  await page.reload()
  const widths = () =>
    photosOf(page)
      .getByRole('img')
      .evaluateAll((all) => all.map((one) => (one as HTMLImageElement).naturalWidth).sort())
  await expect.poll(widths).toEqual([300, 400])
})

test('what sets documents is fetched with the first one: from then on a summary is made at sign-off without a network', {
  tag: '@phone',
}, async ({ page, context }) => {
  await openPage(page, server.address)
  await page.goto(`${server.address}/runs/${run}/sign-off`)
  const make = page.getByRole('button', { name: 'Make the summary of two pages' })
  await expect(make).toBeVisible()
  // Nobody who never asks for one fetches 12 MB.
  await context.setOffline(true)
  await make.click()
  await expect(page.getByText('The document was not made.')).toBeVisible()
  await context.setOffline(false)
  await make.click()
  const made = page.getByText(/^Alder-Creek-culvert-right-side-summary-\d{4}-\d\d-\d\d-v1\.pdf is made\.$/)
  await expect(made).toBeVisible({ timeout: 60_000 })
  await context.setOffline(true)
  await page.reload()
  const hash = page.locator('.sheet > .hash code')
  await expect(hash).toHaveText(/^[0-9a-f]{64}$/)
  await expect(make).toBeVisible()
  await make.click()
  await expect(made).toBeVisible({ timeout: 60_000 })
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.documents').getByRole('button', { name: 'Save it', exact: true }).click(),
  ])
  const text = toldOf('pdftotext', '-raw', await saved.path(), '-')
  expect(text).toContain('Summary of the inspection record')
  expect(text.replaceAll(/\s/g, '')).toContain((await hash.textContent())!)
})

test('two tabs write at once: both have everything, and the server has it once', { tag: '@phone' }, async ({
  page,
  context,
}) => {
  await openPage(page, server.address)
  await context.setOffline(true)
  const other = await context.newPage()
  await openReading(page, server.address, run, 'post-8/rail-height')
  await openReading(other, server.address, run, 'post-9/rail-height')
  for (const [tab, length] of [
    [page, '31'],
    [other, '31 1/4'],
  ] as const) {
    // A tab behind another one draws nothing, and cannot be typed in.
    await tab.bringToFront()
    await sayWho(tab, 'R. Quist')
    await tab.getByLabel(/^Length/).fill(length)
  }
  const press = (tab: Page) =>
    tab.getByRole('button', { name: 'Save', exact: true }).evaluate((button: HTMLButtonElement) => button.click())
  await Promise.all([press(page), press(other)])
  await expectUnsent(page, 2)
  await expectUnsent(other, 2)
  await context.setOffline(false)
  await Promise.all([syncNow(page), syncNow(other)])
  await expectUnsent(page, 0)
  await expectUnsent(other, 0)
  expect((await onServer('R. Quist')).map(({ of }) => of).sort()).toEqual(['post-8/rail-height', 'post-9/rail-height'])
})

test('two devices record and correct the same without a network: both come to the same, and lose nothing', {
  tag: '@phone',
}, async ({ browser }) => {
  const contexts = [await browser.newContext(), await browser.newContext()]
  const pages = await Promise.all(contexts.map((context) => context.newPage()))
  const [one, other] = pages as [Page, Page]
  for (const page of pages) {
    await openWithRun(page)
  }
  await Promise.all(contexts.map((context) => context.setOffline(true)))
  const people = ['A. Ruiz', 'B. Chen']
  for (const [i, page] of pages.entries()) {
    await openReading(page, server.address, run, `post-${8 + i}/rail-height`)
    await readLength(page, people[i]!, '31')
    await openReading(page, server.address, run, 'post-10/rail-height')
    await page.getByRole('button', { name: 'Undo or correct' }).first().click()
    await readLength(page, people[i]!, `30 ${i + 1}/8`)
  }
  await Promise.all(contexts.map((context) => context.setOffline(false)))
  // Each sends; then each fetches what the other sent.
  for (const page of pages) {
    await syncNow(page)
    await expectUnsent(page, 0)
  }
  for (const page of pages) {
    await syncNow(page)
    const theirs = async () =>
      (await keptReadings(page)).filter(({ seq, body }) => seq !== null && people.includes(body.by))
    await expect.poll(async () => (await theirs()).length).toBe(4)
  }
  const kept = await keptReadings(one)
  expect(kept).toEqual(await keptReadings(other))
  const corrections = kept.filter(({ body }) => people.includes(body.by) && body.of === 'post-10/rail-height')
  expect(corrections.map(({ body }) => body.by).sort()).toEqual(people)
  expect(corrections[0]!.supersedes).not.toBeNull()
  expect(corrections[0]!.supersedes).toBe(corrections[1]!.supersedes)
  for (const person of people) expect(await onServer(person)).toHaveLength(2)
  await Promise.all(contexts.map((context) => context.close()))
})

test('everything on a device goes to another one as a file, without a server', { tag: '@phone' }, async ({
  page,
  browser,
}) => {
  const second = await browser.newContext()
  const other = await second.newPage()
  for (const one of [page, other]) await openWithRun(one)
  await server.stop()
  await openReading(page, server.address, run, 'post-8/rail-height')
  await readLength(page, 'R. Quist', '31 3/8')
  await page.getByText('More about this device').click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('button', { name: 'Save everything to a file' })
      .click()
      .then(() => page.getByRole('button', { name: 'Save it', exact: true }).click()),
  ])
  // As earlier versions of the page wrote it: it is read for ever.
  const parts = unzipSync(await readFile(await download.path()))
  const entries = strFromU8(parts['entries.jsonl']!)
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))
  const head = { format: 'lapwise-device/1', device: 'phone', writtenAt: '2026-05-04T22:10:00.000Z' }
  const buffer = Buffer.from(JSON.stringify({ ...head, entries, photos: [] }))

  await other.getByText('More about this device').click()
  const pane = other.locator('.device-transfer')
  const show = (content: Buffer) =>
    other
      .getByLabel('Take in a file from a device')
      .setInputFiles({ name: 'device.json', mimeType: 'application/json', buffer: content })
  const take = () => other.getByRole('button', { name: 'Take it in', exact: true }).click()
  await show(buffer.subarray(0, 100))
  await expect(pane.locator('.trouble')).toContainText('device.json is no file from a device')
  const spoilt = Buffer.from(buffer.toString().replace('31 3/8', '31 furlongs'))
  await show(spoilt)
  await expect(pane).toContainText('1 part of it cannot be taken in')
  await expect(pane).toContainText('31 furlongs')
  await take()
  await expect(pane).toContainText('Taken in: 0 entries')
  await expect(pane).toContainText('rest-of-device.json')
  expect((await keptReadings(other)).some(({ body }) => body.by === 'R. Quist')).toBe(false)
  // A picture of three bytes, and one spoilt in its pixels: neither is taken in, and stops nothing else.
  for (const [bytes, fault] of [
    [Buffer.from('ffd8ff', 'hex'), 'a picture that is cut short'],
    [Buffer.from(pngOf(2, 2).with(45, 0xff)), 'a picture that cannot be read'],
  ] as const) {
    const photo = {
      sha256: createHash('sha256').update(bytes).digest('hex'),
      ...{ type: bytes[0] === 0xff ? 'image/jpeg' : 'image/png', base64: bytes.toString('base64') },
    }
    await show(Buffer.from(JSON.stringify({ ...JSON.parse(spoilt.toString()), photos: [photo] })))
    await take()
    await expect(pane.locator('.trouble')).toContainText(fault)
  }
  await show(buffer)
  await expect(pane).toContainText('Alder Creek culvert, right side: here already')
  await expect(pane).toContainText('1 reading')
  await take()
  await expect(other.locator('.device-transfer')).toContainText('Taken in: 1 entries, 0 photos')
  await openReading(other, server.address, run, 'post-8/rail-height')
  await expect(newest(other)).toContainText('31 3/8 in')

  // Both send it later; it is stored once.
  server = await startServer(folder, port())
  for (const device of [page, other]) {
    await syncNow(device)
    await expectUnsent(device, 0)
  }
  expect(await onServer('R. Quist')).toHaveLength(1)
  await second.close()
})

test('a view that breaks says what can be done, and can be tried again', { tag: '@phone' }, async ({ page }) => {
  await openWithRun(page)
  await page.evaluate(() => {
    const kept = Intl.DateTimeFormat
    Object.assign(Intl, { DateTimeFormat: () => undefined })
    Object.assign(window, { mend: () => Object.assign(Intl, { DateTimeFormat: kept }) })
  })
  await page.getByRole('link', { name: /Alder Creek/ }).click()
  await page.locator('.walk-list details[data-at="post-3"] > summary').click()
  await page.locator('.walk-list a[href$="post-3/rail-height"]').click()
  await expect(page.getByRole('alert')).toContainText('DateTimeFormat is not a constructor')
  await expect(page.getByRole('link', { name: 'Save a rescue file' })).toHaveAttribute('href', '/rescue')
  await page.evaluate(() => (window as unknown as { mend(): void }).mend())
  await page.getByRole('button', { name: 'Try again' }).click()
  await expect(page.getByLabel(/^Length/)).toBeVisible()
})

test('what lies on a device is saved without its page and without a server, and another device takes it in', {
  tag: '@phone',
}, async ({ page, browser }) => {
  await openPage(page, server.address)
  await openReading(page, server.address, run, 'post-3/rail-height')
  await readLength(page, 'R. Quist', '30 1/4 in')
  await server.stop()
  await tearEntry(page, 'run-torn')
  await page.goto(`${server.address}/rescue`)
  await expect(page.getByRole('status')).toContainText('can be saved')
  await expect(page.getByRole('listitem')).toContainText('not whole')
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save the rescue file' }).click()
  const file = await (await coming).path()
  expect(JSON.parse(await readFile(file, 'utf8')).entries.map(({ run }: { run: string }) => run)).not.toContain(
    'run-torn',
  )
  server = await startServer(folder, port())

  const other = await browser.newContext()
  const second = await other.newPage()
  await openWithRun(second)
  await server.stop()
  await second.getByText('More about this device').click()
  await second.getByLabel('Take in a file from a device').setInputFiles(file)
  await second.getByRole('button', { name: 'Take it in', exact: true }).click()
  await expect
    .poll(async () => (await keptReadings(second)).filter(({ body }) => body.by === 'R. Quist').length)
    .toBe(1)
  await other.close()
  server = await startServer(folder, port())
})

test('a new version waits for what is entered, in this tab and in others, and then takes over in all', {
  tag: '@phone',
}, async ({ page, context }) => {
  const builds = await startWithBuilds(server.address)
  await openPage(page, builds.address)
  const other = await context.newPage()
  await openReading(page, builds.address, run, 'post-8/rail-height')
  await openReading(other, builds.address, run, 'post-9/rail-height')
  await page.getByLabel(/^Length/).fill('31 1/16')
  builds.release()
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.update())
  await expect(page.getByText('A new version is ready.')).toBeVisible()
  await expect(other.getByText('A new version is ready.')).toBeVisible()
  const isNew = (one: Page) => expect(one.locator('meta[name="build"]')).toHaveCount(1)
  const take = (one: Page) => one.getByRole('button', { name: 'Take it over' }).click()

  await take(page)
  await expect(page.getByText('It waits until what you entered is saved')).toBeVisible()
  await take(other)
  await expect(other.getByText('It waits until what you entered is saved')).toBeVisible()
  await expect(page.getByLabel(/^Length/)).toHaveValue('31 1/16')
  await expect(page.locator('meta[name="build"]')).toHaveCount(0)

  await sayWho(page, 'R. Quist')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('31 1/16 in')
  await take(other)
  await isNew(page)
  await isNew(other)
  await expect(newest(page)).toContainText('31 1/16 in')
  builds.stop()
})
