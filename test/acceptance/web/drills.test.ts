import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { wrongOnScreen } from './measured.ts'
import { openPage, readLength } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

/** How many entries each store of this device has. */
const kept = (page: Page, name: string): Promise<number> =>
  page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open(name)
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const count = opening.result.transaction('entries').objectStore('entries').count()
          count.onsuccess = () => {
            opening.result.close()
            resolve(count.result)
          }
        }
      }),
    name,
  )

/** A terminal by itself with one gross fault: by the model the stub of post 1 stands 6 3/4 in high, for 4 in at most. */
const number = '1000 1000 0246'

test('a drill is played on a phone without a network; practice goes in one touch, and real runs stay', {
  tag: '@phone',
}, async ({ page, context }) => {
  await openPage(page, server.address)
  await page.getByRole('link', { name: 'Practise: find the hidden fault' }).click()
  await expect(page.getByRole('button', { name: 'Find the fault' })).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  expect(await wrongOnScreen(page)).toEqual([])
  const real = await kept(page, 'lapwise')
  await context.setOffline(true)

  await page.getByLabel('Number of the drill').fill(number.replace('6', '7'))
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  await expect(page.getByRole('alert')).toContainText('one of its digits is wrong')
  await page.getByLabel('Number of the drill').fill(number)
  await page.getByRole('button', { name: 'Begin', exact: true }).click()
  const bar = page.getByRole('complementary', { name: 'Practice' })
  await expect(bar).toContainText(number)
  await expect(page.getByRole('link', { name: 'Record' })).toHaveCount(0)
  await page.getByRole('link', { name: /^Next unread/ }).click()
  const sight = page.getByRole('region', { name: 'What is to be seen here' })
  await expect(sight).toBeVisible()
  const walk = page.url().replace(/\/walk\/.*/, '/walk')

  await page.goto(`${walk}/post-1/stub-height`)
  await sight.getByRole('button', { name: /^Measure/ }).click()
  await expect(sight.getByRole('img', { name: /^It shows 6 (5[/]8|3[/]4|7[/]8) in$/ })).toBeVisible()
  await expectAccessible(page)
  await readLength(page, 'R. Quist', '6 3/4 in')

  await page.goto(`${walk}/post-1/hinge-side`)
  await expect(sight).toBeVisible()
  await page.getByRole('radio', { name: 'Toward the head' }).check()
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('Saved on this device')

  await bar.getByRole('link', { name: 'End drill' }).click()
  await page.getByLabel('How bad is it?').selectOption({ index: 1 })
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Show what was hidden' }).click()
  await expect(page.locator('.debrief-score')).toContainText('1 of 1 found, 0 false alarms')
  await expect(page.locator('.debrief-faults > [data-outcome=found]')).toContainText('6.748 in')
  await page.getByText('Rule, figure and remedy').click()
  await expect(page.locator('.debrief-faults .figure svg')).toBeVisible()
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  expect(await wrongOnScreen(page)).toEqual([])

  for (const part of ['lesson', 'class']) {
    await page.goto(`${server.address}/drills/${part}`)
    await expect(page.locator('main h1')).toBeVisible()
    await expectAccessible(page)
    expect(await wrongOnScreen(page)).toEqual([])
  }
  await page.goto(`${server.address}/drills`)
  await expect(page.getByRole('row', { name: /stub height/ })).toContainText('100%')
  expect(await kept(page, 'lapwise-practice')).toBe(3)
  expect(await kept(page, 'lapwise')).toBe(real)
  await page.getByRole('button', { name: 'Let go of all practice' }).click()
  await expect(page.getByRole('row', { name: /stub height/ })).toHaveCount(0)
  await expect.poll(() => kept(page, 'lapwise-practice')).toBe(0)
  expect(await kept(page, 'lapwise')).toBe(real)
  await context.setOffline(false)
  await page.goto(server.address)
  await expect(page.getByRole('link', { name: /Alder Creek/ })).toHaveCount(1)
  const { runs } = await (await fetch(`${server.address}/api/runs`)).json()
  expect(runs).toHaveLength(1)
})
