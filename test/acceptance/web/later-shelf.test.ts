import { type Browser, expect, test } from '@playwright/test'
import { runsPath } from '../../../src/protocol/addresses.ts'
import { laterProgram, sheetChanged } from '../later-program.ts'
import { expectWhole } from './accessible.ts'
import { dropFolder, preparedFolder, startServer, startServerProcess } from './serve.ts'

test.use({ serviceWorkers: 'block' })

const changes = [
  // A limit, under the edition that it had.
  sheetChanged('w-beam-midspan-31', ({ railHeight, ...sheet }) => ({
    ...sheet,
    railHeight: { ...(railHeight as object), low: 31.5, nominal: 32, high: 33 },
  })),
  sheetChanged('flared-terminal-31', (sheet) => ({ ...sheet, version: '9.0.0' })),
]

let data: string
let later: string

test.beforeAll(async () => {
  data = await preparedFolder()
  later = laterProgram(changes)
})

test.afterAll(async () => {
  for (const folder of [data, later]) await dropFolder(folder)
})

/** What a page that was never open before shows of the demo run, and its lines about the shelf. */
async function shownBy(browser: Browser, program?: string) {
  const server = program === undefined ? await startServer(data) : await startServerProcess(data, {}, program)
  const page = await browser.newPage()
  try {
    const { runs } = (await (await fetch(server.address + runsPath)).json()) as { readonly runs: { id: string }[] }
    const about = page.getByText(/^The shelf has /)
    const withoutShelf = async (): Promise<string> => {
      const text = (await page.locator('main').textContent())!
      return (await about.allTextContents()).reduce((rest, line) => rest.replace(line, ''), text)
    }
    const panes: string[] = []
    for (const pane of ['walk', 'findings', 'not-proven', 'record', 'layout']) {
      await page.goto(`${server.address}/runs/${runs[0]!.id}/${pane}`)
      await expect(page.locator('.title-verdict')).toHaveText('not acceptable')
      await expectWhole(page)
      panes.push(`${pane} ${await settled(withoutShelf)}`)
    }
    return { panes, about: await about.allTextContents() }
  } finally {
    await page.close()
    await server.stop()
  }
}

/** What is read once it is the same twice: a long list is drawn piece by piece. */
async function settled(read: () => Promise<string>): Promise<string> {
  let last = ''
  const isSame = async (): Promise<boolean> => {
    const before = last
    last = await read()
    return last === before
  }
  await expect.poll(isSame, { intervals: [700] }).toBe(true)
  return last
}

test('under a program with another shelf a run is shown and judged as before, and a line names each sheet', async ({
  browser,
}) => {
  const today = await shownBy(browser)
  const then = await shownBy(browser, `${later}/bin/lapwise.mjs`)
  expect(today.about).toEqual([])
  expect(then.panes).toEqual(today.panes)
  expect(then.about).toEqual([
    expect.stringMatching(/^The shelf has other content under this edition of the sheet, w-beam-midspan-31 /),
    expect.stringMatching(/^The shelf has a newer edition of this sheet, flared-terminal-31 9[.]0[.]0; /),
  ])
})
