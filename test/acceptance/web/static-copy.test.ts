import { execFileSync } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { keptReadings, openPage, readLength } from './offline-device.ts'
import { type PlainHost, startPlainHost } from './plain-host.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))

let host: PlainHost

test.beforeAll(async () => {
  execFileSync('npm', ['run', 'build:static'], { cwd: root, stdio: ['ignore', 2, 2] })
  host = await startPlainHost(join(root, 'dist/static'))
})

test.afterAll(() => host.stop())

const named = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

/** Every address that the page or its workers ask for anywhere else than in the folder that it came from. */
function strangersOf(context: BrowserContext): readonly string[] {
  const strangers: string[] = []
  context.on('request', (request) => {
    const address = request.url()
    if (!/^(blob|data):/.test(address) && !address.startsWith(host.address)) strangers.push(address)
  })
  return strangers
}

test('without any server a terminal is checked, signed for, handed on as a file and opened again without a network', {
  tag: '@phone',
}, async ({ page, context, browser }) => {
  page.setDefaultTimeout(20_000)
  const strangers = strangersOf(context)
  const second = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const other = await second.newPage()
  await openPage(other, host.address)
  await openPage(page, host.address)
  await expect(page.getByText('There is no run yet')).toBeVisible()
  await expect(page.getByRole('complementary', { name: 'This device' })).toContainText('This copy has no server')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // From what stands to a finding.
  await page.getByRole('link', { name: /Check what stands/i }).click()
  await named(page, /Flared cable-anchored terminal, 27 3\/4 in/).click()
  await named(page, 'This end only: traffic comes').click()
  await named(page, 'Begin to look').click()
  await page.getByRole('link', { name: /^Next unread/ }).click()
  await expect(page.locator('#must')).toBeVisible()
  const run = /#\/runs\/([^/]+)/.exec(page.url())![1]!
  const at = (view: string): string => `${host.address}#/runs/${run}${view}`
  await page.goto(at('/walk/post-3/rail-height'))
  await readLength(page, 'R. Quist', '25')
  await page.goto(at('/findings'))
  await expect(page.locator('.title-verdict')).toHaveText('not acceptable')
  await expect(page.getByText('25 in').first()).toBeVisible()

  // Signed, with what does not stand said as it is.
  await page.goto(at(''))
  await named(page, 'Closed ground: they cannot be seen').click()
  await page
    .getByRole('navigation', { name: 'Parts of this run' })
    .getByRole('link', { name: /Sign-off/ })
    .click()
  await page.getByLabel('Name', { exact: true }).fill('R. Quist')
  await page.getByLabel('Role').fill('inspector')
  await page.getByLabel('Sign by typing the name instead of drawing').check()
  await named(page, 'Sign this record').click()
  await expect(page.locator('.version')).toContainText('R. Quist')

  // The other phone has the page and nothing else, and gets it all in a file.
  await page.goto(at('/record'))
  await named(page, 'Hand over this run').click()
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save it', exact: true }).click(),
  ])
  await other.locator('.device summary').first().click()
  await other.locator('.device-transfer input[type=file]').setInputFiles({
    ...{ name: saved.suggestedFilename(), mimeType: 'application/zip', buffer: await readFile(await saved.path()) },
  })
  await other.getByRole('button', { name: 'Take it in', exact: true }).click()
  await expect(other.locator('.take-in')).toContainText('Taken in:')
  await other.goto(at('/sign-off'))
  await expect(other.locator('.version')).toContainText('the record as it stands')

  // Nothing of the page is asked for again; a link to a view opens that view, from its own tab too.
  const missed = [...host.missed]
  await host.stop()
  await page.reload()
  await expect(page.getByRole('heading', { level: 2, name: 'Record and packet' })).toBeVisible()
  const another = await context.newPage()
  await another.goto(at('/walk/post-3/rail-height'))
  await expect(another.locator('.past-reading').first()).toContainText('R. Quist')
  expect(await keptReadings(another)).toEqual(await keptReadings(page))
  expect(missed).toEqual([])
  expect(strangers).toEqual([])
})
