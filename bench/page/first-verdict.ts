import type { Page } from '@playwright/test'
import { goToFirstVerdict } from '../../test/acceptance/web/first-verdict.ts'
import { type BenchRow, figure, median } from '../measure.ts'

const times = 5

/**
 * How long the program takes of the way from the first page to the first verdict, with a hand that needs no time to look
 * and think: each time a terminal that was not checked before, on a device that has the page.
 */
export async function benchFirstVerdict(page: Page, address: string): Promise<BenchRow> {
  const taken: number[] = []
  let touches = 0
  for (let i = 0; i < times; i++) {
    await page.goto(address)
    await page.locator('.door').first().waitFor()
    const began = performance.now()
    touches = 0
    await goToFirstVerdict(page, async (_, where) => {
      touches += 1
      await where.click()
    })
    taken.push(performance.now() - began)
  }
  return {
    what: `from the first page to the first verdict, ${touches} touches, as quick as they can follow on each other`,
    figure: `${figure(median(taken) / 1000)} s`,
    aim: 'seconds, and a minute with the hand',
  }
}
