import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { type Browser, chromium } from '@playwright/test'
import { type FoundBrowser, findWindowless } from '../../test/acceptance/web/find-browser.ts'
import { dropFolder, temporaryFolder } from '../../test/acceptance/web/serve.ts'
import { type BenchRow, figure, median } from '../measure.ts'

/** Kept out of the packages: it is large, and only asked for here. */
const lighthouse = 'lighthouse@12.2.3'
const categories = ['performance', 'accessibility', 'best-practices'] as const
const times = 5

/** How long a browser is left alone first: it fetches and draws views of its own, which would count against the page. */
const settling = 8000

interface Visit {
  /** From 0 to 1. */
  readonly scores: Readonly<Record<(typeof categories)[number], number>>
  /** How quick Lighthouse found this machine; the slower it is, the longer the page's own work takes. */
  readonly machine: number
}

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
    const visits: Visit[] = []
    for (let i = 0; i < times; i++) {
      const visit = await firstVisit(address + path, browser)
      if (typeof visit === 'string') return [...rows, { what: `Lighthouse: ${visit}`, figure: 'not measured', aim: '' }]
      visits.push(visit)
    }
    const all = visits.map(({ scores }) => scores)
    const [worst, best] = [Math.min, Math.max].map((of) => of(...all.map(({ performance }) => performance * 100)))
    const machine = median(visits.map((visit) => visit.machine))
    rows.push({
      what: `Lighthouse, mobile, first visit, ${windowless === null ? 'desktop browser' : 'browser without a window'}, ${name} page: ${categories.join(', ')}; medians of ${times}`,
      figure: `${categories.map((one) => Math.round(median(all.map((scores) => scores[one])) * 100)).join(', ')} (performance ${Math.round(worst!)} to ${Math.round(best!)}; speed of this machine ${figure(machine)})`,
      aim: '95 and more',
    })
  }
  return rows
}

/** In a browser that was never here. */
async function firstVisit(address: string, browser: FoundBrowser): Promise<Visit | string> {
  const { port, instance } = await startBrowser(browser)
  try {
    return await audit(address, port)
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

/** What Lighthouse found, or why it found nothing. */
async function audit(address: string, port: number): Promise<Visit | string> {
  const folder = await temporaryFolder()
  const file = join(folder, 'report.json')
  const words = [
    ...['--yes', lighthouse, address, '--quiet', '--output=json', `--output-path=${file}`],
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
  const text = code === 0 ? await readFile(file, 'utf8') : null
  await dropFolder(folder)
  if (text === null) return `${lighthouse} could not be had or did not end well (${said.trim().split('\n').at(-1)})`
  const report = JSON.parse(text) as {
    readonly categories: Record<string, { readonly score: number }>
    readonly environment: { readonly benchmarkIndex: number }
  }
  const scores = Object.fromEntries(categories.map((category) => [category, report.categories[category]!.score]))
  return { scores: scores as unknown as Visit['scores'], machine: report.environment.benchmarkIndex }
}
