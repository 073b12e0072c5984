import { expect, test } from '@playwright/test'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { englishIn } from '../../cases/spanish/english-left.ts'
import { expectWhole } from './accessible.ts'
import { pathsOf, textsOn } from './page-texts.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

// The whole page in Spanish, and a run in metres: what a unit test of the sentences cannot see is what a view forgot to say.

const server = serverOfFile()

/** Names of people, programs and languages, and titles of documents. */
const names =
  /\d+ may \d+|Lapwise|English|Roadside Design Guide|Auto|JPEG|[\w.]+ Okafor|[\w.]+ Alvarez|finish grade at the post|the culvert|.*(FHWA|Midwest|Wisconsin|AASHTO|Kentucky|handbook|RDG|Texas).*|from a string along the line of the run/g

test('nothing is left in English when the page is in Spanish', async ({ page }) => {
  const paths = await pathsOf(page, server.address, 'Alder Creek culvert')
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  for (const path of [...paths, '/', '/need', '/lay-out', `/runs/${server.run}/edit`]) {
    await page.goto(server.address + path)
    await expect(page.locator('html')).toHaveAttribute('lang', 'es')
    await expect(page.locator('.picture, table, .findings, .day, .sheet, main').first()).toBeVisible()
    if (path.includes('/walk/')) await expect(page.locator('.picture.figure')).toBeVisible()
    await expectWhole(page)
    const texts = await textsOn(page)
    expect(texts.length, path).toBeGreaterThan(15)
    expect.soft(englishIn(texts.map((text) => text.replaceAll(names, ''))), path).toEqual([])
  }
})

test('a run in metres shows metres wherever a length is published in feet or inches', async ({ page }) => {
  const run = { ...JSON.parse(demoProject().run), name: 'Metric run', units: 'metric' }
  const metric = { ...run, road: { side: 'right', datumStation: '2+840.000', speed: 90, traffic: 'two-way' } }
  await page.goto(server.address)
  await page.setInputFiles('input[type=file][accept*=json]', {
    name: 'metric.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(metric)),
  })
  await expect(page.getByText('Metric run').first()).toBeVisible()
  const paths = await pathsOf(page, server.address, 'Metric run')
  let both = 0
  for (const path of paths.filter((one) => !one.endsWith('/day'))) {
    await page.goto(server.address + path)
    await expect(page.getByRole('heading', { name: 'Metric run' })).toBeVisible()
    if (path.includes('/walk/')) await expect(page.locator('.picture.figure')).toBeVisible()
    await expectWhole(page)
    const text = (await textsOn(page)).filter((one) => !isName(one)).join('\n')
    // In metres first, and as it is published in brackets behind.
    const published = /[\d.,]+\s(?:m|mm)(?:\s(?:to|or)\s[\d.,]+\s(?:m|mm))*\s\([^()]*\d\s(?:in|ft)[^()]*\)/g
    both += (text.match(published) ?? []).length
    expect(
      text.replace(published, '').match(/.*\d\s(?:in|ft)(?!\s\d|\sa row|\sthe |\stwo places|\w).*/g) ?? [],
      path,
    ).toEqual([])
  }
  expect(both).toBeGreaterThan(50)
})

/** Pay items are rounded in feet where the contract says so. */
const isName = (text: string): boolean => /^(0\.1|1|12\.5) ft$/.test(text)
