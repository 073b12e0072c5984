import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { strToU8, zipSync } from 'fflate'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { pngOf } from '../../cases/documents/png-of.ts'
import { expectWhole } from './accessible.ts'
import { keptPictures, keptReadings, openPage, openReading, readLength } from './offline-device.ts'
import { dropFolder, preparedFolder, startServer } from './serve.ts'

test('a run with photos goes from one phone to another as one file, without a server, also when that is broken off', {
  tag: '@phone',
}, async ({ page, browser }) => {
  const folder = await preparedFolder()
  const server = await startServer(folder)
  const second = await browser.newContext({ viewport: { width: 390, height: 844 } })
  let other = await second.newPage()
  for (const one of [page, other]) {
    await openPage(one, server.address)
    await expect(one.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
  }
  await server.stop()

  // Made, read and photographed where there is no network.
  const file = { ...JSON.parse(demoProject().run), name: 'Birch Hollow' }
  await page.getByLabel('Add a run from a file').setInputFiles({
    ...{ name: 'run.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) },
  })
  await page.waitForURL(/\/runs\//)
  const run = new URL(page.url()).pathname.split('/')[2]!
  await openReading(page, server.address, run, 'post-8/rail-height')
  await page
    .locator('.photos input[type=file][multiple]')
    .setInputFiles([0, 1].map((n) => ({ name: `${n}.png`, mimeType: 'image/png', buffer: pngBuffer(8 + n) })))
  await expect(page.getByRole('region', { name: 'Photos' }).getByRole('listitem')).toHaveCount(2)
  await readLength(page, 'R. Quist', '24 in')
  await openReading(page, server.address, run, 'post-3/rail-height')
  await readLength(page, 'R. Quist', '31')
  await page.goto(`${server.address}/runs/${run}/record`)
  await page.getByRole('button', { name: 'Hand over this run' }).click()
  const saving = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save it', exact: true }).click()
  const download = await saving
  expect(download.suggestedFilename()).toBe('lapwise-Birch-Hollow.zip')
  const handed = await readFile(await download.path())

  // What it would change is shown, and nothing is changed until somebody says so.
  await give(other, 'Birch.zip', handed)
  const seen = () => other.locator('.take-in')
  for (const words of ['Birch Hollow: new here', '2 readings', '2 photos', 'the pictures of 2 photos'])
    await expect(seen()).toContainText(words)
  await expect(other.getByRole('link', { name: /Birch Hollow/ })).toHaveCount(0)
  await other.getByRole('button', { name: 'Take it in', exact: true }).click()
  await other.close()
  other = await second.newPage()
  await other.goto(server.address)
  await give(other, 'Birch.zip', handed)
  // What was broken off may have come in whole, in part or not at all.
  await expect(seen()).toContainText(/would bring:|brings nothing/)
  const rest = other.getByRole('button', { name: 'Take it in', exact: true })
  if (await rest.isVisible()) {
    await rest.click()
    await expect(seen()).toContainText('Taken in:')
  }
  await expect.poll(() => keptPictures(other)).toBe(2)
  await expect.poll(async () => (await keptReadings(other)).filter(({ body }) => body.by === 'R. Quist').length).toBe(2)
  await give(other, 'Birch.zip', handed)
  await expect(seen()).toContainText('Birch.zip brings nothing that is not here already')

  // The same verdicts and findings on both.
  const verdicts = async (one: Page): Promise<readonly (string | null)[]> => {
    await one.goto(`${server.address}/runs/${run}/findings`)
    await expect(one.getByText('24 in').first()).toBeVisible()
    await expectWhole(one)
    const findings = await one.locator('main').textContent()
    await one.goto(`${server.address}/runs/${run}`)
    await expect(one.locator('.walk-list')).toHaveAttribute('aria-busy', 'false')
    return [findings, await one.locator('.walk-list').textContent()]
  }
  expect(await verdicts(other)).toEqual(await verdicts(page))
  await openReading(other, server.address, run, 'post-8/rail-height')
  await expect(other.getByRole('region', { name: 'Photos' }).getByRole('img')).toHaveCount(2)

  // One of a newer program is kept, and says what it needs; one that is cut short is refused.
  await other.goto(server.address)
  const manifest = strToU8(JSON.stringify({ format: 'lapwise-handover/7', all: 'other' }))
  await give(other, 'later.zip', Buffer.from(zipSync({ 'manifest.json': manifest })))
  await expect(other.locator('.take-in')).toContainText('in version 7 of its format')
  await give(other, 'cut.zip', handed.subarray(0, -100))
  await expect(other.locator('.take-in')).toContainText('a whole ZIP file')
  await other.getByText('More about this device').click()
  await expect(other.locator('.device-transfer')).toContainText('later.zip: made by a newer program')
  await second.close()
  await dropFolder(folder)
})

const pngBuffer = (grey: number): Buffer => Buffer.from(pngOf(40, 30, (x, y) => (x * grey + y) % 256))

const give = (page: Page, name: string, buffer: Buffer): Promise<void> =>
  page.getByLabel('Add a run from a file').setInputFiles({ name, mimeType: 'application/zip', buffer })
