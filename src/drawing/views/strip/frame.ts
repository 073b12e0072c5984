import { type UnitFlare, unitFlare } from '../../../core/staking/unit-flare.ts'
import { exactLength } from '../../../core/units/exact-length.ts'
import { printLength } from '../../../core/units/print-length.ts'
import { inches } from '../../../core/units/quantity.ts'
import { point } from '../../draw.ts'
import type { Item, Point } from '../../drawing.ts'
import type { StripInput } from './strip-input.ts'

/** Room beside the rail's ends for what closes the run, points. */
export const leadPoints = 44

/** A stretch of rail that one band of the strip shows, inches along the rail from post 1. */
export interface Range {
  readonly from: number
  readonly to: number
}

/** Where things lie on one band: x is inches along the rail from post 1, y = 0 is the line of the run. */
export interface Frame {
  readonly input: StripInput
  readonly range: Range
  /** Inches in the world for one point on paper. */
  readonly perPoint: number
  /** Where the rail begins and ends. */
  readonly rail: Range
  /** Point `aside` points on the traffic side of the face of rail at `along`; negative is behind the rail. */
  readonly at: (along: number, aside: number) => Point
  /** Point at `along`, `points` above the line of the run, whatever the flare does. */
  readonly level: (along: number, points: number) => Point
  /** Offset of the face of rail at `along`, as drawn, in points below the line of the run. */
  readonly drawnOffset: (along: number) => number
  /** Places inside the range where the face of rail bends. */
  readonly bends: readonly number[]
}

/** One line of things under the rail: its name for the margin, its height, and what it draws below `top` (points). */
export interface Row {
  readonly name: string
  readonly height: number
  readonly draw: (top: number) => Item[]
}

export function stripFrame(input: StripInput, scale: number, range: Range): Frame {
  const perPoint = scale / 72
  const offset = (along: number): number => lateralOffset(input, along) * input.lateralExaggeration
  return {
    input,
    range,
    perPoint,
    rail: railRange(input),
    at: (along, aside) => point(along, aside * perPoint - offset(along)),
    level: (along, points) => point(along, points * perPoint),
    drawnOffset: (along) => offset(along) / perPoint,
    bends: flareBends(input).filter((along) => along > range.from && along < range.to),
  }
}

export const isWithin = (range: Range, along: number): boolean => along >= range.from && along < range.to

/** From the outermost panel's end to that of the other end; with no panel, from post to post. */
export function railRange({ layout }: StripInput): Range {
  const ends = [...layout.panels.flatMap((panel) => [panel.fromInches, panel.toInches])]
  for (const post of layout.posts) ends.push(post.alongInches)
  if (ends.length === 0) throw new RangeError('a layout without posts and panels cannot be drawn')
  return { from: ends.reduce((a, b) => Math.min(a, b)), to: ends.reduce((a, b) => Math.max(a, b)) }
}

/**
 * How far the face of rail lies behind the line of the run at `along`, inches: from the flares of both ends. Beyond the
 * unit's origin the rail goes on in the direction it has there. Nothing where no offset is stated.
 */
function lateralOffset(input: StripInput, along: number): number {
  return (['first', 'second'] as const)
    .map((end) => {
      const flare = flareOf(input, end)
      if (flare === null) return 0
      const fromOrigin = end === 'first' ? along - flare.originInches : flare.originInches - along
      const q = inches(Math.max(0, flare.overInches - fromOrigin))
      const { length } = flare.curve
      const away = flare.curve.away(Math.min(q, length)) + Math.max(0, q - length) * flare.curve.slope(length)
      return away / inches(1)
    })
    .reduce((a, b) => a + b)
}

const flareOf = (input: StripInput, end: 'first' | 'second'): UnitFlare | null => {
  const { sheet } = input[end]
  return sheet === null ? null : unitFlare(input.layout, end, sheet)
}

/** Where the face of rail bends; a parabola that is not drawn panel by panel bends in sixteen places. */
function flareBends(input: StripInput): number[] {
  const all = (['first', 'second'] as const).flatMap((end) => {
    const flare = flareOf(input, end)
    if (flare === null) return []
    const { originInches, overInches, corners, isCurved } = flare
    const pieces = isCurved ? 16 : 1
    const inward = [
      ...Array.from({ length: pieces + 1 }, (_, i) => (overInches * i) / pieces),
      ...corners.map((corner) => overInches - corner / inches(1)),
    ]
    return inward.map((one) => (end === 'first' ? originInches + one : originInches - one))
  })
  return all.sort((a, b) => a - b)
}

/** A length along the rail as the strip writes it: `9' 4 1/2"`, or metres. */
export const lengthLabel = (input: StripInput, inches: number): string =>
  printLength(exactLength(inches, 'in'), input.units === 'metric' ? 'metres' : 'feet-inches-short')
