import type { Point } from './point.ts'

/** Points joined by straight lines, in order; at least one. */
export type Polyline = readonly Point[]
