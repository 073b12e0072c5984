import { type ChosenField, type SheetField, sheetChoices } from '../../core/hardware/sheet-fields.ts'
import type { ThingPath } from '../../core/hardware/sheet-statements.ts'
import { isLengthUnit, type Unit, units, valueIn } from '../../core/units/quantity-kinds.ts'
import { parseValue } from '../../core/units/value-text.ts'
import { answerWords, choiceWords, fieldWords, thingWords } from '../../words/say-sheet.ts'
import { type Draft, meaningOf, valueAt, withValue } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import { asWritten, m, printIn } from '../messages.ts'
import { unconfirmed } from './unconfirmed.ts'
import { words } from './words.ts'

/** What a source does not state, or what the hardware has none of. */
export type Absent = 'notStated' | 'none'

/** Makes the fields of a sheet's draft. Whatever is changed is no longer confirmed: nobody found it in a document as it is now. */
export function sheetFieldMaker(draft: Draft) {
  const print = printIn(null)
  const maker = fieldMaker(draft)
  const { form } = words()
  const changing = (field: FormField): FormField => ({
    ...field,
    put: (into, value) => unconfirmed(field.put(into, value), field.place),
  })
  /** The same where it may be left unsaid. */
  const orAbsent = (field: FormField, absent: Absent): FormField =>
    changing({
      ...field,
      isOptional: true,
      value: field.value === absent ? null : field.value,
      put: (into, value) =>
        value === null || value === undefined ? withValue(into, field.place, absent) : field.put(into, value),
    })
  const labelOf = (field: SheetField, of?: string): string =>
    of === undefined ? fieldWords(field, print) : `${of}: ${fieldWords(field, print).toLowerCase()}`
  const plain = (place: string, label: string, given: Partial<FormField>) => changing(maker.field(place, label, given))
  const number = (place: string, label: string, unit: Unit | null): FormField =>
    plain(place, label, {
      unit: unit === null || unit === 'count' ? null : unit,
      read: (text) => readNumber(text, unit),
    })
  const choice = (place: string, field: ChosenField, label = labelOf(field)): FormField => {
    const all = sheetChoices[field] as readonly string[]
    return changing(
      maker.choice(place, label, Object.fromEntries(all.map((is) => [is, choiceWords(field, is, print)]))),
    )
  }
  const yesNo = (place: string, label: string): FormField => {
    const value = valueAt(draft, place)
    return changing(
      maker.choice(
        place,
        label,
        { yes: answerWords(true, print), no: answerWords(false, print) },
        {
          value: value === true ? 'yes' : value === false ? 'no' : value,
          put: (into, chosen) => withValue(into, place, chosen === 'yes' ? true : chosen === 'no' ? false : chosen),
        },
      ),
    )
  }
  const text = (place: string, label: string): FormField => plain(place, label, { kind: 'text' })
  const sentences = (place: string, label: string): FormField => plain(place, label, { kind: 'words' })
  const titles = Object.entries(
    (valueAt(draft, 'sources') ?? {}) as Readonly<Record<string, { readonly title?: unknown }>>,
  )
  const source = (place: string, of: string): FormField =>
    changing(
      maker.choice(
        `${place}.source`,
        `${of}: ${form.source}`,
        Object.fromEntries(titles.map(([key, { title }]) => [key, asWritten(String(title ?? key))])),
      ),
    )
  /** Limits with how they are measured. */
  const limits = (place: string, of: string, hasAnyUnit = false): readonly FormField[] => {
    const unit = valueAt(draft, `${place}.unit`) as Unit
    const limit = (name: 'low' | 'nominal' | 'high') =>
      orAbsent(number(`${place}.${name}`, `${of}: ${form.limits[name]}`, unit), 'notStated')
    const all = hasAnyUnit ? units : units.filter(isLengthUnit)
    return [
      ...(['low', 'nominal', 'high'] as const).map(limit),
      changing(
        maker.choice(
          `${place}.unit`,
          `${of}: ${form.unit}`,
          Object.fromEntries(all.map((one) => [one, one === 'count' ? m.entry.kinds.count : one])),
        ),
      ),
      changing(maker.choice(`${place}.role`, `${of}: ${form.role}`, form.roles)),
      sentences(`${place}.measured`, `${of}: ${fieldWords('measured', print).toLowerCase()}`),
      source(place, of),
    ]
  }
  /** Something that a sheet may state or not, with its fields once it does. */
  const optional = (
    place: string,
    label: string,
    absent: Absent | undefined,
    fresh: unknown,
    fields: () => readonly FormField[],
  ): readonly FormField[] => {
    const now = valueAt(draft, place)
    const isStated = typeof now === 'object' && now !== null
    const asked = changing({
      ...maker.check(place, form.stated(label), { value: isStated }),
      put: (into, value) => withValue(into, place, value === isStated ? now : value === true ? fresh : absent),
    })
    return isStated ? [asked, ...fields()] : [asked]
  }
  const thing = (of: ThingPath, number: number | null = null): string =>
    thingWords({ kind: 'thing of sheet', of, number, part: null }, print)
  return {
    ...{ maker, labelOf, orAbsent, number, choice, yesNo, text, sentences, source, limits, optional, thing, changing },
    inches: (place: string, label: string): FormField => number(place, label, 'in'),
  }
}

/** A number, or a value written as the trade writes it, as `27 3/4`, in the unit of its field. */
function readNumber(text: string, unit: Unit | null): unknown {
  const meaning = meaningOf(text)
  if (unit === null || typeof meaning !== 'string') return meaning
  const read = parseValue(text, unit)
  return read.ok ? valueIn(read.value.value, unit) : meaning
}
