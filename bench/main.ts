import { cpus } from 'node:os'
import { benchFaultyRuns } from './faulty-runs.ts'
import { benchIntegerProgram } from './integer-program.ts'
import { benchLayouts } from './layouts.ts'
import type { BenchRow } from './measure.ts'
import { benchNeeds } from './needs.ts'
import { benchPacket } from './packet.ts'
import { benchPage } from './page/main.ts'
import { benchRunList } from './run-list.ts'
import { benchVerdicts } from './verdicts.ts'

const benches: readonly (() => readonly BenchRow[] | Promise<readonly BenchRow[]>)[] = [
  benchLayouts,
  benchVerdicts,
  benchFaultyRuns,
  benchIntegerProgram,
  benchNeeds,
  benchPacket,
  benchRunList,
  benchPage,
]

const processors = cpus()
print([`${processors[0]?.model.trim() ?? 'unknown processor'} (${processors.length}), Node ${process.version}`])
for (const bench of benches) print((await bench()).map(lineOf))

function lineOf({ what, figure, aim }: BenchRow): string {
  return `${what.padEnd(72)}${figure.padEnd(36)}${aim === '' ? '' : `aim: ${aim}`}`.trimEnd()
}

function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join('\n')}\n`)
}
