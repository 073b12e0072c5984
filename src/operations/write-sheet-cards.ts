import type { HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { saidAt } from '../core/hardware/sheet-statements.ts'
import { comparisonCardContents } from '../documents/comparison-card-contents.ts'
import { writeComparisonCard } from '../documents/pdf/comparison-card.ts'
import { writePocketCard } from '../documents/pdf/pocket-card.ts'
import type { DocumentPrinting } from '../documents/pdf/set-document.ts'
import { pocketCardContents } from '../documents/pocket-card-contents.ts'
import { besideWords, saidWords } from '../words/say-sheet.ts'
import { compareSheets } from './compare-sheets.ts'
import { comparedItem } from './compared-items.ts'
import { type RequiredByStatement, requiredBySheet, requirementsOf } from './sheet-requirements.ts'
import { unitPicture } from './unit-picture.ts'

/** How a document is printed that is of no run. */
export interface SheetPrinting extends Omit<DocumentPrinting, 'lie' | 'hash'> {
  /** Whether the sheet was changed since the edition that it names, and is not saved. */
  readonly isChanged: boolean
}

/**
 * The checks of a sheet in walking order as PDF, one sheet of paper to fold.
 * @param system  of the run that an end unit is at; not looked at for a system's own sheet
 */
export function pocketCard(
  sheet: HardwareSheet,
  system: LongitudinalSheet,
  printing: SheetPrinting,
): Promise<Uint8Array> {
  const { print, isChanged } = printing
  const picture = sheet.kind === 'longitudinal' ? null : unitPicture(sheet, system, 'end', print)
  return writePocketCard(pocketCardContents(sheet, isChanged, requirementsOf(sheet, system), print), picture, {
    ...printing,
    hash: '',
  })
}

/** A sheet with the system that its end unit is at; null where none is at hand: then nothing is said of what is required. */
export interface SheetAt {
  readonly sheet: HardwareSheet
  readonly system: LongitudinalSheet | null
}

/** What differs between two sheets, or two editions of one, as PDF: each item with what both say and why it matters. */
export function comparisonCard(
  one: SheetAt,
  other: SheetAt,
  printing: Omit<SheetPrinting, 'isChanged'>,
): Promise<Uint8Array> {
  const { print } = printing
  const { statements, besides } = compareSheets(one.sheet, other.sheet)
  const required = [requiredOf(one), requiredOf(other)] as const
  const atHand = [one.system, other.system].filter((system) => system !== null)
  const field = (sheet: HardwareSheet, place: string, value: unknown): string | null =>
    value === undefined ? null : saidWords(saidAt(sheet, place, value, atHand), print)
  const ofKind = (kind: (typeof statements)[number]['what']) => statements.filter(({ what }) => what === kind)
  const compared = {
    items: ofKind('values').map((statement) => comparedItem(statement, required)),
    // Their names stand in the head.
    fields: besides
      .filter(({ place }) => place !== 'name')
      .map(({ place, pinned, onShelf }) => ({
        what: besideWords(place, print),
        one: field(one.sheet, place, pinned),
        other: field(other.sheet, place, onShelf),
      })),
    others: { texts: ofKind('texts').length, sources: ofKind('source').length },
  }
  return writeComparisonCard(comparisonCardContents([one.sheet, other.sheet], compared, print), {
    ...printing,
    hash: '',
  })
}

const requiredOf = ({ sheet, system }: SheetAt): RequiredByStatement =>
  system === null ? new Map() : requiredBySheet(sheet, system)
