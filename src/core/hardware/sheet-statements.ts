import type { Unit } from '../units/quantity-kinds.ts'
import type { Cited, Dimension, HardwareSheet, SeenKind, Severity, SheetRule } from './hardware-sheet.ts'
import { type LimitsSaying, limitsOf } from './limits-saying.ts'
import {
  type ChosenField,
  footFields,
  inchFields,
  railFields,
  type SheetField,
  sheetChoices,
  textFields,
} from './sheet-fields.ts'
import { namedFields, pathWithin } from './sheet-paths.ts'
import { nameOf, type SheetText, sheetText } from './sheet-text.ts'

/** One statement of a sheet with a source of its own, and the numbers and words that it states. */
export interface SheetStatement {
  /** Its path in the sheet, as `posts[1].stub` or `parts[cable].rules[cable-tight]`; it tells one from another. */
  readonly place: string
  readonly about: SheetThing
  readonly values: readonly SheetValue[]
  readonly cited: Cited
}

/** What something is stated of. */
export interface SheetThing {
  readonly kind: 'thing of sheet'
  /** Its path without numbers and ids, as `posts[].stub`. */
  readonly of: ThingPath
  /** Which of several, from 1. */
  readonly number: number | null
  /** The part that a rule belongs to; null where it is no rule. */
  readonly part: SheetText | null
}

/** One value that is stated. */
export interface SheetValue {
  readonly kind: 'value of sheet'
  readonly field: SheetField
  readonly value: ValueSaid
}

export type ValueSaid =
  | LimitsSaying
  | SheetText
  | { readonly kind: 'rail'; readonly inches: number }
  | { readonly kind: 'amount'; readonly value: number; readonly unit: Unit }
  | { readonly kind: 'slope'; readonly run: number }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'chosen'; readonly field: ChosenField; readonly is: string }
  | { readonly kind: 'answer'; readonly is: 'yes' | 'no' | 'none' | 'notStated' }
  | { readonly kind: 'how bad'; readonly severity: Severity }
  | { readonly kind: 'seen'; readonly what: SeenKind }
  /** Rules of the sheet by what they say and sheets by what they are called; topics of requirements and what is not at hand by id. */
  | { readonly kind: 'named'; readonly names: readonly (string | SheetText)[] }

export const thingPaths = [
  'criteria[]',
  'railHeight',
  'straightness',
  'postSpacing',
  'lap',
  'splice',
  'post',
  'posts[]',
  'posts[].stub',
  'panels.own[]',
  'panels.adapters[]',
  'panels.standard[]',
  'panels.converting[]',
  'panels.endOnly[]',
  'spacings.full',
  'spacings.half',
  'spacings.quarter',
  'spacings.halfBeforeQuarter',
  'omissions[]',
  'omissions[].leastToNextGap',
  'omissions[].nestedAtCurb',
  'movedPost',
  'movedPost.most',
  'movedPost.mostInRun',
  'movedPost.newSlot',
  'shortestRun',
  'shortestRunRedirects',
  'recommendedRun',
  'workingWidths[]',
  'listedLength',
  'lengthOfNeedFrom',
  'stroke',
  'flare',
  'flare.offset',
  'grading',
  'grading.platformSlope',
  'parts[].rules[]',
  'parts[].rules[].look.limits',
  'maySetAside[]',
  'severities[]',
] as const
export type ThingPath = (typeof thingPaths)[number]

/** Every statement of a sheet that names its source, in the order of the sheet; each exactly once, whatever its kind. */
export const statementsOf = (sheet: HardwareSheet): readonly SheetStatement[] =>
  statementsIn(sheet, sheet, { place: '', path: '', number: null, part: null })

/** How many of them there are, and how many are published. */
export function confirmedOf(sheet: HardwareSheet): { readonly confirmed: number; readonly all: number } {
  const all = statementsOf(sheet)
  return { confirmed: all.filter(({ cited }) => cited.confirmation === 'published').length, all: all.length }
}

interface Where extends Pick<SheetThing, 'number' | 'part'> {
  readonly place: string
  readonly path: string
}

function statementsIn(sheet: HardwareSheet, value: unknown, where: Where): SheetStatement[] {
  const fields = namedFields(value)
  if (fields === null) return []
  const name = fields.get('name')
  const part = fields.has('rules') && typeof name === 'string' ? sheetText(sheet, name) : where.part
  const own = isCited(value)
    ? [
        {
          place: where.place,
          about: { kind: 'thing of sheet', of: where.path as ThingPath, number: where.number, part } as const,
          values: valuesOf(sheet, where.path, value),
          cited: value,
        },
      ]
    : []
  const below = [...fields].flatMap(([field, inner], i) => {
    const isItem = field.startsWith('[')
    return statementsIn(sheet, inner, {
      place: pathWithin(where.place, field),
      path: pathWithin(where.path, isItem ? '[]' : field),
      number: isItem ? i + 1 : where.number,
      part,
    })
  })
  return [...own, ...below]
}

export const isCited = (value: unknown): value is Cited =>
  typeof value === 'object' && value !== null && 'source' in value && 'confirmation' in value

function valuesOf(sheet: HardwareSheet, path: string, cited: Cited): readonly SheetValue[] {
  if ('role' in cited) {
    const limits = cited as Dimension<Unit>
    return [said('limits', limitsOf(limits)), said('measured', sheetText(sheet, limits.measured))]
  }
  if ('must' in cited) {
    const { must, picture } = cited as SheetRule
    const shown = picture === undefined ? [] : [said('picture', sheetText(sheet, String(picture.alt)))]
    return [said('must', sheetText(sheet, String(must))), ...shown]
  }
  return Object.entries(cited).flatMap(([name, value]) => valuesAt(sheet, path, name, value))
}

/**
 * A value of the sheet that no statement with a source says, as its name, to be said.
 * @param sheets  at hand, of which it may name some
 */
export function saidAt(
  sheet: HardwareSheet,
  place: string,
  value: unknown,
  sheets: readonly HardwareSheet[],
): ValueSaid {
  const path = place.replace(/\[[^\]]*\]/g, '')
  const field = fieldNamed('', path.split('.').at(-1)!)
  const said = saidAs(sheet, field, value)
  if (field !== 'joins' || said.kind !== 'named') return said
  const nameOfSheet = (name: string | SheetText): string | SheetText => {
    const other = sheets.find(({ id }) => id === name)
    return other === undefined ? name : nameOf(other)
  }
  return { kind: 'named', names: said.names.map(nameOfSheet) }
}

/** What is stated at a place of a sheet, wherever in it that is. */
export function fieldAt(place: string): SheetField {
  const path = place.replace(/\[[^\]]*\]/g, '[]').split('.')
  return fieldNamed(path.slice(0, -1).join('.'), path.at(-1)!)
}

/** What is stated beside the values: by whom, and which of several it is. */
const beside = ['source', 'confirmation', 'checked', 'number', 'id']

function valuesAt(sheet: HardwareSheet, path: string, name: string, value: unknown): readonly SheetValue[] {
  if (beside.includes(name) || value === undefined || isCited(value) || isEmpty(value)) return []
  if (typeof value === 'object' && value !== null && !Array.isArray(value))
    return Object.entries(value).flatMap(([inner, one]) => valuesAt(sheet, path, inner, one))
  const field = fieldNamed(path, name)
  return Array.isArray(value) && field === 'seen'
    ? value.map((one) => said(field, { kind: 'seen', what: one as SeenKind }))
    : [said(field, saidAs(sheet, field, value))]
}

const isEmpty = (value: unknown): boolean => Array.isArray(value) && value.length === 0

const said = (field: SheetField, value: ValueSaid): SheetValue => ({ kind: 'value of sheet', field, value })

/** What a value at this name means, which for some names depends on whose it is. */
function fieldNamed(path: string, name: string): SheetField {
  const here = `${path}.${name}`
  return meanings[here] ?? meanings[name] ?? (name as SheetField)
}

const meanings: Readonly<Record<string, SheetField>> = {
  'lap.rule': 'lapRule',
  'post.kind': 'postKind',
  'posts[].kind': 'postKind',
  'omissions[].kind': 'gapKind',
  'workingWidths[].inches': 'workingWidth',
  set: 'slotSet',
  side: 'slotSide',
  widthInches: 'slotWidth',
  lengthInches: 'slotLength',
  behindPostOneFeet: 'behindPostOne',
  recoveryLengthFeet: 'recoveryLength',
  recoveryWidthFeet: 'recoveryWidth',
  platformSlope: 'slope',
  run: 'slope',
  topic: 'topics',
}

const isOf = <F extends SheetField>(fields: readonly F[], field: SheetField): field is F =>
  (fields as readonly SheetField[]).includes(field)

function saidAs(sheet: HardwareSheet, field: SheetField, value: unknown): ValueSaid {
  if (value === 'notStated') return { kind: 'answer', is: 'notStated' }
  if (typeof value === 'boolean') return { kind: 'answer', is: value ? 'yes' : 'no' }
  if (field in sheetChoices) return { kind: 'chosen', field: field as ChosenField, is: String(value) }
  if (field === 'severity') return { kind: 'how bad', severity: value as Severity }
  if (value === null || value === 'none') return { kind: 'answer', is: 'none' }
  if (Array.isArray(value)) return { kind: 'named', names: value.map((one) => ruleNamed(sheet, String(one))) }
  if (isOf(textFields, field)) return sheetText(sheet, String(value))
  if (typeof value !== 'number') return { kind: 'named', names: [ruleNamed(sheet, String(value))] }
  if (isOf(railFields, field)) return { kind: 'rail', inches: value }
  if (isOf(inchFields, field)) return { kind: 'amount', value, unit: 'in' }
  if (isOf(footFields, field)) return { kind: 'amount', value, unit: 'ft' }
  return field === 'slope' ? { kind: 'slope', run: value } : { kind: 'number', value }
}

/** A rule of the sheet by what it says; whatever else has an id, by that. */
function ruleNamed(sheet: HardwareSheet, id: string): string | SheetText {
  const rule = sheet.parts.flatMap(({ rules }) => rules).find((one) => one.id === id)
  return rule === undefined ? id : sheetText(sheet, rule.must)
}
