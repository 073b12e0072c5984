import { readFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { expect, type Locator, type Page, test } from '@playwright/test'
import { smallPng } from '../../fixtures/sheet-files.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'

import { openPage, openReading, readLength } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

const server = serverOfFile()

const id = 'county-terminal-31-in'
const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true })
const statement = (page: Page, place: string): Locator => page.locator(`[data-statement="${place}"]`)
const group = (page: Page, title: string): Locator => page.locator('summary').filter({ hasText: title })

/** Saves what is being changed as an edition, which is on the device when this resolves. */
async function saveEdition(page: Page): Promise<void> {
  await button(page, 'Save as an edition').click()
  await expect(page.getByRole('heading', { name: 'What saving does' })).toHaveCount(0)
}

/** What the pages of a run say of it, but for what they say of the shelf. */
async function saidOf(page: Page, run: string): Promise<string> {
  const texts: (string | null)[] = []
  for (const pane of ['not-proven', 'record', 'walk/post-1/rail-height']) {
    await page.goto(`${server.address}/runs/${run}/${pane}`)
    await expect(page.locator('.title-verdict')).toHaveText(/acceptable/)
    await page.waitForLoadState('networkidle')
    await expect(page.locator('.loading')).toHaveCount(0)
    texts.push(
      await page.locator('.title-verdict').textContent(),
      await page.locator('main > :last-child').textContent(),
    )
  }
  return texts.join('\n').replace(/The shelf has [^;]*;[^.]*[.]/g, '')
}

/** From now on, each text that the first such element has after a change of the page. */
async function everyTextOf(page: Page, selector: string): Promise<() => Promise<readonly string[]>> {
  const texts = await page.evaluateHandle((of) => {
    const seen: string[] = []
    new MutationObserver(() => seen.push(document.querySelector(of)?.textContent ?? '')).observe(document.body, {
      ...{ subtree: true, childList: true, characterData: true },
    })
    return seen
  }, selector)
  return () => texts.jsonValue()
}

test('a sheet of an invented terminal is written by form alone and confirmed; a run holds its edition whatever comes after', async ({
  page,
}) => {
  await openPage(page, server.address)
  await page.getByRole('link', { name: 'Hardware sheets' }).click()
  await page.locator('[data-sheet="flared-terminal-31"]').click()
  await expectAccessible(page)

  // Written: a copy under a name of its own, in which nothing is confirmed.
  await button(page, 'Copy as a sheet of your own').click()
  await page.getByLabel('Name of the new sheet').fill('County terminal, 31 in')
  await button(page, 'Make the copy').click()
  await expect(page).toHaveURL(new RegExp(`/shelf/${id}/edit$`))
  const least = page.getByLabel('Rail height: at least')
  await least.fill('40')
  await expect(page.locator('.form-attention')).toContainText(
    'Rail height: nominal: Expected at least the low limit, 40',
  )
  await least.fill('30 1/2')
  await expect(page.locator('.form-attention')).toHaveCount(0)
  await page.getByText('Rules of the part: Anchor cable').click()
  await page.getByLabel('What must be true').first().fill('The cable of the county is taut.')
  // With a picture of its own, which is said in both languages before it holds together.
  const own = page.getByRole('group', { name: 'A picture of your own' }).first()
  await own.getByLabel('Take it from a file').setInputFiles({
    ...{ name: 'cable.png', mimeType: 'image/png', buffer: Buffer.from('<svg onload="x()"/>') },
  })
  await expect(own.getByRole('alert')).toContainText('This is no picture that this browser reads.')
  await own.getByLabel('Take it from a file').setInputFiles({
    ...{ name: 'cable.png', mimeType: 'image/png', buffer: Buffer.from(smallPng, 'base64') },
  })
  await expect(own.locator('img')).toBeVisible()
  await expect(own.getByRole('alert')).toHaveCount(0)
  const shows = page.getByLabel('What the picture shows, for who does not see it').first()
  await shows.fill('A cable without slack.')
  await expect(page.locator('.form-attention')).toContainText('Expected also its translation into es')
  await page.getByLabel('The same in Spanish').first().fill('Un cable sin juego.')
  await expect(page.locator('.form-attention')).toHaveCount(0)
  await group(page, 'What is required by it').click()
  await expect(page.locator('.run-form-beside')).toContainText('The cable of the county is taut.')
  await expect(page.locator('.run-form-beside')).toContainText('30 1/2 in to 32 in')
  await expectAccessible(page)
  await saveEdition(page)

  // Confirmed, number by number, and saved as the second edition.
  await page.goto(`${server.address}/shelf/${id}`)
  await expect(page.getByText('edition 1', { exact: false }).first()).toBeVisible()
  await expect(page.locator('.sheet-page > div > .shelf-confirmed')).toContainText('0 of 38 confirmed')
  await button(page, 'Confirm numbers from a document').click()
  await statement(page, 'railHeight').getByLabel('Page').fill('12')
  await statement(page, 'railHeight').getByRole('button', { name: 'Confirm' }).click()
  await expect(page.getByRole('alert')).toContainText('Say first which document')
  await page.getByLabel('Title').fill('Standard drawing of an invented county')
  await page.getByLabel('Edition', { exact: true }).fill('2026')
  await page.getByLabel('Your name').fill('R. Quist')
  await statement(page, 'railHeight').getByRole('button', { name: 'Confirm' }).click()
  await expect(statement(page, 'railHeight')).toContainText('page 12, checked by R. Quist')
  await expect(page.locator('.sheet-page > div > .shelf-confirmed')).toContainText('1 of 38 confirmed')
  await expect(page.getByText('No run on this device holds it')).toBeVisible()
  const edition = page.locator('.sheet-page > p').first()
  await expect(edition).toContainText('edition 1 with changes that are not saved yet')
  await button(page, 'Print').click()
  const [unsaved] = await Promise.all([page.waitForEvent('download'), button(page, 'List to confirm, as PDF').click()])
  expect(unsaved.suggestedFilename()).toBe(`${id}-not-saved-list.pdf`)
  await button(page, 'Print').click()
  // What is saved is shown without the edition before it coming back in between.
  const shown = await everyTextOf(page, '.sheet-page > p')
  await saveEdition(page)
  await expect(edition).toHaveText(/edition 2$/)
  await group(page, 'Parts and their rules').click()
  await expect(page.getByRole('img', { name: 'A cable without slack.' })).toBeVisible()
  expect((await shown()).filter((text) => text.endsWith('edition 1'))).toEqual([])
  await button(page, 'Print').click()
  for (const [name, file] of [
    ['List to confirm, as PDF', `${id}-2-list.pdf`],
    ['Pocket card, as PDF', `${id}-2-pocket-card.pdf`],
  ] as const) {
    const [printed] = await Promise.all([page.waitForEvent('download'), button(page, name).click()])
    expect(printed.suggestedFilename()).toBe(file)
    expect((await readFile(await printed.path())).subarray(0, 5).toString()).toBe('%PDF-')
    await expect(page.getByText(`${file} is made.`)).toBeVisible()
  }

  // A run holds that edition by content, and is inspected by it.
  await page.goto(server.address)
  await page.getByLabel('Add a run from a file').setInputFiles({
    name: 'county.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      JSON.stringify({
        ...{ format: 'lapwise-run/1', name: 'County road, north', system: 'w-beam-midspan-31' },
        ...{ need: { from: 0, to: 1200 }, first: { sheet: id }, second: { sheet: 'trailing-anchor-31' } },
      }),
    ),
  })
  await expect(page).toHaveURL(/\/runs\//)
  const run = new URL(page.url()).pathname.split('/')[2]!
  await openReading(page, server.address, run, 'post-1/rail-height')
  await expect(page.getByText('30 1/2 in to 32 in').first()).toBeVisible()
  await readLength(page, 'R. Quist', '30 in')
  await page.goto(`${server.address}/runs/${run}/walk/post-1/cable-play`)
  const picture = page.getByRole('img', { name: 'A cable without slack.' })
  await expect(picture).toBeVisible()
  expect(await picture.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBe(3)
  await expectAccessible(page)
  const before = await saidOf(page, run)

  // By the next edition that reading would meet. It names the run before it is saved; the run does not move.
  await page.goto(`${server.address}/shelf/${id}/edit`)
  await page.getByLabel('Rail height: at least').fill('28')
  const touched = page.locator(`[data-run="${run}"]`)
  await expect(touched).toContainText('County road, north')
  await expect(touched).toContainText('holds edition 2')
  await expect(touched).toContainText('not acceptable')
  await expect(page.locator('.run-form-beside [data-statement="railHeight"]')).toContainText('28 in to 32 in')
  await expectNoSidewaysScroll(page)

  // Tried on a copy, which holds the edition before anybody saved it, and none of the readings.
  await touched.getByRole('button', { name: 'Try it on a copy' }).click()
  await expect(page).toHaveURL(/[/]runs[/].*[/]layout$/)
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('County road, north, tried with edition 3')
  const copy = new URL(page.url()).pathname.split('/')[2]!
  expect(copy).not.toBe(run)
  await openReading(page, server.address, copy, 'post-1/rail-height')
  await expect(page.getByText('28 in to 32 in').first()).toBeVisible()
  await page.goto(`${server.address}/runs/${copy}/readings`)
  await expect(page.getByText('Nothing was read yet.')).toBeVisible()
  await page.goto(`${server.address}/shelf/${id}/edit`)
  await expect(page.getByLabel('Rail height: at least')).toHaveValue('28')
  await saveEdition(page)
  await page.goto(`${server.address}/shelf/${id}`)
  // What was confirmed and is changed is confirmed no longer.
  await expect(page.locator('.sheet-page > div > .shelf-confirmed')).toContainText('0 of 38 confirmed')
  expect(await saidOf(page, run)).toBe(before)
  expect(before).toContain('not acceptable')

  // Both editions beside each other, with both figures.
  await page.goto(`${server.address}/shelf/${id}`)
  await group(page, 'Editions').click()
  await page.locator('[data-edition="2"]').getByRole('link', { name: 'Compare' }).click()
  await expect(statement(page, 'railHeight').locator('td').nth(0)).toContainText('28 in to 32 in, 31 in nominal')
  await expect(statement(page, 'railHeight').locator('td').nth(1)).toContainText('30 1/2 in to 32 in, 31 in nominal')
  await expect(page.locator('[data-statement]')).toHaveCount(1)

  // The run by its form and by its visits: it goes into a project, and its reading is found by what was read.
  await page.goto(`${server.address}/runs/${run}/edit`)
  await page.getByLabel('Project').fill('Bridges of 2026')
  await page.getByLabel('Why the run is changed').fill('it is let with the bridges')
  await button(page, 'Save as a version').click()
  await expect(page.getByRole('heading', { name: 'Why so' })).toBeVisible()
  await page.goto(`${server.address}/runs/${run}/readings`)
  await expect(page.locator('.visits summary')).toContainText('R. Quist')
  await page.getByLabel('Search place, word, number or who').fill('30 in')
  await expect(page.locator('.visits .past-reading')).toHaveCount(1)
  await page.getByLabel('Search place, word, number or who').fill('nobody')
  await expect(page.getByText('No reading is like that.')).toBeVisible()
  await page.goto(server.address)
  await expect(page.getByRole('heading', { name: 'Bridges of 2026' })).toBeVisible()
})

test('a text that was changed is translated anew, by form and by a table that leaves and comes back', {
  tag: '@both',
}, async ({ page }) => {
  await openPage(page, `${server.address}/shelf/flared-terminal-31/edit`)
  await page.getByText('Rules of the part: Anchor cable').click()
  await page.getByLabel('What must be true').first().fill('The cable of the county is taut.')
  await page.goto(`${server.address}/shelf/flared-terminal-31`)
  await page.getByRole('link', { name: 'Texts in Spanish' }).click()
  await expect(page.getByRole('status').first()).toContainText('0 missing, 1 changed')
  const row = page.locator('[data-text$="must"]').filter({ hasText: 'The cable of the county is taut.' })
  await expect(row).toContainText('It said before')
  await row.getByLabel('Spanish').fill('El cable cede {1 in}.')
  await expect(row).toContainText('Expected no value in braces')
  await expect(page.getByText('One thing has to be put right first.')).toBeVisible()
  await row.getByLabel('Spanish').fill('El cable está tenso.')
  await expect(row.locator('.field-wrong')).toHaveCount(0)
  await expect(page.getByRole('status').first()).toContainText('0 missing, 0 changed')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  const [left] = await Promise.all([page.waitForEvent('download'), button(page, 'Save as a table (CSV)').click()])
  expect(left.suggestedFilename()).toMatch(/^flared-terminal-31-.*-es[.]csv$/)
  const table = readFileSync(await left.path(), 'utf8')
  const back = (text: string) => ({ name: 'texts.csv', mimeType: 'text/csv', buffer: Buffer.from(text) })
  const taken = page.getByLabel('Take a translated table')
  await taken.setInputFiles(back(table.replace('El cable está tenso.', 'El cable cede {1 in}.')))
  await expect(page.getByRole('alert')).toContainText(/row \d+, es: Expected no value in braces/i)
  await taken.setInputFiles(back(table.replace('El cable está tenso.', 'El cable del condado está tenso.')))
  await expect(page.getByText('1 translation taken from the table.')).toBeVisible()
  await saveEdition(page)
  await page.goto(`${server.address}/shelf/flared-terminal-31`)
  await page.getByLabel('Language').selectOption('Español')
  await group(page, 'Piezas y sus reglas').click()
  await expect(page.getByText('El cable del condado está tenso.').first()).toBeVisible()
})

test('a sheet is written from nothing: the form asks for what is missing, and then draws it and says what it requires', {
  tag: '@both',
}, async ({ page }) => {
  await openPage(page, `${server.address}/shelf`)
  await group(page, 'Write a sheet from nothing').click()
  await button(page, 'Begin the sheet').click()
  await expect(page.getByRole('alert')).toContainText('Give it a name.')
  await page.getByLabel('Name of the new sheet').fill('Valley anchor')
  await page.getByLabel('What it is').selectOption('trailing anchor')
  await button(page, 'Begin the sheet').click()
  await expect(page).toHaveURL(/\/shelf\/valley-anchor\/edit$/)
  const attention = page.locator('.form-attention')
  await expect(attention).toContainText('As soon as it holds together')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  const field = (name: string): Locator => page.getByLabel(name, { exact: true })
  await field('Title of the document').fill('Standard drawing of an invented valley')
  await field('Edition, or that there is no document').fill('2026')
  await page.getByLabel(/^Class of hardware/).selectOption('W-beam terminal')
  await page.getByLabel('Joins W-beam, splices midway').check()
  await page.getByLabel(/^Crashworthy/).selectOption('no')
  await field('Rail height: what the limits mean').selectOption('floor')
  await page.getByLabel('Rail height: at least').fill('30 1/4')
  await page.getByLabel('Rail height: how').fill('From the ground below the face')
  await field('Tolerance of post spacing: what the limits mean').selectOption('centre')
  await page.getByLabel('Tolerance of post spacing: nominal').fill('75')
  await page.getByLabel('Tolerance of post spacing: how').fill('Centre to centre')
  await page.getByLabel(/^Lap/).first().selectOption('adjacent traffic')
  await page
    .getByLabel(/^Listed length/)
    .first()
    .fill('75')
  await page
    .getByLabel(/^Rail counts for length of need from/)
    .first()
    .fill('0')
  await expect(attention).toHaveCount(0)
  await group(page, 'Posts').click()
  // What is added states nothing either: each thing that a post has to state is asked for.
  for (const [name, along] of [
    ['Post 1', '0'],
    ['Post 2', '75'],
  ] as const) {
    await button(page, 'Add a post').click()
    const post = page.getByRole('group', { name, exact: true })
    await expect(post.getByLabel(/^Along the rail/)).toHaveValue('')
    await expect(attention).toContainText('Along the rail')
    await post.getByLabel(/^Along the rail/).fill(along)
    await post.getByLabel('Kind', { exact: true }).fill('steel post')
    await post.getByLabel(/^Breaks away by/).selectOption('none')
    await post.getByLabel(/^Offset block/).selectOption('no')
    await expect(attention).toHaveCount(0)
  }
  await group(page, 'What is required by it').click()
  await expect(page.locator('.run-form-beside')).toContainText('30 1/4 in')
  await expect(page.locator('.run-form-beside .shelf-picture svg')).toBeVisible()
  await saveEdition(page)
  await page.goto(`${server.address}/shelf`)
  await expect(page.locator('[data-sheet="valley-anchor"]')).toContainText('Valley anchor')
})
