import { readFile } from 'node:fs/promises'
import { expect, type Page, test } from '@playwright/test'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { serverOfFile } from './server-of-file.ts'

test.use({ serviceWorkers: 'block' })

const server = serverOfFile()

test.beforeEach(async ({ page }) => {
  await page.goto(`${server.address}/need`)
  await expect(page.locator('.plan svg')).toBeVisible()
})

const sum = (page: Page, which: 'approach' | 'departure' | 'installed') => page.locator(`[data-sum="${which}"] dd`)
const field = (page: Page, place: string) => page.locator(`#field-${place.replaceAll('.', '-')}`)
const handle = (page: Page, place: string) => page.locator(`[data-handle="${place}"]`)

/** Opens a part of the form; on a wide screen most stand open. */
async function openPart(page: Page, title: string): Promise<void> {
  const part = page.locator('details.form-section', { has: page.getByRole('heading', { name: title, exact: true }) })
  if ((await part.getAttribute('open')) === null) await part.locator('summary').click()
}

interface Point {
  readonly x: number
  readonly y: number
}

/** Where the middles of handles are on the screen, when the last of them is in view. */
async function middlesOf(page: Page, ...places: string[]): Promise<Point[]> {
  await handle(page, places.at(-1)!).scrollIntoViewIfNeeded()
  const boxes = await Promise.all(places.map((place) => handle(page, place).boundingBox()))
  return boxes.map((box) => ({ x: box!.x + box!.width / 2, y: box!.y + box!.height / 2 }))
}

async function show(page: Page, what: 'The whole need' | 'Around the hazards'): Promise<void> {
  await page.getByLabel('Shown').selectOption(what)
  await expect(handle(page, 'flare')).toHaveCount(what === 'The whole need' ? 1 : 0)
}

/** The site as it is kept has this text in it: it is kept once what was changed has been drawn. */
const expectKept = (page: Page, text: string): Promise<void> =>
  expect.poll(() => page.evaluate(() => localStorage.getItem('lapwise/site'))).toContain(text)

/** It breaks no rule, and nothing hangs over its side. */
async function expectSound(page: Page): Promise<void> {
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)
}

/**
 * The handbook's constructed case P1, arithmetic by hand: parallel barrier, L_A 30 ft, L_2 10 ft, L_R 250 ft (60 mi/h,
 * 5,000 to 10,000 vehicles a day), X = (30 - 10) / (30 / 250) = 166.67 ft.
 */
test('numbers changed by hand change the need: the constructed case P1', { tag: '@both' }, async ({ page }) => {
  await page.getByLabel('Far side, from the edge').fill('30')
  await page.getByLabel('Barrier offset').fill('10')
  await page.getByLabel('The barrier is flared').uncheck()
  await expect(sum(page, 'approach')).toHaveText('166.67 ft')
  await expect(page.locator('.site-need')).toContainText('RDG 2011 Table 5-10(b), 60 mi/h, ADT 5,000 to 10,000')
  await expect(page.locator('.site-need').getByText('unconfirmed').first()).toBeVisible()
  await expect(page.locator('.plan desc')).toContainText('the need ends 166.67 ft from culvert headwall')

  // P5: the same place by the older edition, L_R 425 ft (over 6,000 a day): 20 / (30 / 425) = 283.33 ft.
  await openPart(page, 'Site and tables')
  await page.getByLabel('Edition of the Roadside Design Guide').selectOption('1996, 2002 or 2006')
  await expect(sum(page, 'approach')).toHaveText('283.33 ft')

  // The site being worked on is kept.
  await expectKept(page, 'rdg-2006')
  await page.reload()
  await expect(sum(page, 'approach')).toHaveText('283.33 ft')
  await expect(page.getByLabel('Barrier offset')).toHaveValue('10')
})

/**
 * By hand, with the flared formula X = (L_A + (b/a) L_1 - L_2) / (b/a + L_A / L_R), 15:1, L_1 25 ft, L_2 9 ft,
 * L_R 250 ft: L_A 26 ft gives 18.6667 / 0.170667 = 109.38 ft, 31 ft gives 23.6667 / 0.190667 = 124.13 ft.
 */
for (const shown of ['The whole need', 'Around the hazards'] as const)
  test(`a corner that is dragged takes field, need and plan along: ${shown}`, { tag: '@both' }, async ({ page }) => {
    await expect(sum(page, 'approach')).toHaveText('109.38 ft')
    await show(page, shown)
    const [near, far] = (await middlesOf(page, 'hazard-1-near-from', 'hazard-1-far-from')) as [Point, Point]
    const fiveFeet = (far.y - near.y) / 2
    await page.mouse.move(far.x, far.y)
    await page.mouse.down()
    await page.mouse.move(far.x, far.y + fiveFeet / 2, { steps: 3 })
    await expect(sum(page, 'approach')).not.toHaveText('109.38 ft')
    await page.mouse.move(far.x, far.y + fiveFeet, { steps: 3 })
    // It is still held; the frame that shows the last move may be yet to come.
    const offHand = async (): Promise<number> => {
      const dragged = await handle(page, 'hazard-1-far-from').boundingBox()
      return Math.abs(dragged!.y + dragged!.height / 2 - far.y - fiveFeet)
    }
    await expect.poll(offHand).toBeLessThan(2)
    await page.mouse.up()
    await expect(field(page, 'hazards-0-far')).toHaveValue('31')
    await expect(field(page, 'hazards-0-from')).toHaveValue('12+00')
    await expect(sum(page, 'approach')).toHaveText('124.13 ft')
    await expect(page.locator('.site-need')).toContainText('31 ft to its far side')
  })

/**
 * What the eye sees while a point is dragged, looked at in every frame: the point under the hand, and how far the picture
 * and a corner that is not dragged came off their places. The scroll position is not asked: it may change with what stands
 * above the screen while nothing on it moves, and stay while the picture is pushed away.
 */
for (const holds of ['holds what is seen in place', 'holds nothing in place'])
  for (const [width, isTouched] of [
    [360, true],
    [390, true],
    [412, true],
    [800, false],
    [1000, false],
  ] as const)
    test(`the offset of the barrier is dragged and the picture stays where it is: ${width} px, a browser that ${holds}`, {
      // A finger drags on a touch screen, a mouse on another.
      tag: isTouched ? ['@phone'] : [],
    }, async ({ page }) => {
      await page.setViewportSize({ width, height: 844 })
      if (holds === 'holds nothing in place')
        await page.evaluate(() => document.documentElement.style.setProperty('overflow-anchor', 'none'))
      await show(page, 'Around the hazards')
      await page.evaluate(() => document.querySelector('.site-plan')!.scrollIntoView({ block: 'end' }))
      const [near, offset] = (await middlesOf(page, 'hazard-1-near-from', 'barrier-offset')) as [Point, Point]
      const perFoot = (near.y - offset.y) / 7
      const hand = isTouched ? await finger(page, offset) : mouse(page, offset)
      await watch(page, '.plan svg', '[data-handle="hazard-1-near-from"]')
      await hand.takes()
      // Up to the road and on, as far as a finger goes that scrolls the page, and back.
      for (const feet of [-10, -30, -60, -30, 0, 1, 2, 3]) await hand.goesTo(offset.y + feet * perFoot)
      await expect(page.getByLabel('Barrier offset')).toHaveValue('12')
      // It is still held; the frame that shows the last move may be yet to come.
      const offHand = async (): Promise<number> => {
        const [held] = (await middlesOf(page, 'barrier-offset')) as [Point]
        return Math.abs(held.y - offset.y - 3 * perFoot)
      }
      await expect.poll(offHand).toBeLessThan(2)
      await hand.letsGo()
      await expect(sum(page, 'approach')).toHaveText('91.8 ft')
      const { strayed, frames } = await page.evaluate(() => (window as unknown as Watched).watched)
      expect(frames).toBeGreaterThan(8)
      // A line more or less above the picture is 20 px; less than 2 is the rounding of the drawing.
      expect(strayed).toBeLessThan(2)
    })

interface Hand {
  takes(): Promise<unknown>
  goesTo(y: number): Promise<unknown>
  letsGo(): Promise<unknown>
}

async function finger(page: Page, { x, y }: Point): Promise<Hand> {
  const devTools = await page.context().newCDPSession(page)
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: Point[]) =>
    devTools.send('Input.dispatchTouchEvent', { type, touchPoints })
  return {
    takes: () => touch('touchStart', [{ x, y }]),
    goesTo: (to) => touch('touchMove', [{ x, y: to }]),
    letsGo: () => touch('touchEnd', []),
  }
}

const mouse = (page: Page, { x, y }: Point): Hand => ({
  takes: async () => {
    await page.mouse.move(x, y)
    await page.mouse.down()
  },
  goesTo: (to) => page.mouse.move(x, to),
  letsGo: () => page.mouse.up(),
})

interface Watched {
  watched: { strayed: number; frames: number }
}

/** From now on notes of these elements how far the one that strays most comes off its place, px. */
async function watch(page: Page, ...elements: string[]): Promise<void> {
  await page.evaluate((elements) => {
    const top = (element: string): number => document.querySelector(element)!.getBoundingClientRect().top
    const before = elements.map(top)
    const watched = { strayed: 0, frames: 0 }
    Object.assign(window, { watched })
    const look = (): void => {
      watched.frames += 1
      watched.strayed = Math.max(watched.strayed, ...elements.map((element, i) => Math.abs(top(element) - before[i]!)))
      requestAnimationFrame(look)
    }
    requestAnimationFrame(look)
  }, elements)
}

test('the arrow keys do what the hand does', async ({ page }) => {
  const corner = handle(page, 'hazard-1-far-from')
  await corner.focus()
  await page.keyboard.press('ArrowDown')
  await expect(corner).toHaveAttribute('aria-valuetext', 'station 12+00, 27 ft from the edge')
  await expect(field(page, 'hazards-0-far')).toHaveValue('27')
  // 19.6667 / 0.174667 by the formula above.
  await expect(sum(page, 'approach')).toHaveText('112.6 ft')
  await page.keyboard.press('Shift+ArrowLeft')
  await expect(field(page, 'hazards-0-from')).toHaveValue('11+90')
  await handle(page, 'flare').focus()
  await page.keyboard.press('ArrowDown')
  await expect(page.getByLabel('Flare rate')).toHaveValue('14')
  await handle(page, 'flare-start').focus()
  await page.keyboard.press('ArrowLeft')
  await page.keyboard.press('ArrowLeft')
  await expect(page.getByLabel('Parallel length before the flare')).toHaveValue('27')
  await expect(handle(page, 'flare-start')).toBeFocused()
})

test('a number that is none is named at its field, is kept, and nothing is computed from it', async ({ page }) => {
  const near = field(page, 'hazards-0-near')
  await near.fill('1O')
  await expect(near).toHaveAttribute('aria-describedby', 'field-hazards-0-near-wrong')
  await expect(page.locator('#field-hazards-0-near-wrong')).toHaveText('Expected a number; found "1O".')
  await expect(near).toHaveAttribute('aria-invalid', 'true')
  await expect(page.locator('.site-sum')).toHaveText('Not computed')
  await expect(page.locator('.site-need')).toHaveCount(0)
  await expectSound(page)
  await expectKept(page, '1O')
  await page.reload()
  await expect(near).toHaveValue('1O')
  await near.fill('8')
  await expect(page.locator('#field-barrier-offset-wrong')).toContainText(
    'a barrier in front of "culvert headwall", at most 8 ft',
  )
  await near.fill('12.')
  await expect(near).toHaveValue('12.')
  await expect(sum(page, 'approach')).toHaveText('109.38 ft')
  // Above the table: the need is refused at the speed, and the plan stays.
  await openPart(page, 'Road and traffic')
  await page.getByLabel('Design speed').fill('95')
  await expect(page.locator('#field-road-speed-wrong')).toContainText('at most 80 mi/h')
  await expect(page.locator('.plan svg')).toBeVisible()
})

test('hardware that is not right says so by word and shape, with limit, value, source and smallest change', async ({
  page,
}) => {
  const fails = page.locator('.site-check', { hasText: 'clear area behind the gating end, length' })
  await expect(fails.locator('.verdict-fails')).toHaveText('fails')
  await expect(fails).toContainText('at least 75 ft 0 in')
  await expect(fails).toContainText('60 ft 0 in')
  await expect(fails).toContainText('Smallest change')
  await openPart(page, 'Ground at the terminal and behind the posts')
  await page.getByLabel('Clear area behind the terminal, length').fill('')
  await expect(fails.locator('.verdict-unread')).toHaveText('unread')
  await page.getByLabel('Clear area behind the terminal, length').fill('75')
  await expect(page.locator('[data-sum="checks"] .verdict-fails')).toHaveText('fails 0')
})

test('hazards are added and removed, units change with their tables, and a sweeping change can be put back', async ({
  page,
}) => {
  await page.getByRole('button', { name: 'Add a hazard' }).click()
  await expect(field(page, 'hazards-1-from')).toHaveValue('12+44')
  await page.getByRole('button', { name: 'Remove culvert headwall' }).click()
  await expect(field(page, 'hazards-0-name')).toHaveValue('hazard 2')
  await page.getByRole('button', { name: 'Put it back as it was' }).click()
  await expect(field(page, 'hazards-1-name')).toHaveValue('hazard 2')

  await openPart(page, 'Site and tables')
  await page.getByLabel('Units').selectOption('m, km/h')
  await expect(page.locator('.form-swept')).toContainText('60 mi/h became 100 km/h')
  await expect(field(page, 'barrier-offset')).toHaveValue('2.74')
  await expect(page.locator('.site-need')).toContainText('RDG 2011 Table 5-10(a), 100 km/h')
  await page.getByRole('button', { name: 'Put it back as it was' }).click()
  await expect(field(page, 'barrier-offset')).toHaveValue('9')
})

test('the cross section follows its slider', async ({ page }) => {
  await expect(page.locator('.section desc')).toContainText('station 12+12')
  const slider = page.getByLabel('Station of the section')
  await slider.focus()
  await page.keyboard.press('ArrowRight')
  await expect(page.locator('.section desc')).toContainText('station 12+13')
  await expect(slider).toHaveAttribute('aria-valuetext', '12+13')
})

test('a site is saved as a file and opened from one, or every problem of the file is listed', async ({ page }) => {
  await page.getByLabel('Barrier offset').fill('11.5')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the site file' }).click(),
  ])
  const saved = JSON.parse(await readFile(await download.path(), 'utf8'))
  expect(saved).toMatchObject({ format: 'lapwise-site/1', barrier: { offset: 11.5 } })

  await page.getByText('Site file and example').click()
  const open = (content: unknown) =>
    page.getByLabel('Open a site file').setInputFiles({
      name: 'river.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(content)),
    })
  await open({ ...saved, road: { ...saved.road, laneWidth: -12 } })
  await expect(page.getByRole('alert')).toContainText('river.json was not opened.')
  await expect(page.getByRole('alert')).toContainText('road.laneWidth: expected a value of at least 1, found -12')
  await expect(page.getByLabel('Barrier offset')).toHaveValue('11.5')
  // The least that a file says; its river goes on beyond the clear zone.
  await open({
    format: 'lapwise-site/1',
    units: 'us',
    road: { speed: 60, adt: 6400, traffic: 'one-way', lanes: 2, laneWidth: 12, shoulderWidth: 8 },
    clearZone: 30,
    hazards: [{ name: 'river', from: 0, to: 100, near: 20, beyondClearZone: true }],
    barrier: { offset: 10 },
  })
  await expect(sum(page, 'approach')).toHaveText('166.67 ft')
  await expect(sum(page, 'departure')).toHaveText('no opposing traffic')
  await expect(sum(page, 'installed')).toHaveText('hardware not chosen')
  await expect(page.getByRole('button', { name: 'Make the run' })).toHaveAttribute('aria-disabled', 'true')
  await page.getByRole('button', { name: 'Put it back as it was' }).click()
  await expect(page.getByLabel('Barrier offset')).toHaveValue('11.5')
})

test('the run that the need asks for is made, and opens with its layout', async ({ page }, { project }) => {
  await openPart(page, 'Site and tables')
  await page.getByLabel('Name of the site').fill(`Mill Brook, ${project.name}`)
  const installed = await sum(page, 'installed').textContent()
  const need = await sum(page, 'approach').textContent()
  await page.getByRole('button', { name: 'Make the run' }).click()
  // The hardware does not fit the example: that is said before a run is made of it.
  await expect(page.getByRole('alert')).toContainText('clear area behind the gating end, length')
  await page.getByRole('button', { name: 'Make it all the same' }).click()
  await expect(page.getByRole('heading', { name: `Mill Brook, ${project.name}` })).toBeVisible()
  await expect(page).toHaveURL(/\/runs\/[^/]+\/layout$/)
  const pieces = page.locator('.pieces')
  await expect(pieces.getByRole('rowheader', { name: 'post 1', exact: true })).toBeVisible()
  // The rail from end to end is as long as the need said; what lies farther along is folded.
  for (const folded of await page.locator('details:not([open]) > summary', { hasText: / to / }).all())
    await folded.click()
  const lengths = await pieces
    .locator('tr', { hasText: /^.*panel \d+/ })
    .locator('td:last-child')
    .allTextContents()
  const feet = lengths.reduce((total, text) => {
    const [, whole = '0', inches = '0', over = '0', under = '1'] =
      /^(\d+) ft (\d+)(?: (\d+)\/(\d+))? in/.exec(text) ?? []
    return total + Number(whole) + (Number(inches) + Number(over) / Number(under)) / 12
  }, 0)
  expect(`${Number(feet.toFixed(2))} ft`).toBe(installed)
  // Site, need and checks stay with the run.
  await page.locator('summary', { hasText: 'The site it was made of' }).click()
  const madeOf = page.locator('.made-of')
  await expect(madeOf.locator('.site-facts-most').first()).toHaveText(need ?? '')
  const failing = madeOf.locator('.site-check', { hasText: 'clear area behind the gating end, length' })
  await expect(failing).toContainText('60 ft 0 in')
  await expect(madeOf.getByRole('link', { name: 'Save the site file' })).toHaveAttribute(
    'href',
    /Alder%20Creek|Mill%20Brook/,
  )
  // What failed is a finding, until somebody sets it aside by name.
  const findings = page.url().replace(/layout$/, 'findings')
  await page.goto(findings)
  const finding = page.locator('.finding', { hasText: 'as the site had it when the run was made' })
  await expect(finding).toHaveCount(1)
  // Somebody sees to it by a day, in the name of who says so, which is asked for once.
  await finding.locator('.assigned summary').click()
  await finding.getByLabel('Who sees to it').fill('T. Alvarez')
  await finding.getByLabel('By when').fill('2026-06-01')
  await finding.getByRole('button', { name: 'Keep who and when' }).click()
  await finding.getByLabel('Read by').fill('R. Quist')
  await finding.getByRole('button', { name: 'Keep who and when' }).click()
  await expect(finding.locator('.assigned summary')).toContainText(/T[.] Alvarez, .*2026/)
  await page.reload()
  await expect(finding.locator('.assigned summary')).toContainText(/T[.] Alvarez, .*2026/)
  await finding.getByRole('link', { name: 'Look at it, or set it aside' }).click()
  await page.getByRole('button', { name: 'Set it aside, because' }).click()
  await page.locator('.because input').fill('cleared on 4 May, measured by the county')
  await expect(page.locator('.entry')).toContainText('set aside by R. Quist')
  await page.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByText(/Saved on this device/).first()).toBeVisible()
  await page.goto(findings)
  await expect(page.getByRole('heading', { name: /Findings/ }).first()).toBeVisible()
  await expect(finding).toHaveCount(0)
})

test('the page is accessible at every width, and the list of runs leads to it without having fetched it', async ({
  page,
}) => {
  await expectSound(page)
  await show(page, 'Around the hazards')
  await handle(page, 'barrier-offset').focus()
  await expectSound(page)
  await page.emulateMedia({ colorScheme: 'dark' })
  for (const width of [360, 768, 1024, 1440]) {
    await page.setViewportSize({ width, height: 800 })
    await expectSound(page)
  }
  await page.setViewportSize({ width: 360, height: 800 })
  await page.getByLabel('Language').selectOption('Español')
  await expect(page.getByRole('heading', { name: 'Cuánta barrera, y dónde' })).toBeVisible()
  await expect(page.locator('[data-sum="approach"] dt')).toHaveText('Entrada')
  await expectSound(page)
  await page.getByLabel('Idioma').selectOption('English')
  const fetched: string[] = []
  page.on('request', (request) => fetched.push(request.url()))
  await page.goto(server.address)
  await expect(page.getByRole('link', { name: 'Alder Creek culvert', exact: false }).first()).toBeVisible()
  expect(fetched.filter((address) => address.includes('site-view'))).toEqual([])
  await page.getByRole('link', { name: 'How much barrier' }).click()
  await expect(page.getByRole('heading', { name: 'How much barrier, and where' })).toBeVisible()
  await expect(page.getByText('This is not a design and not a crash test.')).toBeVisible()
})
