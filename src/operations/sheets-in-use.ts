import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { RequiredRun } from './require-by.ts'

/** The system's sheet and those of both ends, each once. */
export function sheetsInUse({ system, first, second }: RequiredRun['model']): readonly HardwareSheet[] {
  const ends = [first, second].flatMap((end) => (end.kind === 'unit' ? [end.sheet] : []))
  return [...new Map([system, ...ends].map((sheet) => [sheet.id, sheet])).values()]
}
