import { expect, type Page, test } from '@playwright/test'
import { openPage, openReading, sayWho } from './offline-device.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './serve.ts'

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

/** Every pane that is fetched when it is first shown, and what only it shows. */
const panes = [
  ['findings', (page: Page) => page.locator('.finding').first()],
  ['not-proven', (page: Page) => page.getByRole('heading', { name: /^Not proven/ })],
  ['day', (page: Page) => page.locator('.day-report')],
  ['sign-off', (page: Page) => page.getByRole('button', { name: 'Sign this record' })],
  ['record', (page: Page) => page.getByRole('button', { name: 'Download the record' })],
  ['layout', (page: Page) => page.locator('table.pieces')],
] as const

test('a part that nobody opened yet works without a network after the first load of the list', async ({ page }) => {
  await openPage(page, server.address)
  await expect(page.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
  await server.stop()
  for (const [pane, shown] of panes) {
    await page.goto(`${server.address}/runs/${run}/${pane}`)
    await expect(shown(page)).toBeVisible()
  }
  await openReading(page, server.address, run, 'post-8/rail-height')
  await expect(page.locator('.figure svg')).toBeVisible()
  await sayWho(page, 'R. Quist')
  const picture = await page.screenshot({ clip: { x: 0, y: 0, width: 40, height: 40 } })
  await page
    .locator('.photos input[type=file][multiple]')
    .setInputFiles({ name: 'post.png', mimeType: 'image/png', buffer: picture })
  await page.getByRole('region', { name: 'Photos' }).getByRole('button', { name: 'Draw on it' }).click()
  await expect(page.getByRole('dialog')).toBeVisible()
  await page.goto(`${server.address}/need`)
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible()
})

test.describe('without a copy of the page on the device', () => {
  test.use({ serviceWorkers: 'block' })

  test('a part that cannot be fetched says so, and is shown once it can be', async ({ page }) => {
    await page.goto(`${server.address}/runs/${run}`)
    await expect(page.locator('.walk-list')).toBeVisible()
    await page.route('**/assets/findings-pane-*.js', (route) => route.abort())
    const panes = page.getByRole('navigation', { name: 'Parts of this run' })
    await panes.getByRole('link', { name: /^Findings/ }).click()
    const alert = page.locator('.run').getByRole('alert')
    await expect(alert).toContainText('Findings')
    await expect(alert).toContainText('not on this device yet')
    await expect(page.locator('.walk-list')).toHaveCount(0)
    await page.unroute('**/assets/findings-pane-*.js')
    await alert.getByRole('button', { name: 'Try again' }).click()
    await expect(page.locator('.finding').first()).toBeVisible()
  })

  test('a run whose reader the worker cannot fetch says so, and is shown once it can be', async ({ page }) => {
    await page.route('**/assets/kept-run-*.js', (route) => route.abort())
    await page.goto(`${server.address}/runs/${run}`)
    const alert = page.locator('main').getByRole('alert')
    await expect(alert).toContainText('not on this device yet')
    await expect(page.locator('.walk-list')).toHaveCount(0)
    await page.unroute('**/assets/kept-run-*.js')
    await alert.getByRole('button', { name: 'Try again' }).click()
    await expect(page.locator('.walk-list')).toBeVisible()
  })

  test('a page whose worker cannot be fetched says so, and goes on once it can be', async ({ page }) => {
    await page.route('**/assets/device-worker-*.js', (route) => route.abort())
    await page.goto(server.address)
    const alert = page.locator('main').getByRole('alert')
    await expect(alert).toContainText('not on this device yet')
    await expect(page.locator('.run-link')).toHaveCount(0)
    await page.unroute('**/assets/device-worker-*.js')
    await alert.getByRole('button', { name: 'Try again' }).click()
    await expect(page.getByRole('link', { name: /Alder Creek/ })).toBeVisible()
  })
})
