import type { DrillWish } from '../../core/drill/make-drill.ts'
import type { KindRecord } from '../../core/drill/next-drill.ts'
import type { SaidOfFinding } from '../../core/drill/score.ts'

/** A drill that was begun on this device: its run is in the store of practice and nowhere else. */
export interface DrillRow {
  /** Id of the practice run. */
  readonly run: string
  /** What gives the same drill on any device; null where a run of this device was copied to practise on. */
  readonly number: string | null
  readonly wish: DrillWish
  /** ISO 8601 by the clock of the device; null while it goes on. */
  readonly beganAt: string
  readonly endedAt: string | null
  /** Of an exam the minutes that it may take; null of a drill. */
  readonly minutes: number | null
  /** What was said of findings besides, by the requirement that each was found by. */
  readonly said: Readonly<Record<string, SaidOfFinding>>
  /** How it came out, once it ended. */
  readonly result: DrillResult | null
}

export interface DrillResult {
  readonly found: number
  readonly faults: number
  readonly falseAlarms: number
  /** Sound places that were looked at. */
  readonly sound: number
  readonly kinds: readonly KindRecord[]
  /** What was decided, by requirement. */
  readonly verdicts: Readonly<Record<string, 'meets' | 'fails' | 'too close'>>
}
