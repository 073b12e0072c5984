import type { AlignmentElement, HorizontalAlignment } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import type { UnitSystem } from '../../core/site/site.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { ElementsFile } from './site-file.ts'

/**
 * The short form of an alignment, for a site file. It is laid element by element, each tangent to the one before it,
 * so gaps and kinks that a file had are not in it.
 */
export function writeElements(
  line: ElementsFile['line'],
  horizontal: HorizontalAlignment,
  equations: readonly StationEquation[],
  units: UnitSystem,
): ElementsFile {
  const short = (length: Metres) => (units === 'us' ? length / 0.3048 : length)
  const first = horizontal.elements[0]
  if (first === undefined) throw new RangeError('an alignment has at least one element')
  return {
    kind: 'elements',
    line,
    start: {
      easting: short(first.start.easting),
      northing: short(first.start.northing),
      azimuth: (first.azimuth * 180) / Math.PI,
      station: short(horizontal.startStation),
    },
    elements: horizontal.elements.flatMap((element) => elementsOf(element, short)),
    stationEquations: equations.map(({ back, ahead }) => ({ back: short(back), ahead: short(ahead) })),
  }
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
