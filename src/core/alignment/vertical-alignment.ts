import { err, ok, type Result } from '../result.ts'
import type { Metres } from '../units/quantity.ts'

/** A point of vertical intersection, with the length of the symmetrical parabola that rounds it (0: none). */
export interface VerticalIntersection {
  readonly station: Metres
  readonly elevation: Metres
  readonly curveLength: Metres
}

/** Grades joined by parabolas; stations rise strictly and curves do not overlap. */
export interface VerticalAlignment {
  readonly intersections: readonly VerticalIntersection[]
}

export type VerticalProblem =
  | { readonly kind: 'too-few' }
  | { readonly kind: 'stations-fall-back'; readonly index: number }
  | { readonly kind: 'curves-overlap'; readonly index: number; readonly overlap: Metres }

/** The vertical alignment of these points, or the first place where they do not make one. */
export function verticalAlignment(
  intersections: readonly VerticalIntersection[],
): Result<VerticalAlignment, VerticalProblem> {
  if (intersections.length < 2) return err({ kind: 'too-few' })
  for (let index = 1; index < intersections.length; index++) {
    const [before, here] = [intersections[index - 1]!, intersections[index]!]
    if (here.station <= before.station) return err({ kind: 'stations-fall-back', index })
    const overlap = (before.curveLength + here.curveLength) / 2 - (here.station - before.station)
    if (overlap > 1e-9) return err({ kind: 'curves-overlap', index, overlap })
  }
  return ok({ intersections })
}

export interface ProfilePlace {
  readonly elevation: Metres
  /** Rise per metre up-station; negative where the road falls. */
  readonly grade: number
}

/** Elevation and grade at `station`; null before the first and after the last point. */
export function profileAt(alignment: VerticalAlignment, station: Metres): ProfilePlace | null {
  const points = alignment.intersections
  const next = points.findIndex((point) => point.station >= station)
  if (next < 0 || station < points[0]!.station) return null
  const after = Math.max(next, 1)
  for (const index of [after - 1, after]) {
    const point = points[index]!
    const from = point.station - point.curveLength / 2
    const gradeIn = gradeBefore(points, index)
    const gradeOut = gradeBefore(points, index + 1)
    if (point.curveLength === 0 || Math.abs(station - point.station) > point.curveLength / 2) continue
    if (gradeIn === null || gradeOut === null) continue
    // y = y(PVC) + g1 x + (g2 - g1) x² / 2L, x from the start of the parabola
    const x = station - from
    const bend = (gradeOut - gradeIn) / point.curveLength
    const start = point.elevation - (gradeIn * point.curveLength) / 2
    return { elevation: start + gradeIn * x + (bend * x * x) / 2, grade: gradeIn + bend * x }
  }
  const grade = gradeBefore(points, after)!
  return { elevation: points[after]!.elevation + grade * (station - points[after]!.station), grade }
}

function gradeBefore(points: readonly VerticalIntersection[], index: number): number | null {
  const [before, here] = [points[index - 1], points[index]]
  if (before === undefined || here === undefined) return null
  return (here.elevation - before.elevation) / (here.station - before.station)
}
