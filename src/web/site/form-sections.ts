import type { Shelf } from '../../operations/sheet-shelf.ts'
import { type Draft, itemsAt, textOf, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import type { FormSection } from '../form/form-section.ts'
import { inUnits } from './convert-units.ts'
import { besideFields, groundFields, hardwareFields } from './form-hardware.ts'
import { drivewayList, hazardList } from './form-lists.ts'
import { longOf, type SiteSection, words } from './words.ts'

/** The form of `draft`: which fields there are depends on what it says. */
export function sectionsOf(draft: Draft, shelf: Shelf): readonly FormSection[] {
  const section = (
    id: SiteSection,
    fields: readonly FormField[],
    { isMain = true, list = null }: Partial<FormSection> = {},
  ): FormSection => ({
    ...{ id, title: words().sections[id], how: null, fields, list, isMain },
    isHandiest: handiest.includes(id),
  })
  return [
    section('site', siteFields(draft)),
    section('road', roadFields(draft)),
    section('clearZone', clearZoneFields(draft)),
    section('hazards', [sideField(draft)], { list: hazardList(draft) }),
    section('barrier', barrierFields(draft)),
    section('hardware', hardwareFields(draft, shelf)),
    section('ground', groundFields(draft), { isMain: false }),
    section('beside', besideFields(draft), { isMain: false }),
    section('driveways', [], { isMain: false, list: drivewayList(draft) }),
    section('instead', insteadFields(draft), { isMain: false }),
  ]
}

const handiest: readonly SiteSection[] = ['hazards', 'barrier']

function siteFields(draft: Draft): readonly FormField[] {
  const { fields, choices } = words()
  const { field, check, choice } = fieldMaker(draft)
  const isStraight = valueAt(draft, 'road.alignment.kind') === 'straight'
  return [
    field('name', fields.name, { kind: 'text', isOptional: true }),
    choice('units', fields.units, choices.units, {
      put: (into, value) => inUnits(into, value === 'metric' ? 'metric' : 'us'),
    }),
    choice('edition', fields.edition, choices.edition),
    check('interpolateSpeeds', fields.interpolate),
    ...(isStraight ? [] : [choice('runoutOnCurves', fields.runoutOnCurves, choices.runoutOnCurves)]),
  ]
}

function roadFields(draft: Draft): readonly FormField[] {
  const { fields, choices, units } = words()
  const { number, optional, choice } = fieldMaker(draft)
  const long = longOf(draft)
  const isUs = unitsOf(draft) === 'us'
  const kind = textOf(valueAt(draft, 'road.alignment.kind'))
  const { elements, ...simple } = choices.alignment
  const curve = { kind: 'curve', radius: isUs ? 2000 : 600, turn: 'right', radiusOf: 'edge' }
  return [
    number('road.speed', fields.speed, units.speed[unitsOf(draft)]),
    number('road.adt', fields.adt, units.perDay),
    choice('road.traffic', fields.traffic, choices.traffic, {
      put: (into, value) => {
        const next = withValue(into, 'road.traffic', value)
        return value === 'divided' ? next : withValue(next, 'road.medianWidth', null)
      },
    }),
    ...(valueAt(draft, 'road.traffic') === 'divided' ? [optional('road.medianWidth', fields.median, long)] : []),
    number('road.lanes', fields.lanes, ''),
    number('road.laneWidth', fields.laneWidth, long),
    number('road.shoulderWidth', fields.shoulder, long),
    choice('road.alignment.kind', fields.alignment, kind === 'elements' ? { ...simple, elements } : simple, {
      put: (into, value) =>
        value === kind ? into : withValue(into, 'road.alignment', value === 'curve' ? curve : { kind: 'straight' }),
    }),
    ...(kind === 'curve'
      ? [number('road.alignment.radius', fields.radius, long), choice('road.alignment.turn', fields.turn, choices.side)]
      : []),
  ]
}

function clearZoneFields(draft: Draft): readonly FormField[] {
  const { fields, choices, units } = words()
  const { field, number, choice } = fieldMaker(draft)
  const stated = valueAt(draft, 'clearZone')
  const slope = ['foreslope', 'backslope'].find((one) => valueAt(stated, one) !== undefined)
  const kind = typeof stated === 'object' && stated !== null ? (slope ?? 'foreslope') : 'width'
  const by = choice('clearZone.kind', fields.clearZoneBy, choices.clearZone, {
    value: kind,
    put: (into, value) => {
      if (value === kind) return into
      if (value !== 'width') return withValue(into, 'clearZone', { [String(value)]: 6, take: 'high' })
      return withValue(into, 'clearZone', unitsOf(into) === 'us' ? 30 : 9)
    },
  })
  if (kind === 'width') return [by, number('clearZone', fields.clearZone, longOf(draft))]
  const label = kind === 'foreslope' ? fields.foreslope : fields.backslope
  return [
    by,
    field(`clearZone.${kind}`, label, { unit: units.slope }),
    choice('clearZone.take', fields.take, choices.take),
  ]
}

/** One site is one run on one side. */
function sideField(draft: Draft): FormField {
  const { fields, choices } = words()
  return fieldMaker(draft).choice('hazards[0].side', fields.side, choices.side, {
    put: (into, value) =>
      itemsAt(into, 'hazards').reduce<Draft>((next, _, i) => withValue(next, `hazards[${i}].side`, value), into),
  })
}

function barrierFields(draft: Draft): readonly FormField[] {
  const { fields, choices, units } = words()
  const { field, number, check, choice } = fieldMaker(draft)
  const long = longOf(draft)
  const flare = valueAt(draft, 'barrier.flare')
  const isFlared = flare !== null && flare !== undefined
  const first = { rate: 15, parallelLength: unitsOf(draft) === 'us' ? 25 : 7.62, ends: 'approach' }
  return [
    number('barrier.offset', fields.offset, long),
    check('barrier.flare', fields.flared, {
      value: isFlared,
      put: (into, value) => withValue(into, 'barrier.flare', value === true ? first : null),
    }),
    ...(isFlared
      ? [
          field('barrier.flare.rate', fields.rate, { unit: units.rate }),
          number('barrier.flare.parallelLength', fields.parallelLength, long),
          choice('barrier.flare.ends', fields.flareEnds, choices.flareEnds),
        ]
      : []),
  ]
}

function insteadFields(draft: Draft): readonly FormField[] {
  const { fields } = words()
  const { optional } = fieldMaker(draft)
  const long = longOf(draft)
  return [optional('runoutLength', fields.runoutLength, long), optional('shyLine', fields.shyLine, long)]
}
