import {
  azimuthAt,
  endStation,
  type HorizontalAlignment,
  pointAt,
} from '../../../core/alignment/horizontal-alignment.ts'
import { offsetLine } from '../../../core/alignment/offset-line.ts'
import { roadLine } from '../../../core/alignment/road-line.ts'
import { pointToStationOffset } from '../../../core/alignment/station-offset.ts'
import { azimuthFrom, movedBy, seenFrom, turned } from '../../../core/geometry/point.ts'
import type { DirectionNeed } from '../../../core/need/direction-need.ts'
import { nearEdgeOffset } from '../../../core/need/traffic-view.ts'
import type { Site } from '../../../core/site/site.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import { point } from '../../draw.ts'
import type { Point } from '../../drawing.ts'
import type { Stretch } from './site-view.ts'

/** A place by the road: continuous station and lateral distance from the edge beside the hazards, m. */
export type RoadPlace = DirectionNeed['path'][number]

const perMetre = 1 / 0.0254

/**
 * Where a site lies on its plan. Up-station is to the right; on a straight road x is the station in inches and y = 0 the
 * edge of travelled way beside the hazards, on any other the range's middle is the origin and its chord is level.
 */
export interface PlanFrame {
  readonly range: Stretch
  /** Laterals are drawn this many times their size; always 1 on a road that is not straight. */
  readonly across: number
  /** Where "away from the road" points in the drawing: 1 up (hazards on the left), -1 down. */
  readonly outward: 1 | -1
  readonly toDrawing: (station: Metres, lateral: Metres) => Point
  /** The place by the road that is drawn at `x`, `y`; null beyond the ends of the alignment. */
  readonly toSite: (x: number, y: number) => RoadPlace | null
  /** The line `lateral` m from the edge, `from` below `to`; without points where the road turns more sharply than that. */
  readonly line: (lateral: Metres, from: Metres, to: Metres) => readonly Point[]
  /** Direction of up-station in the drawing, degrees counterclockwise from +x. */
  readonly turnAt: (station: Metres) => number
}

export function frameOf(site: Site, range: Stretch, across: number): PlanFrame {
  const outward = site.side === 'right' ? -1 : 1
  const line = roadLine(site.road.alignment)
  if (line.isStraight) return straightFrame(range, across, outward)
  // as far to both sides as a hand may drag
  return alignedFrame(line.alignmentAround(range.from, range.to), nearEdgeOffset(site), range, outward)
}

function straightFrame(range: Stretch, across: number, outward: 1 | -1): PlanFrame {
  const perLateral = outward * across * perMetre
  const toDrawing = (station: Metres, lateral: Metres): Point => point(station * perMetre, lateral * perLateral)
  return {
    range,
    across,
    outward,
    toDrawing,
    toSite: (x, y) => ({ station: x / perMetre, lateral: y / perLateral }),
    line: (lateral, from, to) => [toDrawing(from, lateral), toDrawing(to, lateral)],
    turnAt: () => 0,
  }
}

function alignedFrame(alignment: HorizontalAlignment, edge: Metres, range: Stretch, outward: 1 | -1): PlanFrame {
  const middle = pointAt(alignment, (range.from + range.to) / 2)
  const level = azimuthFrom(pointAt(alignment, range.from), pointAt(alignment, range.to))
  const place = (easting: Metres, northing: Metres): Point => {
    const { ahead, right } = seenFrom(middle, level, { easting, northing })
    return point(ahead * perMetre, -right * perMetre)
  }
  const offsetOf = (lateral: Metres): Metres => edge - outward * lateral
  // a twentieth of a point on a page of 600
  const sagitta = (range.to - range.from) / 12_000
  return {
    range,
    across: 1,
    outward,
    toDrawing: (station, lateral) => {
      const at = movedBy(pointAt(alignment, station), azimuthAt(alignment, station), 0, offsetOf(lateral))
      return place(at.easting, at.northing)
    },
    toSite: (x, y) => {
      const [nearest] = pointToStationOffset(alignment, movedBy(middle, level, x / perMetre, -y / perMetre))
      return nearest === undefined ? null : { station: nearest.station, lateral: outward * (edge - nearest.offset) }
    },
    line: (lateral, from, to) => {
      const low = Math.max(Math.min(from, to), alignment.startStation)
      const high = Math.min(Math.max(from, to), endStation(alignment))
      const points = offsetLine(alignment, low, high, offsetOf(lateral), sagitta)
      return points.ok ? points.value.map((at) => place(at.easting, at.northing)) : []
    },
    turnAt: (station) => (turned(level - azimuthAt(alignment, station)) * 180) / Math.PI,
  }
}
