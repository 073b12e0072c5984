import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import type { StoreConfig } from '../../src/store/store.ts'

const children = new Set<ChildProcess>()

/** A process of its own that appends to the store until it is killed, as append-until-killed.ts says. */
export function startChild(config: StoreConfig, prefix: string): ChildProcess {
  const script = fileURLToPath(new URL('append-until-killed.ts', import.meta.url))
  const child = spawn(process.execPath, ['--import', 'tsx', script, JSON.stringify(config), prefix], {
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
