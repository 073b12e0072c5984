import { inches } from './quantity.ts'

/**
 * The longest run that is taken in, inches: 10 miles, our judgement. Longer barriers have a gap, a bridge or a crossing
 * somewhere; laid out and judged whole, this much still takes seconds. A longer one is split at a splice, and each part
 * is a run of its own that names the splice as the end where it goes on.
 */
export const longestRunInches = 633_600

/** The same in metres. */
export const longestRun = inches(longestRunInches)
