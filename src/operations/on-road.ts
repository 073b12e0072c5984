import { type GroundUnit, groundFromMetres } from '../core/units/ground-unit.ts'
import type { OnRoad } from '../documents/record-input.ts'
import { stationText } from '../documents/stake-list-contents.ts'
import type { PlacedRun } from './place-run.ts'

/** Station and offset of what a run's documents name, of a run on its road; stations and offsets in `unit`. */
export function onRoad({ frame, places, staking }: PlacedRun, unit: GroundUnit): OnRoad {
  const written = new Map(
    [...places, ...staking.stakes].map(({ alongInches, station, offset }) => [
      alongInches,
      { station: stationText(station, frame, unit), offset: offsetText(groundFromMetres(offset, unit), unit), unit },
    ]),
  )
  return (alongInches) => written.get(alongInches) ?? null
}

/** As many digits as its station has. */
function offsetText(offset: number, unit: GroundUnit): string {
  const text = Math.abs(offset).toFixed(unit === 'metre' ? 3 : 2)
  return `${Number(text) === 0 ? '' : offset < 0 ? '−' : '+'}${text}`
}
