import { defineConfig } from '@playwright/test'
import { findBrowser } from './test/acceptance/web/find-browser.ts'

// Looked for once: the processes that run the tests read what the first one found.
process.env.LAPWISE_TEST_BROWSER ??= JSON.stringify(await findBrowser())
const { executablePath, args } = JSON.parse(process.env.LAPWISE_TEST_BROWSER)

export default defineConfig({
  testDir: 'test/acceptance/web',
  // The tests of roadside work are not stable yet; they run when they are asked for.
  testMatch: process.env.LAPWISE_ALL_BROWSER_TESTS
    ? '*.test.ts'
    : ['demo-job.test.ts', 'entry.test.ts', 'language.test.ts', 'parts.test.ts', 'site.test.ts'],
  timeout: 180_000,
  workers: 1,
  reporter: 'list',
  use: { launchOptions: { executablePath, args }, acceptDownloads: true, trace: 'retain-on-failure' },
  projects: [
    { name: 'desktop', use: { viewport: { width: 1440, height: 900 } } },
    { name: 'phone', use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } },
  ],
})
