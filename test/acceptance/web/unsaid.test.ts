import { join } from 'node:path'
import { expect, test } from '@playwright/test'
import { en } from '../../../src/web/messages/en.ts'
import { leftUnsaid, rejoined, unsaidIn } from '../../pseudo/find-unsaid.ts'
import { said } from '../../pseudo/pseudo.ts'
import { buildPseudoPage } from '../../pseudo/pseudo-page.ts'
import { pathsOf, textsOn } from './page-texts.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer, temporaryFolder } from './serve.ts'

let folder: string
let pageFolder: string
let server: RunningServer

test.beforeAll(async () => {
  folder = await preparedFolder()
  pageFolder = await temporaryFolder()
  await buildPseudoPage(pageFolder)
  server = await startServer(folder)
})

test.afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
  await dropFolder(pageFolder)
})

// It would fetch what the server has, past the files that are put in their place.
test.use({ serviceWorkers: 'block' })

test('in a language that nobody speaks, no screen has an unknown text unsaid', async ({ page }) => {
  await page.route('**/*', async (route) => {
    const { pathname } = new URL(route.request().url())
    if (pathname.startsWith('/api/')) return route.continue()
    const file = pathname.includes('.') ? pathname : '/index.html'
    await route.fulfill({ path: join(pageFolder, file) })
  })
  const paths = [
    ...(await pathsOf(page, server.address, 'Alder Creek culvert')),
    '/',
    '/need',
    '/lay-out',
    '/bring-over',
    '/glossary',
    '/shelf',
    '/shelf/flared-terminal-31',
    '/shelf/w-beam-midspan-31',
  ]
  await page.getByLabel('Language').selectOption('es')
  await expect(page.locator('html')).toHaveAttribute('lang', 'es')
  const found: string[] = []
  for (const path of paths) {
    await page.goto(server.address + path)
    await expect(page.locator('html')).toHaveAttribute('lang', 'es')
    await expect(page.locator('.picture, table, .findings, .day, .sheet, main').first()).toBeVisible()
    if (path.includes('/walk/')) await expect(page.locator('.picture.figure')).toBeVisible()
    if (path.startsWith('/runs/'))
      await expect(page.locator('.strip :is([role="button"], .run-face)').first()).toBeVisible()
    await expect(page.getByText(said(en.page.loading))).toHaveCount(0)
    const texts = await textsOn(page)
    expect(texts.join('').match(/⟦/g)?.length, path).toBeGreaterThan(10)
    found.push(...rejoined(texts).flatMap(unsaidIn))
  }
  expect(leftUnsaid('screens', found)).toEqual([])
})
