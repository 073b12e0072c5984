import type { EndSheet } from '../../../core/hardware/hardware-sheet.ts'
import { firstFront } from '../../../core/need/reach.ts'
import { adjacentView, barrierLength, opposingView, type TrafficView } from '../../../core/need/traffic-view.ts'
import { exactLength, toMetres } from '../../../core/units/exact-length.ts'
import { inches, type Metres } from '../../../core/units/quantity.ts'
import type { SiteView } from './site-view.ts'

/** The face of the barrier in plan, as the need has it, with its two end units. */
export interface BarrierLine {
  readonly approach: BarrierEnd
  readonly departure: BarrierEnd
  /** Lateral distance of the face of rail, end units left aside, m. */
  readonly lateralAt: (station: Metres) => Metres
}

/** One end of the barrier. */
export interface BarrierEnd {
  /** 1: up-station, -1: down-station. */
  readonly outward: 1 | -1
  /** Where the need ends; beside the last hazard where there is no need. */
  readonly station: Metres
  /** Where the flare begins; null where this end has none. It may lie beyond the end of need. */
  readonly flareFrom: Metres | null
  readonly unit: EndUnit | null
}

/** The end unit, placed so that its rail begins to count where the need ends. */
export interface EndUnit {
  readonly sheet: EndSheet
  /** Stations of post 1 (or of the connection to a bridge) and of the unit's other end. */
  readonly tip: Metres
  readonly inner: Metres
  /** Lateral distance of its face of rail, m. */
  readonly lateralAt: (station: Metres) => Metres
}

export function barrierLine(view: SiteView): BarrierLine {
  const { site, need } = view
  const adjacent = adjacentView(site)
  const opposing = opposingView(site) ?? { direction: adjacent.direction === 1 ? -1 : 1, shift: 0 }
  const approachFlare = flareOf(view, adjacent, true)
  const departureFlare = flareOf(view, opposing, need?.departure != null && site.barrier.flare?.ends === 'both')
  const lateralAt = (station: Metres): Metres =>
    site.barrier.offset + approachFlare.outAt(station) + departureFlare.outAt(station)
  const endOf = (traffic: TrafficView, needed: Metres | undefined, flare: Flaring, sheet: EndSheet | null) => {
    const outward = traffic.direction === 1 ? -1 : 1
    const station = needed ?? firstFront(site.hazards, traffic, Number.POSITIVE_INFINITY)
    return {
      outward,
      station,
      flareFrom: flare.from,
      unit: sheet && endUnit(view, outward, station, lateralAt, sheet),
    } as const
  }
  return {
    approach: endOf(adjacent, need?.approach.station, approachFlare, view.approachEnd),
    departure: endOf(opposing, need?.departure?.station, departureFlare, view.departureEnd),
    lateralAt,
  }
}

interface Flaring {
  readonly from: Metres | null
  /** How far the flare has left the parallel line, m. */
  readonly outAt: (station: Metres) => Metres
}

/** The flare of the end that `traffic` meets: it begins the parallel length upstream of the first hazard. */
function flareOf({ site, clearZone }: SiteView, traffic: TrafficView, isFlared: boolean): Flaring {
  const { flare } = site.barrier
  if (flare === null || !isFlared) return { from: null, outAt: () => 0 }
  const first = firstFront(site.hazards, traffic, clearZone ?? Number.POSITIVE_INFINITY)
  if (!Number.isFinite(first)) return { from: null, outAt: () => 0 }
  return {
    from: stationAlong({ site }, first, traffic.direction === 1 ? -1 : 1, flare.parallelLength),
    outAt: (station) => {
      const isUpstream = traffic.direction * (first - station) > 0
      return isUpstream ? Math.max(0, barrierLength(site, first, station) - flare.parallelLength) / flare.rate : 0
    },
  }
}

/** The station at which `length` m of parallel barrier that begin at `from` end. */
function stationAlong({ site }: Pick<SiteView, 'site'>, from: Metres, direction: 1 | -1, length: Metres): Metres {
  let reach = length
  // both lengths differ by the share of offset to radius; below a micrometre there is none to find
  for (let i = 0; i < 8 && length > 1e-6; i++) reach *= length / barrierLength(site, from, from + direction * reach)
  return from + direction * reach
}

function endUnit(
  view: SiteView,
  outward: 1 | -1,
  needEnd: Metres,
  lateralAt: (station: Metres) => Metres,
  sheet: EndSheet,
): EndUnit {
  // the rail of a flare is longer than the road beside it
  const slope = lateralAt(needEnd + outward * 0.01) - lateralAt(needEnd)
  const beside = Math.cos(Math.atan(Math.abs(slope) / 0.01))
  const place = (out: Metres) => {
    const direction = out < 0 ? (outward === 1 ? -1 : 1) : outward
    return stationAlong(view, needEnd, direction, Math.abs(out) * beside)
  }
  const counts = inches(sheet.lengthOfNeedFrom.inches)
  const tip = place(counts)
  const flare = sheet.flare === 'none' || sheet.flare.offset.nominal === 'notStated' ? null : sheet.flare
  const offset = flare === null ? 0 : toMetres(exactLength(flare.offset.nominal as number, flare.offset.unit))
  const over = flare === null ? 0 : inches(flare.overInches)
  const power = flare?.shape === 'parabola' ? 2 : 1
  return {
    sheet,
    tip,
    inner: place(counts - inches(sheet.listedLength.inches)),
    lateralAt: (station) => {
      if (flare === null) return lateralAt(station)
      const left = Math.max(0, 1 - barrierLength(view.site, tip, station) / over)
      return lateralAt(station) + offset * left ** power
    },
  }
}
