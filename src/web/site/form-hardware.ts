import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import type { Shelf } from '../../operations/sheet-shelf.ts'
import { type Draft, itemsAt, textOf, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import { withSheetsOf } from '../form/with-sheets-of.ts'
import { say } from '../messages.ts'
import { longOf, words } from './words.ts'

const sheetPlaces = { system: 'hardware.system', approach: 'barrier.approachEnd', departure: 'barrier.departureEnd' }

export function hardwareFields(draft: Draft, shelf: Shelf): readonly FormField[] {
  const { fields, choices, form } = words()
  const { field, choice } = fieldMaker(draft)
  const held = itemsAt(draft, 'sheets') as readonly HardwareSheet[]
  const sheets = [...new Map([...shelf, ...held.map((one) => [one.id, one] as const)]).values()]
  const sheet = (place: string, label: string, isSystem: boolean): FormField => {
    const chosen = textOf(valueAt(draft, place))
    const named = sheets
      .filter(({ kind }) => (kind === 'longitudinal') === isSystem)
      .map((one) => [one.id, say(nameOf(one))])
    const unknown = chosen === '' || named.some(([id]) => id === chosen) ? [] : [[chosen, form.noSuchSheet(chosen)]]
    return choice(place, label, Object.fromEntries([...named, ...unknown]), { isOptional: true })
  }
  return [
    sheet(sheetPlaces.system, fields.system, true),
    sheet(sheetPlaces.approach, fields.approachEnd, false),
    sheet(sheetPlaces.departure, fields.departureEnd, false),
    choice('hardware.spacing', fields.spacing, choices.spacing),
    choice('hardware.work', fields.work, choices.work, { isOptional: true }),
    field('hardware.letting', fields.letting, { kind: 'date', isOptional: true }),
  ]
}

/** The draft with those of this device's own sheets that it names: a site is complete without the shelf that it was made on. */
export function withNamedSheets(shelf: Shelf, draft: Draft): Draft {
  const named = Object.values(sheetPlaces).map((place) => textOf(valueAt(draft, place)))
  return withSheetsOf(new Map([...shelf].filter(([id]) => named.includes(id))), draft)
}

export function groundFields(draft: Draft): readonly FormField[] {
  const { fields, units } = words()
  const { optional } = fieldMaker(draft)
  const long = longOf(draft)
  return [
    optional('hardware.ground.platformSlope', fields.platformSlope, units.slope),
    optional('hardware.ground.behindPostOne', fields.behindPostOne, long),
    optional('hardware.ground.recoveryLength', fields.recoveryLength, long),
    optional('hardware.ground.recoveryWidth', fields.recoveryWidth, long),
    optional('hardware.ground.besideSlope', fields.besideSlope, units.slope),
    optional('hardware.ground.breakBehindPost', fields.breakBehindPost, long),
    optional('hardware.ground.slopeBehind', fields.slopeBehind, units.slope),
  ]
}

export function besideFields(draft: Draft): readonly FormField[] {
  const { fields, choices, units } = words()
  const { number, optional, check, choice } = fieldMaker(draft)
  const isUs = unitsOf(draft) === 'us'
  const small = isUs ? units.in : units.mm
  const present = (place: string): boolean => (valueAt(draft, place) ?? null) !== null
  const hasCurb = typeof (valueAt(draft, 'hardware.curb') ?? null) === 'object' && present('hardware.curb')
  const firstCurb = { height: isUs ? 4 : 100, face: 'sloping', faceSlope: null, toRail: 0 }
  const whether = (place: string, label: string, first: object): FormField =>
    check(place, label, {
      value: present(place),
      put: (into, value) => withValue(into, place, value === true ? first : null),
    })
  return [
    choice('hardware.curb', fields.curb, choices.curb, {
      isOptional: true,
      value: hasCurb ? 'present' : valueAt(draft, 'hardware.curb'),
      put: (into, value) => withValue(into, 'hardware.curb', value === 'present' ? firstCurb : value),
    }),
    ...(hasCurb
      ? [
          number('hardware.curb.height', fields.curbHeight, small),
          choice('hardware.curb.face', fields.curbFace, choices.curbFace, {
            // A vertical face has no slope to say.
            put: (into, face) =>
              withValue(withValue(into, 'hardware.curb.face', face), 'hardware.curb.faceSlope', null),
          }),
          ...(valueAt(draft, 'hardware.curb.face') === 'sloping'
            ? [optional('hardware.curb.faceSlope', fields.curbFaceSlope, units.slope)]
            : []),
          number('hardware.curb.toRail', fields.curbToRail, small),
        ]
      : []),
    whether('hardware.adjoining', fields.adjoining, { railHeight: isUs ? 31 : 787, splice: null }),
    ...(present('hardware.adjoining')
      ? [
          number('hardware.adjoining.railHeight', fields.adjoiningHeight, small),
          choice('hardware.adjoining.splice', fields.adjoiningSplice, choices.splice, { isOptional: true }),
        ]
      : []),
  ]
}
