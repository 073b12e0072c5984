import type { Confirmation } from '../hardware/hardware-sheet.ts'
import type { LengthUnit } from '../units/exact-length.ts'

/** What an instrument adds to the doubt about a reading, besides the rounding of the reading itself. */
export interface Instrument {
  readonly id: string
  readonly name: string
  /** Standard uncertainty (k = 1) of one reading. */
  readonly standardUncertainty: number
  readonly unit: LengthUnit
  /** Smallest step to which it is read, in `unit`; a reading may state another. */
  readonly readTo: number
  readonly source: string
  readonly confirmation: Confirmation
}

const recalled = {
  source: 'Recalled by the writer; tape and level from the pavement, 3 mm to 6 mm',
  confirmation: 'from memory',
} as const

/** 1/8 in, the step to which the trade reads a tape; common practice. */
const eighthInch = 3.175

/**
 * The instruments that ship. An agency replaces them in its run file; a reading may also state its own uncertainty.
 * A reading that names no instrument is taken as `not stated`, which is deliberately coarse.
 */
export const instruments: readonly Instrument[] = [
  { id: 'tape', name: 'steel tape', standardUncertainty: 1, unit: 'mm', readTo: eighthInch, ...recalled },
  { id: 'tape-and-level', name: 'tape and level', standardUncertainty: 3, unit: 'mm', readTo: eighthInch, ...recalled },
  {
    id: 'string-line',
    name: 'string line and tape',
    standardUncertainty: 2,
    unit: 'mm',
    readTo: eighthInch,
    ...recalled,
  },
  {
    id: 'total-station',
    name: 'total station',
    standardUncertainty: 4,
    unit: 'mm',
    readTo: 1,
    source: 'Comparison of total station and GNSS heights on a nine-point urban traverse',
    confirmation: 'published',
  },
  {
    id: 'gnss',
    name: 'GNSS receiver, fast static or real-time',
    standardUncertainty: 20,
    unit: 'mm',
    readTo: 1,
    source: 'Comparison of total station and GNSS heights on a nine-point urban traverse',
    confirmation: 'published',
  },
  { id: 'not-stated', name: 'not stated', standardUncertainty: 6, unit: 'mm', readTo: 2 * eighthInch, ...recalled },
]
