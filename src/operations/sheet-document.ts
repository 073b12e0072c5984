import type { HardwareSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'

/** What can be printed of hardware sheets. */
export const sheetDocuments = ['list', 'pocket-card', 'comparison-card'] as const

/** A sheet as a page hands it in, with the one of the system that its end unit is at. */
export interface GivenSheet {
  readonly sheet: HardwareSheet
  readonly system: HardwareSheet | null
}

/** One document: a comparison is of two sheets, the others are of one. */
export interface SheetDocument extends GivenSheet {
  readonly kind: (typeof sheetDocuments)[number]
  readonly other: GivenSheet | null
  /** Whether the sheet was changed since the edition that it names, and is not saved. */
  readonly isChanged: boolean
}

/** Whether all is there that the document is made of. */
export const isWhole = ({ kind, system, other }: SheetDocument): boolean =>
  (kind !== 'pocket-card' || isSystem(system)) && (kind === 'comparison-card') === (other !== null)

export const isSystem = (sheet: HardwareSheet | null): sheet is LongitudinalSheet => sheet?.kind === 'longitudinal'
