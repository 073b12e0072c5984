import { createHash, X509Certificate } from 'node:crypto'
import { hostname } from 'node:os'
import { type Browser, chromium, expect, test } from '@playwright/test'
import { expectUnsent, openReading, readLength, syncNow } from './offline-device.ts'
import { dropFolder, preparedFolder, startServer } from './serve.ts'
import { type LanServer, startLanServer } from './serve-lan.ts'

const found = JSON.parse(process.env.LAPWISE_TEST_BROWSER!) as { executablePath: string; args: readonly string[] }
/** The name under which another machine knows this one; the browser is told where it leads. */
const name = `${hostname().split('.')[0]!.toLowerCase()}.local`

let folder: string
let server: LanServer

test.beforeAll(async () => {
  folder = await preparedFolder()
  server = await startLanServer(folder)
})

test.afterAll(async () => {
  await server.stop()
  await dropFolder(folder)
})

/** A browser on another machine; one that trusts the server knows its key by hash, where a person's device has the authority in its store. */
function otherMachine(trusts: boolean, names: readonly string[] = [name]): Promise<Browser> {
  const keyHash = createHash('sha256')
    .update(new X509Certificate(server.certificate).publicKey.export({ type: 'spki', format: 'der' }))
    .digest('base64')
  return chromium.launch({
    executablePath: found.executablePath,
    args: [
      ...found.args,
      `--host-resolver-rules=${names.map((one) => `MAP ${one} 127.0.0.1`).join(', ')}`,
      ...(trusts ? [`--ignore-certificate-errors-spki-list=${keyHash}`] : []),
    ],
  })
}

test('a phone that trusts nothing yet is told which step is missing', async ({ viewport, hasTouch }) => {
  const browser = await otherMachine(false)
  const page = await browser.newPage({ viewport, hasTouch })
  await page.goto(`http://${name}:${server.trustPort}/`)
  await expect(page).toHaveURL(/\/trust$/)
  const state = page.locator('#state')
  await expect(state).toContainText('step 1')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: /Fetch/ }).click(),
  ])
  expect(download.suggestedFilename()).toBe('lapwise-authority.crt')
  await page.getByRole('button', { name: 'Check again' }).click()
  await expect(state).toContainText('steps after the first')
  await page.screenshot({ path: test.info().outputPath('trust.png'), fullPage: true })
  await browser.close()
})

test('one that trusts it is let in by the code, and then works without a network', async ({ viewport, hasTouch }) => {
  const browser = await otherMachine(true)
  const context = await browser.newContext({ viewport, hasTouch })
  const page = await context.newPage()
  await page.goto(`http://${name}:${server.trustPort}/trust`)
  await expect(page.locator('#state')).toContainText('Nothing is missing')
  await page.locator('#state a').click()
  await page.getByRole('link', { name: 'Let this device in' }).click()
  await page.getByLabel('Code').fill('AAAA-AAAA')
  await page.getByLabel(/Name of this device/).fill('phone of R. Quist')
  await page.getByRole('button', { name: 'Let in' }).click()
  await expect(page.getByRole('status')).toContainText('not the code')
  await page.screenshot({ path: test.info().outputPath('let-in.png') })
  await page.getByLabel('Code').fill(server.code())
  await page.getByRole('button', { name: 'Let in' }).click()
  await expect(page.getByRole('link', { name: /Alder Creek/ }).first()).toBeVisible()
  await page.evaluate(() => navigator.serviceWorker.ready)
  await context.setOffline(true)
  await page.reload()
  await page
    .getByRole('link', { name: /Alder Creek/ })
    .first()
    .click()
  await expect(page.locator('.title-verdict')).toBeVisible()
  await expect(page.getByText('This is a tab of the browser', { exact: false })).toHaveCount(0)
  await openReading(page, `https://${name}:${server.port}`, /runs\/([^/]+)/.exec(page.url())![1]!, 'post-8/rail-height')
  await readLength(page, 'R. Quist', '31 in')
  await expectUnsent(page, 1)
  // What was read without a network goes to the server by the name of this device, over the encrypted line.
  await context.setOffline(false)
  await syncNow(page)
  await expectUnsent(page, 0)
  await expect(page.locator('.device-state')).toContainText('All is on the server')
  await browser.close()
})

test('a tab of a browser that keeps the installed page apart says so where readings are entered', async ({
  viewport,
}) => {
  const browser = await otherMachine(true)
  const page = await browser.newPage({ viewport })
  await page.addInitScript(() => Object.defineProperty(navigator, 'standalone', { value: false }))
  await page.goto(`https://${name}:${server.port}/`)
  await expect(page.getByText('put Lapwise on the home screen first', { exact: false })).toBeVisible()
  await browser.close()
})

test('a page of another site that leads its own name to this machine reads nothing and writes nothing', async () => {
  const other = 'rebound.example'
  const browser = await otherMachine(true, [name, other])
  const page = await browser.newPage()
  const answer = await page.goto(`http://${other}:${server.trustPort}/trust`)
  expect(answer?.status()).toBe(421)
  const read = await page.evaluate(
    (address) => fetch(`${address}/api/runs`, { credentials: 'include' }).then((got) => got.text(), String),
    `https://${name}:${server.port}`,
  )
  expect(read).toContain('TypeError')
  await browser.close()
})

test('over plain HTTP from another name the page only shows, and says why', async ({ viewport, hasTouch }) => {
  const own = await preparedFolder()
  const plain = await startServer(own, '0', { LAPWISE_HOST: '0.0.0.0' })
  const browser = await otherMachine(false)
  try {
    const page = await browser.newPage({ viewport, hasTouch })
    await page.goto(`http://${name}:${new URL(plain.address).port}/`)
    await expect(page.getByText(/This address is not encrypted/)).toBeVisible()
    await expect(page.getByRole('link', { name: /Alder Creek/ }).first()).toBeVisible()
    await expect(page.getByText('All is on the server')).toHaveCount(0)
  } finally {
    await browser.close()
    await plain.stop()
    await dropFolder(own)
  }
})
