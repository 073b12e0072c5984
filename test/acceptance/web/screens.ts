import { expect, type Page } from '@playwright/test'
import { expectWhole } from './accessible.ts'

export interface Screen {
  readonly path: string
  /** What is there to be done first, which a phone shows without scrolling; the first main action where it is not named. */
  readonly first?: string
  /** What is touched once it is there. */
  readonly touched?: readonly string[]
}

/** Every screen of the page, of a server with the demo run in it. */
export const screensOf = (run: string): readonly Screen[] => [
  { path: '/', first: '.door.first' },
  { path: '/need' },
  { path: '/check' },
  { path: '/check', touched: ['.checking .main'], first: '.check-card' },
  { path: '/check', touched: ['.check-card'] },
  { path: '/check', touched: ['.check-card', '.check-scope .main'], first: '.check-stepper .button' },
  { path: '/lay-out', first: 'input' },
  { path: '/bring-over', first: 'h1' },
  { path: '/glossary', first: 'h1' },
  { path: '/drills', first: '.drill-big .main' },
  { path: '/drills/lesson', first: '.lesson-pair select' },
  { path: '/drills/class', first: '.class-files input' },
  { path: '/nowhere', first: 'main a' },
  { path: `/runs/${run}`, first: '.next-bar .main' },
  { path: `/runs/${run}/findings`, first: '.finding .button' },
  { path: `/runs/${run}/findings?seen=post-8`, first: '.seen-form .choice' },
  { path: `/runs/${run}/not-proven`, first: 'main h2' },
  { path: `/runs/${run}/readings`, first: 'main h2' },
  { path: `/runs/${run}/day`, first: '.log-form textarea' },
  { path: `/runs/${run}/sign-off`, first: '.sign-form input' },
  { path: `/runs/${run}/record`, first: 'form :is(select, input)' },
  { path: `/runs/${run}/layout` },
  { path: `/runs/${run}/scene`, first: '.scene-steps .main' },
  { path: `/runs/${run}/edit`, first: 'summary' },
  { path: `/runs/${run}/walk/post-8/rail-height` },
  { path: `/runs/${run}/walk/post-1/bearing-plate` },
]

/** Opens a screen and waits until every part of it is here. */
export async function openScreen(page: Page, address: string, { path, touched = [] }: Screen): Promise<void> {
  // The server has no page at an address that means nothing; who comes from within sees that it does.
  if (path === '/nowhere') {
    await page.goto(address)
    await page.evaluate(() => history.pushState(null, '', '/nowhere'))
    await page.evaluate(() => dispatchEvent(new PopStateEvent('popstate')))
  } else await page.goto(`${address}${path}`)
  const main = page.locator('main')
  await expect(main.locator('h1, h2, h3').first()).toBeVisible()
  for (const one of touched) await main.locator(one).first().click()
  await expect(main).not.toContainText(/Loading|Cargando/)
  await expectWhole(page)
}
