import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { fillList } from './fill-list.ts'
import { openPage } from './offline-device.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './serve.ts'

let folder: string
let server: RunningServer

test.beforeEach(async () => {
  folder = await preparedFolder()
  server = await startServer(folder)
})

test.afterEach(async () => {
  await server.stop()
  await dropFolder(folder)
})

const row = (page: Page, name: RegExp) => page.locator('.run-row').filter({ has: page.getByRole('link', { name }) })

test('a run is copied, put away with a reason, found again and brought back, without a network', {
  tag: '@both',
}, async ({ page }) => {
  await openPage(page, server.address)
  await expect(page.getByRole('navigation', { name: 'Where to begin' }).locator('.door')).toHaveCount(3)
  const demo = row(page, /^Alder Creek/)
  await expect(demo).toContainText('not acceptable')
  await expect(demo).toContainText('4 findings, 0 of 155 to read')
  await expect(demo).toContainText('County Road 14 · 208+40')
  await expect(demo.locator('.run-face path')).not.toHaveCount(0)
  await server.stop()

  await demo.getByText('Copy or put away').click()
  await demo.getByRole('button', { name: 'Copy it without its readings' }).click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Alder Creek culvert, right side (copy)')
  await expect(page.locator('.title-verdict')).toHaveText('not yet known')
  await page.getByRole('link', { name: 'All runs' }).click()
  const copy = row(page, /\(copy\)$/)
  // What the run file and its sheets decide by themselves needs nobody to read it.
  await expect(copy).toContainText('0 findings, 150 of 155 to read')
  await expect(copy).toContainText('nobody was there yet')

  await copy.getByText('Copy or put away').click()
  await copy.getByRole('button', { name: 'Put it away' }).click()
  // Without a reason nothing is put away.
  await expect(copy).toBeVisible()
  await copy.getByLabel('Why it is put away').fill('only tried')
  await copy.getByRole('button', { name: 'Put it away' }).click()
  await expect(copy).toHaveCount(0)
  await expectAccessible(page)
  // On a phone the search alone stands above the runs.
  const putAway = page.getByLabel('Only those put away')
  if (!(await putAway.isVisible())) await page.getByText('Choose and order').click()
  await putAway.check()
  await expect(page.locator('.run-row')).toHaveCount(1)
  await expect(copy).toContainText('only tried')
  await page.reload()
  await expect(copy).toContainText('only tried')
  await copy.getByText('Copy or put away').click()
  await copy.getByRole('button', { name: 'Bring it back' }).click()
  await expect(page.getByText('No run is put away.')).toBeVisible()
  await putAway.uncheck()
  await expect(page.locator('.run-row')).toHaveCount(2)

  await page.getByLabel('Search').fill('14 copy')
  await expect(page.locator('.run-row')).toHaveCount(1)
  await page.getByLabel('Search').fill('nowhere')
  await expect(page.getByText('No run is like that.')).toBeVisible()
  await expectNoSidewaysScroll(page)
  await expectAccessible(page)
})

test('the list is read, and no run judged, until something is recorded', async ({ page }) => {
  await openPage(page, server.address)
  await expect(row(page, /^Alder Creek/)).toBeVisible()
  // What judges is never asked for: the list comes all the same.
  await page.context().route('**/assets/kept-run-*.js', (route) => route.abort())
  await page.evaluate(async () => {
    for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister()
    for (const name of await caches.keys()) await caches.delete(name)
  })
  await page.goto(server.address)
  await expect(row(page, /^Alder Creek/)).toContainText('4 findings')
})

test('a first visit is told what this is, and the cautions in full, until somebody puts them away', async ({
  page,
}) => {
  await page.goto(server.address)
  await expect(page.locator('.run-row')).toHaveCount(1)
  const foot = page.locator('.page-foot')
  await expect(foot.getByRole('listitem').first()).toBeVisible()
  await foot.getByRole('button', { name: 'Understood' }).click()
  await page.reload()
  await expect(page.locator('.run-row')).toHaveCount(1)
  await expect(foot.getByRole('listitem').first()).toBeHidden()
  await page.locator('.run-link').first().click()
  await page.getByRole('navigation', { name: 'Parts of this run' }).getByRole('link', { name: 'Record' }).click()
  await expect(foot.getByRole('listitem').first()).toBeVisible()
  await page.goto(server.address)
  const told = page.locator('.first-visit')
  await expect(told).toContainText('is invented')
  await told.getByRole('button').click()
  await expect(told).toHaveCount(0)
  await page.reload()
  await expect(page.locator('.run-row')).toHaveCount(1)
  await expect(told).toHaveCount(0)
})

test('ten thousand runs: as many are drawn as are looked at, and more when they are asked for', async ({ page }) => {
  await openPage(page, server.address)
  await expect(page.locator('.run-row')).toHaveCount(1)
  await page.evaluate(fillList, 10_000)
  await page.reload()
  await expect(page.getByText('10001 of 10001 runs')).toBeVisible()
  await expect(page.locator('.run-row')).toHaveCount(40)
  await page.getByRole('button', { name: /^Show 40 more of 9961/ }).click()
  await expect(page.locator('.run-row')).toHaveCount(80)
  await page.getByLabel('Search').fill('run 9876')
  await expect(page.locator('.run-row')).toHaveCount(1)
})

test('an address that changes while the page is first drawn is followed', { tag: '@phone' }, async ({ page }) => {
  // Just before the page listens.
  await page.addInitScript(() => {
    const listen = window.addEventListener
    window.addEventListener = (kind: string, ...rest: [EventListenerOrEventListenerObject]): void => {
      if (kind === 'lapwise:route') {
        window.addEventListener = listen
        history.pushState({}, '', '/check')
      }
      listen.call(window, kind, ...rest)
    }
  })
  await page.goto(server.address)
  await expect(page).toHaveURL(/[/]check$/)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What ends the rail?')
})

test('who goes on to another part of a run begins at its top', { tag: '@phone' }, async ({ page }) => {
  await page.goto(server.address)
  await page.locator('.run-link').first().click()
  const parts = page.getByRole('navigation', { name: 'Parts of this run' })
  await parts.getByRole('link', { name: 'Findings' }).click()
  await expect(page.locator('.finding').last()).toBeAttached()
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight))
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(500)
  await parts.getByRole('link', { name: 'Record' }).click()
  await expect(page.getByRole('button', { name: 'Download the record' })).toBeVisible()
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0)
})
