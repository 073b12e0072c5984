import { type Locator, type Page, expect as usual } from '@playwright/test'
import { strToU8, zipSync } from 'fflate'
import { expectWhole } from './accessible.ts'

/** As patient where a screen is drawn as where it is tested. */
const expect = usual.configure({ timeout: 20_000 })

export interface Screen {
  /** What a picture of it is called. */
  readonly name: string
  readonly path: string
  /** What is there to be done first, which a phone shows without scrolling; the first main action where it is not named. */
  readonly first?: string
  /** What is done on the page that is opened, until the screen is there. */
  readonly reach?: (main: Locator) => Promise<void>
}

/** Touches one after the other; each is there before it is touched. */
const touch =
  (...touched: readonly string[]) =>
  async (main: Locator): Promise<void> => {
    for (const one of touched) await main.locator(one).first().click()
  }

/** A terminal by itself with one gross fault. */
const drillNumber = '1000 1000 0246'

/** A file of a program that is newer than this one. */
const laterFile = {
  name: 'later.zip',
  mimeType: 'application/zip',
  buffer: Buffer.from(
    zipSync({ 'manifest.json': strToU8(JSON.stringify({ format: 'lapwise-handover/7', all: 'other' })) }),
  ),
}

async function beginDrill(main: Locator): Promise<void> {
  await main.locator('.drill-number input').fill(drillNumber)
  await main.locator('.drill-number .button').click()
  await expect(main.locator('.walk-list')).toBeVisible()
}

async function endDrill(main: Locator): Promise<void> {
  await beginDrill(main)
  await main.page().locator('.practice-bar a[href$="/debrief"]').click()
  await expect(main.locator('.debrief')).toBeVisible()
}

/** Every screen of the page, of a server with the demo run in it. */
export const screensOf = (run: string): readonly Screen[] => [
  { name: 'runs', path: '/', first: '.door.first' },
  { name: 'need', path: '/need' },
  { name: 'check', path: '/check' },
  { name: 'check-key', path: '/check', reach: touch('.checking .main'), first: '.check-card' },
  { name: 'check-scope', path: '/check', reach: touch('.check-card') },
  {
    name: 'check-count',
    path: '/check',
    reach: touch('.check-card', '.check-scope .main'),
    first: '.check-stepper .button',
  },
  { name: 'lay-out', path: '/lay-out', first: 'input' },
  { name: 'bring-over', path: '/bring-over', first: 'h1' },
  { name: 'glossary', path: '/glossary', first: 'h1' },
  { name: 'shelf', path: '/shelf', first: 'main a' },
  { name: 'sheet', path: '/shelf/flared-terminal-31', first: 'main .button' },
  {
    name: 'sheet-confirm',
    path: '/shelf/flared-terminal-31',
    reach: touch('.shelf-acts .button[aria-pressed]'),
    first: 'main input',
  },
  {
    name: 'sheet-copy',
    path: '/shelf/flared-terminal-31',
    reach: touch('.ways > :last-child'),
    first: 'main input',
  },
  { name: 'sheet-edit', path: '/shelf/flared-terminal-31/edit', first: 'main input' },
  { name: 'sheet-texts', path: '/shelf/flared-terminal-31/texts', first: 'main h1' },
  { name: 'sheet-compare', path: '/shelf/flared-terminal-31/compare', first: 'main select' },
  { name: 'drills', path: '/drills', first: '.drill-big .main' },
  { name: 'lesson', path: '/drills/lesson', first: '.lesson-pair select' },
  { name: 'class', path: '/drills/class', first: 'main input[type=file]' },
  { name: 'nothing', path: '/nowhere', first: 'main a' },
  { name: 'walk', path: `/runs/${run}`, first: '.next-bar .main' },
  { name: 'findings', path: `/runs/${run}/findings`, first: '.finding .button' },
  { name: 'seen', path: `/runs/${run}/findings?seen=post-8`, first: '.seen-form .choice' },
  { name: 'not-proven', path: `/runs/${run}/not-proven`, first: 'main h2' },
  { name: 'readings', path: `/runs/${run}/readings`, first: 'main h2' },
  { name: 'day', path: `/runs/${run}/day`, first: '.log-form textarea' },
  { name: 'sign-off', path: `/runs/${run}/sign-off`, first: '.sign-form input' },
  { name: 'record', path: `/runs/${run}/record`, first: 'form :is(select, input)' },
  { name: 'layout', path: `/runs/${run}/layout` },
  { name: 'scene', path: `/runs/${run}/scene`, first: '.scene-steps .main' },
  { name: 'edit', path: `/runs/${run}/edit`, first: 'summary' },
  { name: 'edit-anew', path: `/runs/${run}/edit?from=post-8`, first: 'summary' },
  { name: 'measured', path: `/runs/${run}/walk/post-8/rail-height` },
  { name: 'looked-at', path: `/runs/${run}/walk/post-1/bearing-plate` },
  { name: 'held', path: '/', reach: holdLaterFile, first: '.device-transfer .button' },
  { name: 'drill', path: '/drills', reach: beginDrill, first: '.next-bar .main' },
  { name: 'drill-ended', path: '/drills', reach: endDrill },
  {
    name: 'drill-revealed',
    path: '/drills',
    reach: async (main) => {
      await endDrill(main)
      await main.locator('.debrief-acts .main').click()
      await expect(main.locator('.debrief-score')).toBeVisible()
    },
    first: 'main h1',
  },
  {
    name: 'drills-begun',
    path: '/drills',
    reach: async (main) => {
      await beginDrill(main)
      await main.page().goBack()
      await expect(main.locator('.drill-list')).toBeVisible()
    },
    first: '.drill-big .main',
  },
  // What it says stands there once it has read the store.
  {
    name: 'rescue',
    path: '/rescue',
    first: 'main button',
    reach: (main) => expect(main.locator('a')).toBeVisible(),
  },
]

async function holdLaterFile(main: Locator): Promise<void> {
  await main.locator('input[type=file]').first().setInputFiles(laterFile)
  await expect(main.locator('.take-in')).toContainText('7')
  const device = main.page().locator('.device')
  await device.locator('summary').click()
  const held = device.locator('.device-transfer li').first()
  await expect(held).toContainText('later.zip')
  await held.scrollIntoViewIfNeeded()
}

/** Opens a screen and waits until every part of it is here. */
export async function openScreen(page: Page, address: string, { path, reach }: Screen): Promise<void> {
  // The server has no page at an address that means nothing; who comes from within sees that it does.
  if (path === '/nowhere') {
    await page.goto(address)
    await page.evaluate(() => history.pushState(null, '', '/nowhere'))
    await page.evaluate(() => dispatchEvent(new PopStateEvent('popstate')))
  } else await page.goto(`${address}${path}`)
  const main = page.locator('main')
  await expect(main.locator('h1, h2, h3').first()).toBeVisible()
  await reach?.(main)
  await expect(main).not.toContainText(/Loading|Cargando/)
  await expectWhole(page)
}
