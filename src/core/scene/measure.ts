import { inches, type Metres } from '../units/quantity.ts'
import type { Vector } from './scene.ts'

/** A point of a scene that was touched, and the width of what was touched with, as a pixel at its distance, m. */
export interface TouchedPoint {
  readonly at: Vector
  readonly fineness: Metres
}

/** A length to the nearest step of the tape, and twice its standard uncertainty, m. */
export interface TapedLength {
  readonly length: Metres
  readonly doubt: Metres
}

/** What lengths are taken with in a scene, by the points that each needs. */
export const measuringTools = { tape: 2, level: 1, 'string line': 3 } as const
export type MeasuringTool = keyof typeof measuringTools

/** The tape of a scene is read to a sixteenth of an inch. */
export const tapeStep: Metres = inches(1 / 16)

/**
 * What the tool reads: the straight distance of two points; the height of one above finish grade at the face of rail; the
 * offset of a third from the string between two, level, positive away from the road.
 *
 * Its doubt: each point lies anywhere within its fineness, the reading within a step of the tape, all as likely (JCGM
 * 100:2008, 4.3.7: a width over the root of 12), taken twice.
 *
 * @param outward  the side away from the road, as the scene has it
 * @returns null until the tool has its points, or where a string has no length
 */
export function measureScene(
  tool: MeasuringTool,
  points: readonly TouchedPoint[],
  outward: 1 | -1,
): TapedLength | null {
  const [a, b, c] = points
  if (a === undefined || points.length < measuringTools[tool]) return null
  const length = lengthOf(tool, a.at, b?.at ?? a.at, c?.at ?? a.at, outward)
  if (length === null) return null
  const widths = [tapeStep, ...points.map(({ fineness }) => fineness)]
  const doubt = 2 * Math.sqrt(widths.reduce((sum, width) => sum + width ** 2 / 12, 0))
  return { length: Math.round(length / tapeStep) * tapeStep, doubt }
}

function lengthOf(tool: MeasuringTool, a: Vector, b: Vector, c: Vector, outward: 1 | -1): Metres | null {
  switch (tool) {
    case 'tape':
      return Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)
    case 'level':
      return a.y
    case 'string line': {
      const [x, z] = [b.x - a.x, b.z - a.z]
      const long = Math.hypot(x, z)
      if (long < tapeStep) return null
      // The string points downstream, whichever end was touched first.
      const right = (x * (c.z - a.z) - z * (c.x - a.x)) / long
      return outward * (x < 0 ? -right : right)
    }
    default:
      return tool satisfies never
  }
}
