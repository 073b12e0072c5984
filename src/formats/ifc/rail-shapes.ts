import { azimuthFrom, distance } from '../../core/geometry/point.ts'
import { inches } from '../../core/units/quantity.ts'
import { axis2, axis3, direction, type Place, point2 } from './geometry.ts'
import type { IfcPanel, IfcPost, Outward } from './ifc-run.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, list, real, unset } from './step-values.ts'

/**
 * Sizes that the hardware sheets do not state, as drawn; common practice, for the picture only. The block is the space
 * between rail and post; it has no body of its own.
 */
const drawn = { railHeight: 12.25, railDepth: 3.25, railSteel: 0.105, block: 8, post: 6 }

/** The same in words, for the file. */
export const drawnSizes = `nominal, for the picture only: rail ${drawn.railHeight} in high, ${drawn.railDepth} in deep and ${drawn.railSteel} in thick; block ${drawn.block} in; post ${drawn.post} in by ${drawn.post} in, from the ground to the top of rail`

/** Face of the double corrugation: inches behind the foremost line and below the top; the shape is generic. */
const valley = drawn.railDepth - drawn.railSteel
const corrugation: readonly (readonly [behind: number, below: number])[] = [
  [valley, 0],
  [valley, 0.7],
  [0, 2.4],
  [0, 3.5],
  [valley, 5.2],
  [valley, 7.05],
  [0, 8.75],
  [0, 9.85],
  [valley, 11.55],
  [valley, drawn.railHeight],
]

/** Bodies of a panel, one for each straight piece, in coordinates from its first place. */
export function panelBodies(step: StepLines, { line, top, outward }: IfcPanel): readonly StepReference[] {
  const profile = railProfile(step, outward)
  const first = line[0]!
  return line.slice(1).map((to, i) => {
    const from = line[i]!
    const flat = distance(from, to)
    const rise = to.elevation - from.elevation
    const long = Math.hypot(flat, rise)
    const { z, x } = alongAxes(azimuthFrom(from, to))
    const at: Place = {
      easting: from.easting - first.easting,
      northing: from.northing - first.northing,
      elevation: from.elevation - first.elevation + top,
    }
    // the section stays upright where the road rises, so that pieces meet
    return step.add('IfcExtrudedAreaSolid', [
      profile,
      axis3(step, at, [z, x]),
      direction(step, [0, rise / long, flat / long]),
      real(long),
    ])
  })
}

/** The body of a post, in coordinates from the face of rail on the ground before it. */
export function postBody(step: StepLines, { azimuth, outward, block, top }: IfcPost): StepReference {
  const behind = inches(drawn.railDepth + (block ? drawn.block : 0) + drawn.post / 2)
  const { x } = alongAxes(azimuth)
  const profile = step.share('IfcRectangleProfileDef', [
    enumeration('AREA'),
    unset,
    axis2(step, { easting: sideways(outward) * behind, northing: 0 }, 0),
    real(inches(drawn.post)),
    real(inches(drawn.post)),
  ])
  const at: Place = { easting: 0, northing: 0, elevation: 0 }
  return step.add('IfcExtrudedAreaSolid', [
    profile,
    axis3(step, at, [[0, 0, 1], x]),
    direction(step, [0, 0, 1]),
    real(top),
  ])
}

/** Axes of a section square to a line with this azimuth: z along it, x to its left, so that y points up. */
const alongAxes = (azimuth: number): { readonly z: number[]; readonly x: number[] } => ({
  z: [Math.sin(azimuth), Math.cos(azimuth), 0],
  x: [-Math.cos(azimuth), Math.sin(azimuth), 0],
})

const sideways = (outward: Outward): 1 | -1 => (outward === 'left' ? 1 : -1)

function railProfile(step: StepLines, outward: Outward): StepReference {
  const sign = sideways(outward)
  const corner = (behind: number, below: number): StepReference =>
    point2(step, { easting: sign * inches(behind), northing: inches(-below) })
  const face = corrugation.map(([behind, below]) => corner(behind, below))
  const back = corrugation.map(([behind, below]) => corner(behind + drawn.railSteel, below)).reverse()
  const round = [...face, ...back]
  const against = sign > 0 ? round : round.reverse()
  return step.share('IfcArbitraryClosedProfileDef', [
    enumeration('AREA'),
    unset,
    step.share('IfcPolyline', [list([...against, against[0]!])]),
  ])
}
