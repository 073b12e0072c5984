import type { Title } from '../hardware/title.ts'
import type { Theirs } from '../theirs.ts'

/** What an instrument is called: one that ships by our words, one of a run file by those of its writer. */
export type InstrumentName = InstrumentSaying | Theirs

/** Where what is said of its doubt comes from. */
export type InstrumentSource = Title | RecalledOf | Theirs

/** What is said of the instruments that ship. */
export type ShippedInstrumentSaying = InstrumentSaying | RecalledOf

interface InstrumentSaying {
  readonly kind: 'instrument'
  readonly is: ShippedInstrument
}

interface RecalledOf {
  readonly kind: 'recalled of tapes' | 'recalled as commonly stated' | 'recalled of torque tools'
}

export type ShippedInstrument =
  | 'steel tape'
  | 'tape and level'
  | 'string line and tape'
  | 'total station'
  | 'GNSS receiver'
  | 'not stated'
  | 'digital level'
  | 'angle gauge'
  | 'torque wrench'
  | 'cable tension gauge'
  | 'counted by eye'
