import { buildScene } from '../core/scene/build-scene.ts'
import type { Scene } from '../core/scene/scene.ts'
import { exaggerated, standingAsAsked } from '../core/scene/standing.ts'
import { standingAsRead } from '../core/scene/standing-as-read.ts'
import type { JudgedRun } from './judge-readings.ts'

/**
 * The run in three dimensions as it was read, what nobody read as it was asked for.
 *
 * @param factor  how many times their size heights and offsets stand from what was asked; 1 is true
 */
export function runScene({ model, judgement, readings, run }: JudgedRun, factor: number): Scene {
  const read = standingAsRead(model, judgement.verdicts, readings)
  const standing = factor === 1 ? read : exaggerated(read, standingAsAsked(model), factor)
  const { side, traffic } = run.road
  // Adjacent traffic has the run at its right, but on the left of a road that it does not share with opposing traffic.
  return buildScene(model, standing, side === 'left' && traffic !== 'two-way' ? -1 : 1)
}
