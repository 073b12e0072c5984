import type { AsBuilt } from '../core/drill/as-built.ts'
import { buildScene } from '../core/scene/build-scene.ts'
import type { Scene } from '../core/scene/scene.ts'
import { exaggerated, standingAsAsked } from '../core/scene/standing.ts'
import { standingAsBuilt } from '../core/scene/standing-as-built.ts'
import { standingAsRead } from '../core/scene/standing-as-read.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-by.ts'

/**
 * The run in three dimensions as it was read, what nobody read as it was asked for.
 *
 * @param factor  how many times their size heights and offsets stand from what was asked; 1 is true
 */
export function runScene({ model, judgement, readings, run }: JudgedRun, factor: number): Scene {
  const read = standingAsRead(model, judgement.verdicts, readings)
  const standing = factor === 1 ? read : exaggerated(read, standingAsAsked(model), factor)
  return buildScene(model, standing, outwardOf(run))
}

/** The run of a drill in three dimensions as it really stands, whatever was read. */
export const drillScene = ({ model, requirements, run }: RequiredRun, built: AsBuilt): Scene =>
  buildScene(model, standingAsBuilt(model, built, requirements), outwardOf(run))

/** Adjacent traffic has the run at its right, but on the left of a road that it does not share with opposing traffic. */
const outwardOf = ({ road: { side, traffic } }: RunFile): 1 | -1 => (side === 'left' && traffic !== 'two-way' ? -1 : 1)
