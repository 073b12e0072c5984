import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { unzipSync } from 'fflate'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

const acceptance = (page: Page) => page.locator('.title-verdict')

const openPane = (page: Page, name: RegExp): Promise<void> =>
  page.getByRole('navigation', { name: 'Parts of this run' }).getByRole('link', { name }).click()

/** On a phone what is open covers the panes. */
async function goBack(page: Page): Promise<void> {
  const back = page.locator('.entry-steps .close')
  if (await back.isVisible()) await back.click()
}

/** Opens, from the findings, what has to be read again: what must be, of the place at which the finding is. */
async function readAgain(page: Page, must: string, place = ''): Promise<void> {
  await goBack(page)
  await openPane(page, /Findings/)
  const finding = page.locator('.finding', { hasText: must }).filter({ has: page.locator('h3', { hasText: place }) })
  // A finding that says what must be does not say it again where one goes on; its own place comes first.
  const said = finding.getByRole('link', { name: must }).first()
  await said.or(finding.getByRole('link', { name: 'Read it again' })).click()
}

async function save(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.locator('.saved')).toContainText('Saved on this device')
}

// The panes as they are before anything is read are searched for what breaks a rule in accessible.test.ts.
test('the demo run is judged, its four faults are put right, and the record is printed', { tag: '@both' }, async ({
  page,
}) => {
  await page.goto(server.address)
  const row = page.locator('.run-row').filter({ hasText: 'Alder Creek culvert' })
  await expect(row).toContainText('not acceptable')
  await expect(row).toContainText('4 findings')
  await expectNoSidewaysScroll(page)

  await row.getByRole('link').click()
  await expect(acceptance(page)).toHaveText('not acceptable')
  await expectNoSidewaysScroll(page)

  await openPane(page, /Findings \(4\)/)
  await expect(page.locator('.finding')).toHaveCount(4)
  await expectNoSidewaysScroll(page)

  // The stub is too high: the remedy says by how much to lower the post; it is lowered, and read on the keypad.
  await readAgain(page, 'The lower post (stub) stands at most 4 in above finish grade.')
  await page.getByLabel('Read by').fill('R. Quist')
  const length = page.getByLabel(/^Length/)
  await length.fill('4 1/8')
  await expect(page.locator('.live')).toContainText('too close')
  await length.fill('6-3')
  await expect(page.locator('.echo')).toContainText('6 ft 3 in or 6 minus 3')
  await length.fill('')
  for (const key of ['3', '¾']) await page.getByRole('button', { name: key, exact: true }).click()
  await expect(length).toHaveValue('3¾')
  await expect(page.locator('.echo')).toHaveText('Understood: 3 3/4 in = 95.25 mm')
  await page.getByLabel('Instrument').selectOption('tape')
  await expect(page.locator('.live')).toContainText('meets')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  await save(page)
  await expect(page.locator('.past-reading')).toHaveCount(2)
  await expect(page.locator('.past-reading').first()).toContainText('R. Quist')

  await readAgain(page, 'The bearing plate stands with its 5-in side up')
  await page.getByRole('radio', { name: '5-in side up', exact: true }).check()
  await expect(page.locator('.live')).toContainText('meets')
  await expectAccessible(page)
  await save(page)

  await readAgain(page, 'The upstream panel lies on the traffic side of the splice')
  await page.getByRole('radio', { name: 'Upstream panel on the traffic side', exact: true }).check()
  await save(page)

  // Two panels were exchanged, so their lengths and every splice between them are read again.
  await readAgain(page, 'The last panel before the run is 9 ft 4 1/2 in long')
  await page.getByRole('radio', { name: '9 ft 4 1/2 in', exact: true }).check()
  await save(page)
  await readAgain(page, 'The last panel before the run is 15 ft 7 1/2 in long')
  await page.getByRole('radio', { name: '15 ft 7 1/2 in', exact: true }).check()
  await save(page)
  for (const number of [3, 4, 5, 6]) {
    const place = `splice ${number}, between panels ${number} and ${number + 1}`
    await readAgain(page, 'The splice lies midway', place)
    await page.getByRole('radio', { name: 'Midway between posts', exact: true }).check()
    await save(page)
  }

  await goBack(page)
  await expect(acceptance(page)).toHaveText('acceptable')
  await openPane(page, /Findings \(0\)/)
  await expect(page.getByText('Nothing fails.')).toBeVisible()

  await openPane(page, /Not proven \(0\)/)
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
  await openPane(page, /Layout/)
  await expect(page.getByRole('heading', { name: 'Refused alternatives' })).toBeVisible()
  await expectNoSidewaysScroll(page)

  await openPane(page, /Record/)
  await page.getByLabel('Paper').selectOption('A4')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the record' }).click(),
  ])
  const pdf = await readFile(await download.path())
  expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-')

  const [zip] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the packet' }).click(),
  ])
  expect(zip.suggestedFilename()).toMatch(/^Alder-Creek-culvert-right-side-packet-\d{4}-\d\d-\d\d-v1\.zip$/)
  const files = unzipSync(await readFile(await zip.path()))
  const names = Object.keys(files).map((name) => name.replace(/^[^/]+\//, ''))
  expect(names).toEqual(expect.arrayContaining(['crew-sheet.pdf', 'record.pdf', 'quantities.xlsx', 'manifest.json']))
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // What was read is on the server, not in the page.
  await page.reload()
  await expect(acceptance(page)).toHaveText('acceptable')
})
