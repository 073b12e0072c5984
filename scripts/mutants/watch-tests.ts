import { type ChildProcess, fork } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { FileRun, Order } from './warm-tests.ts'

export interface WatchedTests {
  /** What became of the order; one that takes longer is ended with its process, and counts as running for ever. */
  readonly run: (order: Order, longestMilliseconds: number) => Promise<FileRun>
  readonly close: () => void
}

/**
 * A warm process of its own for the tests, begun anew when a mutant ran for ever or took all memory.
 *
 * @param planted  by file, the text with its mutants in it
 */
export function watchTests(planted: ReadonlyMap<string, string>): WatchedTests {
  let child: ChildProcess | null = null
  const start = (): ChildProcess => {
    const started = fork(fileURLToPath(new URL('warm-tests.ts', import.meta.url)))
    started.send(Object.fromEntries(planted))
    return started
  }
  const close = () => {
    child?.removeAllListeners()
    child?.kill('SIGKILL')
    child = null
  }
  const run = (order: Order, longestMilliseconds: number): Promise<FileRun> => {
    child ??= start()
    const process = child
    return new Promise((resolve) => {
      const ranForEver = () => {
        close()
        const nothing = { testsRun: 1, reached: [], visits: 0, milliseconds: longestMilliseconds }
        resolve({ failure: 'ran for ever', ...nothing })
      }
      const timer = setTimeout(ranForEver, longestMilliseconds)
      process.once('exit', ranForEver)
      process.once('message', (told: FileRun) => {
        clearTimeout(timer)
        process.removeAllListeners('exit')
        resolve(told)
      })
      process.send(order)
    })
  }
  return { run, close }
}
