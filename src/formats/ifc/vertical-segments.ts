import type { VerticalAlignment, VerticalIntersection } from '../../core/alignment/vertical-alignment.ts'
import type { Metres } from '../../core/units/quantity.ts'
import { axis2, curveSegment, line2, type Transition } from './geometry.ts'
import type { AlignmentSegment } from './horizontal-segments.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, exactReal, list, real, unset } from './step-values.ts'

/** A stretch of one grade, or of a parabola from one grade to another. */
export interface ProfilePiece {
  readonly station: Metres
  readonly length: Metres
  readonly elevation: Metres
  readonly gradeStart: number
  readonly gradeEnd: number
}

/** The pieces of a profile between two stations, in order. */
export function profilePieces({ intersections }: VerticalAlignment, from: Metres, to: Metres): readonly ProfilePiece[] {
  const last = intersections.length - 1
  const curve = (i: number): Metres => (i === 0 || i === last ? 0 : intersections[i]!.curveLength)
  return intersections
    .slice(1)
    .flatMap((point, i): ProfilePiece[] => {
      const before = intersections[i]!
      const grade = gradeBetween(before, point)
      const start = before.station + curve(i) / 2
      const tangent = {
        station: start,
        length: point.station - curve(i + 1) / 2 - start,
        elevation: before.elevation + (grade * curve(i)) / 2,
        gradeStart: grade,
        gradeEnd: grade,
      }
      const length = curve(i + 1)
      if (length === 0) return [tangent]
      const gradeEnd = gradeBetween(point, intersections[i + 2]!)
      const elevation = point.elevation - (grade * length) / 2
      return [tangent, { station: point.station - length / 2, length, elevation, gradeStart: grade, gradeEnd }]
    })
    .flatMap((piece) => cut(piece, from, to))
}

const gradeBetween = (before: VerticalIntersection, after: VerticalIntersection): number =>
  (after.elevation - before.elevation) / (after.station - before.station)

function cut(piece: ProfilePiece, from: Metres, to: Metres): readonly ProfilePiece[] {
  const low = Math.max(from - piece.station, 0)
  const high = Math.min(to - piece.station, piece.length)
  if (high - low < 1e-9) return []
  const bend = (piece.gradeEnd - piece.gradeStart) / piece.length
  return [
    {
      station: piece.station + low,
      length: high - low,
      elevation: elevationOn(piece, low),
      gradeStart: piece.gradeStart + bend * low,
      gradeEnd: piece.gradeStart + bend * high,
    },
  ]
}

const elevationOn = ({ elevation, gradeStart, gradeEnd, length }: ProfilePiece, x: Metres): Metres =>
  elevation + gradeStart * x + ((gradeEnd - gradeStart) * x * x) / (2 * length)

/**
 * The pieces as segments, closed by the one without length that the standard asks for.
 * @param pieces  at least one
 * @param begin   station at which the horizontal alignment begins
 * @source ISO 16739-1:2024, IfcAlignmentVerticalSegment, IfcGradientCurve
 */
export function verticalSegments(
  step: StepLines,
  pieces: readonly ProfilePiece[],
  begin: Metres,
): readonly AlignmentSegment[] {
  const last = pieces.at(-1)!
  const end: ProfilePiece = {
    station: last.station + last.length,
    length: 0,
    elevation: elevationOn(last, last.length),
    gradeStart: last.gradeEnd,
    gradeEnd: last.gradeEnd,
  }
  return [...pieces, end].map((piece, i, all) => {
    const along = piece.station - begin
    const isStraight = piece.gradeStart === piece.gradeEnd
    const placement = axis2(step, { easting: along, northing: piece.elevation }, Math.atan(piece.gradeStart))
    return {
      name: `V${i + 1}`,
      parameters: step.add('IfcAlignmentVerticalSegment', [
        unset,
        unset,
        real(along),
        real(piece.length),
        real(piece.elevation),
        exactReal(piece.gradeStart),
        exactReal(piece.gradeEnd),
        unset,
        enumeration(isStraight ? 'CONSTANTGRADIENT' : 'PARABOLICARC'),
      ]),
      curve: curveSegment(
        step,
        transitionTo(piece, all[i + 1]),
        placement,
        0,
        lengthOf(piece),
        isStraight ? line2(step) : parabola(step, piece),
      ),
    }
  })
}

function transitionTo({ gradeEnd }: ProfilePiece, next: ProfilePiece | undefined): Transition {
  if (next === undefined) return 'DISCONTINUOUS'
  return Math.abs(next.gradeStart - gradeEnd) < 1e-9 ? 'CONTSAMEGRADIENT' : 'CONTINUOUS'
}

// y = g1 x + (g2 - g1) x² / 2L
const parabola = (step: StepLines, { gradeStart, gradeEnd, length }: ProfilePiece): StepReference =>
  step.share('IfcPolynomialCurve', [
    axis2(step, { easting: 0, northing: 0 }, 0),
    list([exactReal(0), exactReal(1)]),
    list([exactReal(0), exactReal(gradeStart), exactReal((gradeEnd - gradeStart) / (2 * length))]),
    unset,
  ])

/** Along the curve itself: ∫ √(1 + y'²) dx, in closed form. */
function lengthOf({ gradeStart, gradeEnd, length }: ProfilePiece): Metres {
  if (gradeStart === gradeEnd) return length * Math.hypot(1, gradeStart)
  const primitive = (grade: number): number => (grade * Math.hypot(1, grade) + Math.asinh(grade)) / 2
  return ((primitive(gradeEnd) - primitive(gradeStart)) * length) / (gradeEnd - gradeStart)
}
