import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './serve.ts'

let folder: string
let server: RunningServer
let run: string

test.beforeAll(async () => {
  folder = await preparedFolder()
  server = await startServer(folder)
  run = (await (await fetch(`${server.address}/api/runs`)).json()).runs[0].id
})

test.afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
})

const open = (page: Page, path = ''): Promise<unknown> => page.goto(`${server.address}/runs/${run}${path}`)
const sideways = join(import.meta.dirname, 'fieldwork-sideways.jpg')

test('a note stays with its reading and a caption with its photo, also after the page is closed', {
  tag: '@phone',
}, async ({ page }) => {
  await open(page, '/walk/post-8/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await page.getByLabel(/^Length/).fill('31')
  await page.getByRole('button', { name: 'Note', exact: true }).click()
  await page.getByLabel('Note', { exact: true }).fill('post leans, bolt rusted')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.past-reading').first()).toContainText('post leans, bolt rusted')
  await page.locator('.photos input[type=file][multiple]').setInputFiles(sideways)
  const photos = page.getByRole('region', { name: 'Photos' })
  await photos.getByLabel('What it shows').fill('rust at the bolt')
  await photos.getByLabel('What it shows').press('Enter')
  await expect(photos.getByRole('listitem')).toHaveCount(1)
  await page.reload()
  await expect(page.locator('.past-reading').first()).toContainText('post leans, bolt rusted')
  await expect(photos.getByLabel('What it shows')).toHaveValue('rust at the bolt')
  await expect(photos.getByRole('listitem')).toHaveCount(1)
  const note = async (): Promise<string> => {
    const { readings } = await (await fetch(`${server.address}/api/runs/${run}`)).json()
    return readings.findLast(({ of }: { of: string }) => of === 'post-8/rail-height').note
  }
  await expect.poll(note).toBe('post leans, bolt rusted')
})
