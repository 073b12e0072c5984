import { azimuthAlong, type Clothoid, endOf } from '../../core/geometry/clothoid.ts'
import { azimuthFrom, distance, movedBy, type Point, turned } from '../../core/geometry/point.ts'
import { theirs } from '../../core/theirs.ts'
import type { Metres } from '../../core/units/quantity.ts'
import { ranges } from '../range/ranges.ts'
import type { Reader } from './reader.ts'
import { childrenOf, type XmlElement } from './xml-tree.ts'

/** An element of an alignment as its numbers make it, and the end that the file states for it. */
export interface ReadElement {
  readonly line: Clothoid
  readonly end: Point
}

/** The element; null where it has no length, or with the reason left in `reader`. */
export function readElement(element: XmlElement, long: (value: number) => Metres, reader: Reader): ReadElement | null {
  switch (element.name) {
    case 'Line':
      return readLine(element, long, reader)
    case 'Curve':
      return readCurve(element, long, reader)
    case 'Spiral':
      return readSpiral(element, long, reader)
    default:
      reader.fault(element, { kind: 'alignment element' }, theirs(element.name))
      return null
  }
}

function readLine(element: XmlElement, long: (value: number) => Metres, reader: Reader): ReadElement | null {
  const start = reader.point(element, 'Start', long)
  const end = reader.point(element, 'End', long)
  // Programs write a tangent of no length where two curves meet.
  if (start === null || end === null || distance(start, end) <= 1e-9) return null
  const line = {
    start,
    azimuth: azimuthFrom(start, end),
    length: distance(start, end),
    curvatureStart: 0,
    curvatureEnd: 0,
  }
  return { line, end }
}

function readCurve(element: XmlElement, long: (value: number) => Metres, reader: Reader): ReadElement | null {
  const turn = readTurn(element, reader)
  const start = reader.point(element, 'Start', long)
  const end = reader.point(element, 'End', long)
  if (turn === null || start === null || end === null || !hasLength(element, start, end, reader)) return null
  const centre =
    childrenOf(element, 'Center').length > 0
      ? reader.point(element, 'Center', long)
      : centreBy(element, start, end, turn, long, reader)
  if (centre === null || !hasLength(element, start, centre, reader)) return null
  const radius = distance(centre, start)
  if (radius > ranges.radius.most) {
    reader.fault(element, { kind: 'radius at most', most: ranges.radius.most }, theirs(String(radius)))
    return null
  }
  const swept = turn * (azimuthFrom(centre, end) - azimuthFrom(centre, start))
  const angle = swept - 2 * Math.PI * Math.floor(swept / (2 * Math.PI))
  const line = {
    start,
    azimuth: azimuthFrom(centre, start) + (turn * Math.PI) / 2,
    length: angle * radius,
    curvatureStart: turn / radius,
    curvatureEnd: turn / radius,
  }
  return { line, end }
}

/** The centre that radius and turn give; a length of more than half a circle says that it lies on the other side. */
function centreBy(
  element: XmlElement,
  start: Point,
  end: Point,
  turn: 1 | -1,
  long: (value: number) => Metres,
  reader: Reader,
): Point | null {
  const radius = long(reader.number(element, 'radius', 'radius'))
  if (radius === 0) return null
  const chord = distance(start, end)
  // A half circle's radius may be rounded below half of its chord.
  if (radius < chord / 2 - 0.001) {
    reader.fault(element, { kind: 'centre within reach' }, { kind: 'chord and radius', chord, radius })
    return null
  }
  const isLong = long(Number(element.attributes.length ?? '0')) > Math.PI * radius
  const away = Math.sqrt(Math.max(0, radius * radius - (chord * chord) / 4))
  return movedBy(start, azimuthFrom(start, end), chord / 2, (isLong ? -turn : turn) * away)
}

/** A spiral's point of intersection may lie off its start tangent by this much, rad, before the file contradicts itself. */
const intersectionTolerance = 0.01

function readSpiral(element: XmlElement, long: (value: number) => Metres, reader: Reader): ReadElement | null {
  const type = reader.attribute(element, 'spiType')
  if (type !== 'clothoid') {
    reader.fault(element, { kind: 'clothoid' }, theirs(type))
    return null
  }
  const turn = readTurn(element, reader)
  const length = long(reader.number(element, 'length', 'elementLength'))
  const curvatureStart = readCurvature(element, 'radiusStart', long, reader)
  const curvatureEnd = readCurvature(element, 'radiusEnd', long, reader)
  const start = reader.point(element, 'Start', long)
  const intersection = childrenOf(element, 'PI').length > 0 ? reader.point(element, 'PI', long) : null
  const end = reader.point(element, 'End', long)
  if (length <= 0) reader.fault(element, { kind: 'spiral with length' }, theirs(String(element.attributes.length)))
  if (turn === null || curvatureStart === null || curvatureEnd === null || length <= 0) return null
  if (start === null || end === null || !hasLength(element, start, end, reader)) return null
  // turned so that its chord has the direction of the file's, which is less rounded than that of the PI
  const shape = { start, length, curvatureStart: turn * curvatureStart, curvatureEnd: turn * curvatureEnd }
  const azimuth = azimuthFrom(start, end) - azimuthFrom(start, endOf({ ...shape, azimuth: 0 }))
  const line = { ...shape, azimuth }
  const off = intersection === null ? 0 : turned(azimuthFrom(start, intersection) - azimuth)
  if (Math.abs(off) > intersectionTolerance && azimuthAlong(line, length) !== azimuth) {
    reader.fault(childrenOf(element, 'PI')[0]!, { kind: 'PI on tangent' }, { kind: 'PI off tangent', radians: off })
    return null
  }
  return { line, end }
}

function readCurvature(
  element: XmlElement,
  name: string,
  long: (value: number) => Metres,
  reader: Reader,
): number | null {
  const stated = element.attributes[name]?.trim() ?? ''
  // Some programs write 0 for the straight end, which has no radius.
  if (/^\+?inf$/i.test(stated) || (stated !== '' && Number(stated) === 0)) return 0
  const radius = reader.number(element, name, 'radius')
  if (radius > 0) return 1 / long(radius)
  if (radius < 0) reader.fault(element, { kind: 'radius or INF', name }, theirs(String(radius)))
  return null
}

function readTurn(element: XmlElement, reader: Reader): 1 | -1 | null {
  const rot = reader.attribute(element, 'rot')
  if (rot === 'cw') return 1
  if (rot === 'ccw') return -1
  if (rot !== '') reader.fault(element, { kind: 'turn' }, theirs(rot))
  return null
}

function hasLength(element: XmlElement, from: Point, to: Point, reader: Reader): boolean {
  const isLong = distance(from, to) > 1e-9
  if (!isLong) reader.fault(element, { kind: 'points that differ' }, { kind: 'same point twice' })
  return isLong
}
