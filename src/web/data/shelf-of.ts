import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Result } from '../../core/result.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { latestEditions, type Shelf, sheetShelf } from '../../operations/sheet-shelf.ts'
import type { SheetRow } from './device-tables.ts'

/** An edition of a hardware sheet that was put on this device's shelf. */
export interface OwnSheet extends Pick<SheetRow, 'id' | 'version' | 'addedAt'> {
  /** What is wrong with it where this program cannot read it, as one that a newer program put here. */
  readonly sheet: Result<HardwareSheet, readonly InputProblem[]>
}

/** The sheets at hand: those that ship, replaced or joined by the latest editions of those of this device. */
export const shelfOf = (own: readonly OwnSheet[]): Shelf =>
  sheetShelf(latestEditions(own.flatMap(({ sheet }) => (sheet.ok ? [sheet.value] : []))))
