// The process that stays warm: sources are transformed once, and evaluated anew for each run of a test file, so that
// what is computed while a module loads is under the mutant as well. Started and watched by watch-tests.ts.
import { createServer, createServerModuleRunner } from 'vite'
import type { ModuleEvaluator, ModuleRunner } from 'vite/module-runner'
import { switchName } from './plant-mutants.ts'
import { type Gathered, testFunctions } from './test-functions.ts'

/** One run of a test file that is asked for. */
export interface Order {
  readonly testFile: string
  /** The mutant in force; null for none. */
  readonly mutant: number | null
  /** Which tests of the file are run; all of them if null. */
  readonly tests: readonly number[] | null
  /** After so many visits to places with a mutant this one is taken to run for ever. */
  readonly greatestVisits: number
}

/** What became of it. */
export interface FileRun {
  readonly failure: string | null
  readonly testsRun: number
  /** Without a mutant in force: of each test the mutants that it reached, at the end those that loading reached. */
  readonly reached: readonly (readonly number[])[]
  readonly visits: number
  /** Processor time. */
  readonly milliseconds: number
}

const functionsName = '$testFunctions'
const functionsModule = `export const { it, test, describe, beforeAll, afterAll, expect } = globalThis.${functionsName}`
const globals = globalThis as unknown as Record<string, unknown>

process.once('message', (planted: Record<string, string>) => {
  const runner = openRunner(planted)
  process.on('message', async (order: Order) => {
    const opened = await runner
    opened.clearCache()
    process.send!(await runFile(order, (file) => opened.import(file)))
  })
})

/** Vite's own way to run sources on a server, with the planted texts instead of the files. */
async function openRunner(planted: Record<string, string>): Promise<ModuleRunner> {
  const server = await createServer({
    configFile: false,
    logLevel: 'error',
    appType: 'custom',
    server: { middlewareMode: true, watch: null, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true },
    ssr: { noExternal: ['vitest'] },
    plugins: [
      {
        name: 'mutants',
        enforce: 'pre',
        resolveId: (id) => (id === 'vitest' ? '\0vitest' : null),
        load: (id) => (id === '\0vitest' ? functionsModule : (planted[id] ?? null)),
      },
    ],
  })
  const options = { hmr: false, sourcemapInterceptor: false, evaluator: compilesOnce() } as const
  return createServerModuleRunner(server.environments.ssr, options)
}

/** Evaluates a module as vite's own evaluator does, but compiles it only the first time: half of what a run costs. */
function compilesOnce(): ModuleEvaluator {
  const AsyncFunction = Object.getPrototypeOf(async () => {}).constructor
  const compiled = new Map<string, (...values: unknown[]) => Promise<void>>()
  return {
    runInlinedModule: async (context, code, { id }) => {
      const run = compiled.get(id) ?? new AsyncFunction(...Object.keys(context), `'use strict'; ${code}`)
      compiled.set(id, run)
      await run(...Object.values(context))
    },
    runExternalModule: (file) => import(file),
  }
}

async function runFile(order: Order, load: (file: string) => Promise<unknown>): Promise<FileRun> {
  const started = process.cpuUsage()
  const gathered: Gathered = { tests: [], before: [] }
  globals[functionsName] = testFunctions(gathered)
  const watched = countVisits(order)
  let failure: string | null = null
  let testsRun = 0
  try {
    await load(order.testFile)
    for (const before of gathered.before) await before()
    for (const at of order.tests ?? gathered.tests.keys()) {
      watched.begin(at)
      testsRun++
      await gathered.tests[at]!.run()
    }
  } catch (error) {
    failure = String(error)
  }
  const { count, reached } = watched.told(gathered.tests.length)
  const ranForEver = count > order.greatestVisits
  const taken = process.cpuUsage(started)
  return {
    failure: ranForEver ? 'ran for ever' : failure,
    testsRun,
    reached,
    visits: count,
    milliseconds: (taken.user + taken.system) / 1000,
  }
}

// The switch is one function for the life of the process, so that it can be compiled into what calls it.
let inForce: number | null = null
let visits = 0
let greatestVisits = 0
let current = new Set<number>()
/** Of each mutant, which set had it last: asking a set itself millions of times takes many times as long. */
let lastIn: Set<number>[] = []
globals[switchName] = (id: number): boolean => {
  if (++visits > greatestVisits) throw new Error('too many visits')
  if (inForce === null && lastIn[id] !== current) {
    lastIn[id] = current
    current.add(id)
  }
  return id === inForce
}

/** Puts the mutant in force; without one, notes which are reached by which test. */
function countVisits(order: Order) {
  const loading = new Set<number>()
  const byTest = new Map<number, Set<number>>()
  inForce = order.mutant
  visits = 0
  greatestVisits = order.greatestVisits
  current = loading
  lastIn = []
  return {
    begin: (test: number) => {
      current = new Set()
      byTest.set(test, current)
    },
    told: (tests: number) => ({
      count: visits,
      reached: [...Array.from({ length: tests }, (_, at) => [...(byTest.get(at) ?? [])]), [...loading]],
    }),
  }
}
