// Draws every screen of the page at three widths, by sun and night, in both languages, for somebody to look at.
// `npx tsx scripts/draw-screens.ts --into FOLDER [--whole] [PART …]`; of the demo run, on a server that is started for
// it. What a screen shows at first; with `--whole` down to its end. PART: of a
// picture's name, as `walk`, `390-sun` or `walk-390-sun-en`.
import { mkdir } from 'node:fs/promises'
import { parseArgs } from 'node:util'
import { chromium } from '@playwright/test'
import { findBrowser } from '../test/acceptance/web/find-browser.ts'
import { openScreen, type Screen, screensOf } from '../test/acceptance/web/screens.ts'
import { dropFolder, startServer, temporaryFolder } from '../test/acceptance/web/serve.ts'

const sizes = [
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
]

const { values, positionals } = parseArgs({
  options: { into: { type: 'string' }, whole: { type: 'boolean' } },
  allowPositionals: true,
})
if (values.into === undefined) throw new Error('--into FOLDER is missing')
const into = values.into
await mkdir(into, { recursive: true })
const folder = await temporaryFolder()
const server = await startServer(folder)
const browser = await chromium.launch(await findBrowser())
try {
  const { runs } = await (await fetch(`${server.address}/api/runs`)).json()
  for (const language of ['en', 'es'])
    for (const light of ['sun', 'night']) for (const size of sizes) await drawAll(runs[0].id, { language, light }, size)
} finally {
  await browser.close()
  await server.stop()
  await dropFolder(folder)
}

/** The screens of one width, light and language of which a picture is wanted, in a browser that saw nothing yet. */
async function drawAll(
  run: string,
  wanted: { readonly language: string; readonly light: string },
  viewport: (typeof sizes)[number],
): Promise<void> {
  const pictureOf = ({ name }: Screen): string => `${name}-${viewport.width}-${wanted.light}-${wanted.language}`
  const isWanted = (screen: Screen): boolean =>
    positionals.length === 0 || positionals.some((part) => pictureOf(screen).includes(part))
  const context = await browser.newContext({ viewport, locale: wanted.language })
  const page = await context.newPage()
  await page.addInitScript((wanted) => localStorage.setItem('lapwise/preferences', wanted), JSON.stringify(wanted))
  for (const screen of screensOf(run).filter(isWanted)) {
    await openScreen(page, server.address, screen)
    await page.screenshot({ path: `${into}/${pictureOf(screen)}.png`, fullPage: values.whole ?? false })
  }
  await context.close()
}
