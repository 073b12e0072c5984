import { type ChildProcess, fork } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import type { FileRun, Order } from './warm-tests.ts'

export interface WatchedTests {
  /**
   * What became of the order. One that takes more processor time is ended with its process, and counts as running for
   * ever; the clock would say so of any on a busy machine. So is one that waits for what does not come.
   */
  readonly run: (order: Order, longestMilliseconds: number) => Promise<FileRun>
  readonly close: () => void
}

/** How often a process is looked at, and how long it may wait without taking processor time, milliseconds: our judgement. */
const lookEvery = 1_000
const longestWait = 60_000

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
        clearInterval(timer)
        close()
        const nothing = { testsRun: 1, reached: [], visits: 0, milliseconds: longestMilliseconds }
        resolve({ failure: 'ran for ever', ...nothing })
      }
      const before = processorTime(process.pid!)
      let last = before
      let waited = 0
      const timer = setInterval(() => {
        const now = processorTime(process.pid!)
        waited = now === last ? waited + lookEvery : 0
        last = now
        if (now - before > longestMilliseconds || waited > longestWait) ranForEver()
      }, lookEvery)
      process.once('exit', ranForEver)
      process.once('message', (told: FileRun) => {
        clearInterval(timer)
        process.removeAllListeners('exit')
        resolve(told)
      })
      process.send(order)
    })
  }
  return { run, close }
}

/** What a process has taken so far, milliseconds; where the system does not tell, what the clock says. */
function processorTime(pid: number): number {
  const stat = `/proc/${pid}/stat`
  if (!existsSync(stat)) return performance.now()
  // Its name stands in brackets; the 14th and 15th field are user and system time in hundredths of a second (proc(5)).
  const [user, system] = readFileSync(stat, 'utf8').split(') ').at(-1)!.split(' ').slice(11, 13)
  return 10 * (Number(user) + Number(system))
}
