import { expect, type Locator, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

/** Touches, counted. */
function hand() {
  const touched: string[] = []
  const touch = async (what: Locator): Promise<void> => {
    touched.push((await what.textContent())?.trim() ?? '')
    await what.click()
  }
  return { touch, touched }
}

const named = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name })

test('a terminal that somebody built is at its first requirement within ten touches, found by the key', {
  tag: '@both',
}, async ({ page }) => {
  const { touch, touched } = hand()
  await page.goto(server.address)
  await touch(page.getByRole('link', { name: /Check what stands/i }))
  await expect(page.getByRole('heading', { level: 1, name: 'What ends the rail?' })).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  await touch(named(page, 'Find it by questions'))
  await expect(page.getByRole('status').filter({ hasText: 'left' })).toContainText('7 of 7 left')
  await touch(named(page, 'A head on the rail'))
  await expect(page.getByRole('status').filter({ hasText: 'left' })).toContainText('3 of 7 left')
  await expectAccessible(page)
  await touch(named(page, 'Yes, by 2 ft or more'))
  await touch(named(page, 'At a post'))
  await expect(page.getByRole('heading', { level: 1, name: 'Is it this one?' })).toBeVisible()
  await touch(named(page, /Flared cable-anchored terminal, 27 3\/4 in/))
  await touch(named(page, 'This end only: traffic comes'))
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  for (const button of await page.locator('.checking .main, .check-stepper .button').all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(56)
  await touch(named(page, 'Begin to look'))
  await touch(page.getByRole('link', { name: /^Next unread/ }))
  await expect(page.locator('#must')).toBeVisible()
  expect(touched.length).toBeLessThanOrEqual(10)
  await page.goto(page.url().replace(/walk.*/, 'not-proven'))
  await expect(page.getByText('nothing here proves shielding')).toBeVisible()
  await expect(page.getByText('nobody looked at the rest of the run')).toBeVisible()
})

test('what was counted otherwise than the sheet has it is a finding at once, in Spanish too', {
  tag: '@phone',
}, async ({ page }) => {
  await page.goto(`${server.address}/check`)
  await named(page, /Flared cable-anchored terminal, 31 in/).click()
  await named(page, 'The whole run: traffic comes').click()
  await named(page, /Trailing-end anchor, 31 in/).click()
  await named(page, 'No, one-way or out of reach').click()
  await named(page, 'Panels: one more').click()
  await named(page, '3: 9 ft 4 1/2 in').click()
  await named(page, 'Posts: one less').click()
  await page.getByRole('combobox', { name: /^Language|^Idioma/ }).selectOption('es')
  await named(page, 'Empezar a mirar').click()
  await page.getByRole('link', { name: /Hallazgos/ }).click()
  await expect(page.getByText('contado: 12 ft 6 in', { exact: false })).toBeVisible()
  await expect(page.getByText(/postes contados, \d+ pedidos/)).toBeVisible()
})

test('an end that none of the pictures shows is begun without its sheet, without a network', {
  tag: '@phone',
}, async ({ page, context }) => {
  await page.goto(`${server.address}/check`)
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  await page.reload()
  await expect(named(page, 'Find it by questions')).toBeVisible()
  await context.setOffline(true)
  await named(page, 'Find it by questions').click()
  await named(page, 'None of these').click()
  await expect(page.getByRole('heading', { level: 1, name: 'No sheet at hand fits what you saw' })).toBeVisible()
  await named(page, 'Go on without its sheet').click()
  await named(page, /splices midway between posts/).click()
  await named(page, 'This end only: traffic comes').click()
  await named(page, 'Begin to look').click()
  await page.getByRole('link', { name: /Not proven/ }).click()
  await expect(page.getByText('not known which hardware ends the run')).toBeVisible()
})

test('an anchor by itself is judged by the traffic that can reach it, and says what nobody said', {
  tag: '@phone',
}, async ({ page }) => {
  await page.goto(`${server.address}/check`)
  await named(page, /Trailing-end anchor, 27 3\/4 in/).click()
  await expect(page.locator('.checking .main')).toHaveText('Traffic leaves by this end')
  await named(page, 'This end only: traffic leaves').click()
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/Can traffic of the other direction strike/)
  await expectAccessible(page)
  await named(page, 'Not sure').click()
  await named(page, 'Begin to look').click()
  const parts = page.getByRole('navigation', { name: 'Parts of this run' })
  await parts.getByRole('link', { name: /Findings/ }).click()
  await expect(page.getByRole('heading', { level: 2, name: /^Findings/ })).toBeVisible()
  await expect(page.getByText('not crashworthy', { exact: false })).toHaveCount(0)
  await page.getByRole('link', { name: /Not proven/ }).click()
  await expect(page.getByText('not crashworthy; not said whether opposing traffic can reach it')).toBeVisible()
})
