import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { expectAsKept, readyToKeep } from './kept.ts'
import { wrongOnScreen } from './measured.ts'
import { openScreen, type Screen, screensOf } from './screens.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

// Past the policy and in one time zone for the pictures that are kept.
test.use({ serviceWorkers: 'block', bypassCSP: true, timezoneId: 'America/Denver' })
const screens = () => screensOf(server.run)

// Light bears on the rules of contrast, language on those of names and on the room that words take, width on what lies
// where: each is there once, and each with every screen.
for (const [language, light, place] of [
  ['en', 'sun', 'desk'],
  ['es', 'night', 'phone'],
] as const)
  test(`every screen looks as it is kept, breaks no rule of WCAG 2.2 AA, and nothing moves, in ${language} by ${light} on a ${place}`, {
    tag: place === 'phone' ? '@phone' : [],
  }, async ({ page }) => {
    test.slow()
    await readyToKeep(page)
    await page.addInitScript(
      (wanted) => localStorage.setItem('lapwise/preferences', wanted),
      JSON.stringify({ language, light }),
    )
    for (const screen of screens()) {
      await openScreen(page, server.address, screen)
      await expect(page.locator('html')).toHaveAttribute('lang', language)
      await expect(page.locator('html')).toHaveAttribute('data-light', light)
      await expectAsKept(page, `${screen.name}-${language}-${light}-${place}`)
      if (place === 'phone') {
        await expectInReach(page, screen)
        expect.soft(await wrongOnScreen(page), screen.name).toEqual([])
      }
      await expectNoSidewaysScroll(page)
      // Whatever motion the device asks for.
      for (const reducedMotion of ['no-preference', 'reduce'] as const) {
        await page.emulateMedia({ reducedMotion })
        expect(await moving(page)).toEqual([])
      }
      await expectAccessible(page)
      if (place === 'phone') await expectWholeAtTwiceTheSize(page)
    }
    // What moves would have been found.
    await page.locator('.mark').evaluate((mark) => {
      mark.style.transition = 'color 1s'
    })
    expect((await moving(page)).length).toBe(1)
  })

/** What there is to do first is seen by whoever opens the screen, above what lies over its end. */
async function expectInReach(page: Page, { name, first = 'main .button.main' }: Screen): Promise<void> {
  const at = await page.evaluate((first) => {
    const box = document.querySelector(first)?.getBoundingClientRect()
    const end = document.querySelector('.page-tabs .panes')
    return box && { top: box.top, bottom: box.bottom, end: end?.getBoundingClientRect().top ?? window.innerHeight }
  }, first)
  expect(at, `${name} has no ${first}`).toBeDefined()
  expect.soft(at!.top, name).toBeGreaterThanOrEqual(0)
  expect.soft(at!.bottom, name).toBeLessThanOrEqual(at!.end)
}

/** At half the width, as who enlarges the page sees it, nothing is lost beside the screen. */
async function expectWholeAtTwiceTheSize(page: Page): Promise<void> {
  const usual = page.viewportSize()!
  await page.setViewportSize({ width: 320, height: 512 })
  await expectNoSidewaysScroll(page)
  await page.setViewportSize(usual)
}

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

test('whoever hears the strip is told each place with what was found there', async ({ page }) => {
  await openScreen(page, server.address, { name: 'walk', path: `/runs/${server.run}` })
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
