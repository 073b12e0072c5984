import type { AlignmentElement, HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import { azimuthAlong, endOf } from '../../core/geometry/clothoid.ts'
import type { Point } from '../../core/geometry/point.ts'
import { turned } from '../../core/geometry/point.ts'
import { axis2, curveSegment, line2, point2, type Transition } from './geometry.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, real, type StepValue, unset } from './step-values.ts'

/** One segment of an alignment, said twice: by its design parameters and as a curve. */
export interface AlignmentSegment {
  readonly name: string
  readonly parameters: StepReference
  readonly curve: StepReference
}

/**
 * The elements of an alignment as segments, closed by the one without length that the standard asks for.
 *
 * There, curvature is positive to the left and directions count from east against the clock; here it is the reverse.
 * @param local  a point of the plane in the file's own coordinates
 * @source ISO 16739-1:2024, IfcAlignmentHorizontalSegment, IfcCurveSegment, IfcClothoid
 */
export function horizontalSegments(
  step: StepLines,
  { elements }: HorizontalAlignment,
  local: (point: Point) => Point,
): readonly AlignmentSegment[] {
  const last = elements.at(-1)!
  const segments = elements.map((element, i) => {
    const start = local(element.start)
    const direction = mathematical(element.azimuth)
    const next = elements[i + 1]
    const placement = axis2(step, start, direction)
    const transition = next === undefined ? 'CONTSAMEGRADIENT' : transitionTo(element, next)
    return {
      name: `H${i + 1}`,
      parameters: parameters(step, start, direction, element),
      curve: curveSegment(step, transition, placement, ...parentCurve(step, element)),
    }
  })
  const end = local(endOf(last))
  const direction = mathematical(azimuthAlong(last, last.length))
  const none = { length: 0, curvatureStart: 0, curvatureEnd: 0 }
  const placement = axis2(step, end, direction)
  return [
    ...segments,
    {
      name: `H${elements.length + 1}`,
      parameters: parameters(step, end, direction, none),
      curve: curveSegment(step, 'DISCONTINUOUS', placement, 0, 0, line2(step)),
    },
  ]
}

type Shape = Pick<AlignmentElement, 'length' | 'curvatureStart' | 'curvatureEnd'>

function parameters(step: StepLines, start: Point, direction: number, shape: Shape): StepReference {
  const { length, curvatureStart, curvatureEnd } = shape
  return step.add('IfcAlignmentHorizontalSegment', [
    unset,
    unset,
    point2(step, start),
    real(direction),
    radius(curvatureStart),
    radius(curvatureEnd),
    real(length),
    unset,
    enumeration(kindOf(shape)),
  ])
}

const kindOf = ({ curvatureStart, curvatureEnd }: Shape): 'LINE' | 'CIRCULARARC' | 'CLOTHOID' =>
  curvatureStart !== curvatureEnd ? 'CLOTHOID' : curvatureStart === 0 ? 'LINE' : 'CIRCULARARC'

/** 0 stands for a straight line. */
const radius = (curvature: number): StepValue => real(curvature === 0 ? 0 : -1 / curvature)

/** The curve that a segment is cut from, where on it the segment begins, and how long it is; all m. */
function parentCurve(step: StepLines, shape: Shape): [start: number, length: number, curve: StepReference] {
  const { length, curvatureStart, curvatureEnd } = shape
  switch (kindOf(shape)) {
    case 'LINE':
      return [0, length, line2(step)]
    case 'CIRCULARARC': {
      const circle = step.share('IfcCircle', [origin2(step), real(Math.abs(1 / curvatureStart))])
      return [0, curvatureStart < 0 ? length : -length, circle]
    }
    case 'CLOTHOID': {
      // curvature to the left at s from the inflection: A s / |A|³
      const sharpness = (curvatureStart - curvatureEnd) / length
      const constant = Math.sign(sharpness) / Math.sqrt(Math.abs(sharpness))
      const clothoid = step.share('IfcClothoid', [origin2(step), real(constant)])
      return [-curvatureStart / sharpness, length, clothoid]
    }
  }
}

const origin2 = (step: StepLines): StepReference => axis2(step, { easting: 0, northing: 0 }, 0)

function transitionTo(element: AlignmentElement, next: AlignmentElement): Transition {
  const bend = turned(next.azimuth - azimuthAlong(element, element.length))
  if (Math.abs(bend) > 1e-6) return 'CONTINUOUS'
  const isSmooth = Math.abs(next.curvatureStart - element.curvatureEnd) < 1e-9
  return isSmooth ? 'CONTSAMEGRADIENTSAMECURVATURE' : 'CONTSAMEGRADIENT'
}

/** From east, against the clock, in (-π, π]. */
const mathematical = (azimuth: number): number => turned(Math.PI / 2 - azimuth)
