import { execFileSync, spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installPacked } from '../test/acceptance/unpacked.ts'
import { dropFolder, startServerProcess, temporaryFolder } from '../test/acceptance/web/serve.ts'
import { type BenchRow, figure, median, milliseconds } from './measure.ts'

const root = fileURLToPath(new URL('..', import.meta.url))

/** What it takes to have Lapwise: how large it is, how soon a command begins, and how long a fresh clone takes to a page. */
export async function* benchTakeHome(): AsyncGenerator<readonly BenchRow[]> {
  yield packed()
  yield await commandStart()
  yield [await cloneToPage()]
}

function packed(): readonly BenchRow[] {
  const told = execFileSync('npm', ['pack', '--json', '--dry-run'], {
    cwd: root,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const [{ size, unpackedSize }] = JSON.parse(told) as [{ readonly size: number; readonly unpackedSize: number }]
  return [
    { what: 'the package, packed', figure: `${figure(size / 1e6)} MB`, aim: '' },
    { what: 'the package, unpacked, without what it depends on', figure: `${figure(unpackedSize / 1e6)} MB`, aim: '' },
  ]
}

/** As a ratio to a bare start of Node, which holds on a slower machine too. */
async function commandStart(): Promise<readonly BenchRow[]> {
  const home = installPacked()
  const program = join(home, 'node_modules/lapwise/bin/lapwise.mjs')
  const starts = (words: readonly string[]): number => {
    // The first fills the machine's memory of files.
    spawnSync(process.execPath, words)
    return median(Array.from({ length: 15 }, () => milliseconds(() => spawnSync(process.execPath, words))))
  }
  const [bare, command] = [starts(['-e', '']), starts([program, '--version'])]
  await dropFolder(home)
  return [
    { what: 'start of a command, installed: lapwise --version', figure: `${figure(command)} ms`, aim: '300 ms' },
    { what: 'the same as a ratio to a bare start of Node', figure: `${figure(command / bare)} x`, aim: '' },
  ]
}

/** From `git clone` until `lapwise serve` in it answers with its page, what is fetched for it included. */
async function cloneToPage(): Promise<BenchRow> {
  const [clone, data] = [await temporaryFolder(), await temporaryFolder()]
  const began = performance.now()
  execFileSync('git', ['clone', '--quiet', root, clone])
  const server = await startServerProcess(data, {}, join(clone, 'bin/lapwise.mjs'))
  const { status } = await fetch(server.address)
  const seconds = (performance.now() - began) / 1000
  await server.stop()
  await Promise.all([clone, data].map(dropFolder))
  if (status !== 200) throw new Error(`the page of a fresh clone answered ${status}`)
  return { what: 'from clone to page: git clone, install, build, serve', figure: `${figure(seconds)} s`, aim: '' }
}
