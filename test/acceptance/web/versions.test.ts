import { expect, test } from '@playwright/test'
import { entryId, entryIdAfter } from '../../../src/formats/entry-id.ts'
import { writeRun } from '../../../src/formats/run/write-run.ts'
import { entriesPath } from '../../../src/protocol/addresses.ts'
import { demoVersions } from '../../fixtures/three-versions.ts'
import { dropFolder, preparedFolder, type RunningServer, startServer } from './serve.ts'

test.use({ serviceWorkers: 'block' })

let folder: string
let server: RunningServer

test.beforeEach(async () => {
  folder = await preparedFolder()
  server = await startServer(folder)
})

test.afterEach(async () => {
  await server.stop()
  await dropFolder(folder)
})

test('what an earlier version asked is in a fold of the walk and of the record; an older edition is named', async ({
  page,
}) => {
  const run = entryId(1_790_000_000_000, new Uint8Array(10))
  const ids = [run, entryIdAfter([run], new Uint8Array(10).fill(7))]
  const reading = entryIdAfter(ids, new Uint8Array(10).fill(9))
  const at = '2026-05-04T15:30:00.000Z'
  const common = { run, author: 'R. Quist', device: 'phone', capturedAt: at }
  // As if the first sheet had got another edition since.
  const versions = demoVersions(ids).map((file) => ({
    ...file,
    sheets: file.sheets.map((sheet, i) => (i === 0 ? { ...sheet, version: '0.1.0' } : sheet)),
  }))
  const entries = [
    ...versions.map((file, i) => ({
      ...{ ...common, id: ids[i], kind: 'run', schemaVersion: 2, supersedes: ids[i - 1] ?? null },
      body: JSON.parse(writeRun(file)),
    })),
    {
      ...{ ...common, id: reading, kind: 'reading', schemaVersion: 3, supersedes: null },
      body: { id: reading, of: 'post-19/rail-height', value: '30 1/2 in', by: 'R. Quist', at, corrects: null },
    },
  ]
  const answered = await fetch(`${server.address}${entriesPath}`, {
    ...{ method: 'POST', headers: { 'content-type': 'application/json' } },
    body: JSON.stringify({ entries }),
  })
  const { answers } = (await answered.json()) as { readonly answers: readonly { readonly outcome: string }[] }
  expect(answers.map(({ outcome }) => outcome)).toEqual(['stored', 'stored', 'stored'])

  const fold = page.locator('details.earlier')
  for (const pane of ['walk', 'record']) {
    await page.goto(`${server.address}/runs/${run}/${pane}`)
    await fold.getByText('Asked by an earlier version (1)').click()
    await expect(fold).toContainText('post 19, version 1, rail height: 30 1/2 in')
    await expect(fold).toContainText('R. Quist, version 1')
    await expect(fold).toContainText('the run no longer has this place')
  }
  const older = page.getByText('The shelf has a newer edition of this sheet')
  await expect(older).toContainText('this run is judged by the one it was laid out with, 0.1.0')
  await page.goto(`${server.address}/runs/${run}/findings`)
  await expect(page.getByRole('heading', { name: /^Findings/ })).toBeVisible()
  await expect(fold).toHaveCount(0)
  await expect(older).toHaveCount(0)
})
