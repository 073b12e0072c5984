import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import type { RunFlare } from '../core/layout/run-flare.ts'
import type { DirectionNeed } from '../core/need/direction-need.ts'
import type { Need } from '../core/need/need.ts'
import { firstFront } from '../core/need/reach.ts'
import { adjacentView, barrierLength, frontOf, type TrafficView } from '../core/need/traffic-view.ts'
import type { Site } from '../core/site/site.ts'
import { exactLength } from '../core/units/exact-length.ts'
import type { Metres } from '../core/units/quantity.ts'
import { printStation } from '../core/units/station.ts'
import type { RunFile, RunFileEnd } from '../formats/run/run-file.ts'
import { opposingReaches } from './fit-facts.ts'
import { sheetShelf } from './sheet-shelf.ts'

/**
 * The run that the need asks for; null while its system or one of its ends is not chosen.
 *
 * The run's datum is where adjacent traffic first meets the hazards; distances are along the rail, the flare's slope
 * included, moved outward to whole sixteenths of an inch. A bridge end stands at the datum side of the hazards. The flare
 * begins where that of the need does: the parallel length upstream of the first hazard inside the clear zone.
 */
export function runForNeed(site: Site, need: Need): RunFile | null {
  const { barrier, hardware, road } = site
  const shelf = sheetShelf(site.sheets)
  const [approach, departure] = [barrier.approachEnd, barrier.departureEnd].map((id) =>
    id === null ? undefined : shelf.get(id),
  )
  if (hardware.system === null || approach === undefined || departure === undefined) return null
  const adjacent = adjacentView(site)
  const [begin, finish] = hazardReach(site, adjacent)
  const opposing: TrafficView = { ...adjacent, direction: adjacent.direction === 1 ? -1 : 1 }
  const flareBefore = flareStart(site, adjacent, begin, need.approach, true)
  const flareAfter = flareStart(site, opposing, finish, need.departure, barrier.flare?.ends === 'both')
  const before = railLength(site, adjacent, begin, need.approach.station, flareBefore)
  const hazards = barrierLength(site, begin, finish)
  const after = need.departure === null ? 0 : railLength(site, opposing, finish, need.departure.station, flareAfter)
  const fromInches = outward(-before, Math.floor)
  const toInches = outward(departure.kind === 'bridge end' ? 0 : hazards + after, Math.ceil)
  return {
    name: 'run for this need',
    units: site.units,
    road: {
      ...{ route: null, side: site.side, speed: road.speed, traffic: road.traffic },
      datumStation: datumStation(site, begin),
      opposingReaches: opposingReaches(need),
    },
    work: hardware.work,
    letting: hardware.letting,
    system: hardware.system,
    first: endOf(approach, fromInches),
    second: endOf(departure, toInches),
    need: { fromInches, toInches },
    flare: flareOf(site, flareBefore, flareAfter === null ? null : hazards + flareAfter),
    stock: null,
    obstructions: [],
    ...(hardware.curb === null ? {} : { curb: hardware.curb === 'none' ? 'none' : 'present' }),
    reduced:
      hardware.spacing === 'full'
        ? []
        : [
            {
              fromInches: 0,
              toInches: Math.max(outward(hazards, Math.ceil), 1),
              spacing: hardware.spacing,
              nested: false,
            },
          ],
    standing: null,
    mayExtendInches: 600,
    decision: null,
    decisionRule: { kind: 'guard band', multiple: 1 },
    instruments: [],
    sheets: site.sheets,
  }
}

/**
 * Where the hazards begin, on a straight road. On a curve a distance along the rail is no difference of stations, and a
 * run, which knows no alignment, would print every other station wrong: there nothing is said.
 */
const datumStation = ({ road, units }: Site, begin: Metres): string | null =>
  road.alignment.kind === 'straight' ? printStation(exactLength(begin, 'm'), units, units === 'us' ? 2 : 3) : null

const endOf = (sheet: HardwareSheet, atInches: number): RunFileEnd => ({
  kind: 'unit',
  sheet: sheet.id,
  atInches: sheet.kind === 'bridge end' ? atInches : null,
})

/** Where adjacent traffic first meets the hazards, and where it has passed the last. */
function hazardReach(site: Site, view: TrafficView): readonly [begin: Metres, finish: Metres] {
  const fronts = site.hazards.map((hazard) => frontOf(view, hazard))
  const rears = site.hazards.map((hazard) => (view.direction === 1 ? hazard.to : hazard.from))
  return view.direction === 1 ? [Math.min(...fronts), Math.max(...rears)] : [Math.max(...fronts), Math.min(...rears)]
}

/**
 * How far upstream of the hazards' `edge` the flare of one direction's end begins, m along the rail; negative where it
 * begins beside them. Null where that end is not flared, or the need has no length to flare.
 */
function flareStart(
  site: Site,
  view: TrafficView,
  edge: Metres,
  need: DirectionNeed | null,
  isFlared: boolean,
): Metres | null {
  const { flare } = site.barrier
  if (flare === null || need === null || !isFlared) return null
  const first = firstFront(site.hazards, view, need.clearZone)
  return Number.isFinite(first) ? flare.parallelLength - barrierLength(site, edge, first) : null
}

function flareOf({ barrier }: Site, before: Metres | null, after: Metres | null): RunFlare | null {
  if (barrier.flare === null || (before === null && after === null)) return null
  return {
    rate: barrier.flare.rate,
    firstFromInches: before === null ? null : outward(-before, Math.floor),
    secondFromInches: after === null ? null : outward(after, Math.ceil),
  }
}

/** Rail from the hazards' edge upstream to `station`: parallel first, then along the slope of the flare. */
function railLength(site: Site, view: TrafficView, edge: Metres, station: Metres, flareFrom: Metres | null): Metres {
  if (view.direction * (edge - station) <= 0) return -barrierLength(site, edge, station)
  const along = barrierLength(site, edge, station)
  const { flare } = site.barrier
  if (flare === null || flareFrom === null) return along
  const onFlare = Math.max(0, along - flareFrom)
  return along - onFlare + onFlare * Math.hypot(1, 1 / flare.rate)
}

/** Metres as whole sixteenths of an inch, in inches; noise of a hundred nanometres does not move them. */
const outward = (length: Metres, round: (sixteenths: number) => number): number =>
  round(Number((length / 0.0015875).toFixed(4))) / 16 + 0
