import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'

export const systems = shippedSheets.filter((sheet): sheet is LongitudinalSheet => sheet.kind === 'longitudinal')
export const ends = shippedSheets.filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal')

export const endsJoining = (system: LongitudinalSheet): readonly EndSheet[] =>
  ends.filter(({ joins }) => joins.includes(system.id))

/** The systems that an end unit joins. */
export const joinedBy = ({ joins }: EndSheet): readonly LongitudinalSheet[] =>
  systems.filter(({ id }) => joins.includes(id))
