import type { ShippedInstrument, ShippedInstrumentSaying } from '../../core/measurement/instrument-saying.ts'
import type { Printers } from '../print.ts'

/** The instruments that ship, and where their doubt comes from. */
export const instruments: Printers<ShippedInstrumentSaying> = {
  instrument: ({ is }) => names[is],
  'recalled of tapes': (_, print) =>
    `De memoria de quien lo escribió; cinta y nivel desde el pavimento, ${print.length(3, 'mm')} a ${print.length(6, 'mm')}`,
  'recalled as commonly stated': () => 'De memoria de quien lo escribió; como suelen indicar tales instrumentos',
  'recalled of torque tools': (_, print) =>
    `ISO 6789-1:2017, 5.1.5, de memoria: dentro del 4 % de la lectura por encima de ${print.quantity(10, 'N·m')}, en las clases más finas`,
}

const names: Readonly<Record<ShippedInstrument, string>> = {
  'steel tape': 'cinta de acero',
  'tape and level': 'cinta y nivel',
  'string line and tape': 'hilo y cinta',
  'total station': 'estación total',
  'GNSS receiver': 'receptor GNSS, estático rápido o en tiempo real',
  'not stated': 'no se dice',
  'digital level': 'nivel digital',
  'angle gauge': 'medidor de ángulos',
  'torque wrench': 'llave dinamométrica',
  'cable tension gauge': 'medidor de tensión de cables',
  'counted by eye': 'contado a la vista',
}
