import { type Instrument, instruments as shippedInstruments } from '../core/measurement/instruments.ts'
import type { RunFile } from '../formats/run/run-file.ts'

/** The instruments in use: those that ship, replaced or joined by the run's own. */
export const instrumentsOf = (run: RunFile): readonly Instrument[] => [
  ...new Map([...shippedInstruments, ...run.instruments].map((instrument) => [instrument.id, instrument])).values(),
]
