import { expect, type Page } from '@playwright/test'

/** Every main action is as high as a gloved thumb needs, and nothing that is pressed lies nearer than 8 px to another. */
export async function expectPressable(page: Page): Promise<void> {
  expect(await hardToPress(page)).toEqual([])
}

/** What a thumb would miss, with what it is or would be pressed instead of it. */
export const hardToPress = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const nameOf = (one: Element): string => (one.getAttribute('aria-label') ?? one.textContent ?? '').trim()
    const pressed = [...document.querySelectorAll<HTMLElement>('main :is(.button, .door, .filter, .key)')].filter(
      (one) => one.checkVisibility({ contentVisibilityAuto: true, visibilityProperty: true }),
    )
    const low = pressed
      .filter((one) => one.matches('.button.main, .door, .filter, .entry-save .button'))
      .map((one) => [one, one.getBoundingClientRect().height] as const)
      .filter(([, height]) => height < 55.9)
      .map(([one, height]) => `${nameOf(one)}: ${height} px`)
    // What stays at the edge of the screen lies over what is scrolled below it.
    const layer = (one: Element): Element | null => one.closest('.next-bar, .entry-save, dialog')
    const boxes = pressed.map((one) => ({ one, box: one.getBoundingClientRect() }))
    const near = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((b) => {
        if (layer(a.one) !== layer(b.one)) return []
        const across = Math.max(a.box.left - b.box.right, b.box.left - a.box.right)
        const down = Math.max(a.box.top - b.box.bottom, b.box.top - a.box.bottom)
        return Math.max(across, down) < 7.9 ? [`${nameOf(a.one)} | ${nameOf(b.one)}: ${Math.max(across, down)} px`] : []
      }),
    )
    return [...low, ...near]
  })
