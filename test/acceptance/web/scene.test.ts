import { expect, type Page, test } from '@playwright/test'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

// Drawn by the processor, as on every machine that runs this: pictures are then alike but for the last of their pixels.
const { executablePath, args } = JSON.parse(process.env.LAPWISE_TEST_BROWSER!)
const bySoftware = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist']
test.use({
  serviceWorkers: 'block',
  launchOptions: { executablePath, args: [...args, ...bySoftware] },
  contextOptions: { reducedMotion: 'reduce' },
})

const box = (page: Page) => page.locator('.scene-box')
const canvas = (page: Page) => page.locator('.scene-box canvas')
const place = (page: Page, name: RegExp) => page.locator('.scene-place').filter({ hasText: name }).first()
const shown = (page: Page) => page.locator('.scene-shown h2')

async function openScene(page: Page): Promise<void> {
  await page.goto(server.address)
  await page.getByRole('link', { name: 'Alder Creek culvert' }).first().click()
  await page.getByRole('navigation', { name: 'Parts of this run' }).getByRole('link', { name: 'Scene' }).click()
  await expect(page.locator('.scene-place').first()).toBeVisible()
}

/** Looks at another place than is looked at; it is drawn when this resolves. */
async function lookAt(page: Page, name: RegExp): Promise<void> {
  await expect(canvas(page)).toHaveAttribute('data-frame', /^\d+$/)
  const frame = (await canvas(page).getAttribute('data-frame'))!
  await place(page, name).click()
  await expect(shown(page)).toHaveText(name)
  await expect(canvas(page)).not.toHaveAttribute('data-frame', frame)
}

/** Takes the context of the canvas away, or gives it back. */
const setContext = (page: Page, what: 'loseContext' | 'restoreContext') =>
  canvas(page).evaluate((one: HTMLCanvasElement, call) => {
    const kept = one as HTMLCanvasElement & { lost?: WEBGL_lose_context | null }
    kept.lost ??= one.getContext('webgl2')!.getExtension('WEBGL_lose_context')
    kept.lost![call]()
  }, what)

/** Presses at the middle of the scene, where the rail is when a place of it is looked at. */
async function pressMiddle(page: Page, between: () => Promise<void> = async () => {}): Promise<void> {
  const { x, y, width, height } = (await canvas(page).boundingBox())!
  await page.mouse.move(x + width / 2, y + height / 2)
  await page.mouse.down()
  await between()
  await page.mouse.up()
}

test('a run is walked, touched and measured in its scene', async ({ page }) => {
  await openScene(page)
  await expect(shown(page)).toHaveText(/^post 1 /)
  await page.getByRole('button', { name: 'Next place' }).click()
  await expect(shown(page)).toHaveText(/^first end/)
  await box(page).focus()
  await page.keyboard.press('End')
  await expect(page.locator('.scene-place').last()).toHaveAttribute('aria-current', 'true')
  // A space is looked at, and what is touched in its middle is the panel before it.
  await lookAt(page, /^between posts 7 and 8/)
  await pressMiddle(page)
  await expect(shown(page)).toHaveText('panel 4')
  await expect(page.locator('.scene-shown a')).toHaveAttribute('href', /\/walk\/panel-4\//)
  // The rail of 31 in reaches down to 18 3/4 in.
  await page.getByRole('button', { name: 'Level' }).click()
  await pressMiddle(page)
  const measured = page.locator('.scene-measured')
  await expect(measured).toHaveText(/^\d+( \d+\/\d+)? in ± (\d+ )?\d+\/\d+ in$/)
  const inches = Number.parseInt((await measured.textContent())!, 10)
  expect(inches).toBeGreaterThanOrEqual(18)
  expect(inches).toBeLessThanOrEqual(31)
  // What is drawn larger than it is, is not measured.
  await page.getByRole('button', { name: '× 10' }).click()
  await expect(measured).toHaveCount(0)
  await expect(page.getByText('Heights and offsets stand 10 times as far')).toBeVisible()
  // The one canvas is there again when the scene is left and opened anew.
  await canvas(page).evaluate((one: HTMLElement) => {
    one.dataset.kept = 'yes'
  })
  await page.getByRole('link', { name: 'Layout' }).click()
  await expect(canvas(page)).toHaveCount(0)
  await page.getByRole('link', { name: 'Scene' }).click()
  await expect(canvas(page)).toHaveAttribute('data-kept', 'yes')
})

test('a splice lapped against traffic, and a post from behind, look as they did', async ({ page }) => {
  await openScene(page)
  await place(page, /^splice 2/).click()
  await expect(canvas(page)).toHaveScreenshot('splice-2.png', { maxDiffPixelRatio: 0.01 })
  await place(page, /^post 1 /).click()
  await page.getByRole('button', { name: 'Behind' }).click()
  await expect(canvas(page)).toHaveScreenshot('post-1-behind.png', { maxDiffPixelRatio: 0.01 })
})

test('a scene whose context is lost comes back as it was, and the list goes on without it', async ({ page }) => {
  await openScene(page)
  await lookAt(page, /^splice 2/)
  await expect(canvas(page)).toHaveAttribute('data-state', 'ready')
  const before = await canvas(page).screenshot()
  // Lost between finger down and finger up: nothing is touched, and nothing breaks.
  await pressMiddle(page, async () => {
    await setContext(page, 'loseContext')
    await expect(canvas(page)).toHaveAttribute('data-state', 'lost')
  })
  await expect(shown(page)).toHaveText(/^splice 2/)
  await expect(page.locator('.scene-lost')).toBeVisible()
  // While it is away the list goes on, and other things are chosen to be drawn.
  await place(page, /^post 8/).click()
  await expect(shown(page)).toHaveText(/^post 8/)
  await page.getByRole('button', { name: '× 4' }).click()
  await page.getByRole('button', { name: 'True' }).click()
  await place(page, /^splice 2/).click()
  await setContext(page, 'restoreContext')
  await expect(page.locator('.scene-lost')).toHaveCount(0)
  // The picture of before, light and colours too.
  await expect.poll(async () => (await canvas(page).screenshot()).equals(before)).toBe(true)
  await pressMiddle(page)
  await expect(shown(page)).not.toHaveText(/^splice 2/)
  // Lost for good: all but the picture goes on, also when the scene is opened anew.
  await setContext(page, 'loseContext')
  await page.getByRole('button', { name: 'Next place' }).click()
  await page.getByRole('link', { name: 'Layout' }).click()
  await page.getByRole('link', { name: 'Scene' }).click()
  await expect(page.locator('.scene-lost')).toBeVisible()
  await place(page, /^post 8/).click()
  await expect(shown(page)).toHaveText(/^post 8/)
})

test('a browser that draws no scenes says so, and shows the list', async ({ page }) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null
  })
  await openScene(page)
  await expect(page.locator('.scene-none')).toBeVisible()
  await place(page, /^post 8/).click()
  await expect(shown(page)).toHaveText(/^post 8/)
})
