import { longestRunInches } from '../../core/units/longest-run.ts'
import type { RunProblem } from '../../words/problems/run.ts'
import type { ShapeProblem } from '../../words/problems/shape.ts'
import { type LengthRangeName, lengthRanges, type RangeName, ranges } from './ranges.ts'

/** What was expected of a number that lies outside its range; null inside it. */
export function numberFault(name: RangeName, value: number): ShapeProblem | null {
  const { least, most } = ranges[name]
  if (value < least) return { kind: 'number bound', bound: 'at least', value: least }
  return value > most ? { kind: 'number bound', bound: 'at most', value: most } : null
}

/** What was expected of a length, m, that lies outside its range; null inside it. */
export function lengthFault(name: LengthRangeName, metres: number): ShapeProblem | null {
  const { least, most } = lengthRanges[name]
  return metres >= least && metres <= most ? null : { kind: 'value between', least, most, unit: 'm' }
}

/** What is expected of one run, and what to do with a longer one. */
export const longestRun: RunProblem = { kind: 'longest run', inches: longestRunInches }
