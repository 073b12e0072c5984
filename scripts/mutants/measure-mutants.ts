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
    const failsAlone = failsWithoutMutant(tests)
    for (const mutant of mutants) {
      if (mutant.id % every !== from) continue
      const one = { ...mutant, ...(await decideFate(mutant, reaches, tests, failsAlone)) }
      measured.push(one)
      tell(one)
    }
    // What came to fail meanwhile, as where packages are exchanged, would have noticed every mutant since.
    await runWithoutMutant(tests, testFiles)
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

type FailsAlone = (testFile: string, which: readonly number[]) => Promise<boolean>

/**
 * Tells whether some tests of a file fail without a mutant when the others are left out, as where one rests on what
 * another has made: they would notice every mutant. Each choice is tried once.
 */
function failsWithoutMutant(tests: WatchedTests): FailsAlone {
  const known = new Map<string, boolean>()
  return async (testFile, which) => {
    const choice = `${testFile} ${which.join()}`
    if (!known.has(choice)) {
      const order = { testFile, mutant: null, tests: which, greatestVisits: Number.MAX_SAFE_INTEGER }
      known.set(choice, (await tests.run(order, 600_000)).failure !== null)
    }
    return known.get(choice)!
  }
}

async function decideFate(
  mutant: Mutant,
  reaches: readonly Reach[],
  tests: WatchedTests,
  failsAlone: FailsAlone,
): Promise<Pick<MeasuredMutant, 'fate' | 'reachedBy'>> {
  const reaching = reaches
    .map((reach) => ({ reach, which: testsThatReach(mutant, reach) }))
    .filter(({ which }) => which.length > 0)
    .sort((a, b) => Number(isBeside(mutant, b.reach)) - Number(isBeside(mutant, a.reach)))
  const reachedBy = reaching.map(({ reach }) => reach.testFile)
  for (const { reach, which } of reaching) {
    if (reach.run.visits > mostVisitsForAll && !isInFolder(mutant, reach)) continue
    const greatestVisits = reach.run.visits * visitsFactor + 10_000
    const order = { testFile: reach.testFile, mutant: mutant.id, tests: which, greatestVisits }
    const longest = reach.run.milliseconds * visitsFactor + 20_000
    const some = await tests.run(order, longest)
    const isOfUse = some.failure === null || !(await failsAlone(reach.testFile, which))
    const { failure } = isOfUse ? some : await tests.run({ ...order, tests: null }, longest)
    if (failure !== null) return { fate: failure === 'ran for ever' ? failure : 'killed', reachedBy }
    if (isOfUse && some.testsRun !== which.length)
      throw new Error(`${reach.testFile} ran ${some.testsRun} of ${which.length} tests`)
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
