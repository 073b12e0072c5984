import { type Draft, itemsAt, textOf, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { fieldMaker } from '../form/form-field.ts'
import type { FormItem, FormList } from '../form/form-section.ts'
import { stationLike, stationNumber } from './station-value.ts'
import { longOf, words } from './words.ts'

export function hazardList(draft: Draft): FormList {
  const { fields, units, form } = words()
  const { field, number, optional, check } = fieldMaker(draft)
  const long = longOf(draft)
  return {
    place: 'hazards',
    least: 1,
    addWords: form.add.hazards,
    items: itemsAt(draft, 'hazards').map((hazard, i) => {
      const at = (name: string): string => `hazards[${i}].${name}`
      const far = valueAt(hazard, 'beyondClearZone') === true ? optional : number
      return {
        ...itemOf('hazards', i, form.hazard(i + 1), hazard),
        fields: [
          field(at('name'), fields.hazardName, { kind: 'text' }),
          number(at('from'), fields.from, units.station[unitsOf(draft)]),
          number(at('to'), fields.to, units.station[unitsOf(draft)]),
          number(at('near'), fields.near, long),
          far(at('far'), fields.far, long),
          check(at('beyondClearZone'), fields.beyond),
        ],
      }
    }),
    add: (into) => {
      const items = itemsAt(into, 'hazards')
      const last = items.at(-1) as Draft | undefined
      const name = form.newHazard(items.length + 1)
      const hazard = {
        side: 'right',
        near: 0,
        far: 0,
        beyondClearZone: false,
        ...last,
        ...stretchAfter(into, last),
        name,
      }
      return withValue(into, 'hazards', [...items, hazard])
    },
  }
}

export function drivewayList(draft: Draft): FormList {
  const { fields, units, form } = words()
  const { field, number } = fieldMaker(draft)
  return {
    place: 'driveways',
    least: 0,
    addWords: form.add.driveways,
    items: itemsAt(draft, 'driveways').map((driveway, i) => {
      const at = (name: string): string => `driveways[${i}].${name}`
      return {
        ...itemOf('driveways', i, form.driveway(i + 1), driveway),
        fields: [
          field(at('name'), fields.drivewayName, { kind: 'text' }),
          number(at('from'), fields.from, units.station[unitsOf(draft)]),
          number(at('to'), fields.to, units.station[unitsOf(draft)]),
        ],
      }
    }),
    add: (into) => {
      const items = itemsAt(into, 'driveways')
      const last = items.at(-1) ?? itemsAt(into, 'hazards').at(-1)
      return withValue(into, 'driveways', [
        ...items,
        { name: form.newDriveway(items.length + 1), ...stretchAfter(into, last) },
      ])
    },
  }
}

const itemOf = (place: FormList['place'], i: number, title: string, item: unknown): Omit<FormItem, 'fields'> => ({
  title,
  name: textOf(valueAt(item, 'name')) || title,
  remove: (into) =>
    withValue(
      into,
      place,
      itemsAt(into, place).filter((_, at) => at !== i),
    ),
})

/** A little further along the road than `last`, and short. */
function stretchAfter(draft: Draft, last: unknown): { readonly from: unknown; readonly to: unknown } {
  const units = unitsOf(draft)
  const step = units === 'us' ? 20 : 5
  const written = valueAt(last, 'to') ?? 0
  const end = stationNumber(written, units) ?? 0
  return { from: stationLike(written, end + step, units), to: stationLike(written, end + 2 * step, units) }
}
