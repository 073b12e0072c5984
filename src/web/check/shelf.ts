import type { EndSheet, HardwareSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Shelf } from '../../operations/sheet-shelf.ts'

/** What can be picked. */
export interface AtHand {
  readonly sheets: readonly HardwareSheet[]
  readonly systems: readonly LongitudinalSheet[]
  /** Those that join a system at hand. */
  readonly ends: readonly EndSheet[]
}

export function atHandOn(shelf: Shelf): AtHand {
  const sheets = [...shelf.values()]
  const systems = sheets.filter((sheet) => sheet.kind === 'longitudinal')
  const ends = sheets.filter((sheet) => sheet.kind !== 'longitudinal')
  return { sheets, systems, ends: ends.filter((end) => joinedBy(end, systems).length > 0) }
}

export const endsJoining = ({ id }: LongitudinalSheet, ends: readonly EndSheet[]): readonly EndSheet[] =>
  ends.filter(({ joins }) => joins.includes(id))

/** The systems that an end unit joins. */
export const joinedBy = ({ joins }: EndSheet, systems: readonly LongitudinalSheet[]): readonly LongitudinalSheet[] =>
  systems.filter(({ id }) => joins.includes(id))
