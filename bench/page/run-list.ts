import type { Page } from '@playwright/test'
import { fillList } from '../../test/acceptance/web/fill-list.ts'
import { type BenchRow, figure, median } from '../measure.ts'

const runs = 10_000
const times = 9

/**
 * How long the list of many runs takes from the touch that asks for it to its first screens, on this machine: as soon as
 * another page is there, and when somebody has looked at that for a moment.
 */
export async function benchDeviceList(page: Page, address: string): Promise<readonly BenchRow[]> {
  await page.evaluate(fillList, runs)
  const rows: BenchRow[] = []
  for (const [when, pause] of [
    ['at once', 0],
    ['after 2 s', 2000],
  ] as const) {
    const taken: number[] = []
    for (let i = 0; i < times; i++) {
      await page.goto(`${address}/need`)
      await page.locator('.picture svg').first().waitFor()
      await page.waitForTimeout(pause)
      taken.push(await page.evaluate(openList))
    }
    rows.push({
      what: `list of ${figure(runs)} runs on a device, from another page of it, ${when}`,
      figure: `${figure(median(taken))} ms`,
      aim: 'under 100 ms',
    })
  }
  return rows
}

/** In the page: goes to the list, and waits until it is drawn. */
async function openList(): Promise<number> {
  const began = performance.now()
  document.querySelector<HTMLAnchorElement>('.mark')!.click()
  while (document.querySelectorAll('.run-row').length < 40) await new Promise(requestAnimationFrame)
  return performance.now() - began
}
