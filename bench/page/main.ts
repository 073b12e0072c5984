import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { type Browser, type BrowserContext, type CDPSession, chromium, type Page } from '@playwright/test'
import { findBrowser } from '../../test/acceptance/web/find-browser.ts'
import { openPage } from '../../test/acceptance/web/offline-device.ts'
import { dropFolder, startServerProcess, temporaryFolder } from '../../test/acceptance/web/serve.ts'
import { type BenchRow, figure, median, nineOfTen } from '../measure.ts'
import { benchFirstVerdict } from './first-verdict.ts'
import { benchLighthouse } from './lighthouse.ts'
import { addLongRun, type LongRun } from './long-run.ts'
import { benchDeviceList } from './run-list.ts'

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const

/** How many times slower than this machine the phone is taken to be. */
const slower = 6

/**
 * How large and how quick the built page is, in the browser that the tests use, against a server as a person starts it.
 * Each part's rows as soon as it is done: the whole takes minutes.
 */
export async function* benchPage(): AsyncGenerator<readonly BenchRow[]> {
  const found = await findBrowser()
  const folder = await temporaryFolder()
  const server = await startServerProcess(folder)
  const browser = await chromium.launch({ executablePath: found.executablePath, args: [...found.args] })
  try {
    const { runs } = (await (await fetch(`${server.address}/api/runs`)).json()) as { runs: readonly { id: string }[] }
    const demo = runs[0]!.id
    const long = await addLongRun(server.address, 500, 2000)
    const longest = await addLongRun(server.address, 4300, 2)
    const paths = { list: '/', run: `/runs/${demo}`, site: '/need' }
    yield await firstLoads(browser, server.address, { ...paths, entry: `/runs/${demo}/walk/post-8/rail-height` })
    yield await opening(browser, server.address, long)
    yield [await typing(browser, server.address, long, keypad)]
    yield [await typing(browser, server.address, long, keyboard)]
    yield await walking(browser, server.address, long)
    yield [await wholeWalk(browser, server.address, longest)]
    yield [await checking(browser, server.address)]
    yield await listing(browser, server.address)
    // One browser at a time: two share the processor.
    await browser.close()
    yield await benchLighthouse(server.address, paths, found)
  } finally {
    await browser.close()
    await server.stop()
    await dropFolder(folder)
  }
}

/** What stands, checked on a phone that has the page. */
async function checking(browser: Browser, address: string): Promise<BenchRow> {
  const context = await browser.newContext(phone)
  const page = await context.newPage()
  await openPage(page, address)
  const row = await benchFirstVerdict(page, address)
  await context.close()
  return row
}

/** The list on a device that has many runs. */
async function listing(browser: Browser, address: string): Promise<readonly BenchRow[]> {
  const context = await browser.newContext(phone)
  const page = await context.newPage()
  await openPage(page, address)
  await page.locator('.run-link').first().waitFor()
  const rows = await benchDeviceList(page, address)
  await context.close()
  return rows
}

const built = fileURLToPath(new URL('../../dist/web/', import.meta.url))

interface FirstPaths {
  readonly list: string
  readonly run: string
  readonly entry: string
  readonly site: string
}

/** What a first visit fetches before the page can be used, packed as gzip does by itself. */
async function firstLoads(browser: Browser, address: string, paths: FirstPaths): Promise<readonly BenchRow[]> {
  const visits = [
    ['the list of runs', paths.list, '.run-link', ''],
    ['a run', paths.run, '.walk-list summary', 'under 150 kB'],
    ['a run, at one of its requirements', paths.entry, '.figure svg', 'under 150 kB'],
    ['a site', paths.site, '.picture svg', ''],
  ] as const
  const rows: BenchRow[] = []
  for (const [name, path, usable, aim] of visits) {
    const context = await browser.newContext({ ...phone, serviceWorkers: 'block' })
    const page = await context.newPage()
    const files = { script: new Set<string>(), stylesheet: new Set<string>() }
    page.on('request', (request) => {
      const kind = request.resourceType()
      if (kind === 'script' || kind === 'stylesheet') files[kind].add(new URL(request.url()).pathname.slice(1))
    })
    await page.goto(address + path)
    await page.locator(usable).first().waitFor()
    const [script, style] = [await packed(files.script), await packed(files.stylesheet)]
    await context.close()
    rows.push({
      what: `first load of ${name}: script as gzip (${files.script.size} files; style ${figure(style)} kB)`,
      figure: `${figure(script)} kB`,
      aim,
    })
  }
  return rows
}

/** Size of built files as gzip packs them, kB of 1000 bytes. */
async function packed(files: ReadonlySet<string>): Promise<number> {
  const sizes = await Promise.all([...files].map(async (file) => gzipSync(await readFile(built + file)).length))
  return sizes.reduce((sum, size) => sum + size, 0) / 1000
}

/** A context on whose device everything is. */
async function readyContext(browser: Browser, address: string): Promise<readonly [BrowserContext, Page]> {
  const context = await browser.newContext(phone)
  const page = await context.newPage()
  await openPage(page, address)
  await page.locator('.run-link').nth(1).waitFor()
  await page.locator('.device-state span').first().waitFor()
  return [context, page]
}

/** Of the page: resolves once the walk and the strip of a run are there and the frame with them is on screen. */
const whenDrawn = `new Promise((resolve) => {
  const look = () => {
    if (document.querySelector('.walk-list summary') === null || document.querySelector('.strip svg') === null) return requestAnimationFrame(look)
    requestAnimationFrame(() => setTimeout(() => resolve(performance.now())))
  }
  look()
})`

/** The whole list of the walk of a run of some 500 posts, from its first place to its last. */
async function wholeWalk(browser: Browser, address: string, run: LongRun): Promise<BenchRow> {
  const times = 5
  const [context, page] = await readyContext(browser, address)
  const waits: number[] = []
  for (let i = 0; i < times; i++) {
    await page.goto(`${address}/runs/${run.id}/layout`)
    await page.locator('table.pieces').waitFor()
    waits.push(await page.evaluate<number>(walkAndTime))
  }
  const places = await page.locator('.walk-list details').count()
  await context.close()
  return {
    what: `list of the walk drawn whole: ${figure(run.requirements.length)} requirements at ${figure(places)} places, median of ${times}`,
    figure: `${figure(median(waits))} ms (worst ${figure(Math.max(...waits))})`,
    aim: 'under 1000 ms',
  }
}

/** Of the page: goes to the walk, and tells how long it takes until the frame with all of its places is on screen. */
const walkAndTime = `new Promise((resolve) => {
  const start = performance.now()
  document.querySelector('.panes a').click()
  const look = () => {
    if (document.querySelector('.walk-list[aria-busy=false]') === null) return requestAnimationFrame(look)
    requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - start)))
  }
  look()
})`

const tapAndTime = (link: string): string => `(() => {
  const start = performance.now()
  document.querySelector('${link}').click()
  return ${whenDrawn}.then((end) => end - start)
})()`

async function opening(browser: Browser, address: string, run: LongRun): Promise<readonly BenchRow[]> {
  const times = 9
  const [context, page] = await readyContext(browser, address)
  const fromList: number[] = []
  const fromNothing: number[] = []
  for (let i = 0; i < times; i++) {
    await page.goto(address)
    const link = `.run-link[href$="${run.id}"]`
    await page.locator(link).waitFor()
    await page.waitForTimeout(500)
    fromList.push(await page.evaluate<number>(tapAndTime(link)))
    await page.goto('about:blank')
    await page.goto(`${address}/runs/${run.id}`, { waitUntil: 'commit' })
    fromNothing.push(await page.evaluate<number>(whenDrawn))
  }
  await context.close()
  const what = `${figure(run.requirements.length)} requirements and ${figure(run.readings)} readings`
  return [
    {
      what: `a run of ${what} opened from the list, median of ${times}`,
      figure: `${figure(median(fromList))} ms (worst ${figure(Math.max(...fromList))})`,
      aim: 'under 300 ms',
    },
    {
      what: `the same by its address, in a browser that has the page, median of ${times}`,
      figure: `${figure(median(fromNothing))} ms (worst ${figure(Math.max(...fromNothing))})`,
      aim: '',
    },
  ]
}

/** Makes the page's processor `slower`; what comes back tells the browser more than the page can. */
async function slowDown(page: Page): Promise<CDPSession> {
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slower })
  return devtools
}

interface Keys {
  readonly of: string
  /** What the page hears of a key. */
  readonly event: 'keydown' | 'click'
  /** A length, and then nothing again. */
  readonly pressed: readonly string[]
  press(page: Page, devtools: CDPSession, key: string): Promise<void>
}

/** How long a finger rests on a key, milliseconds; as people's do (common practice): what touching costs the page is over when it lifts. */
const rest = 80

const erased = (text: readonly string[], erase: string): readonly string[] => [...text, ...text.map(() => erase)]

const keyboard: Keys = {
  of: 'a keyboard',
  event: 'keydown',
  pressed: erased(['3', '1', ' ', '1', '/', '8', '"'], 'Backspace'),
  press: (page, _, key) => page.keyboard.press(key),
}

const keypad: Keys = {
  of: "the page's keypad",
  event: 'click',
  pressed: erased(['3', '1', '⅛', '.', '0', '/', '8'], 'Erase the last character'),
  // Bare touches: to be sure of what it hits, a locator's own tap would work in the page while the time runs.
  press: async (page, devtools, key) => {
    const { x, y, width, height } = (await page
      .locator('.keypad')
      .getByRole('button', { name: key, exact: true })
      .boundingBox())!
    await page.waitForTimeout(100)
    const touchPoints = [{ x: x + width / 2, y: y + height / 2 }]
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints })
    await page.waitForTimeout(rest)
    await devtools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
  },
}

/** Of the page: keeps for each key how long it took until the frame with its verdict was on screen. */
const watchKeys = (event: Keys['event']): string => `
  window.keyTimes = []
  document.addEventListener('${event}', ({ timeStamp }) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel()
      channel.port1.onmessage = () => window.keyTimes.push(performance.now() - timeStamp)
      channel.port2.postMessage(0)
    })
  }, true)
`

async function typing(browser: Browser, address: string, run: LongRun, keys: Keys): Promise<BenchRow> {
  const [context, page] = await readyContext(browser, address)
  await page.goto(`${address}/runs/${run.id}/walk/post-20/rail-height`)
  const field = page.getByLabel(/^Length/)
  await field.waitFor()
  await page.waitForTimeout(1500)
  const devtools = await slowDown(page)
  await field.focus()
  await page.evaluate(watchKeys(keys.event))
  const rounds = 6
  for (let round = 0; round < rounds; round++) {
    for (const key of keys.pressed) {
      await keys.press(page, devtools, key)
      await page.waitForTimeout(120)
    }
  }
  const times = await page.evaluate<readonly number[]>('window.keyTimes')
  await context.close()
  return {
    what: `verdict after a key of ${keys.of}, on a phone ${slower} times slower, median of ${times.length} keys`,
    figure: `${figure(median(times))} ms (nine of ten within ${figure(nineOfTen(times))}, worst ${figure(Math.max(...times))})`,
    aim: 'under 50 ms',
  }
}

/** Of the page: keeps how long each task took that took longer than 50 ms. */
const watchTasks = `
  window.longTasks = []
  new PerformanceObserver((list) => window.longTasks.push(...list.getEntries().map(({ duration }) => duration)))
    .observe({ type: 'longtask' })
`

async function walking(browser: Browser, address: string, run: LongRun): Promise<readonly BenchRow[]> {
  const [context, page] = await readyContext(browser, address)
  await page.goto(`${address}/runs/${run.id}/walk/post-10/rail-height`)
  const field = page.getByLabel(/^Length/)
  await field.waitFor()
  await page.locator('details.visit').evaluate((visit) => visit.setAttribute('open', ''))
  await page.getByLabel('Read by').fill('bench')
  await page.waitForTimeout(1500)
  await slowDown(page)
  await page.evaluate(watchTasks)
  const heights = run.requirements.filter((id) => /^post-1\d\/rail-height$/.test(id))
  const longest: number[] = []
  for (const id of heights) {
    const link = page.locator(`.walk-list a[href$="/${id}"]`)
    if ((await link.count()) === 0) {
      await page
        .locator(`.walk-list details[data-at="${id.split('/')[0]}"] summary`)
        .evaluate((fold: HTMLElement) => fold.click())
      await page.waitForTimeout(700)
    }
    await page.evaluate('window.longTasks.length = 0')
    await link.evaluate((one: HTMLElement) => one.click())
    await page.waitForTimeout(700)
    await field.pressSequentially('31 1/8', { delay: 60 })
    await page.getByRole('button', { name: 'Save and next' }).click()
    await page.locator('.saved', { hasText: '31 1/8 in' }).waitFor()
    await page.waitForTimeout(1500)
    longest.push(Math.max(0, ...(await page.evaluate<readonly number[]>('window.longTasks'))))
  }
  await context.close()
  return [
    {
      what: `longest task of a reading in that run, ${slower} times slower, median of ${longest.length} readings`,
      figure: `${figure(median(longest))} ms (worst ${figure(Math.max(...longest))})`,
      aim: '',
    },
  ]
}
