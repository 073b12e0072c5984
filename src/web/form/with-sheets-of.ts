import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { type Shelf, shippedShelf } from '../../operations/sheet-shelf.ts'
import { type Draft, itemsAt } from './draft.ts'

/** The draft with the sheets of the shelf that it may come to use and that do not ship; those that it holds stay. */
export function withSheetsOf(shelf: Shelf, draft: Draft): Draft {
  const held = itemsAt(draft, 'sheets') as readonly HardwareSheet[]
  const ids = new Set(held.map(({ id }) => id))
  const own = [...shelf.values()].filter((sheet) => !ids.has(sheet.id) && shippedShelf.get(sheet.id) !== sheet)
  return own.length === 0 ? draft : { ...draft, sheets: [...held, ...own] }
}
