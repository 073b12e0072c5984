import { expect, type Page, test } from '@playwright/test'
import { expectAccessible } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

const { executablePath, args } = JSON.parse(process.env.LAPWISE_TEST_BROWSER!)
/** A camera that sees a pattern, and is allowed without being asked. */
const seeing = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream']
test.use({ serviceWorkers: 'block', launchOptions: { executablePath, args: [...args, ...seeing] } })

const photos = (page: Page) => page.getByRole('region', { name: 'Photos' })
const take = (page: Page): Promise<void> => photos(page).getByText('Take a photo', { exact: true }).click()
const camera = (page: Page) => page.getByRole('dialog', { name: 'Take a photo' })

test('shots in a row are kept at once, and what was begun with them outlives the page', { tag: '@phone' }, async ({
  page,
}) => {
  await page.goto(`${server.address}/runs/${server.run}/findings?seen=post-1`)
  const seen = page.getByRole('region', { name: 'Seen besides' })
  await seen.getByLabel('ground washed out').check()
  await seen.getByLabel('Note').fill('2 ft deep')
  await take(page)
  const shoot = camera(page).getByRole('button', { name: 'Take it' })
  await shoot.click()
  await expect(camera(page)).toContainText('1 photo kept')
  await shoot.click()
  await expect(camera(page)).toContainText('2 photos kept')
  await expectAccessible(page)
  // The page is gone before the camera is put away: nothing of it is lost, and nothing is put in by itself.
  await page.reload()
  const begun = seen.locator('.begun')
  await expect(begun).toContainText('ground washed out, post 1')
  await expect(begun).toContainText('2 ft deep, Photos (2)')
  await expect(seen.getByRole('button', { name: 'Save the finding' })).toHaveCount(0)
  await begun.getByRole('button', { name: 'Go on with it' }).click()
  await expect(photos(page).getByRole('img')).toHaveCount(2)
  const size = await photos(page)
    .getByRole('img')
    .first()
    .evaluate(async (image: HTMLImageElement) => {
      await image.decode()
      return Math.min(image.naturalWidth, image.naturalHeight)
    })
  expect(size).toBeGreaterThan(200)
  await seen.getByLabel('Read by').fill('R. Quist')
  await seen.getByRole('button', { name: 'Save the finding' }).click()
  await expect(seen.locator('.finding')).toContainText('2 ft deep')
  await expect(seen.locator('.finding').getByRole('img')).toHaveCount(2)
  await page.reload()
  await expect(seen.locator('.finding')).toContainText('2 ft deep')
  await expect(begun).toHaveCount(0)
})

test('where the page may not see through the camera, the device takes the photo its own way', {
  tag: '@phone',
}, async ({ page }) => {
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'))
  })
  await page.goto(`${server.address}/runs/${server.run}/walk/post-8/rail-height`)
  await take(page)
  await expect(camera(page)).toContainText('cannot see through the camera')
  const chooser = page.waitForEvent('filechooser')
  await camera(page).getByRole('button', { name: 'Use the camera of the device' }).click()
  expect((await chooser).isMultiple()).toBe(false)
})
