import { readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { type Mutant, makeMutants } from './make-mutants.ts'
import { plantMutants } from './plant-mutants.ts'
import { refusedWords } from './refused-words.ts'
import type { FileRun } from './warm-tests.ts'
import { type WatchedTests, watchTests } from './watch-tests.ts'

/** `not reached`: no test runs its place, so that nothing was measured. */
export type Fate = 'killed' | 'ran for ever' | 'alive' | 'not reached'

export interface MeasuredMutant extends Mutant {
  readonly fate: Fate
  /** All test files that reach its place. */
  readonly reachedBy: readonly string[]
}

/** Which of the mutants are measured: each `every`-th one, the first of them after `from` others. */
export interface Sample {
  readonly every: number
  readonly from: number
}

/** Of a test file without a mutant: what it reaches, and what it costs. */
interface Reach {
  readonly testFile: string
  readonly run: FileRun
  readonly reachedByTest: readonly ReadonlySet<number>[]
}

/**
 * A test file that makes more visits to places with a mutant takes seconds; it is asked only about its own folder, and
 * about the rest of core when survivors are confirmed.
 */
const mostVisitsForAll = 8_000_000

/** A test that makes so many times the visits it makes without a mutant runs for ever. */
const visitsFactor = 20

/**
 * What becomes of every mutant of the modules.
 *
 * @param modules    absolute paths of sources
 * @param testFiles  absolute paths; each has to pass without a mutant, else the run is void
 */
export async function measureMutants(
  modules: readonly string[],
  testFiles: readonly string[],
  { every, from }: Sample,
  tell: (mutant: MeasuredMutant) => void,
): Promise<MeasuredMutant[]> {
  const mutants: Mutant[] = []
  const planted = new Map<string, string>()
  const refuses = refusedWords(modules)
  for (const file of modules) {
    const text = readFileSync(file, 'utf8')
    const own = makeMutants(file, text, mutants.length, refuses)
    planted.set(file, plantMutants(text, own))
    mutants.push(...own)
  }
  const tests = watchTests(planted)
  try {
    const reaches = await runWithoutMutant(tests, testFiles)
    const measured: MeasuredMutant[] = []
    for (const mutant of mutants) {
      if (mutant.id % every !== from) continue
      const one = { ...mutant, ...(await decideFate(mutant, reaches, tests)) }
      measured.push(one)
      tell(one)
    }
    return measured
  } finally {
    tests.close()
  }
}

async function runWithoutMutant(tests: WatchedTests, testFiles: readonly string[]): Promise<Reach[]> {
  const reaches: Reach[] = []
  for (const testFile of testFiles) {
    const run = await tests.run(
      { testFile, mutant: null, tests: null, greatestVisits: Number.MAX_SAFE_INTEGER },
      600_000,
    )
    if (run.failure !== null) throw new Error(`${testFile} fails without a mutant: ${run.failure}`)
    reaches.push({ testFile, run, reachedByTest: run.reached.map((ids) => new Set(ids)) })
  }
  return reaches.sort((a, b) => a.run.visits - b.run.visits)
}

async function decideFate(
  mutant: Mutant,
  reaches: readonly Reach[],
  tests: WatchedTests,
): Promise<Pick<MeasuredMutant, 'fate' | 'reachedBy'>> {
  const reaching = reaches
    .map((reach) => ({ reach, which: testsThatReach(mutant, reach) }))
    .filter(({ which }) => which.length > 0)
    .sort((a, b) => Number(isBeside(mutant, b.reach)) - Number(isBeside(mutant, a.reach)))
  const reachedBy = reaching.map(({ reach }) => reach.testFile)
  for (const { reach, which } of reaching) {
    if (reach.run.visits > mostVisitsForAll && !isInFolder(mutant, reach)) continue
    const order = { testFile: reach.testFile, mutant: mutant.id, tests: which }
    const greatestVisits = reach.run.visits * visitsFactor + 10_000
    const longest = reach.run.milliseconds * visitsFactor + 20_000
    const { failure, testsRun } = await tests.run({ ...order, greatestVisits }, longest)
    if (failure !== null) return { fate: failure === 'ran for ever' ? failure : 'killed', reachedBy }
    if (testsRun !== which.length) throw new Error(`${reach.testFile} ran ${testsRun} of ${which.length} tests`)
  }
  return { fate: reaching.length === 0 ? 'not reached' : 'alive', reachedBy }
}

/** Places in a file's order of its tests; all of them when the mutant is reached while the file loads. */
function testsThatReach({ id }: Mutant, { reachedByTest }: Reach): number[] {
  const loading = reachedByTest.length - 1
  const all = reachedByTest[loading]!.has(id)
  return Array.from({ length: loading }, (_, at) => at).filter((at) => all || reachedByTest[at]!.has(id))
}

const isInFolder = ({ file }: Mutant, { testFile }: Reach): boolean => dirname(file) === dirname(testFile)

const isBeside = ({ file }: Mutant, { testFile }: Reach): boolean =>
  testFile === join(dirname(file), `${basename(file, '.ts')}.test.ts`)
