import { shippedSheets } from '../../core/hardware/shipped-sheets.ts'
import { say } from '../messages.ts'
import { type Draft, itemsAt, textOf, unitsOf, valueAt, withValue } from './draft.ts'
import { type FormField, fieldMaker, longOf } from './form-field.ts'
import { words } from './words.ts'

export function hardwareFields(draft: Draft): readonly FormField[] {
  const { fields, choices, form } = words()
  const { field, choice } = fieldMaker(draft)
  const sheets = [...shippedSheets, ...itemsAt(draft, 'sheets')] as readonly {
    id: string
    name: string
    kind: string
  }[]
  const sheet = (place: string, label: string, isSystem: boolean): FormField => {
    const chosen = textOf(valueAt(draft, place))
    const named = sheets
      .filter(({ kind }) => (kind === 'longitudinal') === isSystem)
      .map(({ id, name }) => [id, say(name)])
    const unknown = chosen === '' || named.some(([id]) => id === chosen) ? [] : [[chosen, form.noSuchSheet(chosen)]]
    return choice(place, label, Object.fromEntries([...named, ...unknown]), { isOptional: true })
  }
  return [
    sheet('hardware.system', fields.system, true),
    sheet('barrier.approachEnd', fields.approachEnd, false),
    sheet('barrier.departureEnd', fields.departureEnd, false),
    choice('hardware.spacing', fields.spacing, choices.spacing),
    choice('hardware.work', fields.work, choices.work, { isOptional: true }),
    field('hardware.letting', fields.letting, { kind: 'date', isOptional: true }),
  ]
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
  const { number, check, choice } = fieldMaker(draft)
  const isUs = unitsOf(draft) === 'us'
  const small = isUs ? units.in : units.mm
  const present = (place: string): boolean => (valueAt(draft, place) ?? null) !== null
  const whether = (place: string, label: string, first: object): FormField =>
    check(place, label, {
      value: present(place),
      put: (into, value) => withValue(into, place, value === true ? first : null),
    })
  return [
    whether('hardware.curb', fields.curb, { height: isUs ? 4 : 100, face: 'sloping', toRail: 0 }),
    ...(present('hardware.curb')
      ? [
          number('hardware.curb.height', fields.curbHeight, small),
          choice('hardware.curb.face', fields.curbFace, choices.curbFace),
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
