import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { pngOf } from '../../cases/documents/png-of.ts'
import { expectAccessible } from './accessible.ts'
import { keptPhotos, openPage, openReading, syncNow } from './offline-device.ts'
import { dropFolder, preparedFolder, startServer } from './serve.ts'

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }

test('a run goes on by the system’s sharing with the photos that only the server had, and comes in by being dropped', {
  tag: '@phone',
}, async ({ page, browser }) => {
  const folder = await preparedFolder()
  const server = await startServer(folder)
  const contexts = await Promise.all([browser.newContext(phone), browser.newContext(onIphone)])
  const [second, third] = (await Promise.all(contexts.map((one) => one.newPage()))) as [Page, Page]
  await shareKept(contexts[0]!)
  await contexts[1]!.addInitScript(() => Object.assign(navigator, { standalone: false }))
  for (const one of [page, second, third]) await openPage(one, server.address)

  // On the first: a run, a photo of it and an arrow on that, all on the server.
  const file = { ...JSON.parse(demoProject().run), name: 'Birch Hollow' }
  await page.getByLabel('Add a run from a file').setInputFiles({
    ...{ name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) },
  })
  await page.waitForURL(/\/runs\//)
  const run = new URL(page.url()).pathname.split('/')[2]!
  await openReading(page, server.address, run, 'post-8/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await page
    .locator('.photos input[type=file][multiple]')
    .setInputFiles({ name: 'p.png', mimeType: 'image/png', buffer: Buffer.from(pngOf(80, 40, (x, y) => x + y)) })
  await page.getByRole('button', { name: 'Draw on it' }).click()
  await page.getByRole('button', { name: 'Add an arrow' }).click()
  await page.getByRole('button', { name: 'Keep the marks' }).click()
  await expect(marked(page)).toHaveCount(1)
  await expect(page.locator('.device-state')).toHaveAttribute('data-unsent', '0')
  const [sha256] = (await keptPhotos(page)) as [string]
  await expect.poll(async () => (await fetch(`${server.address}/api/photos/${sha256}`)).status).toBe(200)
  const drawings = async (): Promise<number> => {
    const { entries } = await (await fetch(`${server.address}/api/entries`)).json()
    return entries.filter(({ kind }: { kind: string }) => kind === 'photo-strokes').length
  }
  await expect.poll(drawings).toBe(1)

  // On the second, which was never shown the picture, it goes into the file all the same.
  const made = async (): Promise<void> => {
    await second.goto(`${server.address}/runs/${run}/record`)
    await second.getByRole('button', { name: 'Hand over this run' }).click()
  }
  await syncNow(second)
  await expect(second.getByRole('link', { name: /Birch Hollow/ })).toBeVisible()
  await made()
  expect(await keptPhotos(second)).toEqual([])
  await expect(second.locator('.hand-over')).toContainText('The file is made')
  await expect(second.locator('.hand-over')).not.toContainText('not in the file')
  await second.getByRole('button', { name: 'Share it' }).click()
  const whole = await shared(second)
  expect(whole).toMatchObject({ name: 'lapwise-Birch-Hollow.zip', type: 'application/zip' })
  const parts = unzipSync(whole.bytes)
  expect(Object.keys(parts)).toContain(`photos/${sha256}.jpg`)
  expect(Buffer.from(parts['entries.jsonl']!).toString()).toContain('"kind":"photo-strokes"')

  // Without a network it says what it lacks, and so does who takes it in.
  await server.stop()
  await made()
  await expect(second.locator('.hand-over')).toContainText('The picture of 1 photo is neither on this device nor')
  await expect(second.locator('.hand-over li')).toContainText('1 photo, R. Quist')
  await expectAccessible(second)
  await second.getByRole('button', { name: 'Share it' }).click()
  const lacking = await shared(second)
  expect(Object.keys(unzipSync(lacking.bytes)).sort()).toEqual(['entries.jsonl', 'manifest.json'])

  // On the third, an iPhone without a network: by being dropped on the list, first what lacks the picture.
  await drop(third, lacking)
  const seen = third.locator('.take-in')
  await expect(seen).toContainText('Birch Hollow: new here')
  await expect(seen).toContainText('1 drawing on a photo')
  await expect(seen).toContainText('It tells of 1 photo whose picture is neither in it nor here:')
  await seen.getByRole('button', { name: 'Take it in', exact: true }).click()
  await expect(seen).toContainText('Taken in:')
  await drop(third, whole)
  await expect(seen).toContainText('the picture of 1 photo')
  await expect(seen).not.toContainText('neither in it nor here')
  await seen.getByRole('button', { name: 'Take it in', exact: true }).click()
  await expect(seen).toContainText('Taken in: 0 entries, 1 photos')
  await expect.poll(() => keptPhotos(third)).toEqual([sha256])

  // A mere tab of its browser warns before anything is entered, and says the way on.
  await openReading(third, server.address, run, 'post-8/rail-height')
  const warning = third.getByRole('alert').filter({ hasText: 'Enter it here all the same' })
  await expect(warning).toContainText('installed app')
  await expectAccessible(third)
  await warning.getByRole('link').click()
  await expect(third).toHaveURL(/\/bring-over$/)
  await third.goBack()
  await warning.getByRole('button').click()
  await expect(warning).toHaveCount(0)
  await expect(marked(third)).toHaveCount(1)
  await third.reload()
  await expect(marked(third)).toHaveCount(1)
  await expect(warning).toHaveCount(0)

  for (const one of contexts) await one.close()
  await dropFolder(folder)
})

/** The browser of an iPhone as far as the page asks it: its name, and that it is no installed app. */
const onIphone = {
  ...phone,
  userAgent:
    'Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.0 Mobile/15E148 Safari/604.1',
}

/** Pictures with what is drawn on them. */
const marked = (page: Page) => page.locator('.photo:has(svg)')

/** Keeps what is given to the system's sharing, which no test can see. */
const shareKept = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const kept: File[] = []
    Object.assign(navigator, {
      canShare: ({ files }: ShareData) => files?.every(({ type }) => type === 'application/zip'),
      share: async ({ files }: ShareData) => kept.push(...files!),
    })
    Object.assign(window, { shared: kept })
  })

interface Sharing {
  readonly shared: readonly File[]
}

interface Given {
  readonly name: string
  readonly type: string
  readonly bytes: Uint8Array
}

/** The file that was shared since the page was opened, once one was. */
async function shared(page: Page): Promise<Given> {
  await page.waitForFunction(() => (window as unknown as Sharing).shared.length > 0)
  const { bytes, ...file } = await page.evaluate(async () => {
    const [file] = (window as unknown as Sharing).shared as [File]
    return { name: file.name, type: file.type, bytes: [...new Uint8Array(await file.arrayBuffer())] }
  })
  return { ...file, bytes: Uint8Array.from(bytes) }
}

/** Drops a file on the page. */
async function drop(page: Page, { name, type, bytes }: Given): Promise<void> {
  const dropped = await page.evaluateHandle(
    ([name, type, bytes]) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([Uint8Array.from(bytes)], name, { type }))
      return transfer
    },
    [name, type, [...bytes]] as const,
  )
  await page.dispatchEvent('main', 'drop', { dataTransfer: dropped })
}
