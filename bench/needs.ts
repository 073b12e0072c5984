import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { findNeed } from '../src/core/need/need.ts'
import { type BenchRow, figure, medianMilliseconds, milliseconds } from './measure.ts'
import { type RoadKind, randomSite, seeded } from './random-sites.ts'

const million = 1_000_000

/** Needs a second by kind of road, and a million sites written as lines of JSON. */
export function benchNeeds(): readonly BenchRow[] {
  return [
    ...(['straight', 'curve', 'spiral'] as const).map(perSecond),
    stream('straight', 'under 20 s, under 300 MB'),
    stream('mixed', 'under 120 s, under 300 MB'),
  ]
}

/** Sites are made before the clock starts. */
function perSecond(road: RoadKind): BenchRow {
  const random = seeded(7)
  const sites = Array.from({ length: road === 'spiral' ? 2_000 : 20_000 }, () => randomSite(random, road))
  const pass = (): void => {
    for (const site of sites) findNeed(site)
  }
  const rate = (1000 * sites.length) / medianMilliseconds(pass, 3, 9)
  return { what: `needs of a two-way ${road} road, both directions`, figure: `${figure(rate)} sites a second`, aim: '' }
}

function stream(roads: 'straight' | 'mixed', aim: string): BenchRow {
  const folder = mkdtempSync(join(tmpdir(), 'lapwise-bench-'))
  const file = join(folder, 'needs.ndjson')
  const program = fileURLToPath(new URL('need-stream.ts', import.meta.url))
  let peak = ''
  const spent = milliseconds(() => {
    peak = spawnSync(process.execPath, ['--import', 'tsx', program, String(million), roads, file], {
      encoding: 'utf8',
    }).stdout.trim()
  })
  const bytes = statSync(file).size
  rmSync(folder, { recursive: true })
  return {
    what: `1,000,000 ${roads} sites to lines of JSON, one process`,
    figure: `${figure(spent / 1000)} s, ${peak} MB, ${figure(bytes / 1e6)} MB written`,
    aim,
  }
}
