import { randomBytes } from 'node:crypto'
import { expect, type Locator, type Page, test } from '@playwright/test'
import { entryId } from '../../../src/formats/entry-id.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

const both = { tag: '@both' }
const list = (page: Page) => page.locator('.walk-list')
const rows = (page: Page) => list(page).getByRole('link')
const next = (page: Page) => page.locator('.next-bar').getByRole('link')

/** The demo as a run that nobody read yet. */
async function openUnread(page: Page): Promise<string> {
  const id = entryId(Date.now(), randomBytes(10))
  const entry = {
    ...{ id, run: id, kind: 'run', schemaVersion: 1, author: 'R. Quist', device: 'test', supersedes: null },
    ...{ capturedAt: '2026-05-04T15:30:00.000Z', body: { ...JSON.parse(demoProject().run), name: 'Unread' } },
  }
  const sent = {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: [entry] }),
  }
  await fetch(`${server.address}/api/entries`, sent)
  await page.goto(`${server.address}/runs/${id}`)
  await expect(list(page)).toHaveAttribute('aria-busy', 'false')
  return id
}

const top = async (of: Locator): Promise<number> => (await of.boundingBox())!.y

test('the walk is searched, filtered and folded, and leads on to what nobody read', both, async ({ page }) => {
  await openUnread(page)
  await expect(next(page)).toHaveText(/^Next unread: post 1/)
  // Folded by place with counts: only where the next one is stands open.
  await expect(list(page).locator('details[open]')).toHaveCount(1)
  await expect(
    list(page)
      .locator('summary')
      .filter({ hasText: /^post 8unread 4\/4$/ }),
  ).toBeAttached()
  await page.getByRole('searchbox').fill('post 8 rail')
  await expect(list(page).locator('summary')).toHaveText([/^post 8/])
  await expect(rows(page).first()).toBeVisible()
  for (const row of await rows(page).all()) await expect(row).toContainText(/rail/i)
  await page.getByRole('searchbox').fill('no such word')
  await expect(list(page)).toContainText('Nothing is like that')
  await page.getByRole('searchbox').fill('')
  await page.getByRole('button', { name: /fails/ }).click()
  await expect(rows(page)).toHaveCount(0)
  await page.getByRole('button', { name: /all/ }).click()

  // By key alone: a place is unfolded, and what it asks is reached and opened.
  const fold = list(page)
    .locator('summary')
    .filter({ hasText: /^post 12/ })
  await fold.focus()
  await page.keyboard.press('Enter')
  await expect(
    list(page)
      .locator('details', { has: page.locator('summary', { hasText: /^post 12/ }) })
      .getByRole('link')
      .first(),
  ).toBeVisible()
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await expect(page.locator('.entry-place')).toContainText('post 12')
  await expectNoSidewaysScroll(page)
  await page.goBack()
  await expect(page.locator('.entry-place')).toHaveCount(0)
  await next(page).click()
  await expect(page.locator('.entry-place')).toContainText(/post 12|posts 12/)
})

test(
  'who comes back to the list finds it as it was left, in the language that was chosen meanwhile',
  both,
  async ({ page }) => {
    await openUnread(page)
    const fold = list(page)
      .locator('summary')
      .filter({ hasText: /^post 16/ })
    await fold.click()
    const row = rows(page).filter({ hasText: 'top of the rail' }).last()
    await row.click()
    await expect(page.locator('.entry-place')).toContainText('post 16')
    await page.goto(page.url().replace(/\/walk.*/, ''))
    await expect(list(page)).toHaveAttribute('aria-busy', 'false')
    await fold.click()
    // To the middle, so that the click scrolls no further; how far it was scrolled is known a frame later. On a desk the
    // list scrolls, and the page stays.
    await row.evaluate((link) => {
      const { scrollY } = window
      link.scrollIntoView({ block: 'center' })
      if (getComputedStyle(link.closest('.walk-list')!).overflowY === 'auto') window.scrollTo(0, scrollY)
    })
    await page.evaluate(() => new Promise((seen) => requestAnimationFrame(() => requestAnimationFrame(seen))))
    // On a desk against the list, whose own place moves when the line of the state above it comes or goes.
    const back = page.getByRole('link', { name: 'List', exact: true })
    const isDesk = (page.viewportSize()?.width ?? 0) > 1000
    const where = async (): Promise<number> => (await top(fold)) - (isDesk ? await top(list(page)) : 0)
    const before = await where()
    await row.click()
    await expect(page.locator('.entry-place')).toContainText('post 16')
    if (await back.isVisible()) await back.click()
    else await page.goBack()
    await expect(row).toBeFocused()
    expect(Math.abs((await where()) - before)).toBeLessThan(3)
    // Another part of the run and back: unfolded as before, and in sight.
    await page.getByRole('link', { name: 'Layout' }).click()
    await expect(page.locator('.pieces')).toBeVisible()
    await page.getByRole('link', { name: 'Walk' }).click()
    await expect(row).toBeInViewport()
    await page.getByLabel('Language').selectOption('es')
    await expect(list(page).locator('h2').first()).toHaveText('Puntos de espera: mirar antes de que se cubra')
    await expect(list(page).locator('h2', { hasText: /^poste 16/ })).toBeAttached()
    await expect(list(page).locator('h2', { hasText: /post \d/ })).toHaveCount(0)
  },
)

test('strip, list and entry stand beside each other on a desk, and none lies over another', async ({ page }) => {
  const id = await openUnread(page)
  for (const height of [900, 768]) {
    await page.setViewportSize({ width: 1440, height })
    await page.goto(`${server.address}/runs/${id}/walk/post-12/rail-height`)
    await expect(page.locator('.entry')).toBeVisible()
    await expect(list(page)).toHaveAttribute('aria-busy', 'false')
    const parts = ['.title-block', '.strip', '.walk-left', '.walk-entry']
    const boxes = await Promise.all(parts.map(async (part) => (await page.locator(part).boundingBox())!))
    for (const [i, a] of boxes.entries()) {
      expect(a.y + a.height, parts[i]).toBeLessThanOrEqual(height)
      expect(a.height, parts[i]).toBeGreaterThan(90)
      for (const b of boxes.slice(i + 1)) {
        const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
        const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
        expect(Math.min(across, down)).toBeLessThanOrEqual(1)
      }
    }
    // What is open is in sight in the list, and so is what saves it.
    await expect(list(page).locator('[aria-current]')).toBeInViewport()
    await expect(page.locator('.entry-save')).toBeInViewport()
    expect(await page.evaluate(() => window.scrollY)).toBe(0)
  }
})
