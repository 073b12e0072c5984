import { type GivenSheet, isSystem, type SheetDocument } from './sheet-document.ts'
import { comparisonCard, pocketCard, type SheetAt, type SheetPrinting } from './write-sheet-cards.ts'
import { unconfirmedList } from './write-sheet-list.ts'

/**
 * The document as PDF.
 * @throws RangeError when it is not whole
 */
export function writeSheetDocument(wish: SheetDocument, given: Omit<SheetPrinting, 'isChanged'>): Promise<Uint8Array> {
  const { kind, sheet, other, isChanged } = wish
  const printing = { ...given, isChanged }
  const { system } = sheetAt(wish)
  switch (kind) {
    case 'list':
      return unconfirmedList(sheet, system, printing)
    case 'pocket-card':
      if (system === null) throw new RangeError(`no system at hand that ${sheet.id} joins`)
      return pocketCard(sheet, system, printing)
    case 'comparison-card':
      if (other === null) throw new RangeError(`nothing to compare ${sheet.id} with`)
      return comparisonCard({ sheet, system }, sheetAt(other), printing)
    default:
      return kind satisfies never
  }
}

const sheetAt = ({ sheet, system }: GivenSheet): SheetAt => ({ sheet, system: isSystem(system) ? system : null })
