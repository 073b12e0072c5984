import { expect, test } from '@playwright/test'
import { handOnPhotos } from './many-photos.ts'
import { dropFolder, preparedFolder, startServer } from './serve.ts'

const megabyte = 1024 * 1024

test('a run with 200 MB of photos is written and taken in with less than that in memory', async ({ browser }) => {
  const folder = await preparedFolder()
  const { bytes, writing, reading } = await handOnPhotos(browser, await startServer(folder), 50, 4 * megabyte)
  expect(bytes).toBeGreaterThan(200 * megabyte)
  // What is there without any photo is some 60 MB, and what a browser has not cleared up yet has been up to 75 MB.
  expect(writing.scripts).toBeLessThan(bytes)
  expect(reading.scripts).toBeLessThan(bytes)
  await dropFolder(folder)
})
