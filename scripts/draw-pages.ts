// Draws the pages that the guides show into docs/pictures/, of the demo run on a server that is started for it.
// `npx tsx scripts/draw-pages.ts [NAME …]`; with `--into FOLDER` elsewhere.
import { parseArgs } from 'node:util'
import { chromium, type Page } from '@playwright/test'
import { findBrowser } from '../test/acceptance/web/find-browser.ts'
import { dropFolder, startServer, temporaryFolder } from '../test/acceptance/web/serve.ts'

const phone = { width: 390, height: 844 }
const desk = { width: 1280, height: 800 }

interface Drawn {
  readonly size: { readonly width: number; readonly height: number }
  /** Where it is, of the demo run's address. */
  readonly path: (run: string) => string
}

const pages: Readonly<Record<string, Drawn>> = {
  'page-walk': { size: phone, path: (run) => run },
  'page-entry': { size: phone, path: (run) => `${run}/walk/post-1/bearing-plate` },
  'page-findings': { size: phone, path: (run) => `${run}/findings` },
  'page-need': { size: desk, path: () => '/need' },
  'page-sheet': { size: desk, path: () => '/shelf/flared-terminal-31' },
  'page-lesson': { size: desk, path: () => '/drills/lesson' },
}

const { values, positionals } = parseArgs({ options: { into: { type: 'string' } }, allowPositionals: true })
const into = values.into ?? new URL('../docs/pictures', import.meta.url).pathname
const folder = await temporaryFolder()
const server = await startServer(folder)
const browser = await chromium.launch(await findBrowser())
try {
  const page = await browser.newPage()
  await page.goto(server.address)
  const run = await page.locator('a[href^="/runs/"]').first().getAttribute('href')
  if (run === null) throw new Error('the demo run is not there')
  for (const [name, drawn] of Object.entries(pages))
    if (positionals.length === 0 || positionals.includes(name)) await draw(page, name, drawn, run)
} finally {
  await browser.close()
  await server.stop()
  await dropFolder(folder)
}

async function draw(page: Page, name: string, { size, path }: Drawn, run: string): Promise<void> {
  await page.setViewportSize(size)
  await page.goto(`${server.address}${path(run)}`)
  await page.locator('main :is(h1, h2, h3)').first().waitFor()
  await page.locator('.loading, .building, [aria-busy=true]').first().waitFor({ state: 'detached' })
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: `${into}/${name}.png` })
}
