import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import type { EndSheet, LongitudinalSheet } from '../hardware/hardware-sheet.ts'
import { solveLayout } from '../layout/solve-layout.ts'
import type { RunModel } from '../requirements/run-model.ts'

const sheet = <T>(id: string): T => shippedSheets.find((one) => one.id === id) as T

/** The best layout of a 31 in run that shields `needInches`, from this end unit to a trailing anchor. */
export function modelFrom(firstSheet: string, needInches: number): RunModel {
  const system = sheet<LongitudinalSheet>('w-beam-midspan-31')
  const first = { kind: 'unit', sheet: sheet<EndSheet>(firstSheet), atInches: null } as const
  const second = { kind: 'unit', sheet: sheet<EndSheet>('trailing-anchor-31'), atInches: null } as const
  const need = { fromInches: 0, toInches: needInches }
  const free = { stock: null, obstructions: [], reduced: [], standing: null, mayExtendInches: 600 }
  const solved = solveLayout({ system, first, second, need, ...free })
  if (!solved.ok) throw new Error('not solved')
  const notSaid = { work: null, letting: null, speed: null, flare: null, opposingReaches: null } as const
  for (const layout of solved.value.runs) return { layout, system, first, second, ...notSaid }
  throw new Error('no layout')
}
