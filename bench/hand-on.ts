import { chromium } from '@playwright/test'
import { findBrowser } from '../test/acceptance/web/find-browser.ts'
import { handOnPhotos, type Peak } from '../test/acceptance/web/many-photos.ts'
import { dropFolder, startServerProcess, temporaryFolder } from '../test/acceptance/web/serve.ts'
import { type BenchRow, figure } from './measure.ts'

const megabyte = 1024 * 1024

/** What a device needs in memory to hand on a run with 300 photos of 4 MB, and another to take it in. */
export async function benchHandOn(): Promise<readonly BenchRow[]> {
  const { executablePath, args } = await findBrowser()
  const folder = await temporaryFolder()
  const server = await startServerProcess(folder)
  const browser = await chromium.launch({ executablePath, args: [...args] })
  try {
    const { writing, reading } = await handOnPhotos(browser, server, 300, 4 * megabyte)
    const said = ({ scripts, process }: Peak): string =>
      `${figure(scripts / megabyte)} MB, its process ${figure(process / megabyte)} MB`
    return [
      { what: '300 photos of 4 MB handed on: most memory of the scripts', figure: said(writing), aim: '200 MB' },
      { what: 'the same taken in', figure: said(reading), aim: '200 MB' },
    ]
  } finally {
    await browser.close()
    await server.stop()
    await dropFolder(folder)
  }
}
