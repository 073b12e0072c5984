import type { RunRoad } from '../../formats/run/run-file.ts'
import { type Draft, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import { runInUnits } from './run-draft.ts'
import { words } from './words.ts'

/** What the run is called and where it is: the title block. */
/** @param projects  that other runs are listed under */
export function aboutFields(draft: Draft, projects: readonly string[]): readonly FormField[] {
  const { fields, choices, units } = words()
  const { field, choice } = fieldMaker(draft)
  return [
    field('name', fields.name, { kind: 'text' }),
    field('project', fields.project, {
      ...{ kind: 'text', isOptional: true, choices: projects.map((one) => ({ value: one, label: one })) },
      put: (into, value) => withValue(into, 'project', value ?? undefined),
    }),
    field('road.route', fields.route, { kind: 'text', isOptional: true }),
    choice('units', fields.units, choices.units, {
      put: (into, value) => runInUnits(into, value === 'metric' ? 'metric' : 'us'),
    }),
    field('road.datumStation', fields.datumStation, {
      ...{ kind: 'text', isOptional: true, unit: units.station[unitsOf(draft)] },
    }),
    choice('road.side', fields.side, choices.side, { isOptional: true }),
    ...positionField(draft),
  ]
}

/** What stands in the title block of drawings and documents; the latest revision last. */
export function titleFields(draft: Draft): readonly FormField[] {
  const { fields } = words()
  const { field, check } = fieldMaker(draft)
  const said = (name: 'agency' | 'contract' | 'drawn' | 'checked' | 'approved'): FormField =>
    field(`titleBlock.${name}`, fields[name], {
      ...{ kind: 'text', isOptional: true },
      put: (into, value) => withBlock(into, name, value ?? undefined),
    })
  return [
    ...[said('agency'), said('contract'), said('drawn'), said('checked'), said('approved')],
    check('titleBlock.seal', fields.seal, {
      value: valueAt(draft, 'titleBlock.seal') === true,
      put: (into, value) => withBlock(into, 'seal', value === true ? true : undefined),
    }),
  ]
}

/** A title block of which nothing is said is none. */
export function withBlock(into: Draft, name: string, value: unknown): Draft {
  const block = { ...(valueAt(into, 'titleBlock') as object | undefined), [name]: value }
  const isEmpty = Object.values(block).every((one) => one === undefined)
  return withValue(into, 'titleBlock', isEmpty ? undefined : block)
}

/** Where the device was: nobody types it, and it can only be taken out. */
function positionField(draft: Draft): readonly FormField[] {
  const position = valueAt(draft, 'road.position') as RunRoad['position']
  if (position === undefined) return []
  const { latitude, longitude, accuracy } = position
  const label = words().fields.position(latitude.toFixed(5), longitude.toFixed(5), Math.round(accuracy))
  return [
    fieldMaker(draft).check('road.position', label, {
      value: true,
      put: (into) => withValue(into, 'road.position', undefined),
    }),
  ]
}

/** Traffic, and what the work is judged by: all of it decides what must be true. */
export function trafficFields(draft: Draft): readonly FormField[] {
  const { fields, choices, units } = words()
  const { field, optional, choice } = fieldMaker(draft)
  const reaches = valueAt(draft, 'road.opposingReaches')
  return [
    optional('road.speed', fields.speed, units.speed[unitsOf(draft)]),
    choice('road.traffic', fields.traffic, choices.traffic, { isOptional: true }),
    choice('road.opposingReaches', fields.opposingReaches, choices.reaches, {
      isOptional: true,
      value: reaches === true ? 'yes' : reaches === false ? 'no' : null,
      put: (into, value) => withValue(into, 'road.opposingReaches', value === null ? null : value === 'yes'),
    }),
    choice('work', fields.work, choices.work, { isOptional: true }),
    field('letting', fields.letting, { kind: 'date', isOptional: true }),
  ]
}
