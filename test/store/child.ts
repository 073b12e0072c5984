import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import type { StoreConfig } from '../../src/store/store.ts'

const children = new Set<ChildProcess>()

const source = fileURLToPath(new URL('append-until-killed.ts', import.meta.url))
/** Within the checkout, so that what it imports is found. */
const folder = fileURLToPath(new URL(`../../node_modules/.cache/lapwise-child-${process.pid}/`, import.meta.url))

/** Makes one script of the child: to start it by its sources takes longer than all that it does before it is killed. */
export const buildChild = (): Promise<unknown> =>
  build({ configFile: false, logLevel: 'error', build: { ssr: source, outDir: folder, emptyOutDir: true } })

export const dropChild = (): void => rmSync(folder, { recursive: true, force: true })

/** A process of its own that appends to the store until it is killed, as append-until-killed.ts says. */
export function startChild(config: StoreConfig, prefix: string): ChildProcess {
  const script = join(folder, 'append-until-killed.js')
  const child = spawn(process.execPath, [script, JSON.stringify(config), prefix], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  children.add(child)
  child.once('exit', () => children.delete(child))
  return child
}

/** Kills the child and waits until it is gone. */
export async function kill(child: ChildProcess): Promise<void> {
  const gone = once(child, 'exit')
  child.kill('SIGKILL')
  await gone
}

/** Kills what a failed test left running. */
export function killChildren(): void {
  for (const child of children) child.kill('SIGKILL')
}

/** What the child says, line by line: a word and what it is about. */
export async function* linesOf(child: ChildProcess): AsyncGenerator<readonly [string, string[]]> {
  for await (const line of createInterface({ input: child.stdout! })) yield parse(line)
}

/** The child's next line, when only one is awaited. */
export async function nextLine(child: ChildProcess): Promise<readonly [string, unknown]> {
  const { value } = await linesOf(child).next()
  return value
}

function parse(line: string): readonly [string, string[]] {
  const space = line.indexOf(' ')
  return [line.slice(0, space), JSON.parse(line.slice(space + 1))]
}
