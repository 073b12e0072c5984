import loadHighs from 'highs'
import type { LayoutRequest } from '../src/core/layout/layout.ts'
import { solveLayout } from '../src/core/layout/solve-layout.ts'
import { bestScore, fixedEndProgram } from '../test/referee/layout-program.ts'
import { mulberry32, randomRun } from '../test/referee/random-runs.ts'
import { type BenchRow, figure, median, milliseconds } from './measure.ts'

const runs = 100

/** The solver and the referee's integer program on the same small random runs with one end fixed. */
export async function benchIntegerProgram(): Promise<readonly BenchRow[]> {
  const highs = await loadHighs()
  const random = mulberry32(2016)
  const requests: LayoutRequest[] = []
  while (requests.length < runs) {
    const request = randomRun(random, requests.length % 2 === 0 ? 'first' : 'second')
    if (fixedEndProgram(request) !== null) requests.push(request)
  }
  const solver = (request: LayoutRequest): void => {
    const search = solveLayout(request)
    if (search.ok) search.value.runs[Symbol.iterator]().next()
  }
  const program = (request: LayoutRequest): void => {
    bestScore(highs, fixedEndProgram(request)!)
  }
  for (const request of requests) solver(request)
  for (const request of requests.slice(0, 20)) program(request)
  const ours = median(requests.map((request) => milliseconds(() => solver(request))))
  const theirs = median(requests.map((request) => milliseconds(() => program(request))))
  return [
    { what: `layout of a small run, median of ${runs}`, figure: `${figure(ours)} ms`, aim: '' },
    { what: '  the same by the integer program', figure: `${figure(theirs)} ms`, aim: '' },
    { what: '  the integer program takes', figure: `${figure(theirs / ours)} times as long`, aim: '' },
  ]
}
