import type { ChosenField, SheetField } from '../core/hardware/sheet-fields.ts'
import { fieldAt, type SheetThing, type SheetValue, type ValueSaid } from '../core/hardware/sheet-statements.ts'
import type { SheetText } from '../core/hardware/sheet-text.ts'
import { reservedTopic } from '../core/requirements/derived-topics.ts'
import { sheetWordsEn } from './en/sheet-words.ts'
import { sheetWordsEs } from './es/sheet-words.ts'
import type { Print } from './print.ts'
import type { SheetWords } from './sheet-words.ts'

const sheetWords = (print: Print): SheetWords => print.pick({ en: sheetWordsEn, es: sheetWordsEs })

/** What a statement is about, as a heading: `Post 2`, `Rail height`; of a rule the part that it is a rule of. */
export function thingWords({ of, number, part }: SheetThing, print: Print): string {
  const { things, numbered, named } = sheetWords(print)
  if (part !== null) return of.endsWith('limits') ? named(print.say(part), things[of]) : print.say(part)
  return number === null || !of.includes('[]') ? things[of] : numbered(things[of], number)
}

/** What a statement serves for where no requirement follows from it. */
export function useWords({ of }: SheetThing, print: Print): string {
  const { uses } = sheetWords(print)
  if (of.startsWith('parts')) return uses.nothing
  if (/^(severities|maySetAside)/.test(of)) return uses.judging
  if (/^(lengthOfNeedFrom|flare)/.test(of)) return uses.need
  return /^(grading|workingWidths|shortestRun|recommendedRun|stroke)/.test(of) ? uses.fit : uses.layout
}

/** Values that need no name before them: what they are of says it. */
const bare: readonly SheetField[] = [
  'limits',
  'measured',
  'inches',
  'workingWidth',
  'must',
  'lapRule',
  'position',
  'severity',
  'slope',
]

/** One value with what it is: `Kind: hinged breakaway post`. */
export function valueWords({ field, value }: SheetValue, print: Print): string {
  const text = saidWords(value, print)
  const words = sheetWords(print)
  return bare.includes(field) ? text : words.named(words.fields[field], text)
}

/** What a path names that is no statement with a source: a field of the whole sheet, the name of a part, or what is not stated. */
export function besideWords(place: string, print: Print): string {
  const { things, fields, texts } = sheetWords(print)
  const path = place.replace(/\[[^\]]*\]/g, '[]')
  const named: Readonly<Record<string, string>> = { ...texts, ...fields, ...things }
  return named[path] ?? named[path.replace(/\[\]$/, '')] ?? named[fieldAt(place)] ?? print.theirs(place)
}

/** What a field is called, as the label of a form has it. */
export function fieldWords(field: SheetField, print: Print): string {
  const text = sheetWords(print).fields[field]
  return text.charAt(0).toUpperCase() + text.slice(1)
}

export const answerWords = (value: boolean | 'notStated', print: Print): string =>
  saidWords({ kind: 'answer', is: value === 'notStated' ? value : value ? 'yes' : 'no' }, print)

export const choiceWords = (field: ChosenField, is: string, print: Print): string =>
  saidWords({ kind: 'chosen', field, is }, print)

export function saidWords(value: ValueSaid, print: Print): string {
  const { choices, answers } = sheetWords(print)
  switch (value.kind) {
    case 'limits':
    case 'sheet text':
    case 'how bad':
    case 'seen':
      return print.say(value)
    case 'rail':
      return print.feetInches(value.inches)
    case 'amount':
      return print.quantity(value.value, value.unit)
    case 'slope':
      return `1V:${value.run}H`
    case 'number':
      return String(value.value)
    case 'chosen':
      return (choices[value.field] as Readonly<Record<string, string>>)[value.is] ?? print.theirs(value.is)
    case 'answer':
      return answers[value.is]
    case 'named':
      return value.names.map((name) => nameWords(name, print)).join(', ')
  }
}

function nameWords(name: string | SheetText, print: Print): string {
  if (typeof name !== 'string') return print.say(name)
  const topic = reservedTopic(name)
  return topic === null ? print.theirs(name) : print.say({ kind: 'topic', topic })
}
