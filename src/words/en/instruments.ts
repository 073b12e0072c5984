import type { ShippedInstrument, ShippedInstrumentSaying } from '../../core/measurement/instrument-saying.ts'
import type { Printers } from '../print.ts'

/** The instruments that ship, and where their doubt comes from. */
export const instruments: Printers<ShippedInstrumentSaying> = {
  instrument: ({ is }) => names[is],
  'recalled of tapes': (_, print) =>
    `Recalled by the writer; tape and level from the pavement, ${print.length(3, 'mm')} to ${print.length(6, 'mm')}`,
  'recalled as commonly stated': () => 'Recalled by the writer; as such instruments commonly state',
  'recalled of torque tools': (_, print) =>
    `ISO 6789-1:2017, 5.1.5, recalled: within 4 % of the reading above ${print.quantity(10, 'N·m')}, for the finer classes`,
}

const names: Readonly<Record<ShippedInstrument, string>> = {
  'steel tape': 'steel tape',
  'tape and level': 'tape and level',
  'string line and tape': 'string line and tape',
  'total station': 'total station',
  'GNSS receiver': 'GNSS receiver, fast static or real-time',
  'not stated': 'not stated',
  'digital level': 'digital level',
  'angle gauge': 'angle gauge',
  'torque wrench': 'torque wrench',
  'cable tension gauge': 'cable tension gauge',
  'counted by eye': 'counted by eye',
}
