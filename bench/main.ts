import { cpus } from 'node:os'
import { benchFaultyRuns } from './faulty-runs.ts'
import { benchHandOn } from './hand-on.ts'
import { benchIntegerProgram } from './integer-program.ts'
import { benchLayouts } from './layouts.ts'
import type { BenchRow } from './measure.ts'
import { benchNeeds } from './needs.ts'
import { benchPacket } from './packet.ts'
import { benchPage } from './page/main.ts'
import { benchRunList } from './run-list.ts'
import { benchTakeHome } from './take-home.ts'
import { benchVerdicts } from './verdicts.ts'

type Rows = readonly BenchRow[]
type Bench = () => Rows | Promise<Rows> | AsyncIterable<Rows>

const benches: Readonly<Record<string, Bench>> = {
  layouts: benchLayouts,
  verdicts: benchVerdicts,
  'faulty-runs': benchFaultyRuns,
  'integer-program': benchIntegerProgram,
  needs: benchNeeds,
  packet: benchPacket,
  'run-list': benchRunList,
  'hand-on': benchHandOn,
  page: benchPage,
  'take-home': benchTakeHome,
}

/** Those that are named on the command line; without a name all. */
const wanted = process.argv.length > 2 ? process.argv.slice(2) : Object.keys(benches)
const unknown = wanted.filter((name) => !Object.hasOwn(benches, name))
if (unknown.length > 0) throw new Error(`${unknown.join(', ')} is none of: ${Object.keys(benches).join(', ')}`)

const processors = cpus()
print([`${processors[0]?.model.trim() ?? 'unknown processor'} (${processors.length}), Node ${process.version}`])
for (const name of wanted) {
  const bench = benches[name]!()
  for await (const rows of Symbol.asyncIterator in bench ? bench : [bench]) print(rows.map(lineOf))
}

function lineOf({ what, figure, aim }: BenchRow): string {
  return `${what.padEnd(72)}${figure.padEnd(36)}${aim === '' ? '' : `aim: ${aim}`}`.trimEnd()
}

function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join('\n')}\n`)
}
