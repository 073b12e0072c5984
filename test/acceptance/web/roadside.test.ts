import { join } from 'node:path'
import { expect, type Page, test } from '@playwright/test'
import { expectNoSidewaysScroll } from './accessible.ts'
import { keptEntries } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

const open = (page: Page, path = ''): Promise<unknown> => page.goto(`${server.address}/runs/${server.run}${path}`)
const sideways = join(import.meta.dirname, 'fieldwork-sideways.jpg')

/** What the photos on the device's disk are said to show, in the order of saying. */
const keptCaptions = async (page: Page) =>
  (await keptEntries(page)).flatMap(({ kind, body }) => (kind === 'photo' ? [(body as { note: unknown }).note] : []))

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
  await expect.poll(() => keptCaptions(page)).toEqual([null, 'rust at the bolt'])
  await expect(photos.getByRole('listitem')).toHaveCount(1)
  await page.reload()
  await expect(page.locator('.past-reading').first()).toContainText('post leans, bolt rusted')
  await expect(photos.getByLabel('What it shows')).toHaveValue('rust at the bolt')
  await expect(photos.getByRole('listitem')).toHaveCount(1)
  const note = async (): Promise<string> => {
    const { readings } = await (await fetch(`${server.address}/api/runs/${server.run}`)).json()
    return readings.findLast(({ of }: { of: string }) => of === 'post-8/rail-height').note
  }
  await expect.poll(note).toBe('post leans, bolt rusted')
})

test('something that no requirement asks is noted from the roadside, keeps the run open, and is closed', {
  tag: '@phone',
}, async ({ page }) => {
  await open(page, '/walk/post-1/stub-height')
  await page.getByRole('link', { name: 'Something else seen here' }).click()
  const seen = page.getByRole('region', { name: 'Seen besides' })
  await expect(seen.getByRole('combobox')).toHaveValue('post-1')
  await seen.getByLabel('ground washed out').check()
  await seen.getByLabel('Read by').fill('R. Quist')
  await seen.getByLabel('Note').fill('2 ft deep behind the post')
  await seen.locator('input[type=file][multiple]').setInputFiles(sideways)
  await expect(seen.getByRole('region', { name: 'Photos' }).getByRole('img')).toHaveCount(1)
  await seen.getByRole('button', { name: 'Save the finding' }).click()
  const item = seen.locator('.finding')
  await expect(item).toContainText('ground washed out')
  await expect(item).toContainText('post 1')
  await expect(item).toContainText('2 ft deep behind the post')
  await expect(item).toContainText('can let it fail')
  await expect(item.getByRole('img')).toHaveCount(1)
  await expect(page.locator('.title-verdict')).toContainText('1 free finding stands')
  await expectNoSidewaysScroll(page)
  await item.getByText('Who sees to it').first().click()
  await item.getByLabel('Who sees to it').fill('M. Reyes')
  await item.getByLabel('By when').fill('2026-12-01')
  await item.getByRole('button', { name: 'Keep who and when' }).click()
  await expect(item.locator('summary')).toContainText('M. Reyes')
  const acceptance = async (): Promise<object> => {
    const { runs } = await (await fetch(`${server.address}/api/runs`)).json()
    return runs.find(({ id }: { id: string }) => id === server.run).judged.acceptance
  }
  await expect.poll(acceptance, { timeout: 15_000 }).toMatchObject({ freeFindings: 1 })
  // Whoever closes it is asked who they are: it is never put down to the one who found it.
  await page.evaluate(() => localStorage.removeItem('lapwise/visit'))
  await page.reload()
  await item.getByLabel('What was done about it').fill('filled with riprap')
  await item.getByRole('button', { name: 'Put right' }).click()
  await expect(item.getByRole('alert')).toHaveText('Say who is reading.')
  await item.getByLabel('Read by').fill('L. Haddad')
  await item.getByRole('button', { name: 'Put right' }).click()
  await expect(seen.locator('.finding-closed')).toContainText('L. Haddad: filled with riprap')
  await expect(seen).toContainText('filled with riprap')
  await expect(page.locator('.title-verdict')).not.toContainText('free finding')
  await expect.poll(acceptance, { timeout: 15_000 }).not.toMatchObject({ freeFindings: 1 })
})
