import type { Confirmation } from '../hardware/hardware-sheet.ts'
import { title } from '../hardware/title.ts'
import { kindOf, type QuantityKind, type Unit } from '../units/quantity-kinds.ts'
import type { InstrumentName, InstrumentSource, ShippedInstrument } from './instrument-saying.ts'

/** What an instrument adds to the doubt about a reading, besides the rounding of the reading itself. */
export interface Instrument {
  readonly id: string
  readonly name: InstrumentName
  /** Standard uncertainty (k = 1) of one reading, in `unit`. */
  readonly standardUncertainty: number
  /** The part of it that grows with the reading (k = 1), as a fraction of the reading; left out for none. */
  readonly relativeUncertainty?: number | undefined
  /** Tells also what kind of quantity it reads. */
  readonly unit: Unit
  /** Smallest step to which it is read, in `unit`; a reading may state another. */
  readonly readTo: number
  readonly source: InstrumentSource
  readonly confirmation: Confirmation
}

const named = (is: ShippedInstrument): InstrumentName => ({ kind: 'instrument', is })

const recalled = {
  source: { kind: 'recalled of tapes' },
  confirmation: 'from memory',
} as const

const ofOtherKinds = {
  source: { kind: 'recalled as commonly stated' },
  confirmation: 'from memory',
} as const

const traverse = title('Comparison of total station and GNSS heights on a nine-point urban traverse')

/** 1/8 in, the step to which the trade reads a tape; common practice. */
const eighthInch = 3.175

/**
 * The instruments that ship. An agency replaces them in its run file; a reading may also state its own uncertainty.
 * A reading that names no instrument is taken as `not stated`, which is deliberately coarse.
 */
export const instruments: readonly Instrument[] = [
  { id: 'tape', name: named('steel tape'), standardUncertainty: 1, unit: 'mm', readTo: eighthInch, ...recalled },
  {
    id: 'tape-and-level',
    name: named('tape and level'),
    standardUncertainty: 3,
    unit: 'mm',
    readTo: eighthInch,
    ...recalled,
  },
  {
    id: 'string-line',
    name: named('string line and tape'),
    standardUncertainty: 2,
    unit: 'mm',
    readTo: eighthInch,
    ...recalled,
  },
  {
    id: 'total-station',
    name: named('total station'),
    standardUncertainty: 4,
    unit: 'mm',
    readTo: 1,
    source: traverse,
    confirmation: 'published',
  },
  {
    id: 'gnss',
    name: named('GNSS receiver'),
    standardUncertainty: 20,
    unit: 'mm',
    readTo: 1,
    source: traverse,
    confirmation: 'published',
  },
  {
    id: 'not-stated',
    name: named('not stated'),
    standardUncertainty: 6,
    unit: 'mm',
    readTo: 2 * eighthInch,
    ...recalled,
  },
  {
    id: 'digital-level',
    name: named('digital level'),
    standardUncertainty: 0.1,
    unit: '%',
    readTo: 0.1,
    ...ofOtherKinds,
  },
  {
    id: 'slope-not-stated',
    name: named('not stated'),
    standardUncertainty: 0.5,
    unit: '%',
    readTo: 1,
    ...ofOtherKinds,
  },
  { id: 'angle-gauge', name: named('angle gauge'), standardUncertainty: 0.2, unit: '°', readTo: 0.1, ...ofOtherKinds },
  { id: 'angle-not-stated', name: named('not stated'), standardUncertainty: 1, unit: '°', readTo: 1, ...ofOtherKinds },
  {
    id: 'torque-wrench',
    name: named('torque wrench'),
    standardUncertainty: 0,
    // Within 4 % of the reading, anywhere in there alike (JCGM 100:2008, 4.3.7).
    relativeUncertainty: 0.04 / Math.sqrt(3),
    unit: 'lbf·ft',
    readTo: 1,
    source: { kind: 'recalled of torque tools' },
    confirmation: 'from memory',
  },
  {
    id: 'torque-not-stated',
    name: named('not stated'),
    standardUncertainty: 0,
    relativeUncertainty: 0.1,
    unit: 'lbf·ft',
    readTo: 5,
    ...ofOtherKinds,
  },
  {
    id: 'tension-gauge',
    name: named('cable tension gauge'),
    standardUncertainty: 0,
    relativeUncertainty: 0.03,
    unit: 'lbf',
    readTo: 20,
    ...ofOtherKinds,
  },
  {
    id: 'force-not-stated',
    name: named('not stated'),
    standardUncertainty: 0,
    relativeUncertainty: 0.1,
    unit: 'lbf',
    readTo: 100,
    ...ofOtherKinds,
  },
  {
    id: 'count-not-stated',
    name: named('counted by eye'),
    standardUncertainty: 0,
    unit: 'count',
    readTo: 1,
    ...ofOtherKinds,
  },
]

/** By kind of quantity, the instrument that a reading is taken with which names none. */
const notStated: Readonly<Record<QuantityKind, string>> = {
  length: 'not-stated',
  slope: 'slope-not-stated',
  angle: 'angle-not-stated',
  torque: 'torque-not-stated',
  force: 'force-not-stated',
  count: 'count-not-stated',
}

/** Those of `all` that read this kind of quantity. */
export const instrumentsReading = (all: readonly Instrument[], kind: QuantityKind): readonly Instrument[] =>
  all.filter(({ unit }) => kindOf(unit) === kind)

/** Whether it stands for an instrument that nobody named. */
export const isNotStated = ({ id, unit }: Instrument): boolean => id === notStated[kindOf(unit)]

/** The instrument of that id that reads this kind of quantity, or else what stands for one that nobody named. */
export function instrumentOf(all: readonly Instrument[], id: string | null, kind: QuantityKind): Instrument {
  const reads = ({ unit }: Instrument): boolean => kindOf(unit) === kind
  return (
    all.find((one) => one.id === id && reads(one)) ??
    all.find((one) => one.id === notStated[kind] && reads(one)) ??
    instruments.find((one) => one.id === notStated[kind])!
  )
}
