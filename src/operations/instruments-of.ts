import { type Instrument, instruments as shippedInstruments } from '../core/measurement/instruments.ts'
import { theirs } from '../core/theirs.ts'
import type { RunFile } from '../formats/run/run-file.ts'

/** The instruments in use: those that ship, replaced or joined by the run's own. */
export const instrumentsOf = ({ instruments }: Pick<RunFile, 'instruments'>): readonly Instrument[] => {
  const own = instruments.map((one): Instrument => ({ ...one, name: theirs(one.name), source: theirs(one.source) }))
  return [...new Map([...shippedInstruments, ...own].map((instrument) => [instrument.id, instrument])).values()]
}
