import { azimuthFrom, distance } from '../../core/geometry/point.ts'
import { drawnSizes, railFace } from '../../core/scene/drawn-sizes.ts'
import { inches } from '../../core/units/quantity.ts'
import { axis2, axis3, direction, type Place, point2 } from './geometry.ts'
import type { IfcPanel, IfcPost, Outward } from './ifc-run.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, list, real, unset } from './step-values.ts'

/** Sizes that the hardware sheets do not state, in words; the block is the space between rail and post and has no body. */
export const sizesInWords = `nominal, for the picture only: rail ${drawnSizes.beam} in high, ${drawnSizes.beamDepth} in deep and ${drawnSizes.beamSteel} in thick; block ${drawnSizes.blockDepth} in; post ${drawnSizes.postDepth} in by ${drawnSizes.postDepth} in, from the ground to the top of rail`

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
  const behind = inches(drawnSizes.beamDepth + (block ? drawnSizes.blockDepth : 0) + drawnSizes.postDepth / 2)
  const { x } = alongAxes(azimuth)
  const profile = step.share('IfcRectangleProfileDef', [
    enumeration('AREA'),
    unset,
    axis2(step, { easting: sideways(outward) * behind, northing: 0 }, 0),
    real(inches(drawnSizes.postDepth)),
    real(inches(drawnSizes.postDepth)),
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
  const face = railFace.map(([behind, below]) => corner(behind, below))
  const back = railFace.map(([behind, below]) => corner(behind + drawnSizes.beamSteel, below)).reverse()
  const round = [...face, ...back]
  const against = sign > 0 ? round : round.reverse()
  return step.share('IfcArbitraryClosedProfileDef', [
    enumeration('AREA'),
    unset,
    step.share('IfcPolyline', [list([...against, against[0]!])]),
  ])
}
