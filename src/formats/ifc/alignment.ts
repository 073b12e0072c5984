import { endStation } from '../../core/alignment/horizontal-alignment.ts'
import type { Metres } from '../../core/units/quantity.ts'
import { axis3, lengthMeasure, type Representation, shape } from './geometry.ts'
import { type AlignmentSegment, horizontalSegments } from './horizontal-segments.ts'
import { addProperties, type IfcModel, nest } from './ifc-model.ts'
import type { IfcRun, IfcStation } from './ifc-run.ts'
import type { StepLines, StepReference } from './step-file.ts'
import { enumeration, list, truth, unset } from './step-values.ts'
import { profilePieces, verticalSegments } from './vertical-segments.ts'

/** The road's alignment with its segments and stations, as a part of the project. */
export function addAlignment(model: IfcModel, run: IfcRun): StepReference {
  const { step } = model
  const { alignment, profile } = run
  const begin = alignment.startStation
  const horizontal = horizontalSegments(step, alignment, model.local)
  const pieces = profile === null ? [] : profilePieces(profile, begin, endStation(alignment))
  const vertical = pieces.length === 0 ? [] : verticalSegments(step, pieces, begin)
  const plan = step.add('IfcCompositeCurve', [list(horizontal.map(({ curve }) => curve)), truth(false)])
  const representations: Representation[] =
    vertical.length === 0
      ? [['Axis', 'Curve2D', [plan]]]
      : [
          ['Axis', 'Curve3D', [gradientCurve(step, vertical, plan)]],
          ['FootPrint', 'Curve2D', [plan]],
        ]
  const whole = model.root('IfcAlignment', 'alignment', { name: run.road }, [
    unset,
    model.ground,
    shape(step, model.axis, representations),
    unset,
  ])
  const layouts = [
    addLayout(model, 'IfcAlignmentHorizontal', 'horizontal', horizontal),
    ...(vertical.length === 0 ? [] : [addLayout(model, 'IfcAlignmentVertical', 'vertical', vertical)]),
  ]
  nest(model, 'alignment/layouts', whole, layouts)
  nest(
    model,
    'alignment/stations',
    whole,
    run.stations.map((station) => addStation(model, station, begin, plan)),
  )
  return whole
}

const gradientCurve = (step: StepLines, segments: readonly AlignmentSegment[], plan: StepReference): StepReference =>
  step.add('IfcGradientCurve', [list(segments.map(({ curve }) => curve)), truth(false), plan, unset])

function addLayout(model: IfcModel, entity: string, id: string, segments: readonly AlignmentSegment[]): StepReference {
  const layout = model.root(entity, id, {}, [unset, model.ground, unset])
  const parts = segments.map(({ name, parameters, curve }) =>
    model.root('IfcAlignmentSegment', `${id}/${name}`, { name }, [
      unset,
      model.ground,
      shape(model.step, model.axis, [['Axis', 'Segment', [curve]]]),
      parameters,
    ]),
  )
  nest(model, `${id}/segments`, layout, parts)
  return layout
}

function addStation(model: IfcModel, station: IfcStation, begin: Metres, plan: StepReference): StepReference {
  const { step } = model
  const { id, name, kind, internal, incoming } = station
  const along = step.add('IfcPointByDistanceExpression', [lengthMeasure(internal - begin), unset, unset, unset, plan])
  const placement = step.add('IfcLinearPlacement', [
    unset,
    step.add('IfcAxis2PlacementLinear', [along, unset, unset]),
    // for readers that do not follow the line, and for the height
    axis3(step, model.local(station.place)),
  ])
  const referent = model.root('IfcReferent', id, { name }, [unset, placement, unset, enumeration(kind)])
  addProperties(model, id, referent, 'Pset_Stationing', [
    ...(incoming === null ? [] : [length('IncomingStation', incoming)]),
    length('Station', station.station),
  ])
  return referent
}

const length = (name: string, metres: Metres) =>
  ({ name, value: { kind: 'length', length: metres, unit: 'metre' } }) as const
