import { randomBytes } from 'node:crypto'
import { expect, type Page, test } from '@playwright/test'
import { entryId } from '../../../src/formats/entry-id.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { runAllowing } from '../../fixtures/roadside.ts'
import { ditchRun } from '../../fixtures/run-files.ts'
import { expectUnsent, syncNow } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

const open = (page: Page, path = ''): Promise<unknown> => page.goto(`${server.address}/runs/${server.run}${path}`)
const length = (page: Page) => page.getByLabel(/^Length/)
const must = (page: Page) => page.locator('#must')

type ServerReading = {
  readonly value: string
  readonly side?: string
  readonly corrects: string | null
  readonly id: string
}

async function readingsOf(what: string): Promise<readonly ServerReading[]> {
  const { readings } = await (await fetch(`${server.address}/api/runs/${server.run}`)).json()
  return readings.filter(({ of }: { of: string }) => of === what)
}

/** A reading is stored on the device first and reaches the server soon after. */
const expectOnServer = (what: string, last: Partial<ServerReading>) =>
  expect.poll(async () => (await readingsOf(what)).at(-1), { timeout: 15_000 }).toMatchObject(last)

test('Enter saves and goes to the next requirement, without a mouse', async ({ page }) => {
  await open(page, '/walk/post-8/rail-height')
  await length(page).focus()
  await page.keyboard.type('31 1/8')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('alert')).toContainText('Say who is reading')
  await expect(page.getByLabel('Read by')).toBeFocused()
  await page.keyboard.type('R. Quist')
  await page.keyboard.press('Enter')
  await expect(page.locator('.saved')).toContainText('post 8, 31 1/8 in')
  await expect(must(page)).toHaveText('The post is a standard post.')
  // The first choice has the focus: the arrow keys choose, Enter saves.
  await expect(page.getByRole('radio').first()).toBeFocused()
  await page.keyboard.press('Space')
  await expect(page.getByRole('radio').first()).toBeChecked()
  await page.keyboard.press('Enter')
  await expect(must(page)).toHaveText('The post carries an offset block.')
  await expectOnServer('post-8/rail-height', { value: '31 1/8 in' })
})

test('the keypad writes where the caret stands, and the caret stays behind what it wrote', { tag: '@phone' }, async ({
  page,
}) => {
  await open(page, '/walk/post-8/rail-height')
  const key = (name: string) => page.locator('.keypad').getByRole('button', { name, exact: true }).click()
  await length(page).fill('3 1/8')
  await length(page).evaluate((field: HTMLInputElement) => field.setSelectionRange(1, 1))
  await key('1')
  await key('0')
  await expect(length(page)).toHaveValue('310 1/8')
  await key('Erase the last character')
  await expect(length(page)).toHaveValue('31 1/8')
  const caret = () =>
    length(page).evaluate(({ selectionStart, selectionEnd }: HTMLInputElement) => [selectionStart, selectionEnd])
  expect(await caret()).toEqual([2, 2])
  await length(page).evaluate((field: HTMLInputElement) => field.setSelectionRange(0, 2))
  await key('7')
  await expect(length(page)).toHaveValue('7 1/8')
  expect(await caret()).toEqual([1, 1])
  await expect(page.locator('.echo')).toContainText('7 1/8 in')
  // A key that changes no text leaves no caret behind for the next one, and what was marked is typed over.
  await length(page).evaluate((field: HTMLInputElement) => field.setSelectionRange(0, 0))
  await key('Erase the last character')
  await page.keyboard.press('End')
  await page.keyboard.type('"')
  await expect(length(page)).toHaveValue('7 1/8"')
  expect(await caret()).toEqual([6, 6])
  await length(page).fill('7')
  await length(page).evaluate((field: HTMLInputElement) => field.select())
  await key('7')
  expect(await caret()).toEqual([1, 1])
})

test('a reading whose answer is lost on the way is on the device, and on the server once', async ({ page }) => {
  await open(page, '/walk/post-9/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await length(page).fill('2\'-7"')
  const before = (await readingsOf('post-9/rail-height')).length
  // The reading arrives, but its answer does not: the worst that a connection does.
  await page.route('**/api/entries', async (route) => {
    await route.fetch()
    await route.abort()
  })
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('31 in')
  await expect.poll(async () => (await readingsOf('post-9/rail-height')).length).toBe(before + 1)
  await page.unroute('**/api/entries')
  await page.reload()
  await expect(page.locator('.past-reading').first()).toContainText('31 in')
  await syncNow(page)
  await expectUnsent(page, 0)
  expect((await readingsOf('post-9/rail-height')).length).toBe(before + 1)
})

test('a run that cannot be read says so', async ({ page }) => {
  await page.goto(`${server.address}/runs/nowhere`)
  await expect(page.getByRole('alert')).toContainText('There is no run nowhere.')
})

test('a run file is taken in, or every problem of it is listed', async ({ page }) => {
  await page.goto(server.address)
  const hand = (content: unknown) =>
    page.getByLabel('Add a run from a file').setInputFiles({
      name: 'ditch.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(content)),
    })
  await hand({ ...ditchRun, name: '', need: { from: '6-3', to: '50 ft' } })
  const alert = page.getByRole('alert')
  await expect(alert).toContainText('ditch.json was not taken in.')
  await expect(alert.getByRole('listitem')).toHaveCount(2)
  await expect(alert).toContainText('name: expected a text that is not empty')
  await expect(alert).toContainText('need.from')
  await hand(ditchRun)
  await expect(page.getByRole('heading', { name: 'Ditch at mile 3' })).toBeVisible()
  await expect(page.locator('.title-verdict')).toHaveText('not yet known')
})

test('a computed value is read by what it is computed from, an offset with its side', async ({ page }) => {
  await open(page, '/walk/post-1/flare-offset')
  await expect(page.locator('.live')).toContainText('computed')
  await page.getByText('What is read').click()
  await page.getByRole('link', { name: /Lateral offset of post 1 / }).click()
  await page.getByLabel('Read by').fill('R. Quist')
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0)
  await length(page).fill('48')
  await page.getByRole('button', { name: 'Save and next' }).click()
  await expect(page.getByRole('alert')).toHaveText('Say on which side: away from traffic or toward it.')
  await expect(page.getByRole('radio', { name: 'Away from traffic' })).toBeFocused()
  await page.getByText('Toward traffic', { exact: true }).click()
  await expect(page.locator('.live')).toContainText('fails')
  await expect(page.locator('#value-echo')).toContainText('toward traffic')
  await page.getByText('Away from traffic', { exact: true }).click()
  await expect(page.locator('.live')).toContainText('meets')
  await length(page).fill('2 ft')
  await expect(page.locator('.live')).toContainText('fails')
  await length(page).fill('48')
  await expect(page.locator('.live')).toContainText('meets')
  await page.getByRole('button', { name: 'Save and next' }).click()
  await expect(page.locator('.entry-of')).not.toHaveText('Lateral offset of post 1')
  await expectOnServer('post-1/lateral-offset', { value: '48 in', side: 'away' })
})

test('a correction names the reading that it corrects', async ({ page }) => {
  await open(page, '/walk/post-10/rail-height')
  const [old] = await readingsOf('post-10/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await page.getByRole('button', { name: 'Undo or correct' }).click()
  await expect(page.locator('.purpose')).toBeVisible()
  await length(page).fill('30 15/16')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.past-reading').first()).toContainText('in force')
  await expect(page.locator('.past-reading').last()).toContainText('corrected')
  await expectOnServer('post-10/rail-height', { corrects: old!.id })
})

test('what cannot be seen is not proven', async ({ page }) => {
  await open(page, '/walk/post-11/rail-bolt')
  await page.getByLabel('Read by').fill('R. Quist')
  await page.getByRole('button', { name: 'Cannot see it' }).click()
  await expect(page.locator('.live')).toContainText('unread')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('It could not be seen')
  await open(page, '/not-proven')
  await expect(
    page
      .locator('.group', { hasText: /^post 11/ })
      .getByRole('link')
      .first(),
  ).toContainText('could not be seen')
})

test('what the sheet lets nobody set aside cannot be said not to apply, and what it lets needs a reason', async ({
  page,
}) => {
  const setAside = page.getByRole('button', { name: 'Does not apply, because …' })
  for (const of of ['post-11/rail-bolt', 'post-1/lower-post-seen', 'first/criteria']) {
    await open(page, `/walk/${of}`)
    await expect(page.locator('.live')).toBeVisible()
    await expect(setAside).toHaveCount(0)
  }
  const id = entryId(Date.now(), randomBytes(10))
  const { run: file } = demoProject()
  const entry = {
    ...{ id, run: id, kind: 'run', schemaVersion: 1, author: 'R. Quist', device: 'test', supersedes: null },
    ...{ capturedAt: '2026-05-04T15:30:00.000Z', body: JSON.parse(runAllowing(file, ['rail-bolt'])) },
  }
  const sent = {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries: [entry] }),
  }
  expect((await (await fetch(`${server.address}/api/entries`, sent)).json()).answers[0].outcome).toBe('stored')
  await page.goto(`${server.address}/runs/${id}/walk/post-11/rail-bolt`)
  await page.getByLabel('Read by').fill('R. Quist')
  await setAside.click()
  await expect(page.getByLabel('Because')).toBeFocused()
  await page.keyboard.type('bolted from behind')
  await expect(page.locator('.live')).toContainText('does not apply')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('bolted from behind')
  await page.goto(`${server.address}/runs/${id}/not-proven`)
  await page.locator('summary', { hasText: /^post 11\D/ }).click()
  await expect(page.getByRole('link', { name: /bolted from behind/ })).toContainText('does not apply')
})

/** A phone shows it as a line, until it is asked for. */
async function unfoldStrip(page: Page): Promise<void> {
  const line = page.locator('.strip').getByRole('button', { name: 'Show the strip' })
  if ((page.viewportSize()?.width ?? 0) < 768) await line.click()
  await expect(line).toHaveCount(0)
}

test('a place on the strip opens what is to be read there, by pointer and by key', { tag: '@both' }, async ({
  page,
}) => {
  await open(page)
  await unfoldStrip(page)
  await page.locator('g[data-place="post-3"]').first().click()
  await expect(must(page)).toHaveText(/rail stands/)
  await open(page)
  await unfoldStrip(page)
  await page.locator('.strip g[tabindex="0"]').focus()
  await page.keyboard.press('End')
  await page.keyboard.press('Enter')
  await expect(page.locator('.entry-place')).toContainText(/post 20|second end/)
})

test('the strip shows the first post before anything is opened, however small the screen', { tag: '@both' }, async ({
  page,
}) => {
  await open(page, '/walk')
  await expect(page.locator('.walk-list')).toHaveAttribute('aria-busy', 'false')
  await unfoldStrip(page)
  const [frame, post] = [page.locator('.strip-frame'), page.locator('.strip-frame [data-place="post-1"]').first()]
  await expect
    .poll(async () => {
      const [outer, inner] = [(await frame.boundingBox())!, (await post.boundingBox())!]
      return (
        inner.x >= outer.x &&
        inner.x + inner.width <= outer.x + outer.width &&
        inner.y >= outer.y &&
        inner.y + inner.height <= outer.y + outer.height
      )
    })
    .toBe(true)
})

async function expectNarrow(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360)
}

test('nothing is wider than a screen of 360 pixels', { tag: '@phone' }, async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 })
  for (const path of ['', '/findings', '/not-proven', '/layout', '/record', '/walk/post-1/stub-height']) {
    await open(page, path)
    await page.locator('.sheet').waitFor()
    await expectNarrow(page)
  }
  await page.goto(server.address)
  await page.locator('.run-row').first().waitFor()
  await expectNarrow(page)
})
