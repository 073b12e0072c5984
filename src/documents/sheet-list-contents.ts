import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { type SheetStatement, statementsOf } from '../core/hardware/sheet-statements.ts'
import { nameOf } from '../core/hardware/sheet-text.ts'
import type { RequirementText } from '../core/requirements/requirement-saying.ts'
import type { Print } from '../words/print.ts'
import { thingWords, useWords, valueWords } from '../words/say-sheet.ts'
import { documentWords } from './words/document-words.ts'

/** What of a sheet nobody found in a document yet, for who has one in hand. */
export interface SheetListContents {
  readonly title: string
  /** The sheet, in the head of each page. */
  readonly run: string
  readonly left: string
  readonly lines: readonly {
    readonly about: string
    readonly values: readonly string[]
    readonly requires: readonly string[]
    /** Whether it is from memory, and no common practice either. */
    readonly isFromMemory: boolean
  }[]
}

/**
 * @param isChanged  whether the sheet was changed since the edition that it names, and is not saved
 * @param required   what is required by the statement at a path
 */
export function sheetListContents(
  sheet: HardwareSheet,
  isChanged: boolean,
  required: (place: string) => readonly RequirementText[],
  print: Print,
): SheetListContents {
  const words = documentWords(print).sheetList
  const all = statementsOf(sheet)
  const open = all.filter(({ cited }) => cited.confirmation !== 'published')
  return {
    title: words.title,
    run: editionText(sheet, isChanged, print),
    left: words.left(open.length, all.length),
    lines: open.map((statement) => lineOf(statement, required(statement.place), print)),
  }
}

/** The sheet with its edition, or with that which it was begun from, as documents head it. */
export function editionText(sheet: HardwareSheet, isChanged: boolean, print: Print): string {
  const words = documentWords(print).sheetList
  return `${print.say(nameOf(sheet))}, ${words[isChanged ? 'notSaved' : 'edition'](print.theirs(sheet.version))}`
}

const lineOf = ({ about, values, cited }: SheetStatement, musts: readonly RequirementText[], print: Print) => ({
  about: thingWords(about, print),
  values: values.map((value) => valueWords(value, print)),
  requires: musts.length === 0 ? [useWords(about, print)] : musts.map((must) => print.say(must)),
  isFromMemory: cited.confirmation === 'from memory',
})
