import type { Point } from '../../core/geometry/point.ts'
import { groundFromMetres, metresFromGround } from '../../core/units/ground-unit.ts'
import { inches } from '../../core/units/quantity.ts'
import type { ReferenceSystem } from '../map/reference-system.ts'
import type { LengthName } from './ifc-run.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { derived, enumeration, exactReal, integer, label, real, text, typed, unset } from './step-values.ts'

const siUnit = (step: StepLines, kind: string, name: string): StepReference =>
  step.share('IfcSIUnit', [derived, enumeration(kind), unset, enumeration(name)])

const metre = (step: StepLines): StepReference => siUnit(step, 'LENGTHUNIT', 'METRE')

/** The units of every number that does not name its own: metre, square metre, cubic metre, radian. */
export const projectUnits = (step: StepLines): readonly StepReference[] => [
  metre(step),
  siUnit(step, 'AREAUNIT', 'SQUARE_METRE'),
  siUnit(step, 'VOLUMEUNIT', 'CUBIC_METRE'),
  siUnit(step, 'PLANEANGLEUNIT', 'RADIAN'),
]

export function lengthUnit(step: StepLines, name: LengthName): StepReference {
  if (name === 'metre') return metre(step)
  const size = name === 'inch' ? inches(1) : metresFromGround(1, name)
  const isLength = [1, 0, 0, 0, 0, 0, 0].map(integer)
  return step.share('IfcConversionBasedUnit', [
    step.share('IfcDimensionalExponents', isLength),
    enumeration('LENGTHUNIT'),
    text(name),
    step.share('IfcMeasureWithUnit', [typed('IfcLengthMeasure', exactReal(size)), metre(step)]),
  ])
}

/** A place near `point` from which the file counts its coordinates, m: whole thousands of the system's own unit. */
export function localOrigin({ unit }: ReferenceSystem, { easting, northing }: Point): Point {
  const round = (length: number): number =>
    metresFromGround(Math.floor(groundFromMetres(length, unit) / 1000) * 1000, unit)
  return { easting: round(easting), northing: round(northing) }
}

/**
 * Where the file's coordinates lie in the reference system: the origin in the system's unit, and as scale the number of
 * such units in a metre.
 * @param context  whose coordinates they are
 * @param origin   in the plane of the system, m
 * @source ISO 16739-1:2024, IfcMapConversion: the scale is used where the unit of the map is not that of the project
 */
export function mapConversion(
  step: StepLines,
  context: StepReference,
  { code, name, unit }: ReferenceSystem,
  origin: Point,
): void {
  const target = step.add('IfcProjectedCRS', [
    text(`EPSG:${code}`),
    label(name),
    unset,
    unset,
    unset,
    unset,
    lengthUnit(step, unit),
  ])
  step.add('IfcMapConversion', [
    context,
    target,
    real(groundFromMetres(origin.easting, unit)),
    real(groundFromMetres(origin.northing, unit)),
    exactReal(0),
    exactReal(1),
    exactReal(0),
    exactReal(groundFromMetres(1, unit)),
  ])
}
