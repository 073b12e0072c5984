import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect'

type Work = (...values: never[]) => unknown

/** What one test file asks for, in the order in which it asks. */
export interface Gathered {
  readonly tests: { readonly name: string; readonly run: () => unknown }[]
  readonly before: (() => unknown)[]
}

/**
 * The test functions of vitest as far as the tests of core use them, with its own `expect`: they gather what a file
 * asks for instead of running it, so that the file can be run again and again in one process.
 */
export function testFunctions(gathered: Gathered) {
  const names: string[] = []
  const it = (name: string, run: Work) => {
    gathered.tests.push({ name: [...names, name].join(' > '), run: run as () => unknown })
  }
  const describe = (name: string, run: Work) => {
    names.push(name)
    ;(run as () => unknown)()
    names.pop()
  }
  const skip = () => {}
  const test = Object.assign(it, { each: each(it), skipIf: (no: boolean) => (no ? skip : it) })
  return {
    it: test,
    test,
    describe: Object.assign(describe, { each: each(describe) }),
    beforeAll: (run: () => unknown) => void gathered.before.push(run),
    // What a file clears away at its end goes with the process.
    afterAll: skip,
    expect,
  }
}

/** The names of the cases need only tell them apart. */
const each =
  (one: (name: string, run: Work) => void) =>
  (cases: readonly unknown[]) =>
  (name: string, run: Work): void => {
    for (const [at, values] of cases.entries())
      one(`${name} (${at + 1})`, () => run(...((Array.isArray(values) ? values : [values]) as never[])))
  }

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)

const globals = globalThis as unknown as Record<symbol, object>
const expect = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  chai.expect,
  globals[ASYMMETRIC_MATCHERS_OBJECT],
) as unknown as typeof chai.expect
globals[GLOBAL_EXPECT] = expect
setState({ assertionCalls: 0 }, expect as never)
;(chai.expect as unknown as { extend: (to: unknown, matchers: unknown) => void }).extend(expect, customMatchers)
