import { expect, test } from '@playwright/test'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

test('the screen is kept awake on the walk, taken again on return, and let go at its end or by choice', {
  tag: '@phone',
}, async ({ page }) => {
  await page.addInitScript(() => {
    const held = { now: 0, taken: 0 }
    const request = async () => {
      held.now += 1
      held.taken += 1
      const release = async (): Promise<void> => {
        held.now -= 1
      }
      return { release }
    }
    Object.defineProperty(navigator, 'wakeLock', { value: { request } })
    Object.assign(window, { held })
  })
  const held = () => page.evaluate(() => (window as unknown as { held: { now: number; taken: number } }).held)
  await page.goto(`${server.address}/runs/${server.run}`)
  await expect.poll(async () => (await held()).now).toBe(1)
  // As a browser lets go of it when the page is hidden, and tells when it is shown again.
  const before = (await held()).taken
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')))
  await expect.poll(async () => (await held()).taken).toBe(before + 1)
  await page.goto(`${server.address}/runs/${server.run}/walk/post-8/rail-height`)
  await expect.poll(async () => (await held()).now).toBe(1)
  await page.locator('.visit').evaluate((visit) => visit.setAttribute('open', ''))
  await page.getByLabel('Keep the screen awake on the walk').uncheck()
  await expect.poll(async () => (await held()).now).toBe(0)
  await page.reload()
  await page.locator('.entry-save').waitFor()
  expect((await held()).taken).toBe(0)
})
