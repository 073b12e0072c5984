import { readFileSync } from 'node:fs'
import { expect, type Locator, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()
const named = (page: Page, name: string | RegExp): Locator => page.getByRole('button', { name })

const file = new URL('../../cases/added-sheet/invented-terminal-31.json', import.meta.url)
const asFile = (text: string) => ({ name: 'terminal.json', mimeType: 'application/json', buffer: Buffer.from(text) })

test('a sheet of an agency is put on the shelf of a phone; a run is checked by it, and a site planned with it', {
  tag: '@both',
}, async ({ page }) => {
  const text = readFileSync(file, 'utf8')
  await page.goto(`${server.address}/check`)
  await page.getByRole('link', { name: 'Put it on the shelf' }).click()
  await page.getByText('Hardware sheets of this device').click()
  const chosen = page.getByLabel('Put a sheet on the shelf from its file')
  await chosen.setInputFiles(asFile(text.replace('"terminal"', '"gate"')))
  await expect(page.getByRole('alert')).toContainText('terminal.json was not put on the shelf')
  await expect(page.getByRole('alert')).toContainText('kind')
  await chosen.setInputFiles(asFile(text))
  await expect(page.getByText('terminal.json is on the shelf.')).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  const name = (JSON.parse(text) as { readonly name: string }).name
  await page.goto(`${server.address}/check`)
  await named(page, name).click()
  await named(page, 'This end only: traffic comes').click()
  await named(page, 'Begin to look').click()
  await page.getByRole('link', { name: /^Next unread/ }).click()
  await expect(page.locator('#must')).toBeVisible()

  await page.goto(`${server.address}/need`)
  await openHardware(page)
  await page.locator('#field-barrier-approachEnd').selectOption({ label: name })
  await named(page, 'Make the run').click()
  await named(page, 'Make it all the same').click()
  await expect(page).toHaveURL(/[/]runs[/].*[/]layout$/)
  await page.goto(page.url().replace(/layout$/, 'edit'))
  await openHardware(page)
  await expect(page.getByRole('radio', { name, exact: true }).first()).toBeChecked()
})

/** On a wide screen it is open at first. */
async function openHardware(page: Page): Promise<void> {
  const section = page
    .locator('details')
    .filter({ has: page.getByText(/^Hardware/) })
    .last()
  await expect(section).toBeVisible()
  if ((await section.getAttribute('open')) === null) await section.locator('summary').click()
}
