import { type ElementShape, endStation, layAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import type { Point } from '../../core/geometry/point.ts'
import type { SiteAlignment, UnitSystem } from '../../core/site/site.ts'
import { metresFromGround } from '../../core/units/ground-unit.ts'
import { degrees, feet, type Metres, metres } from '../../core/units/quantity.ts'
import { written } from '../input-problem.ts'
import { lengthFault } from '../range/range-faults.ts'
import type { ElementsFile } from './site-file.ts'
import { type Fault, writtenStation } from './station-text.ts'

/** The alignment that the short form states; faults are reported under `place`. */
export function readElements(
  from: ElementsFile,
  units: UnitSystem,
  place: string,
  faults: Fault[],
): SiteAlignment & { kind: 'elements' } {
  const long = units === 'us' ? feet : metres
  const station = writtenStation(from.start.station, units, `${place}.start.station`, faults)
  const unit = units === 'metric' ? 'metre' : from.foot === 'US survey' ? 'US survey foot' : 'foot'
  const pointOf = (at: Coordinates): Point => ({
    easting: metresFromGround(at.easting, unit),
    northing: metresFromGround(at.northing, unit),
  })
  const point = pointOf(from.start)
  const shapes = from.elements.map((element) => shapeOf(element, long, pointOf))
  const horizontal = layAlignment({ point, azimuth: degrees(from.start.azimuth), station }, shapes)
  const beyond = lengthFault('station', endStation(horizontal))
  if (beyond !== null)
    faults.push({
      place: `${place}.elements`,
      expected: { kind: 'alignment to', end: beyond },
      found: { kind: 'elements', count: from.elements.length },
    })
  const equations = equationsOf(from, units, place, station, endStation(horizontal), faults)
  return { kind: 'elements', line: from.line, horizontal, equations, unit }
}

type Coordinates = Readonly<Record<'easting' | 'northing', number>>

function shapeOf(
  element: ElementsFile['elements'][number],
  long: (n: number) => Metres,
  pointOf: (at: Coordinates) => Point,
): ElementShape {
  const { start } = element
  const length = long(element.length)
  const laid =
    start === undefined
      ? { length }
      : {
          length,
          own: {
            point: pointOf(start),
            azimuth: degrees(start.azimuth),
          },
        }
  if (element.kind === 'tangent') return { ...laid, curvatureStart: 0, curvatureEnd: 0 }
  const sign = element.turn === 'right' ? 1 : -1
  const curvature = (radius: number | null) => (radius === null ? 0 : sign / long(radius))
  if (element.kind === 'curve')
    return { ...laid, curvatureStart: curvature(element.radius), curvatureEnd: curvature(element.radius) }
  return { ...laid, curvatureStart: curvature(element.radiusStart), curvatureEnd: curvature(element.radiusEnd) }
}

function equationsOf(
  from: ElementsFile,
  units: UnitSystem,
  place: string,
  start: Metres,
  end: Metres,
  faults: Fault[],
): readonly StationEquation[] {
  const equations: StationEquation[] = []
  from.stationEquations.forEach(({ back, ahead }, i) => {
    const here = `${place}.stationEquations[${i}]`
    const stated = writtenStation(back, units, `${here}.back`, faults)
    const before = equations.at(-1)
    const internal = before === undefined ? stated : before.internal + (stated - before.ahead)
    if (internal < (before?.internal ?? start) || internal > end)
      faults.push({
        place: `${here}.back`,
        expected: { kind: 'station beyond equation' },
        found: written(back),
      })
    equations.push({ internal, back: stated, ahead: writtenStation(ahead, units, `${here}.ahead`, faults) })
  })
  return equations
}
