import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { type Browser, chromium } from '@playwright/test'
import { type FoundBrowser, findWindowless } from '../../test/acceptance/web/find-browser.ts'
import { dropFolder, temporaryFolder } from '../../test/acceptance/web/serve.ts'
import { type BenchRow, median } from '../measure.ts'

/** Kept out of the packages: it is large, and only asked for here. */
const lighthouse = 'lighthouse@12.2.3'
const categories = ['performance', 'accessibility', 'best-practices'] as const
const times = 5

/** How long a browser is left alone first: it fetches and draws views of its own, which would count against the page. */
const settling = 8000

type Scores = Readonly<Record<(typeof categories)[number], number>>

/**
 * The scores of Lighthouse in its mobile setting, or that it could not be had; measured in `other` where no browser
 * without a window was found.
 */
export async function benchLighthouse(
  address: string,
  paths: Readonly<Record<string, string>>,
  other: FoundBrowser,
): Promise<readonly BenchRow[]> {
  const windowless = await findWindowless()
  const browser = windowless ?? other
  const rows: BenchRow[] = []
  for (const [name, path] of Object.entries(paths)) {
    const all: Scores[] = []
    for (let i = 0; i < times; i++) {
      const scores = await firstVisit(address + path, browser)
      if (typeof scores === 'string')
        return [...rows, { what: `Lighthouse: ${scores}`, figure: 'not measured', aim: '' }]
      all.push(scores)
    }
    const [worst, best] = [Math.min, Math.max].map((of) => of(...all.map(({ performance }) => performance * 100)))
    rows.push({
      what: `Lighthouse, mobile, first visit, ${windowless === null ? 'desktop browser' : 'browser without a window'}, ${name} page: ${categories.join(', ')}; medians of ${times}`,
      figure: `${categories.map((one) => Math.round(median(all.map((scores) => scores[one])) * 100)).join(', ')} (performance ${Math.round(worst!)} to ${Math.round(best!)})`,
      aim: '95 and more',
    })
  }
  return rows
}

/** The scores in a browser that was never here. */
async function firstVisit(address: string, browser: FoundBrowser): Promise<Scores | string> {
  const { port, instance } = await startBrowser(browser)
  try {
    return await scoresOf(address, port)
  } finally {
    await instance.close()
  }
}

/** A browser that has settled, and the port at which it can be told what to do. */
async function startBrowser({ executablePath, args }: FoundBrowser): Promise<{ port: number; instance: Browser }> {
  const port = await freePort()
  const instance = await chromium.launch({ executablePath, args: [...args, `--remote-debugging-port=${port}`] })
  await setTimeout(settling)
  return { port, instance }
}

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { readonly port: number }
      server.close(() => resolve(port))
    })
  })

/** From 0 to 1; or why there are none. */
async function scoresOf(address: string, port: number): Promise<Scores | string> {
  const folder = await temporaryFolder()
  const report = join(folder, 'report.json')
  const words = [
    ...['--yes', lighthouse, address, '--quiet', '--output=json', `--output-path=${report}`],
    `--only-categories=${categories.join(',')}`,
    `--port=${port}`,
  ]
  const child = spawn('npx', words, {
    stdio: ['ignore', 'ignore', 'pipe'],
    shell: process.platform === 'win32',
  })
  let said = ''
  child.stderr.on('data', (bytes: Buffer) => {
    said += bytes.toString()
  })
  const code = await new Promise<number | null>((resolve) => child.on('close', resolve))
  const text = code === 0 ? await readFile(report, 'utf8') : null
  await dropFolder(folder)
  if (text === null) return `${lighthouse} could not be had or did not end well (${said.trim().split('\n').at(-1)})`
  const { categories: found } = JSON.parse(text) as { categories: Record<string, { score: number }> }
  return Object.fromEntries(categories.map((category) => [category, found[category]!.score])) as unknown as Scores
}
