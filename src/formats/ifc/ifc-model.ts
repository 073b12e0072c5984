import type { Point } from '../../core/geometry/point.ts'
import { axis3, direction, localPlacement, type Place } from './geometry.ts'
import { globalId } from './global-id.ts'
import type { IfcProperty, IfcRun, IfcValue } from './ifc-run.ts'
import { type StepLines, type StepReference, stepLines } from './step-file.ts'
import {
  derived,
  enumeration,
  exactReal,
  integer,
  label,
  list,
  type StepValue,
  text,
  truth,
  typed,
  unset,
} from './step-values.ts'
import { lengthUnit, localOrigin, mapConversion, projectUnits } from './units.ts'

/** A building model while it is written. */
export interface IfcModel {
  readonly step: StepLines
  readonly project: StepReference
  /** Contexts of lines, of bodies and of marks. */
  readonly axis: StepReference
  readonly body: StepReference
  readonly annotation: StepReference
  /** Placement at the origin of the file's coordinates, with axes to the east, to the north and up. */
  readonly ground: StepReference
  /** A point of the road's plane in the file's own coordinates. */
  local<P extends Point>(point: P): P
  /**
   * Adds an instance that has an identity of its own.
   * @param id    unlike any other of the run
   * @param rest  its values after name and description
   */
  root(
    entity: string,
    id: string,
    words: { readonly name?: string; readonly description?: string },
    rest: readonly StepValue[],
  ): StepReference
}

/** A model with its project, units, contexts and, where there is one, its place in a reference system. */
export function openModel(run: IfcRun, sha256: (content: string) => string): IfcModel {
  const step = stepLines()
  const root: IfcModel['root'] = (entity, id, { name, description }, rest) =>
    step.add(entity, [
      text(globalId(`${run.identity}/${id}`, sha256)),
      unset,
      name === undefined ? unset : label(name),
      description === undefined ? unset : text(description),
      ...rest,
    ])
  const origin = axis3(step, { easting: 0, northing: 0, elevation: 0 })
  const precision = exactReal(1e-5)
  const north = direction(step, [0, 1])
  const context = step.add('IfcGeometricRepresentationContext', [
    unset,
    text('Model'),
    integer(3),
    precision,
    origin,
    north,
  ])
  const units = step.add('IfcUnitAssignment', [list(projectUnits(step))])
  const project = root('IfcProject', 'project', { name: run.name }, [unset, unset, unset, list([context]), units])
  const zero = run.system === null ? { easting: 0, northing: 0 } : localOrigin(run.system, run.panels[0]!.line[0]!)
  if (run.system !== null) mapConversion(step, context, run.system, zero)
  return {
    step,
    project,
    axis: subcontext(step, context, 'Axis', 'GRAPH_VIEW'),
    body: subcontext(step, context, 'Body', 'MODEL_VIEW'),
    annotation: subcontext(step, context, 'Annotation', 'MODEL_VIEW'),
    ground: localPlacement(step, unset, origin),
    local: (point) => ({
      ...point,
      easting: point.easting - zero.easting,
      northing: point.northing - zero.northing,
    }),
    root,
  }
}

const subcontext = (step: StepLines, parent: StepReference, name: string, view: string): StepReference =>
  step.add('IfcGeometricRepresentationSubContext', [
    text(name),
    text('Model'),
    ...[derived, derived, derived, derived],
    parent,
    unset,
    enumeration(view),
    unset,
  ])

/** A placement without turning, at a place of the road's plane. */
export const placedAt = (model: IfcModel, place: Place): StepReference =>
  localPlacement(model.step, model.ground, axis3(model.step, model.local(place)))

/** Says that `parts`, of which there may be none, make up `whole`. */
export function aggregate(model: IfcModel, id: string, whole: StepReference, parts: readonly StepReference[]): void {
  if (parts.length > 0) model.root('IfcRelAggregates', `${id}/parts`, {}, [whole, list(parts)])
}

/** The same for an ordered row of parts. */
export function nest(model: IfcModel, id: string, whole: StepReference, parts: readonly StepReference[]): void {
  model.root('IfcRelNests', id, {}, [whole, list(parts)])
}

/** Gives `object` these properties under `name`. */
export function addProperties(
  model: IfcModel,
  id: string,
  object: StepReference,
  name: string,
  properties: readonly IfcProperty[],
): void {
  const values = properties.map((property) => singleValue(model.step, property))
  const set = model.root('IfcPropertySet', `${id}/${name}`, { name }, [list(values)])
  model.root('IfcRelDefinesByProperties', `${id}/${name}/of`, {}, [list([object]), set])
}

function singleValue(step: StepLines, { name, value }: IfcProperty): StepReference {
  const [nominal, unit] = written(step, value)
  return step.share('IfcPropertySingleValue', [label(name), unset, nominal, unit])
}

function written(step: StepLines, value: IfcValue): [value: StepValue, unit: StepValue] {
  switch (value.kind) {
    case 'text':
      return [typed('IfcText', text(value.text)), unset]
    case 'count':
      return [typed('IfcInteger', integer(value.count)), unset]
    case 'truth':
      return [typed('IfcBoolean', truth(value.yes)), unset]
    case 'length':
      return [typed('IfcLengthMeasure', exactReal(value.length)), lengthUnit(step, value.unit)]
    default:
      return value satisfies never
  }
}
