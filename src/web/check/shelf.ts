import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'

export const systems = shippedSheets.filter((sheet): sheet is LongitudinalSheet => sheet.kind === 'longitudinal')
export const ends = shippedSheets.filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal')

/** The systems that an end unit joins. */
export const joinedBy = ({ joins }: EndSheet): readonly LongitudinalSheet[] =>
  systems.filter(({ id }) => joins.includes(id))
