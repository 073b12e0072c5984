import { type Draft, unitsOf } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import { railsText, railText, readRail, readRails } from './rail-text.ts'
import { words } from './words.ts'

/** Makes the fields of a run's draft: those of any form, and lengths along the rail. */
export function railFieldMaker(draft: Draft) {
  const maker = fieldMaker(draft)
  const units = unitsOf(draft)
  const unit = words().units.rail[units]
  return {
    ...maker,
    rail: (place: string, label: string, given: Partial<FormField> = {}): FormField =>
      maker.field(place, label, {
        ...{ kind: 'length', unit },
        text: (value) => railText(value, units),
        read: (text) => readRail(text, units),
        ...given,
      }),
    rails: (place: string, label: string, given: Partial<FormField> = {}): FormField =>
      maker.field(place, label, {
        ...{ kind: 'lengths', unit: words().units.rails[units] },
        text: (value) => railsText(value, units),
        read: (text) => readRails(text, units),
        ...given,
      }),
  }
}
