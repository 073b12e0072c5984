import { expect, type Locator, type Page, test } from '@playwright/test'
import type { Requirement } from '../../../src/core/requirements/requirement.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { demoRun } from '../../fixtures/roadside.ts'
import { keptBegun } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

const { requirements } = demoRun().required

/** One of each kind: of the same topic, how it is looked at and how many answers there are. */
const kinds = [
  ...new Map(
    requirements.map((one) => [
      [one.topic, one.look.kind, one.hold, 'choices' in one.look ? one.look.choices.length : 0].join(),
      one,
    ]),
  ).values(),
]

/** The demo run in other units, on which nothing was read. */
async function metricRun(page: Page): Promise<string> {
  await page.goto(server.address)
  const name = 'Alder Creek, metric'
  const file = JSON.parse(demoProject().run)
  // A station in kilometres is written otherwise.
  const metric = { ...file, name, units: 'metric', road: { ...file.road, datumStation: '6+361' } }
  await page.getByLabel('Add a run from a file').setInputFiles({
    name: 'run.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(metric)),
  })
  await expect(page.getByRole('heading', { name, level: 1 })).toBeVisible()
  return /runs\/([^/]+)/.exec(page.url())![1]!
}

const knowReader = (page: Page): Promise<unknown> =>
  page.addInitScript(() =>
    localStorage.setItem('lapwise/visit', JSON.stringify({ by: 'R. Quist', instruments: {}, where: '' })),
  )

/** Goes to a place within the page, as its links do. */
async function show(page: Page, run: string, { id }: Requirement): Promise<void> {
  await page.evaluate((path) => {
    history.pushState({}, '', path)
    window.dispatchEvent(new Event('lapwise:route'))
  }, `/runs/${run}/walk/${id}`)
  const number = requirements.findIndex((one) => one.id === id) + 1
  await expect(page.locator('.step-count')).toHaveText(new RegExp(`^${number} `))
  await page.evaluate(() => window.scrollTo(0, 0))
}

/** What of the screen lies beside it or below the buttons, pixels; nothing is when all fits. */
const overhang = (page: Page): Promise<{ readonly below: number; readonly beside: number; readonly above: number }> =>
  page.evaluate(() => {
    const box = (part: string): DOMRect => document.querySelector(part)!.getBoundingClientRect()
    return {
      above: Math.max(0, Math.ceil(-box('.entry-steps').top)),
      below: Math.max(0, Math.ceil(box('.entry-screen').bottom - box('.entry-save').top)),
      beside: Math.max(0, document.documentElement.scrollWidth - window.innerWidth),
    }
  })

const fits = { above: 0, below: 0, beside: 0 }

async function expectAllFit(page: Page, run: string): Promise<void> {
  for (const kind of kinds) {
    await show(page, run, kind)
    await expect(page.locator('.choice-picture:empty')).toHaveCount(0)
    await softly.poll(() => overhang(page), kind.id).toEqual(fits)
  }
}

/** One that does not fit is told with all the others. */
const softly = expect.configure({ soft: true })

test('each kind of requirement fits on one screen, in English and in Spanish and metric', { tag: '@phone' }, async ({
  page,
}) => {
  expect(kinds.length).toBeGreaterThan(25)
  await knowReader(page)
  await page.goto(`${server.address}/runs/${server.run}`)
  await page.locator('.walk-list').waitFor()
  await expectAllFit(page, server.run)
  const metric = await metricRun(page)
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  await expectAllFit(page, metric)
})

/** Counts what a finger does. */
function touches() {
  let count = 0
  return {
    tap: async (what: Locator): Promise<void> => {
      count += 1
      await what.tap()
    },
    soFar: (): number => count,
  }
}

test('what is looked at takes one touch, what is measured at most five, and what does not meet waits', {
  tag: '@phone',
}, async ({ page }) => {
  await knowReader(page)
  const run = await metricRun(page)
  const must = page.locator('#must')
  const saved = page.locator('.saved')
  const answer = (name: string) => page.locator('.choice', { hasText: name })
  await page.goto(`${server.address}/runs/${run}/walk/post-8/rail-bolt`)

  const looked = touches()
  await looked.tap(answer('Bolted, no washer on the face'))
  await expect(saved).toContainText('post 8, Bolted, no washer on the face')
  await expect(must).not.toContainText('bolted to the post')
  expect(looked.soFar()).toBe(1)

  // The page is as high with what was saved last, and the answer of the like place, as without.
  await page.goto(`${server.address}/runs/${run}/walk/post-8/rail-height`)
  await page.locator('.entry-save').waitFor()
  const key = (name: string) => page.locator('.keypad').getByRole('button', { name, exact: true })
  const next = page.getByRole('button', { name: 'Save and next' })
  const measured = touches()
  for (const digit of ['7', '8', '7']) await measured.tap(key(digit))
  await expect(page.locator('.live')).toContainText('meets')
  await measured.tap(next)
  await expect(saved).toContainText('post 8, 787 mm')
  expect(measured.soFar()).toBeLessThanOrEqual(5)
  console.log(`touches: looked at ${looked.soFar()}, measured ${measured.soFar()}`)
  const like = requirements.find(({ id }) => id === 'post-9/rail-height')!
  await show(page, run, like)
  await expect(page.locator('.same-here')).toBeVisible()
  await expect.poll(() => overhang(page)).toEqual(fits)

  // What fails does not go by itself, and neither does what is soon covered.
  await page.goto(`${server.address}/runs/${run}/walk/post-10/rail-bolt`)
  await answer('Not bolted').tap()
  await expect(page.locator('.live')).toContainText('fails')
  await page.waitForTimeout(800)
  await expect(must).toContainText('bolted to the post')
  await expect(saved).toBeEmpty()
  await page.goto(`${server.address}/runs/${run}/walk/post-1/lower-post-seen`)
  await answer('Seen, as the manual shows').tap()
  await expect(page.locator('.live')).toContainText('meets')
  await page.waitForTimeout(800)
  await expect(saved).toBeEmpty()

  // Within the half second it is taken back.
  await page.goto(`${server.address}/runs/${run}/walk/post-11/rail-bolt`)
  await page.locator('.entry-save').waitFor()
  await page.evaluate(() => {
    new MutationObserver((_, watcher) => {
      const button = document.querySelector<HTMLElement>('.take-back')
      if (button === null) return
      watcher.disconnect()
      button.click()
    }).observe(document.body, { subtree: true, childList: true })
  })
  await answer('Bolted, no washer on the face').tap()
  await page.waitForTimeout(800)
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0)
  await expect(saved).toBeEmpty()

  // Whoever would rather press says so once.
  await page.locator('.visit summary').click()
  await page.getByLabel(/saves itself after half a second/).uncheck()
  await page.reload()
  await answer('Bolted, no washer on the face').tap()
  await page.waitForTimeout(800)
  await expect(must).toContainText('bolted to the post')
})

test('what was begun before is told of in the place of the verdict, and moves no key', { tag: '@phone' }, async ({
  page,
}) => {
  await knowReader(page)
  const run = await metricRun(page)
  const path = `${server.address}/runs/${run}/walk/post-8/rail-height`
  const top = async (): Promise<number> => (await page.locator('.keypad').boundingBox())!.y
  await page.goto(path)
  await page.locator('.keypad').waitFor()
  const before = await top()
  await page.getByLabel(/^Length/).fill('787')
  await expect(page.locator('.live')).toContainText('meets')
  expect(await top()).toBe(before)
  await expect.poll(() => keptBegun(page)).toEqual(['post-8/rail-height 787'])
  await page.evaluate(() => window.addEventListener('beforeunload', (event) => event.stopImmediatePropagation(), true))
  await page.reload()
  await expect(page.locator('.begun-here')).toContainText('787')
  expect(Math.abs((await top()) - before)).toBeLessThanOrEqual(1)
  expect(await overhang(page)).toEqual(fits)
})
