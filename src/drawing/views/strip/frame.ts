import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import { printLength } from '../../../core/units/print-length.ts'
import { point } from '../../draw.ts'
import type { Point } from '../../drawing.ts'
import type { StripEnd, StripInput } from './strip-input.ts'

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
 * How far the face of rail lies behind the line of the run at `along`, inches: from the flares of both ends.
 * A straight flare runs out evenly, a parabola with the square of the distance. Nothing where no offset is stated.
 */
function lateralOffset(input: StripInput, along: number): number {
  const { posts } = input.layout
  const first = flareOf(input.first)
  const second = flareOf(input.second)
  const fromFirst = along - (posts[0]?.alongInches ?? 0)
  const fromSecond = (posts.at(-1)?.alongInches ?? 0) - along
  return (first ? first.at(fromFirst) : 0) + (second ? second.at(fromSecond) : 0)
}

function flareOf(end: StripEnd): { over: number; bends: number; at: (fromPostOne: number) => number } | null {
  const flare = end.sheet?.flare ?? 'none'
  if (flare === 'none' || flare.offset.nominal === 'notStated') return null
  const offset = lengthIn(exactLength(flare.offset.nominal, flare.offset.unit), 'in')
  const power = flare.shape === 'parabola' ? 2 : 1
  return {
    over: flare.overInches,
    bends: flare.shape === 'parabola' ? 16 : 1,
    // Beyond post 1 the rail goes on in the direction it has there.
    at: (fromPostOne) => {
      const left = (flare.overInches - fromPostOne) / flare.overInches
      return left <= 0 ? 0 : left > 1 ? offset * (1 + power * (left - 1)) : offset * left ** power
    },
  }
}

function flareBends(input: StripInput): number[] {
  const { posts } = input.layout
  const steps = (end: StripEnd): number[] => {
    const flare = flareOf(end)
    return flare ? Array.from({ length: flare.bends + 1 }, (_, i) => (flare.over * i) / flare.bends) : []
  }
  const first = posts[0]?.alongInches ?? 0
  const last = posts.at(-1)?.alongInches ?? 0
  const all = [...steps(input.first).map((step) => first + step), ...steps(input.second).map((step) => last - step)]
  return all.sort((a, b) => a - b)
}

/** A length along the rail as the strip writes it: `9' 4 1/2"`, or metres. */
export const lengthLabel = (input: StripInput, inches: number): string =>
  printLength(exactLength(inches, 'in'), input.units === 'metric' ? 'metres' : 'feet-inches-short')
