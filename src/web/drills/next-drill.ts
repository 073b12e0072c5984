import type { NumberedDrill } from '../../core/drill/drill-number.ts'
import { makeDrill } from '../../core/drill/make-drill.ts'
import { type KindRecord, nextSeed } from '../../core/drill/next-drill.ts'
import { randomFrom } from '../../core/drill/random.ts'
import { runFromValue } from '../../formats/run/run-file.ts'
import { practiceRuns, practiceRunValue } from '../../operations/practice-runs.ts'
import { requireRun } from '../../operations/require-run.ts'
import { randomSeed } from './begin-drill.ts'

/** A terminal by itself with as many faults as one sees in some minutes. */
const wish = { faults: 4, size: 'mixed', decoys: 2 } as const

/** The next drill, weighted to the kinds that were missed most; what it is weighted by stays on this device. */
export function weightedDrill(records: readonly KindRecord[]): NumberedDrill {
  const random = randomFrom(randomSeed(), randomSeed())
  const site = random.below(practiceRuns.filter(({ kind }) => kind === 'terminal').length)
  const read = runFromValue('practice', practiceRunValue(practiceRuns[site]!, 'practice', 'us'))
  const required = read.ok ? requireRun('practice', read.value) : read
  if (!required.ok) throw new Error('a practice run is not sound', { cause: required.error })
  const { model, requirements } = required.value
  const kindsOf = (seed: number): readonly string[] =>
    makeDrill(model, requirements, { ...wish, seed }).faults.map(({ kind }) => kind)
  return { site, ...wish, seed: nextSeed(records, kindsOf, 10_000, random) }
}
