import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { inOneFont, readyToKeep } from './kept.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

test.use({ serviceWorkers: 'block', bypassCSP: true, timezoneId: 'America/Denver' })

/** Texts that lie over one another, and what is pressed with less than 8 px between. */
const crowded = (page: Page) =>
  page.evaluate(() => {
    const boxes = [...document.querySelectorAll<HTMLElement>('main *')]
      .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== ''))
      .filter((one) => one.checkVisibility({ contentVisibilityAuto: true }) && one.closest('select, .unseen') === null)
      // What only who hears the page is told has a box of a few pixels.
      .filter((one) => one.getBoundingClientRect().width > 4)
      .map((one) => {
        const range = document.createRange()
        range.selectNodeContents(one)
        return { one, box: range.getBoundingClientRect() }
      })
    const found: string[] = []
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) {
        if (a.one.contains(b.one) || b.one.contains(a.one)) continue
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top)
        if (across > 1 && down > 3) found.push(`${a.one.textContent} | ${b.one.textContent}`)
      }
    return found
  })

/** Main actions and doors that a gloved thumb would miss. */
const tooSmall = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('.button.main, .door')]
      .filter((one) => one.getBoundingClientRect().height < 56)
      .map((one) => one.textContent),
  )

for (const [language, light, kept] of [
  ['en', 'sun', 390],
  ['es', 'night', 1440],
] as const)
  test(`every part stands clear of the others at three widths and looks as it is kept, in ${language} by ${light}`, async ({
    page,
  }) => {
    await readyToKeep(page)
    await page.addInitScript(
      (wanted) => localStorage.setItem('lapwise/preferences', wanted),
      JSON.stringify({ language, light }),
    )
    for (const width of [390, 820, 1440]) {
      await page.setViewportSize({ width, height: 900 })
      await page.goto(`${server.address}/gallery`)
      await expect(page.locator('.gallery .run-row')).toHaveCount(5)
      await expectNoSidewaysScroll(page)
      expect(await crowded(page)).toEqual([])
      expect(await tooSmall(page)).toEqual([])
      await expectAccessible(page)
      if (width !== kept) continue
      await page.addStyleTag({ content: inOneFont })
      await page.evaluate(() => document.fonts.ready)
      await expect(page.locator('.gallery')).toHaveScreenshot(`${language}-${light}-${width}.png`, {
        // What another browser draws a shade otherwise is no other look; a word or a line that moved is far more than this.
        ...{ threshold: 0.3, maxDiffPixelRatio: 0.004, animations: 'disabled', caret: 'hide' },
      })
    }
    // What lies over something else would have been found.
    await page
      .locator('.door b')
      .first()
      .evaluate((one) => {
        one.style.marginTop = '40px'
        one.style.height = '0'
      })
    expect(await crowded(page)).not.toEqual([])
  })
