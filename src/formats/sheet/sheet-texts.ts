import { namedFields, pathWithin } from '../../core/hardware/sheet-paths.ts'

/** A text of a sheet that is shown to a person, and where it stands. */
export interface PlacedText {
  /** Its path, things with an id by that: `parts[cable].rules[cable-tight].must`. */
  readonly place: string
  readonly text: string
  /** Whether it names a source. The title of a document stays as it is published; what is none may have other languages. */
  readonly isOfSource: boolean
}

/** Every text that is shown to a person, in the order of the sheet, of which anything may still be missing. */
export const placedTexts = (sheet: object): readonly PlacedText[] => textsBelow(sheet, '', '')

/** Every text that may have another language. */
export const translatable = (sheet: object): readonly string[] => placedTexts(sheet).map(({ text }) => text)

function textsBelow(value: unknown, place: string, path: string): readonly PlacedText[] {
  if (typeof value === 'string') {
    const isOfSource = ofSource.test(path)
    return isOfSource || shown.some((one) => one.test(path)) ? [{ place, text: value, isOfSource }] : []
  }
  return [...(namedFields(value) ?? [])].flatMap(([field, inner]) =>
    textsBelow(inner, pathWithin(place, field), pathWithin(path, field.startsWith('[') ? '[]' : field)),
  )
}

const ofSource = /^sources\..+\.(title|edition)$/

/** Paths without numbers and ids. */
const shown = [
  /^(name|notice)$/,
  /^parts\[\]\.(name|rules\[\]\.(must|how|why|remedy|look\.choices\[\]\.label|picture\.alt))$/,
  /(^|\.)measured$/,
  /^(post|posts\[\])\.kind$/,
  /^omissions\[\]\.specialPostKind$/,
  /^panels\.(own|adapters)\[\]\.name$/,
]
