import { accessSync, constants, existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'

/** A program that may be a browser, and what it has to be started with. */
interface Candidate {
  readonly executablePath: string
  readonly args: readonly string[]
}

/** A browser that rendered a page here. */
export interface FoundBrowser extends Candidate {
  readonly version: string
}

/**
 * The first browser that renders a page: `$CHROME_PATH`; one that is installed; Playwright's own; on Linux x64 the
 * packed one among the packages. With `LAPWISE_TEST_WITH=packed` the packed one and no other.
 * @throws when there is none, with what was tried
 */
export async function findBrowser(): Promise<FoundBrowser> {
  const tried: string[] = []
  for (const candidate of candidates()) {
    const started = await candidate()
    if (started === null) continue
    const found = await render(started)
    if (typeof found !== 'string') return found
    tried.push(`  ${started.executablePath}: ${found}`)
  }
  const how = 'Install Chromium, Google Chrome or Edge, or set CHROME_PATH to the program of one.'
  throw new Error(['No browser was found that renders a page.', ...tried, how].join('\n'))
}

/**
 * The packed browser, which is built without a window of its own, where it renders a page; otherwise null. A desktop
 * window is drawn by the same processors as the page, and on few of them counts against it.
 */
export async function findWindowless(): Promise<FoundBrowser | null> {
  if (!isPackedHere) return null
  const found = await render(await packed())
  return typeof found === 'string' ? null : found
}

function* candidates(): Generator<() => Promise<Candidate | null>> {
  const { CHROME_PATH, LAPWISE_TEST_WITH = '' } = process.env
  if (!['', 'packed'].includes(LAPWISE_TEST_WITH))
    throw new Error(`LAPWISE_TEST_WITH: expected "packed" or nothing, found "${LAPWISE_TEST_WITH}"`)
  if (LAPWISE_TEST_WITH === 'packed') {
    if (isPackedHere) yield packed
    return
  }
  if (CHROME_PATH !== undefined && CHROME_PATH !== '') yield async () => plain(CHROME_PATH)
  for (const path of installed()) yield async () => plain(path)
  yield async () => (existsSync(chromium.executablePath()) ? plain(chromium.executablePath()) : null)
  if (isPackedHere) yield packed
}

const isPackedHere = process.platform === 'linux' && process.arch === 'x64'

/**
 * Root has no use for the sandbox, and a test no use for what a browser asks the network by itself. Letters are fitted to
 * the pixels as a browser with a window does it, to the last of them; the one without fits them more.
 */
const usualArgs = [
  ...['--disable-background-networking', '--font-render-hinting=slight'],
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
]

const plain = (executablePath: string): Candidate => ({ executablePath, args: usualArgs })

/** First the one without a window of its own: of the same pages it takes seven tenths of the processor time. */
const names = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'msedge',
]

function installed(): readonly string[] {
  const { PATH = '', PROGRAMFILES = '', 'PROGRAMFILES(X86)': PROGRAMFILES_X86 = '', LOCALAPPDATA = '' } = process.env
  const onPath = names.flatMap((name) => PATH.split(delimiter).map((folder) => join(folder, name)))
  const elsewhere = {
    darwin: [
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ],
    win32: [PROGRAMFILES, PROGRAMFILES_X86, LOCALAPPDATA]
      .filter((folder) => folder !== '')
      .flatMap((folder) => [
        join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
        join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
      ]),
  }[process.platform as 'darwin' | 'win32']
  return [...onPath, ...(elsewhere ?? [])].filter(isProgram)
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/**
 * It unpacks itself with the libraries it needs when it is told that it runs in such a place. What it says it should be
 * started with is for one page and no more: with it the browser ends as the first page is closed.
 */
async function packed(): Promise<Candidate> {
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs20.x'
  process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x'
  const { default: chromiumPack } = await import('@sparticuz/chromium')
  return plain(await chromiumPack.executablePath())
}

/** The browser once it rendered a page; otherwise the first line of what went wrong. */
async function render({ executablePath, args }: Candidate): Promise<FoundBrowser | string> {
  try {
    const browser = await chromium.launch({ executablePath, args: [...args], timeout: 30_000 })
    try {
      const page = await browser.newPage()
      await page.setContent('<p style="width: 100px">rendered</p>')
      const width = await page.locator('p').evaluate((element) => element.getBoundingClientRect().width)
      return width === 100 ? { executablePath, args, version: browser.version() } : 'it does not lay a page out'
    } finally {
      await browser.close()
    }
  } catch (error) {
    return (error instanceof Error ? error.message : String(error)).split('\n')[0]!
  }
}
