import { expect, type Locator, type Page } from '@playwright/test'

/** How something is touched, and for what. */
export type Touch = (what: string, where: Locator) => Promise<void>

export const toFirstRequirement = 'to the first requirement'

/**
 * From the first page, which is there, to the verdict of the first reading, which fails: a terminal of 27 3/4 in stands
 * there, and its rail is at 27 1/2 in.
 */
export async function goToFirstVerdict(page: Page, touch: Touch): Promise<void> {
  const button = (name: string | RegExp): Locator => page.getByRole('button', { name })
  const to = (where: Locator): Promise<void> => touch(toFirstRequirement, where)
  await to(page.getByRole('link', { name: /Check what stands/i }).first())
  await to(button('Find it by questions'))
  await to(button('A head on the rail'))
  await to(button('Yes, by 2 ft or more'))
  await to(button('At a post'))
  await to(button(/Flared cable-anchored terminal, 27 3\/4 in/))
  await to(button('This end only: traffic comes'))
  await to(button('Begin to look'))
  await to(page.getByRole('link', { name: 'Next unread: post 1' }))
  await expect(page.getByRole('heading', { name: /top of the rail stands/ })).toBeVisible()
  for (const key of '27½') await touch('to the first verdict', button(key).and(page.getByText(key, { exact: true })))
  await expect(page.locator('.live')).toContainText('fails')
}
