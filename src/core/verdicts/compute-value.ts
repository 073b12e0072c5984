import type { Computation, LinePoint } from '../requirements/requirement.ts'
import type { Nanometres } from '../units/exact-length.ts'

export interface ComputedValue {
  readonly value: Nanometres
  /** Standard uncertainty, the readings taken as independent (JCGM 100:2008, 5.1.2). */
  readonly u: Nanometres
  readonly readings: readonly string[]
  /** False for an offset from readings that do not say their side: it may as well lie on the other, at `-value`. */
  readonly hasSide: boolean
}

/** A reading's value with its standard uncertainty and id, nm. */
export interface KnownReading {
  /** An offset is positive away from traffic. */
  readonly value: Nanometres
  readonly u: Nanometres
  readonly id: string
  /** False for an offset whose reading does not say its side. */
  readonly hasSide: boolean
}

/** Why there is no value: readings that nobody took, or readings of one line of which only some say their side. */
type NoValue = { readonly missing: readonly string[] } | { readonly sidesMixed: readonly string[] }

export type Lookup = (of: string) => KnownReading | null

/** The value from the readings of several posts, or why there is none. */
export function computeValue(computation: Computation, lookup: Lookup): ComputedValue | NoValue {
  switch (computation.kind) {
    case 'difference':
      return difference(computation.from, computation.to, lookup)
    case 'middle ordinate':
      return middleOrdinate(computation.points, lookup)
    case 'offset from line':
      return offsetFromLine(computation.point, computation.line, lookup)
  }
}

function difference(from: string, to: string, lookup: Lookup): ComputedValue | NoValue {
  const [one, other] = [lookup(from), lookup(to)]
  if (one === null || other === null)
    return { missing: [one === null ? from : '', other === null ? to : ''].filter((id) => id !== '') }
  return {
    value: other.value - one.value,
    u: Math.hypot(one.u, other.u),
    readings: [one.id, other.id],
    hasSide: true,
  }
}

interface ReadPoint extends KnownReading {
  readonly along: number
}

function readPoints(points: readonly LinePoint[], lookup: Lookup): { read: ReadPoint[]; missing: string[] } {
  const read: ReadPoint[] = []
  const missing: string[] = []
  for (const { reading, alongInches } of points) {
    const known = lookup(reading)
    if (known === null) missing.push(reading)
    else read.push({ ...known, along: alongInches })
  }
  return { read, missing }
}

/** The ids of readings from one string when some say their side and others do not; null where they can stand together. */
function mixedSides(read: readonly KnownReading[]): { readonly sidesMixed: readonly string[] } | null {
  const off = read.filter(({ value }) => value !== 0)
  const isMixed = off.some(({ hasSide }) => hasSide) && off.some(({ hasSide }) => !hasSide)
  return isMixed ? { sidesMixed: read.map(({ id }) => id) } : null
}

/**
 * The largest distance of an inner point from the chord between the outer two; needs every point. It has no sign, so it
 * is the same whichever side the string was on: readings that do not say their side serve as long as none does.
 */
function middleOrdinate(points: readonly LinePoint[], lookup: Lookup): ComputedValue | NoValue {
  const { read, missing } = readPoints(points, lookup)
  if (missing.length > 0) return { missing }
  const mixed = mixedSides(read)
  if (mixed !== null) return mixed
  const [start, end] = [read[0]!, read[read.length - 1]!]
  let worst = { value: -1, u: 0 }
  for (const point of read.slice(1, -1)) {
    const t = (point.along - start.along) / (end.along - start.along)
    const value = Math.abs(point.value - (1 - t) * start.value - t * end.value)
    if (value > worst.value) worst = { value, u: Math.hypot(point.u, (1 - t) * start.u, t * end.u) }
  }
  return { value: Math.round(worst.value), u: worst.u, readings: read.map(({ id }) => id), hasSide: true }
}

/**
 * Offset of the point from the least-squares line through the others, carried on to it: positive when the point lies
 * farther from traffic than the line, negative when it lies nearer. Needs two readings on the line. The uncertainty is
 * that of the prediction: each weight of the fit times its reading's own. Where no reading says its side the value has
 * the right size and an unknown sign.
 */
function offsetFromLine(point: LinePoint, line: readonly LinePoint[], lookup: Lookup): ComputedValue | NoValue {
  const own = lookup(point.reading)
  const { read, missing } = readPoints(line, lookup)
  if (own === null || read.length < 2)
    return { missing: [...(own === null ? [point.reading] : []), ...missing.slice(0, Math.max(0, 2 - read.length))] }
  const all = [own, ...read]
  const mixed = mixedSides(all)
  if (mixed !== null) return mixed
  const mean = read.reduce((sum, { along }) => sum + along, 0) / read.length
  const spread = read.reduce((sum, { along }) => sum + (along - mean) ** 2, 0)
  let onLine = 0
  let variance = own.u ** 2
  for (const { along, value, u } of read) {
    const weight = 1 / read.length + ((point.alongInches - mean) * (along - mean)) / spread
    onLine += weight * value
    variance += (weight * u) ** 2
  }
  return {
    value: Math.round(own.value - onLine) + 0,
    u: Math.sqrt(variance),
    readings: all.map(({ id }) => id),
    hasSide: all.every(({ value, hasSide }) => hasSide || value === 0),
  }
}
