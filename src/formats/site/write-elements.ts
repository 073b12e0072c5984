import type { AlignmentElement, HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import { azimuthAlong, type Clothoid, endOf } from '../../core/geometry/clothoid.ts'
import { distance, turned } from '../../core/geometry/point.ts'
import type { UnitSystem } from '../../core/site/site.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { ElementsFile } from './site-file.ts'

/**
 * The short form of an alignment, for a site file. An element that does not begin where the one before it ends, and as
 * that one is directed there, carries its own start: what is laid from the short form is the same line to 0.1 mm, with
 * the gaps and kinks that it had.
 *
 * @param foot  of easting and northing, where `units` are us
 */
export function writeElements(
  line: ElementsFile['line'],
  horizontal: HorizontalAlignment,
  equations: readonly StationEquation[],
  units: UnitSystem,
  foot: ElementsFile['foot'] = 'international',
): ElementsFile {
  const short = (length: Metres) => (units === 'us' ? length / 0.3048 : length)
  const far = (length: Metres) => (units === 'us' && foot === 'US survey' ? (length * 3937) / 1200 : short(length))
  const first = horizontal.elements[0]
  if (first === undefined) throw new RangeError('an alignment has at least one element')
  const startOf = ({ start, azimuth }: Pick<Clothoid, 'start' | 'azimuth'>) => ({
    easting: far(start.easting),
    northing: far(start.northing),
    azimuth: (turned(azimuth) * 180) / Math.PI,
  })
  return {
    kind: 'elements',
    line,
    foot,
    start: { ...startOf(first), station: short(horizontal.startStation) },
    elements: asLaid(horizontal).flatMap(({ element, isBroken }) => {
      const [begin, ...rest] = elementsOf(element, short)
      return [isBroken ? { ...begin!, start: startOf(element) } : begin!, ...rest]
    }),
    stationEquations: equations.map(({ back, ahead }) => ({ back: short(back), ahead: short(ahead) })),
  }
}

/** Within this an element counts as joined to what is laid before it; over 10 km of it that is 0.02 mm. */
const joined = { distance: 1e-6, kink: 1e-9 }

/** Each element, and whether one laid tangent to those before it, as they are read again, would lie elsewhere. */
function asLaid({ elements }: HorizontalAlignment) {
  let laid: Clothoid | null = null
  return elements.map((element) => {
    const at = laid === null ? element : { start: endOf(laid), azimuth: azimuthAlong(laid, laid.length) }
    const isBroken =
      distance(at.start, element.start) > joined.distance ||
      Math.abs(turned(element.azimuth - at.azimuth)) > joined.kink
    laid = isBroken ? element : { ...element, start: at.start, azimuth: at.azimuth }
    return { element, isBroken }
  })
}

type ElementFile = ElementsFile['elements'][number]

/** A reversing spiral becomes two, which meet where it is straight. */
function elementsOf(element: AlignmentElement, short: (length: Metres) => number): ElementFile[] {
  const { curvatureStart: from, curvatureEnd: to, length } = element
  const radius = (curvature: number) => (curvature === 0 ? null : short(Math.abs(1 / curvature)))
  const turn = (curvature: number) => (curvature > 0 ? 'right' : 'left')
  if (from === 0 && to === 0) return [{ kind: 'tangent', length: short(length) }]
  if (from === to) return [{ kind: 'curve', length: short(length), radius: radius(from)!, turn: turn(from) }]
  const spiral = (share: number, k0: number, k1: number): ElementFile => ({
    kind: 'spiral',
    length: short(length * share),
    radiusStart: radius(k0),
    radiusEnd: radius(k1),
    turn: turn(k0 + k1),
  })
  if (from * to >= 0) return [spiral(1, from, to)]
  const share = from / (from - to)
  return [spiral(share, from, 0), spiral(1 - share, 0, to)]
}
