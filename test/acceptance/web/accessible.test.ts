import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()
const views = (): readonly string[] => {
  const panes = [
    '',
    '/findings',
    '/not-proven',
    '/readings',
    '/day',
    '/sign-off',
    '/record',
    '/layout',
    '/walk/post-8/rail-height',
  ]
  return ['/', '/need', '/nowhere', ...panes.map((pane) => `/runs/${server.run}${pane}`)]
}

/** Opens a view and waits until every part of it is here. */
async function open(page: Page, view: string): Promise<void> {
  // The server has no page at an address that means nothing; who comes from within sees that it does.
  if (view === '/nowhere') {
    await page.goto(server.address)
    await page.evaluate(() => history.pushState(null, '', '/nowhere'))
    await page.evaluate(() => dispatchEvent(new PopStateEvent('popstate')))
  } else await page.goto(`${server.address}${view}`)
  await expect(page.locator('main').getByRole('heading').first()).toBeVisible()
  await expect(page.locator('main')).not.toContainText(/Loading|Cargando/)
}

// Light bears on the rules of contrast, language on those of names: each is there once, and each with every view.
for (const [language, light] of [
  ['en', 'sun'],
  ['es', 'night'],
] as const)
  test(`every view breaks no rule of WCAG 2.2 AA, and nothing moves: language ${language}, light ${light}`, {
    tag: '@both',
  }, async ({ page }) => {
    test.slow()
    await page.addInitScript(
      (wanted) => localStorage.setItem('lapwise/preferences', wanted),
      JSON.stringify({ language, light }),
    )
    for (const view of views()) {
      await open(page, view)
      await expect(page.locator('html')).toHaveAttribute('lang', language)
      await expect(page.locator('html')).toHaveAttribute('data-light', light)
      await expectNoSidewaysScroll(page)
      // Whatever motion the device asks for.
      for (const reducedMotion of ['no-preference', 'reduce'] as const) {
        await page.emulateMedia({ reducedMotion })
        expect(await moving(page)).toEqual([])
      }
      await expectAccessible(page)
    }
    // What moves would have been found.
    await page.locator('.mark').evaluate((mark) => {
      mark.style.transition = 'color 1s'
    })
    expect((await moving(page)).length).toBe(1)
  })

/** Every element that changes in time. */
const moving = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('*')]
      .filter((one) => {
        const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one)
        const isTimed = transitionDuration.split(', ').some((duration) => Number.parseFloat(duration) > 0)
        return isTimed || animationName !== 'none' || scrollBehavior === 'smooth'
      })
      .map((one) => one.outerHTML.slice(0, 80)),
  )

test('nothing is lost at twice the size: every view at half its width', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 512 })
  for (const view of views()) {
    await open(page, view)
    await expectNoSidewaysScroll(page)
  }
})

test('whoever hears the strip is told each place with what was found there', async ({ page }) => {
  await open(page, `/runs/${server.run}`)
  const places = page.locator('.strip [data-place][role="button"]')
  await expect(places.first()).toBeVisible()
  const names = await places.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''))
  expect(names.length).toBeGreaterThan(30)
  for (const name of names) expect(name).toMatch(/^[^:]+: (meets|fails|too close|unread|does not apply), \d+ of \d+/)
  expect(new Set(names.map((name) => name.split(':')[0])).size).toBe(names.length)
  // Where the faults of the demo project are planted; splices further on fail with the wrong panel.
  const failing = names.filter((name) => /: fails, /.test(name)).map((name) => /^\w+ \d+/.exec(name)?.[0])
  expect(failing).toEqual(expect.arrayContaining(['post 1', 'splice 2', 'panel 3']))
  expect(failing).not.toContain('post 8')
})
