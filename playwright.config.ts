import { defineConfig } from '@playwright/test'
import { findBrowser } from './test/acceptance/web/find-browser.ts'

// Looked for once: the processes that run the tests read what the first one found.
if (process.env.LAPWISE_TEST_BROWSER === undefined) {
  const found = await findBrowser()
  process.env.LAPWISE_TEST_BROWSER = JSON.stringify(found)
  console.log(`browser ${found.version}: ${found.executablePath}`)
}
const { executablePath, args } = JSON.parse(process.env.LAPWISE_TEST_BROWSER)

export default defineConfig({
  testDir: 'test/acceptance/web',
  testMatch: '*.test.ts',
  globalSetup: './test/acceptance/web/prepare-folder.ts',
  timeout: 180_000,
  // What is waited for comes or does not; a busy machine is no fault of the page.
  expect: { timeout: 20_000 },
  // One picture for every machine: what is compared is drawn by the processor, and without type or in a font that comes
  // along. Drawn anew by `--update-snapshots`, and looked at.
  snapshotPathTemplate: '{testDir}/kept-pictures/{arg}{ext}',
  // Each file has a server, a folder and a port of its own, so that two run beside each other.
  workers: 2,
  reporter: 'list',
  // A trace of every test takes a good part of its time; `--trace retain-on-failure` keeps those of what fails.
  // So does the page's being put onto each device: a file none of whose tests rests on that blocks it.
  use: { launchOptions: { executablePath, args }, acceptDownloads: true },
  // Layout, touch or a picture: `@both` screens. What is done with a phone in the hand: `@phone`. Anything else that a
  // test claims is the same on every screen, and is tried on one.
  projects: [
    { name: 'desktop', grepInvert: /@phone/, use: { viewport: { width: 1440, height: 900 } } },
    {
      name: 'phone',
      grep: /@phone|@both/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
})
