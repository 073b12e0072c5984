import { alignmentBreaks } from '../../core/alignment/alignment-breaks.ts'
import { type AlignmentElement, endStation } from '../../core/alignment/horizontal-alignment.ts'
import { writtenStations } from '../../core/alignment/station-equations.ts'
import { endOf } from '../../core/geometry/clothoid.ts'
import { distance, type Point } from '../../core/geometry/point.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { RoadNote } from '../../words/problems/road.ts'
import { type LandXmlAlignment, type LinearUnit, metresFrom } from './landxml.ts'
import type { XmlElement } from './xml-tree.ts'

/** An element as it was read, the end that the file states for it, and where it stands in the file. */
export interface LaidElement {
  readonly element: AlignmentElement
  readonly end: Point
  readonly from: XmlElement
}

interface Note {
  readonly place: string
  readonly said: RoadNote
}

/** What is stated may differ from what points give by so much of rounding, m and parts (our judgement). */
const rounding = { metres: 0.01, share: 1e-5 }

/** What an alignment's file says against itself: breaks, and attributes that its points and lengths do not give. */
export function notesOn(
  from: XmlElement,
  { horizontal, equations }: LandXmlAlignment,
  laid: readonly LaidElement[],
  unit: LinearUnit,
): readonly Note[] {
  const size = metresFrom[unit](1)
  const stated = (element: XmlElement, name: string, found: Metres): readonly Note[] => {
    const written = element.attributes[name]?.trim() ?? ''
    const value = Number(written)
    const isNear = Math.abs(value * size - found) <= rounding.metres + rounding.share * Math.abs(found)
    if (written === '' || Number.isNaN(value) || isNear) return []
    return [
      {
        place: element.place,
        said: { kind: 'stated otherwise', element: element.name, name, stated: value, found: found / size },
      },
    ]
  }
  const broken = alignmentBreaks(horizontal).map(({ station, distance: metres, kink }): Note => {
    const text = writtenStations(equations, station).map((one) => (one / size).toFixed(3))
    return {
      place: laid.find(({ element }) => element.station === station)!.from.place,
      said: { kind: 'break of road', station: text.join(' = '), metres, degrees: (kink * 180) / Math.PI },
    }
  })
  const ends = laid.flatMap(({ element, end, from }): readonly Note[] => {
    const metres = distance(endOf(element), end)
    return metres > rounding.metres
      ? [{ place: from.place, said: { kind: 'end elsewhere', element: from.name, metres } }]
      : []
  })
  const attributes = laid.flatMap(({ element, from }) => [
    ...stated(from, 'length', element.length),
    ...(from.name === 'Curve' ? stated(from, 'radius', Math.abs(1 / element.curvatureStart)) : []),
  ])
  // One station that is off moves all those after it: the first is told.
  const stations = laid
    .filter(({ element }) => equations.every(({ internal }) => element.station <= internal))
    .flatMap(({ element, from }) => stated(from, 'staStart', element.station))
    .slice(0, 1)
  const unused = [...new Set(from.children.map(({ name }) => name).filter((name) => notUsed.includes(name)))]
  return [
    ...(from.attributes.staStart === undefined
      ? [{ place: from.place, said: { kind: 'start station not stated' } } satisfies Note]
      : []),
    ...stated(from, 'length', endStation(horizontal) - horizontal.startStation),
    ...broken,
    ...ends,
    ...attributes,
    ...stations,
    ...(unused.length > 0
      ? [{ place: from.place, said: { kind: 'not used of road', names: unused } } satisfies Note]
      : []),
  ]
}

/** What an alignment may hold beside its line in plan and its stations. */
const notUsed = ['Profile', 'CrossSects', 'Cant', 'Superelevation']
