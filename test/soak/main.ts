// Tries mutated files on every reader and on what follows it, in processes that are watched: nothing may end with a
// trace or take more than 10 s (a whole packet: 60 s). `npm run soak -- MINUTES SEED` (10 and 1 when left out); what fell is in test-results/soak.
import { type ChildProcess, fork } from 'node:child_process'
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Job, Report } from './child.ts'
import { inputOf } from './input-of.ts'
import { subjects } from './subjects.ts'

const [minutes = 10, seed = 1] = process.argv.slice(2).map(Number)
/** Typesetting a whole packet takes seconds by itself. */
const longest = (subject: string): number => (subject === 'packet' ? 60_000 : 10_000)
const results = fileURLToPath(new URL('../../test-results/soak/', import.meta.url))
const until = performance.now() + minutes * 60_000

interface Count {
  tried: number
  through: number
  slowest: number
}
const counts = new Map(subjects.map(({ name }): [string, Count] => [name, { tried: 0, through: 0, slowest: 0 }]))
/** Whole packets take seconds each, so that few are made. */
const turns = subjects.flatMap(({ name }) => (name === 'packet' ? [name] : Array<string>(60).fill(name)))
const spread = turns.map((_, i) => turns[(i * 61) % turns.length]!)
let next = 0
const fallen = new Map<string, number>()

function keep(job: Job, what: string): void {
  const first = what.split('\n').slice(0, 2).join(' ').trim()
  const times = (fallen.get(first) ?? 0) + 1
  fallen.set(first, times)
  if (times > 3) return
  mkdirSync(results, { recursive: true })
  const subject = subjects.find(({ name }) => name === job.subject)!
  const file = `${results}${job.subject}-${job.seed}-${job.n}`
  writeFileSync(file, inputOf(subject, job.seed, job.n))
  writeFileSync(`${file}.txt`, what)
  process.stdout.write(`${job.subject} ${job.n}: ${first}\n  kept as ${file}\n`)
}

function begin(): Promise<void> {
  return new Promise((resolve) => {
    const child: ChildProcess = fork(new URL('./child.ts', import.meta.url), { execArgv: process.execArgv })
    let job: Job | null = null
    let watch: NodeJS.Timeout | undefined
    const give = (): void => {
      if (performance.now() > until) {
        child.kill()
        resolve()
        return
      }
      const n = next++
      job = { subject: spread[n % spread.length]!, seed, n }
      watch = setTimeout(() => child.kill('SIGKILL'), longest(job.subject))
      child.send(job)
    }
    child.on('message', (message: Report | 'ready') => {
      clearTimeout(watch)
      if (message !== 'ready') {
        const count = counts.get(message.subject)!
        count.tried++
        if (message.outcome === 'through') count.through++
        count.slowest = Math.max(count.slowest, message.milliseconds)
        if (message.trace !== null) keep(message, message.trace)
        job = null
      }
      give()
    })
    child.on('exit', () => {
      clearTimeout(watch)
      if (job === null) return
      keep(job, `no answer within ${longest(job.subject) / 1000} s, or the process ended`)
      resolve(begin())
    })
  })
}

await Promise.all([begin(), begin()])
const tried = [...counts.values()].reduce((sum, count) => sum + count.tried, 0)
process.stdout.write(`${tried} inputs in ${minutes} min, seed ${seed}\n`)
for (const [name, { tried: of, through, slowest }] of counts)
  process.stdout.write(
    `  ${name.padEnd(9)} ${String(of).padStart(7)} tried, ${String(through).padStart(7)} through, slowest ${(slowest / 1000).toFixed(2)} s\n`,
  )
process.stdout.write(fallen.size === 0 ? 'nothing fell\n' : `${fallen.size} ways to fall\n`)
process.exitCode = fallen.size === 0 ? 0 : 1
