import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expectUnsent, openPage, openReading, readLength, syncNow } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name })
const layouts = (page: Page) => page.getByRole('radio', { name: /panels?:/ })

interface RunEntry {
  readonly run: string
  readonly kind: string
  readonly author: string
  readonly supersedes: string | null
  readonly body: { readonly need: object; readonly earlier: readonly object[] }
}

test('a run is laid out from nothing and edited without a network; its next version reaches the server', {
  tag: '@phone',
}, async ({ page, context }) => {
  await openPage(page, server.address)
  await page.getByRole('link', { name: /Lay out a run/ }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Lay out a run' })).toBeVisible()
  await expect(page.getByText('Say where the stretch to shield ends')).toBeVisible()
  const beside = await page.getByRole('heading', { name: 'Layout' }).boundingBox()
  expect(beside?.y).toBeLessThan(2 * 844)
  await field(page, /^Ends at/).fill('120 ft')
  await expect(layouts(page)).toHaveCount(6)
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // Panels that nobody has: the reason stands at the field, and goes away with it.
  await page.getByText('Panels at hand').click()
  await page.getByRole('checkbox', { name: 'Only these lengths are at hand' }).check()
  await expect(page.locator('#field-stock-wrong, #field-stock-0-length-wrong').first()).toContainText('in stock')
  await page.getByRole('checkbox', { name: 'Only these lengths are at hand' }).uncheck()
  await expect(layouts(page)).toHaveCount(6)
  await layouts(page).nth(1).check()
  const chosen = await layouts(page)
    .nth(1)
    .evaluate((one) => one.closest('label')?.textContent ?? '')
  const panels = Number(/(\d+) panels:/.exec(chosen)?.[1])
  await page.getByRole('button', { name: 'Make the run' }).click()
  await expect(page.locator('table.pieces th', { hasText: /^panel/i })).toHaveCount(panels)

  const run = new URL(page.url()).pathname.split('/')[2]!
  for (const post of ['post-10', 'post-29']) {
    await openReading(page, server.address, run, `${post}/rail-height`)
    await readLength(page, 'R. Quist', '31 in')
  }
  await syncNow(page)
  const onServer = async (): Promise<number> =>
    (await (await fetch(`${server.address}/api/runs/${run}`)).json()).readings.length
  await expect.poll(onServer).toBe(2)
  await expectUnsent(page, 0)

  await context.setOffline(true)
  await page.goto(`${server.address}/runs/${run}/layout`)
  await page.getByRole('link', { name: 'Edit what is asked' }).click()
  await expect(page.getByText('Nothing is changed yet.')).toBeVisible()
  await page.getByText('Name and place').click()
  await field(page, /^Route/).fill('SR 9')
  await expect(page.getByText('all 2 readings stay')).toBeVisible()
  await page.getByText('What has to be shielded').click()
  await field(page, /^Ends at/).fill('160 ft')
  await expect(page.getByText('1 reading is kept as asked by an earlier version')).toBeVisible()
  await expect(page.locator('.run-form-asked-earlier li')).toContainText('post 29')
  await expect(page.getByText('1 reading stays where it is.')).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // What was begun is on the disk, and is taken up only when somebody says so.
  await page.reload()
  await page.getByText('What has to be shielded').click()
  await expect(field(page, /^Ends at/)).toHaveValue('120 ft 0 in')
  await page.getByRole('button', { name: 'Go on with it' }).click()
  await expect(field(page, /^Ends at/)).toHaveValue('160 ft')
  const save = page.getByRole('button', { name: 'Save as a version' })
  await save.click()
  await expect(page.getByText('Write why')).toBeVisible()
  await page.getByLabel('Why the run is changed').fill('the ditch goes on')
  await save.click()
  await expect(page.getByRole('heading', { name: 'Why so' })).toBeVisible()
  await expectUnsent(page, 1)
  await page.goto(`${server.address}/runs/${run}/walk`)
  await expect(page.getByText('Asked by an earlier version (1)')).toBeVisible()

  await context.setOffline(false)
  await syncNow(page)
  await expectUnsent(page, 0)
  const { entries } = (await (await fetch(`${server.address}/api/entries`)).json()) as {
    readonly entries: readonly RunEntry[]
  }
  const versions = entries.filter((entry) => entry.kind === 'run' && entry.run === run)
  expect(versions).toHaveLength(2)
  expect(versions[1]).toMatchObject({
    ...{ author: 'R. Quist', supersedes: run },
    body: { need: { from: 0, to: 1920 }, earlier: [{ id: run, because: 'the ditch goes on' }] },
  })
})

test('on a desk form and layout stand beside each other, and what lies beyond a post that could not go is laid out anew', async ({
  page,
}) => {
  // Past the post that is left out at the culvert, which stays left out.
  await page.goto(`${server.address}/runs/${server.run}/edit?from=post-16`)
  await expect(page.getByText('with posts 1 to 16 driven')).toBeVisible()
  await expect(page.locator('.layout-choice').first()).toContainText('1 moved, left out or special')
  // Too near to that gap the sheet leaves no way round another one, and says so at its field.
  await page.goto(`${server.address}/runs/${server.run}/edit?from=post-9&blocked`)
  await expect(page.getByText('Post 9 could not go where it was asked')).toBeVisible()
  await expect(page.locator('#field-obstructions-1-from-wrong')).toContainText('No layout')
  await expectAccessible(page)
  await page.goto(`${server.address}/runs/${server.run}/edit?from=post-9`)
  await expect(page.getByText('with posts 1 to 9 driven')).toBeVisible()
  await expect(layouts(page).first()).toBeChecked()
  const [asked, beside] = await Promise.all(
    ['.run-form-asked', '.run-form-beside'].map((one) => page.locator(one).boundingBox()),
  )
  expect(asked!.x + asked!.width).toBeLessThanOrEqual(beside!.x)
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
})
