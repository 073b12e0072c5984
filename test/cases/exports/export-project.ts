import { layAlignment } from '../../../src/core/alignment/horizontal-alignment.ts'
import type { Result } from '../../../src/core/result.ts'
import { metresFromGround } from '../../../src/core/units/ground-unit.ts'
import type { InputProblem } from '../../../src/formats/input-problem.ts'
import { printProblem } from '../../../src/formats/input-problem.ts'
import { loadReferenceSystem, type ReferenceSystem } from '../../../src/formats/map/reference-system.ts'
import { readReadings } from '../../../src/formats/readings/readings-file.ts'
import { readRun } from '../../../src/formats/run/run-file.ts'
import { demoProject } from '../../../src/operations/demo-project.ts'
import { type JudgedRun, judgeReadings } from '../../../src/operations/judge-readings.ts'
import { type PlacedRun, placeRun, type RoadPlace } from '../../../src/operations/place-run.ts'
import { requireRun } from '../../../src/operations/require-run.ts'
import type { Stamp } from '../../../src/operations/write-exports.ts'
import { english } from '../../../src/words/english.ts'

export function sound<T>(result: Result<T, readonly InputProblem[]>): T {
  if (!result.ok) throw new Error(result.error.map((one) => printProblem(one, english(null))).join('\n'))
  return result.value
}

/** The demo run with its readings; `changes` replace fields of the run file. */
export function judgedDemo(changes: object = {}): JudgedRun {
  const demo = demoProject()
  const text = JSON.stringify({ ...(JSON.parse(demo.run) as object), ...changes })
  const required = sound(requireRun('run.json', sound(readRun('run.json', text))))
  const { readings } = sound(readReadings('readings.json', demo.readings))
  return sound(judgeReadings('readings.json', required, readings))
}

const usFeet = (length: number): number => metresFromGround(length, 'US survey foot')

/** An invented road of tangent, spiral and arc in NAD83 / New York East (EPSG:2260), in US survey feet. */
export const inventedRoad: RoadPlace = {
  horizontal: layAlignment(
    {
      // cs2cs EPSG:4269 EPSG:2260 puts 41 N, 74 W here
      point: { easting: usFeet(630128.2058), northing: usFeet(789591.521) },
      azimuth: 0.9,
      station: usFeet(20_000),
    },
    [
      { length: usFeet(700), curvatureStart: 0, curvatureEnd: 0 },
      { length: usFeet(150), curvatureStart: 0, curvatureEnd: 1 / usFeet(900) },
      { length: usFeet(600), curvatureStart: 1 / usFeet(900), curvatureEnd: 1 / usFeet(900) },
    ],
  ),
  equations: [],
  surface: null,
}

export const placedDemo = (judged: JudgedRun): PlacedRun =>
  sound(placeRun('run.json', judged, { offset: usFeet(12), road: inventedRoad, unit: 'US survey foot' }))

export async function newYorkEast(): Promise<ReferenceSystem> {
  const found = await loadReferenceSystem(2260)
  if (!found.ok) throw new Error(found.error.kind)
  return found.value
}

export const stamp: Stamp = { at: '2026-05-12T10:05:00.000Z', author: 'J. Okafor' }

export const atSplices = {
  boundaries: { first: { kind: 'splice' }, second: { kind: 'splice' } },
  rounding: '0.1 ft',
} as const
