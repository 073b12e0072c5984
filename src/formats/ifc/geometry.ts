import type { Point } from '../../core/geometry/point.ts'
import type { Metres, Radians } from '../../core/units/quantity.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, exactReal, list, real, type StepValue, text, typed, unset } from './step-values.ts'

/** A place in the file's own coordinates, m. */
export interface Place extends Point {
  readonly elevation: Metres
}

export const point2 = (step: StepLines, { easting, northing }: Point): StepReference =>
  step.share('IfcCartesianPoint', [list([real(easting), real(northing)])])

export const point3 = (step: StepLines, { easting, northing, elevation }: Place): StepReference =>
  step.share('IfcCartesianPoint', [list([real(easting), real(northing), real(elevation)])])

export const direction = (step: StepLines, ratios: readonly number[]): StepReference =>
  step.share('IfcDirection', [list(ratios.map((ratio) => exactReal(Math.round(ratio * 1e12) / 1e12)))])

/** @param angle  of its x-axis from east, against the clock */
export const axis2 = (step: StepLines, at: Point, angle: Radians): StepReference =>
  step.share('IfcAxis2Placement2D', [point2(step, at), direction(step, [Math.cos(angle), Math.sin(angle)])])

/** @param axes  directions of its z-axis and x-axis; left out where they are those of the whole */
export const axis3 = (step: StepLines, at: Place, axes?: readonly [z: number[], x: number[]]): StepReference =>
  step.share('IfcAxis2Placement3D', [
    point3(step, at),
    ...(axes === undefined ? [unset, unset] : axes.map((ratios) => direction(step, ratios))),
  ])

export const localPlacement = (step: StepLines, within: StepValue, axes: StepReference): StepReference =>
  step.share('IfcLocalPlacement', [within, axes])

export const lengthMeasure = (length: Metres): StepValue => typed('IfcLengthMeasure', real(length))

/** The x-axis of a plane, of no particular length. */
export const line2 = (step: StepLines): StepReference =>
  step.share('IfcLine', [
    point2(step, { easting: 0, northing: 0 }),
    step.share('IfcVector', [direction(step, [1, 0]), real(1)]),
  ])

export type Transition = 'DISCONTINUOUS' | 'CONTINUOUS' | 'CONTSAMEGRADIENT' | 'CONTSAMEGRADIENTSAMECURVATURE'

/** The part of `curve` from `start` on, `length` m long, moved so that it begins at `placement`. */
export const curveSegment = (
  step: StepLines,
  transition: Transition,
  placement: StepReference,
  start: Metres,
  length: Metres,
  curve: StepReference,
): StepReference =>
  step.add('IfcCurveSegment', [enumeration(transition), placement, lengthMeasure(start), lengthMeasure(length), curve])

export type Representation = readonly [identifier: string, type: string, items: readonly StepReference[]]

/** The shape of one product or more. */
export const shape = (
  step: StepLines,
  context: StepReference,
  representations: readonly Representation[],
): StepReference =>
  step.add('IfcProductDefinitionShape', [
    unset,
    unset,
    list(
      representations.map(([identifier, type, items]) =>
        step.add('IfcShapeRepresentation', [context, text(identifier), text(type), list(items)]),
      ),
    ),
  ])
