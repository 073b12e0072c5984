import { execFileSync } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { documentHere } from '../../../src/web/data/device-documents.ts'
import { readKeptRun } from '../../../src/web/data/kept-run.ts'
import type { DocumentWish } from '../../../src/web/data/run-source.ts'
import { expectAccessible, expectNoSidewaysScroll } from './accessible.ts'
import { keptEntries, keptReadings, openPage, readLength } from './offline-device.ts'
import { type PlainHost, startPlainHost } from './plain-host.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))

let host: PlainHost

test.beforeAll(async () => {
  execFileSync('npm', ['run', 'build:static'], { cwd: root, stdio: ['ignore', 2, 2] })
  host = await startPlainHost(join(root, 'dist/static'))
})

test.afterAll(() => host.stop())

const named = (page: Page, name: string | RegExp) => page.getByRole('button', { name })

/** Every address that the page or its workers ask for anywhere else than in the folder that it came from. */
function strangersOf(context: BrowserContext): readonly string[] {
  const strangers: string[] = []
  context.on('request', (request) => {
    const address = request.url()
    if (!/^(blob|data):/.test(address) && !address.startsWith(host.address)) strangers.push(address)
  })
  return strangers
}

/** The file that a button of the page makes, saved. */
async function made(page: Page, button: string): Promise<Buffer> {
  await named(page, button).click()
  await expect(page.getByText('Making the document')).toHaveCount(0, { timeout: 60_000 })
  await expect(page.getByText(/-\d{4}-\d\d-\d\d-v\d+\.pdf is made\./)).toBeVisible()
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.documents').getByRole('button', { name: 'Save it', exact: true }).click(),
  ])
  return readFile(await saved.path())
}

/** The same document of what the page keeps, set by the typesetter that servers use. */
async function nativeOf(page: Page, run: string, kind: DocumentWish['kind']): Promise<Buffer> {
  const entries = (await keptEntries(page)).filter((entry) => entry.run === run)
  const of = (...kinds: string[]) => entries.filter((entry) => kinds.includes(entry.kind))
  const kept = readKeptRun(run, of('run'), of('reading'), of('free-finding', 'free-finding-end'))
  if (!kept?.ok) throw new Error('the kept run cannot be read', { cause: kept })
  const language = kind === 'crew-sheet' ? 'en' : 'es'
  const pdf = await documentHere(kept.value, entries, { kind, language, page: 'letter', author: 'R. Quist' })
  if (!pdf.ok) throw new Error('it was not made', { cause: pdf.error })
  return Buffer.from(await pdf.value.arrayBuffer())
}

/** Every word with its place on its page, the tags around them, and the fonts; the moment of printing is another. */
function looksOf(pdf: Buffer) {
  const told = (program: string, ...words: string[]): string =>
    execFileSync(program, words, { input: pdf, stdio: ['pipe', 'pipe', 'ignore'], maxBuffer: 2 ** 26 })
      .toString()
      .replaceAll(/\d{4}-\d\d-\d\d(?=<| \d\d:)/g, 'DAY')
      .replaceAll(/\d\d:\d\d(:\d\d)?/g, 'TIME')
  return {
    words: told('pdftotext', '-bbox', '-', '-').replaceAll(/<meta[^>]*>/g, ''),
    tags: told('pdfinfo', '-struct-text', '-'),
    fonts: told('pdffonts', '-').replaceAll(/[A-Z]{6}\+| +\d+ +\d+$/gm, ''),
  }
}

const markedForArchives = (pdf: Buffer): boolean => pdf.includes('pdfaid:part')

test('without any server a terminal is checked, signed for, handed on as a file and opened again without a network', {
  tag: '@phone',
}, async ({ page, context, browser }) => {
  page.setDefaultTimeout(20_000)
  const strangers = strangersOf(context)
  const second = await browser.newContext({ viewport: { width: 390, height: 844 } })
  const other = await second.newPage()
  await openPage(other, host.address)
  await openPage(page, host.address)
  await expect(page.getByText('There is no run yet')).toBeVisible()
  await expect(page.getByRole('complementary', { name: 'This device' })).toContainText('This copy has no server')
  await expectAccessible(page)
  await expectNoSidewaysScroll(page)

  // From what stands to a finding.
  await page.getByRole('link', { name: /Check what stands/i }).click()
  await named(page, /Flared cable-anchored terminal, 27 3\/4 in/).click()
  await named(page, 'This end only: traffic comes').click()
  await named(page, 'Begin to look').click()
  await page.getByRole('link', { name: /^Next unread/ }).click()
  await expect(page.locator('#must')).toBeVisible()
  const run = /#\/runs\/([^/]+)/.exec(page.url())![1]!
  const at = (view: string): string => `${host.address}#/runs/${run}${view}`
  await page.goto(at('/walk/post-3/rail-height'))
  await readLength(page, 'R. Quist', '25')
  await page.goto(at('/findings'))
  await expect(page.locator('.title-verdict')).toHaveText('not acceptable')
  await expect(page.getByText('25 in').first()).toBeVisible()

  // Signed, with what does not stand said as it is.
  await page.goto(at(''))
  await named(page, 'Closed ground: they cannot be seen').click()
  await expect(page.locator('.saved')).toContainText('could not be seen')
  await page
    .getByRole('navigation', { name: 'Parts of this run' })
    .getByRole('link', { name: /Sign-off/ })
    .click()
  await page.getByLabel('Name', { exact: true }).fill('R. Quist')
  await page.getByLabel('Role').fill('inspector 😀')
  await page.getByLabel('Sign by typing the name instead of drawing').check()
  await named(page, 'Sign this record').click()
  await expect(page.locator('.version')).toContainText('R. Quist')

  // What the page sets is what the server's typesetter sets of the same run: words, places, structure, letters.
  await page.goto(at('/record'))
  const crewSheet = await made(page, 'Make the crew sheet')
  expect(looksOf(crewSheet)).toEqual(looksOf(await nativeOf(page, run, 'crew-sheet')))

  // The other phone has the page and nothing else, and gets it all in a file.
  await named(page, 'Hand over this run').click()
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.hand-over').getByRole('button', { name: 'Save it', exact: true }).click(),
  ])
  await other.locator('.device summary').first().click()
  await other.locator('.device-transfer input[type=file]').setInputFiles({
    ...{ name: saved.suggestedFilename(), mimeType: 'application/zip', buffer: await readFile(await saved.path()) },
  })
  await other.getByRole('button', { name: 'Take it in', exact: true }).click()
  await expect(other.locator('.take-in')).toContainText('Taken in:')
  await other.goto(at('/sign-off'))
  await expect(other.locator('.version')).toContainText('the record as it stands')

  // Nothing of the page is asked for again; a link to a view opens that view, from its own tab too.
  const missed = [...host.missed]
  await host.stop()
  await page.reload()
  await page.locator('.documents select').nth(1).selectOption('es')
  const record = await made(page, 'Make the record')
  const native = await nativeOf(page, run, 'record')
  expect(looksOf(record)).toEqual(looksOf(native))
  // A character that no font of ours has stands as its number, in both.
  expect(looksOf(record).words).toContain('[U+1F600]')
  expect([markedForArchives(record), markedForArchives(native)]).toEqual([false, true])
  const summary = await made(page, 'Make the summary of two pages')
  expect(looksOf(summary)).toEqual(looksOf(await nativeOf(page, run, 'summary')))
  const another = await context.newPage()
  await another.goto(at('/walk/post-3/rail-height'))
  await expect(another.locator('.past-reading').first()).toContainText('R. Quist')
  expect(await keptReadings(another)).toEqual(await keptReadings(page))
  expect(missed).toEqual([])
  expect(strangers).toEqual([])
})
