import { AxeBuilder } from '@axe-core/playwright'
import { expect, type Page } from '@playwright/test'

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** Nothing of the view is still fetched or drawn piece by piece. */
export const expectWhole = (page: Page): Promise<void> =>
  expect(page.locator('.loading, .building, [aria-busy=true]')).toHaveCount(0)

/** No rule of WCAG 2.2 A or AA is broken in the view that is shown. */
export async function expectAccessible(page: Page): Promise<void> {
  await expectWhole(page)
  // At the end of the page the bar with the buttons lies over nothing, nor does it at that of the entry beside the list;
  // at the beginning of the list the field that searches it lies over no half of a line.
  await page.evaluate(() => {
    window.scrollTo(0, document.body.scrollHeight)
    const entry = document.querySelector('.walk-entry')
    entry?.scrollTo(0, entry.scrollHeight)
    document.querySelector('.walk-list')?.scrollTo(0, 0)
  })
  // With no frame in the page, it is searched where it stands, and not gathered frame by frame in a page of its own.
  expect(page.frames()).toHaveLength(1)
  // Of what breaks no rule the first is enough: to name each by a selector takes far longer than the rules themselves.
  const axe = new AxeBuilder({ page })
    .options({ resultTypes: ['violations'] })
    .withTags(tags)
    .setLegacyMode(true)
  const { violations } = await axe.analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`)).toEqual([])
}

/** What is drawn for the width of the screen is drawn a frame after that changed. */
export const expectNoSidewaysScroll = (page: Page): Promise<void> =>
  expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
    .toBeLessThanOrEqual(0)
