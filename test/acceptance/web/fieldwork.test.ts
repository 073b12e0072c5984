import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { expect, type Page, test } from '@playwright/test'
import { withExif } from '../../fixtures/exif-photo.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { keptPhotos, keptStrokes } from './offline-device.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

/** A photo that lies on its side: 240 by 120 pixels, to be turned by a quarter, taken on 2026-05-04 at 10:30:15 -06:00. */
const sideways = fileURLToPath(new URL('./fieldwork-sideways.jpg', import.meta.url))

const open = (page: Page, path = '', run = server.run): Promise<unknown> =>
  page.goto(`${server.address}/runs/${run}${path}`)
const length = (page: Page) => page.getByLabel(/^Length/)
const saved = (page: Page) => page.locator('.saved')
const save = (page: Page): Promise<void> => page.getByRole('button', { name: 'Save', exact: true }).click()
const past = (page: Page) => page.locator('.past-reading')

/** A run of its own, on which nothing was read. */
async function addRun(page: Page, name: string, more: object = {}): Promise<string> {
  await page.goto(server.address)
  const file = {
    format: 'lapwise-run/1',
    name,
    ...more,
    system: 'w-beam-midspan-31',
    first: { sheet: 'flared-terminal-31' },
    second: { sheet: 'trailing-anchor-31' },
    need: { from: 0, to: '75 ft' },
  }
  await page.getByLabel('Add a run from a file').setInputFiles({
    name: 'run.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(file)),
  })
  await expect(page.getByRole('heading', { name, level: 1 })).toBeVisible()
  return /runs\/([^/]+)/.exec(page.url())![1]!
}

const photosOf = (page: Page) => page.getByRole('region', { name: 'Photos' })
const hand = (page: Page, files: string | { name: string; mimeType: string; buffer: Buffer }) =>
  page.locator('.photos input[type=file][multiple]').setInputFiles(files)

const undo = (page: Page): Promise<void> => page.getByRole('button', { name: 'Undo', exact: true }).click()
const pulled = (page: Page) => page.locator('.same-here')

test('what is as at a like place is one pull, a reading of its own, and is undone as a slip of the finger', {
  tag: '@phone',
}, async ({ page }) => {
  const run = await addRun(page, 'As before')
  await open(page, '/walk/post-8/rail-bolt', run)
  await page.getByLabel('Read by').fill('R. Quist')
  await expect(pulled(page)).toHaveCount(0)
  await page.getByRole('radio', { name: 'Bolted, no washer on the face' }).check()
  await page.getByRole('button', { name: 'Save and next' }).click()
  await expect(saved(page)).toContainText('post 8')
  // A post of the terminal is like none of the run, though it is asked in the same words.
  await open(page, '/walk/post-3/rail-bolt', run)
  await expect(page.locator('#must')).toContainText('bolted to the post')
  await expect(pulled(page)).toHaveCount(0)
  await open(page, '/walk/post-9/rail-bolt', run)
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0)
  await expect(pulled(page)).toHaveText('As at post 8: Bolted, no washer on the face')
  await pulled(page).click()
  await page.getByRole('button', { name: 'Save and next' }).click()
  await expect(saved(page)).toContainText('post 9')
  await expectAccessible(page)
  // It opens the place again with what was entered, and says what it is.
  await page.waitForTimeout(700)
  await undo(page)
  await expect(page.locator('.entry-place')).toContainText('post 9')
  await expect(page.getByRole('radio', { name: 'Bolted, no washer on the face' })).toBeChecked()
  await expect(page.locator('.purpose')).toContainText('Corrects the reading Bolted, no washer on the face')
  await expectAccessible(page)
  // Nobody is made to have undone it.
  await page.evaluate(() => localStorage.removeItem('lapwise/visit'))
  await page.reload()
  await page.getByRole('button', { name: 'Go on with it' }).click()
  const takeBack = page.getByRole('button', { name: 'Slip of the finger: take it back' })
  await takeBack.click()
  await expect(page.locator('.visit').getByRole('alert')).toHaveText('Say who is reading.')
  await expect(page.getByLabel('Read by')).toBeFocused()
  await page.keyboard.type('L. Haddad')
  await takeBack.click()
  await expect(saved(page)).toContainText('It could not be seen')
  await expect(past(page)).toHaveCount(2)
  await expect(past(page).first()).toContainText('L. Haddad')
  await expect(past(page).first()).toContainText('slip of the finger')
  await expect(page.locator('.live')).toContainText('unread')
})

test('a value is measured again at each place, and is corrected from its history', { tag: '@phone' }, async ({
  page,
}) => {
  const run = await addRun(page, 'Measured at each')
  await open(page, '/walk/post-8/rail-height', run)
  await page.getByLabel('Read by').fill('R. Quist')
  await length(page).fill('13')
  await page.getByRole('button', { name: 'Save and next' }).click()
  await expect(saved(page)).toContainText('13 in')
  await open(page, '/walk/post-9/rail-height', run)
  await expect(length(page)).toHaveValue('')
  await page.locator('.visit summary').click()
  await page.getByLabel('Instrument').selectOption('tape')
  await pulled(page).click()
  await expect(length(page)).toHaveValue('13 in')
  await save(page)
  await expect(past(page).first()).toContainText('with steel tape')
  await open(page, '/walk/post-8/rail-height', run)
  await expect(past(page)).toContainText('with tape and level')
  await page.getByRole('button', { name: 'Undo or correct' }).click()
  await expect(page.locator('.purpose')).toContainText('Corrects the reading 13 in')
  await expect(page.locator('.keypad')).toBeInViewport({ ratio: 1 })
  await expect(length(page)).toHaveValue('13 in')
  await length(page).fill('31')
  await save(page)
  await expect(past(page).first()).toContainText('31 in')
  await expect(past(page).last()).toContainText('corrected')
})

test('the visit is asked once', { tag: '@phone' }, async ({ page }) => {
  await open(page, '/walk/post-8/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await page.getByLabel('Instrument').selectOption('tape')
  await page.getByLabel('Where, from which surface').fill('edge of the pavement')
  await open(page, '/walk/post-9/rail-height')
  await expect(page.locator('.visit summary')).toContainText('R. Quist, steel tape, edge of the pavement')
  await expect(page.getByLabel('Read by')).toBeHidden()
})

test('too close says what a second reading would settle', { tag: '@phone' }, async ({ page }) => {
  // Tape and level: u = sqrt(3² + 3.175²/12) = 3.137 mm, guard band 2u = 0.247 in: 30 + 0.247 is 30 1/4 to the next
  // sixteenth, 30 - 0.247 is 29 3/4 to the one below; 1/8 in inside needs u of 1/16 in at most.
  await open(page, '/walk/post-8/rail-height')
  await length(page).fill('30 1/8')
  await expect(page.locator('.live')).toContainText('too close')
  await expect(page.locator('.second')).toContainText('meets from 30 1/4 in to 31 3/4 in')
  await expect(page.locator('.second')).toContainText('fails at 29 3/4 in and less or at 32 1/4 in and more')
  await expect(page.locator('.second')).toContainText('at most 0.062 in: steel tape')
})

test('next and previous by key, and back to where one came from', async ({ page }) => {
  await open(page, '/findings')
  await page.getByRole('link', { name: 'Read it again' }).first().click()
  const must = page.locator('#must')
  await expect(must).toContainText('bearing plate')
  await page.keyboard.press('Alt+PageDown')
  await expect(must).not.toContainText('its 5-in side up')
  // A key goes to where the hands are: they come along a frame after the words.
  await expect(page.locator('.entry :focus')).toHaveCount(1)
  await page.keyboard.press('Alt+PageUp')
  await expect(must).toContainText('bearing plate')
  await page.setViewportSize({ width: 390, height: 844 })
  await page.locator('.entry-steps').getByRole('link', { name: 'Findings' }).click()
  await expect(page).toHaveURL(/findings$/)
})

test('photos are turned upright, keep the time of their camera, and are drawn on beside them', {
  tag: '@phone',
}, async ({ page }) => {
  const run = await addRun(page, 'Photos')
  await open(page, '/walk/post-8/rail-height', run)
  await page.getByLabel('Read by').fill('R. Quist')
  await hand(page, sideways)
  const pictures = photosOf(page).getByRole('listitem')
  await expect(pictures).toHaveCount(1)
  const image = pictures.first().getByRole('img')
  const size = await image.evaluate(async (one: HTMLImageElement) => {
    await one.decode()
    return [one.naturalWidth, one.naturalHeight]
  })
  expect(size).toEqual([120, 240])
  // 10:30:15 -06:00 in the zone of the browser.
  const time = await page.evaluate(() =>
    new Intl.DateTimeFormat('en', { dateStyle: 'medium', timeStyle: 'short' }).format(new Date('2026-05-04T16:30:15Z')),
  )
  await expect(pictures.first()).toContainText(time)
  await expect(pictures.first()).toContainText('R. Quist')

  // Strokes lie over the photo, which stays as it is; what they are is kept beside it.
  const bytesBefore = await keptPhotos(page)
  const draw = pictures.first().getByRole('button', { name: 'Draw on it' })
  const dialog = page.getByRole('dialog', { name: 'Draw on the photo' })
  const button = (name: string) => dialog.getByRole('button', { name, exact: true })
  const strokes = image.locator('xpath=..').locator('svg')
  await draw.click()
  // Without a pointer that drags: marks are added and moved by buttons.
  await button('Add a circle').press('Enter')
  await button('Move left').press('Enter')
  await button('Larger').press('Enter')
  // By pointer, from the upper left corner to the middle.
  const pad = (await dialog.locator('.mark-up-pad').boundingBox())!
  await page.mouse.move(pad.x + 1, pad.y + 1)
  await page.mouse.down()
  await page.mouse.move(pad.x + pad.width / 2, pad.y + pad.height / 2, { steps: 4 })
  await page.mouse.up()
  await expectAccessible(page)
  await button('Keep the marks').click()
  await expect(dialog).toHaveCount(0)
  await expect(strokes).toHaveCount(1)
  await expect(pictures.getByRole('img', { name: 'marked by R. Quist' })).toHaveCount(1)
  const [arrow] = (await keptStrokes(page)) as [{ kind: string; points: number[][] }[]]
  // A circle is added where circles were chosen last, and so is what the pointer draws.
  expect(arrow.map(({ kind }) => kind)).toEqual(['circle', 'circle'])
  // The circle stands 6 pixels left of the middle of 120, a fortieth of 240.
  expect(arrow[0]!.points[0]).toEqual([0.45, 0.5])
  for (const [i, part] of [0, 0, 0.5, 0.5].entries())
    expect(Math.abs(arrow[1]!.points.flat()[i]! - part)).toBeLessThan(0.02)
  // Taken back and added to later, after a reload.
  await page.reload()
  await expect(strokes).toHaveCount(1)
  await draw.click()
  await button('Take back the last').click()
  await button('Add an arrow').click()
  await button('Keep the marks').click()
  await expect(strokes).toHaveCount(2)
  expect((await keptStrokes(page)).map((one) => one.map(({ kind }) => kind))).toEqual([
    ['circle', 'circle'],
    ['circle'],
    ['arrow'],
  ])
  await expect(pictures).toHaveCount(1)
  expect(await keptPhotos(page)).toEqual(bytesBefore)

  // The next reading names the photo.
  await length(page).fill('31')
  await save(page)
  await expect(past(page).first()).toContainText('Photos (1)')
  await expectAccessible(page)
})

test('a photo is shrunk to the size stated, unless its original is kept', { tag: '@phone' }, async ({ page }) => {
  const run = await addRun(page, 'Large photo')
  await open(page, '/walk/post-8/rail-height', run)
  const large = await page.evaluate(async () => {
    const canvas = document.createElement('canvas')
    canvas.width = 3200
    canvas.height = 1800
    canvas.getContext('2d')!.fillRect(0, 0, 1600, 1800)
    const blob = await new Promise<Blob>((resolve) => canvas.toBlob((made) => resolve(made!), 'image/png'))
    return [...new Uint8Array(await blob.arrayBuffer())]
  })
  const file = { name: 'large.png', mimeType: 'image/png', buffer: Buffer.from(large) }
  await page.getByText('Size and position').click()
  await expect(photosOf(page)).toContainText('1600 pixels along the long edge')
  await hand(page, file)
  const pictures = photosOf(page).getByRole('img')
  await expect(pictures).toHaveCount(1)
  const widthOf = (i: number) =>
    pictures.nth(i).evaluate(async (one: HTMLImageElement) => {
      await one.decode()
      return one.naturalWidth
    })
  expect(await widthOf(0)).toBe(1600)
  await page.getByLabel('Keep the original as it is').check()
  await hand(page, file)
  await expect(pictures).toHaveCount(2)
  expect(await widthOf(1)).toBe(3200)
})

test('a photo that the browser cannot read is refused by its name', { tag: '@phone' }, async ({ page }) => {
  await open(page, '/walk/post-8/rail-height')
  // The first box of a HEIC file: its length, `ftyp`, and the brand (ISO/IEC 23008-12).
  const heic = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic\0\0\0\0mif1heic')])
  await hand(page, { name: 'IMG_0001.HEIC', mimeType: 'image/heic', buffer: heic })
  await expect(photosOf(page).getByRole('alert')).toContainText('IMG_0001.HEIC is in the HEIC format')
  await hand(page, { name: 'note.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') })
  await expect(photosOf(page).getByRole('alert')).toContainText('note.jpg is not a picture')
})

test('where a photo was taken is kept only when the user allows it, with the accuracy that the device claims', {
  tag: '@phone',
}, async ({ page, context }) => {
  await context.grantPermissions(['geolocation'])
  await context.setGeolocation({ latitude: 43.12399, longitude: -89.54399, accuracy: 11.2 })
  const run = await addRun(page, 'Position')
  await open(page, '/walk/post-8/rail-height', run)
  // Its camera says 43.12345, -89.54321, which the device is some way off.
  const placed = { name: 'placed.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(withExif(await readFile(sideways))) }
  const take = (): Promise<void> => page.locator('.photos input[type=file][capture]').setInputFiles(placed)
  await take()
  const pictures = photosOf(page).getByRole('listitem')
  await expect(pictures).toHaveCount(1)
  await expect(pictures.first()).not.toContainText('43.123')
  await page.getByText('Size and position').click()
  await page.getByLabel('Keep where this device is').check()
  await take()
  await expect(pictures).toHaveCount(2)
  await expect(pictures.last()).toContainText('43.12399, -89.54399; the device says ±12 m')
  await expect(pictures.last()).toContainText('43.12345, -89.54321 by its camera')
  // And it stands upright.
  const upright = pictures.last().getByRole('img')
  await expect
    .poll(() => upright.evaluate((one: HTMLImageElement) => [one.naturalWidth, one.naturalHeight]))
    .toEqual([120, 240])
})

test('a finding closes by a reading that names it, with old and new side by side', { tag: '@both' }, async ({
  page,
}) => {
  await open(page, '/findings')
  await expect(page.locator('.finding')).toHaveCount(4)
  const plate = page.locator('.finding', { hasText: 'The bearing plate stands with its 5-in side up' })
  // What it is and what it must be are told apart, and its place and its requirement stand there once.
  await expect(plate.locator('dt')).toHaveText(['Found', 'Must be', 'To do'])
  await expect(plate.locator('dd')).toContainText(['3-in side up', 'The bearing plate stands', ''])
  await expect(plate.getByText('The bearing plate stands')).toHaveCount(1)
  await plate.getByRole('link', { name: 'Read it again' }).click()
  await expect(page.locator('.purpose')).toContainText('3-in side up')
  await page.getByLabel('Read by').fill('R. Quist')
  await page.getByRole('radio', { name: '5-in side up', exact: true }).check()
  await expectAccessible(page)
  await save(page)
  await expect(saved(page)).toContainText('5-in side up')
  await open(page, '/findings')
  const closed = page.locator('.finding-closed')
  await expect(closed).toHaveCount(1)
  await expect(closed.locator('.old-new > div').first()).toContainText('3-in side up')
  await expect(closed.locator('.old-new > div').last()).toContainText('5-in side up')
  await expect(closed.locator('.old-new > div').last()).toContainText('R. Quist')
  await expectAccessible(page)
})

async function drawSignature(page: Page): Promise<void> {
  const pad = page.getByRole('img', { name: 'Field for the signature, empty' })
  await pad.scrollIntoViewIfNeeded()
  const box = (await pad.boundingBox())!
  await page.mouse.move(box.x + box.width * 0.2, box.y + box.height * 0.6)
  await page.mouse.down()
  for (const x of [0.3, 0.45, 0.6, 0.8]) await page.mouse.move(box.x + box.width * x, box.y + box.height * (1 - x))
  await page.mouse.up()
  await expect(page.getByRole('img', { name: 'Field for the signature, signed' })).toBeVisible()
}

test('of standing work the ground is said to be closed by one touch, and stands among what is not proven', {
  tag: '@phone',
}, async ({ page }) => {
  const run = await addRun(page, 'Standing', { work: 'standing' })
  await open(page, '/sign-off', run)
  await expect(page.getByText(/hold points have no photo/)).toBeVisible()
  await open(page, '', run)
  const say = page.getByRole('button', { name: 'Closed ground: they cannot be seen' })
  await say.click()
  await expect(page.getByRole('alert')).toContainText('Say who is reading')
  await page.getByLabel('Read by').fill('R. Quist')
  await expectAccessible(page)
  await say.click()
  await expect(saved(page)).toContainText('could not be seen')
  await expect(say).toHaveCount(0)
  await open(page, '/sign-off', run)
  await expect(page.getByRole('button', { name: 'Sign this record' })).toBeVisible()
  await page.locator('.unproven summary').click()
  await expect(page.locator('.unproven')).toContainText('could not be seen')
})

test('a signature names the record by its hash, and stays when something is read later', { tag: '@both' }, async ({
  page,
}) => {
  await open(page, '/sign-off')
  await page.getByLabel('Name', { exact: true }).fill('J. Okafor')
  await page.getByRole('button', { name: 'Sign this record' }).click()
  await expect(page.getByRole('alert')).toContainText('Give name and role')
  await page.getByLabel('Role').fill('inspector')
  await page.getByRole('button', { name: 'Sign this record' }).click()
  await expect(page.getByRole('alert')).toContainText('Draw the signature')
  await drawSignature(page)
  await expectAccessible(page)
  const hash = (await page.locator('.sheet > .hash code').textContent())!
  expect(hash).toMatch(/^[0-9a-f]{64}$/)
  await page.getByRole('button', { name: 'Sign this record' }).click()
  const versions = page.locator('.version')
  await expect(versions).toHaveCount(1)
  await expect(versions.first()).toContainText('the record as it stands')
  await expect(versions.first()).toContainText(hash)
  await expect(versions.first()).toContainText('J. Okafor, inspector')
  await expectAccessible(page)

  await open(page, '/walk/post-12/rail-height')
  await page.getByLabel('Read by').fill('R. Quist')
  await length(page).fill('31')
  await save(page)
  await expect(saved(page)).toContainText('31 in')
  await open(page, '/sign-off')
  await expect(versions.first()).toContainText('1 reading since')
  await expect(versions.first()).toContainText(hash)
  expect(await page.locator('.sheet > .hash code').textContent()).not.toBe(hash)

  // Signed again, without a pointer: the name is typed.
  await page.getByLabel('Name', { exact: true }).fill('J. Okafor')
  await page.getByLabel('Role').fill('inspector')
  await page.getByLabel('Sign by typing the name instead of drawing').check()
  await page.getByRole('button', { name: 'Sign this record' }).press('Enter')
  await expect(versions).toHaveCount(2)
  await expect(versions.first()).toContainText('Version 2')
  await expect(versions.first()).toContainText('Signed by typing the name')
  await expect(versions.last()).toContainText(hash)
})

test('hold points without a photo block the signature, not the work', { tag: '@phone' }, async ({ page }) => {
  const run = await addRun(page, 'Holds')
  await open(page, '/sign-off', run)
  const blocked = page.locator('.trouble', { hasText: /(have|has) no photo/ })
  await expect(blocked).toBeVisible()
  await expect(page.getByRole('button', { name: 'Sign this record' })).toHaveCount(0)
  // How much is unproven is told above it, and all of it opens below, so that the form is no long scroll away.
  await expect(page.locator('.sheet').getByRole('link', { name: /^Not proven/ })).toBeVisible()
  await page.locator('.unproven summary').click()
  await expect(page.locator('.unproven')).toContainText('no reading')
  const count = await blocked.getByRole('link').count()
  expect(count).toBeGreaterThan(0)
  await expectAccessible(page)
  for (let left = count; left > 0; left--) {
    await expect(blocked.getByRole('link')).toHaveCount(left)
    await blocked.getByRole('link').first().click()
    await expect(photosOf(page)).toContainText('needed before it is signed')
    await hand(page, sideways)
    await expect(photosOf(page).getByRole('img')).toHaveCount(1)
    await open(page, '/sign-off', run)
  }
  await expect(page.getByRole('button', { name: 'Sign this record' })).toBeVisible()
  await expect(page.locator('.title-verdict')).toHaveText('not yet known')
  const top = async (part: string): Promise<number> => (await page.locator(part).boundingBox())!.y
  expect((await top('.sign-form')) - (await top('.record-verdict'))).toBeLessThan(844)
  expect(await top('.unproven')).toBeGreaterThan(await top('.sign-form'))
})

test('the day’s log asks for open ends, warns of marks and dates, and makes the daily report', {
  tag: '@both',
}, async ({ page }) => {
  const run = await addRun(page, 'Day')
  await open(page, '/day', run)
  await page.getByLabel('Day', { exact: true }).fill('2026-05-12')
  await expect(page.locator('.day-report')).toContainText('No log was written for this day')
  await page.getByRole('button', { name: 'Add a ticket' }).click()
  await page.getByLabel('Number of the ticket').fill('A-100')
  await page.getByLabel('Called on').fill('2026-05-01')
  await page.getByLabel('Valid from').fill('2026-05-04')
  await page.getByLabel('Valid through').fill('2026-05-11')
  await page.getByLabel('What is marked').fill('gas')
  // Post 3 stands at 12 ft 6 in: two spaces of 6 ft 3 in.
  await page.getByLabel(/^Along the rail/).fill('13\' 6"')
  await expectAccessible(page)
  await page.getByRole('button', { name: 'Save the ticket' }).click()
  const tickets = page.getByRole('region', { name: 'Utility-locate tickets' })
  await expect(tickets).toContainText('Post 3 stands 12 in from a mark: gas, ticket A-100')
  await expect(tickets).toContainText('2026-05-12 lies outside the dates of ticket A-100')

  await page.getByLabel('What was done').fill('Drove the first posts.')
  await page.getByLabel(/^Posts driven, of/).fill('1-4')
  await page.getByLabel(/^Panels hung, of/).fill('1-99')
  await page.getByLabel('Crew, with commas between').fill('T. Alvarez, M. Reyes')
  const submit = page.getByRole('button', { name: /^Save the log/ })
  await submit.click()
  await expect(page.getByRole('alert')).toContainText('“1-99” is no number')
  await page.getByLabel(/^Panels hung, of/).fill('1')
  await submit.click()
  await expect(page.getByRole('alert')).toContainText('Say how the open ends were left')
  await page.getByRole('radio', { name: 'Open, and protected' }).check()
  await page.getByLabel('Where, and how it is protected').fill('Post 4, drums')
  await submit.click()
  const report = page.getByRole('article')
  await expect(report).toContainText('Drove the first posts.')
  await expect(report).toContainText('T. Alvarez, M. Reyes')
  await expect(report).toContainText('Posts driven1-4')
  await expect(report).toContainText('Post 3 stands 12 in from a mark')
  await expect(report).toContainText('outside the dates of ticket A-100')
  await expect(report).toContainText('Open, and protected')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // The mark is also told where the post is read, and to whoever hears the strip.
  await open(page, '/walk/post-3/rail-height', run)
  await expect(page.locator('.warning')).toContainText('Within 2 ft of a mark: gas')
  await open(page, '/layout', run)
  await expect(page.locator('g[data-place="post-3"][role="button"]')).toHaveAttribute(
    'aria-label',
    /Within 2 ft of a mark: gas/,
  )

  // On paper there is the report and nothing else.
  await open(page, '/day', run)
  await page.getByLabel('Day', { exact: true }).fill('2026-05-12')
  await expect(report).toContainText('Drove the first posts.')
  await page.emulateMedia({ media: 'print' })
  await expect(report).toBeVisible()
  await expect(page.getByLabel('What was done')).toBeHidden()
  await expect(page.locator('.strip')).toBeHidden()
})

test('the page is in Spanish, and lit for sun or night, when that is chosen', { tag: '@phone' }, async ({ page }) => {
  await open(page)
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  await expect(page.getByRole('complementary', { name: 'Este dispositivo' })).toBeVisible()
  await page.getByLabel('Luz').selectOption('night')
  await expect(page.locator('body')).toHaveCSS('background-color', 'rgb(20, 24, 28)')
  await page.getByRole('button', { name: 'Mostrar la franja' }).click()
  await expect(page.locator('g[data-place="post-8"][role="button"]')).toHaveAttribute('aria-label', /^poste 8: cumple/)
  await open(page, '/walk/post-8/rail-height')
  await expect(page.locator('#must')).toHaveText(/^La parte superior de la baranda está/)
  await page.getByLabel(/^Longitud/).fill('30 1/8')
  await expect(page.locator('.live')).toContainText('demasiado justo')
  await expect(page.locator('.second')).toContainText('cumple de 30 1/4 in a 31 3/4 in')
  await open(page)
  await page.getByLabel('Luz').selectOption('sun')
  await expect(page.locator('body')).toHaveCSS('background-color', 'rgb(255, 255, 255)')
  await expectAccessible(page)
})

test('what is pressed on the walk is 48 pixels and more', { tag: '@both' }, async ({ page }) => {
  for (const path of ['/walk/post-8/rail-height', '/walk/post-8/rail-bolt', '']) {
    await open(page, path)
    await page.locator('.sheet').waitFor()
    const small = await page
      .locator('.sheet')
      .evaluate((sheet) =>
        [...sheet.querySelectorAll<HTMLElement>('a, button, select, summary, .choice')]
          .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 47.5)
          .map((one) => one.outerHTML),
      )
    expect(small).toEqual([])
  }
})

test('a run is read, rechecked and signed by keyboard alone', async ({ page }) => {
  await page.goto(server.address)
  await page.getByRole('link', { name: /Alder Creek/ }).press('Enter')
  const parts = page.getByRole('navigation', { name: 'Parts of this run' })
  await parts.getByRole('link', { name: /^Findings/ }).press('Enter')
  const stub = page.locator('.finding', { hasText: 'The lower post (stub) stands at most 4 in above finish grade.' })
  await stub.getByRole('link', { name: 'Read it again' }).press('Enter')
  // Whoever comes here finds the field under their hands.
  await expect(length(page)).toBeFocused()
  await page.keyboard.type('3 1/2')
  await page.keyboard.press('Enter')
  await expect(page.getByLabel('Read by')).toBeFocused()
  await page.keyboard.type('R. Quist')
  await page.keyboard.press('Enter')
  await expect(saved(page)).toContainText('3 1/2 in')
  const list = page.getByRole('link', { name: 'List', exact: true })
  if (await list.isVisible()) await list.press('Enter')
  await page.getByRole('link', { name: 'Sign-off' }).press('Enter')
  await page.getByLabel('Name', { exact: true }).focus()
  await page.keyboard.press('Control+A')
  await page.keyboard.type('J. Okafor')
  await page.keyboard.press('Tab')
  await page.keyboard.type('inspector')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Tab')
  await page.keyboard.press('Space')
  await page.keyboard.press('Tab')
  await expect(page.getByRole('button', { name: 'Sign this record' })).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.locator('.version').first()).toContainText('the record as it stands')
})
