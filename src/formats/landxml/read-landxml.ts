import { type AlignmentElement, goingOn } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import { azimuthAlong, type Clothoid, endOf } from '../../core/geometry/clothoid.ts'
import { distance, turned } from '../../core/geometry/point.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { InputProblem } from '../input-problem.ts'
import { lengthFault } from '../range/range-faults.ts'
import { listLimits } from '../range/ranges.ts'
import {
  type Gap,
  type LandXml,
  type LandXmlAlignment,
  type LinearUnit,
  landXmlNamespace,
  metresFrom,
} from './landxml.ts'
import { readElement } from './read-element.ts'
import { Reader } from './reader.ts'
import { childrenOf, readXml, type XmlElement } from './xml-tree.ts'

/** Joints wider than these are reported; files round coordinates to a millimetre or so (our judgement). */
const gapTolerance = 0.001
const kinkTolerance = 1e-4

/**
 * The alignments of a LandXML 1.2 file, and every joint of theirs that does not close, or what is wrong with the file.
 * Lines, circular curves, clothoids and station equations are read; anything else in an alignment's geometry is refused
 * by name, profiles and cross sections are passed over.
 */
export function readLandXml(
  file: string,
  text: string,
): Result<LandXml & { readonly gaps: readonly Gap[] }, readonly InputProblem[]> {
  const xml = readXml(file, text, ['Units', 'Alignments'])
  if (!xml.ok) return err([xml.error])
  const root = xml.value
  const reader = new Reader(file)
  if (root.name !== 'LandXML' || root.namespace !== landXmlNamespace) {
    reader.fault(
      root,
      { kind: 'root in namespace', namespace: landXmlNamespace },
      { kind: 'root element', name: root.name, namespace: root.namespace },
    )
    return err(reader.problems)
  }
  const unit = readUnit(root, reader)
  if (unit === null) return err(reader.problems)
  const found = childrenOf(root, 'Alignments').flatMap((group) => childrenOf(group, 'Alignment'))
  if (found.length === 0) reader.fault(root, { kind: 'one or more alignments' }, { kind: 'none' })
  reader.count(root, 'alignments', found.length)
  const gaps: Gap[] = []
  const alignments = found.map((element) => readAlignment(element, metresFrom[unit], reader, gaps))
  return reader.problems.length > 0 ? err(reader.problems) : ok({ unit, alignments, gaps })
}

function readUnit(root: XmlElement, reader: Reader): LinearUnit | null {
  const units = childrenOf(root, 'Units')[0]
  const system = units?.children.find((child) => child.name === 'Metric' || child.name === 'Imperial')
  if (system === undefined) {
    reader.fault(units ?? root, { kind: 'units of road' }, { kind: 'none' })
    return null
  }
  const linear = reader.attribute(system, 'linearUnit')
  const allowed: readonly LinearUnit[] = system.name === 'Metric' ? ['meter'] : ['foot', 'USSurveyFoot']
  const unit = allowed.find((name) => name === linear)
  if (unit === undefined && linear !== '') reader.fault(system, { kind: 'linear unit', units: allowed }, theirs(linear))
  return unit ?? null
}

function readAlignment(
  element: XmlElement,
  long: (value: number) => Metres,
  reader: Reader,
  gaps: Gap[],
): LandXmlAlignment {
  const name = element.attributes.name ?? ''
  const startStation = long(reader.number(element, 'staStart', 'station'))
  const [geometry, ...others] = childrenOf(element, 'CoordGeom')
  if (geometry === undefined || others.length > 0)
    reader.fault(others[0] ?? element, { kind: 'one geometry', alignment: name }, { kind: geometry ? 'more' : 'none' })
  const elements: AlignmentElement[] = []
  let station = startStation
  if (geometry !== undefined) reader.count(geometry, 'elements', geometry.children.length)
  for (const child of geometry?.children.slice(0, listLimits.elements) ?? []) {
    if (child.name === 'Feature') continue
    const read = readElement(child, long, reader)
    if (read === null) continue
    const before = elements.at(-1)
    if (before !== undefined) gaps.push(...gapBetween(before, read.line, name, child.place, station))
    const missed = distance(endOf(read.line), read.end)
    if (missed > gapTolerance) gaps.push({ alignment: name, place: child.place, station, distance: missed, kink: 0 })
    const azimuth =
      before === undefined ? read.line.azimuth : goingOn(azimuthAlong(before, before.length), read.line.azimuth)
    elements.push({ ...read.line, azimuth, station })
    station += read.line.length
  }
  const beyond = lengthFault('station', station)
  if (beyond !== null) reader.fault(element, { kind: 'alignment to', end: beyond }, theirs(`${station} m`))
  if (geometry !== undefined && elements.length === 0)
    reader.fault(geometry, { kind: 'one or more elements' }, { kind: 'none' })
  return {
    name,
    horizontal: { startStation, elements },
    equations: readEquations(element, startStation, long, reader),
  }
}

function gapBetween(
  before: Clothoid,
  after: Clothoid,
  alignment: string,
  place: string,
  station: Metres,
): readonly Gap[] {
  const apart = distance(endOf(before), after.start)
  const kink = turned(after.azimuth - azimuthAlong(before, before.length))
  if (apart <= gapTolerance && Math.abs(kink) <= kinkTolerance) return []
  return [{ alignment, place, station, distance: apart, kink }]
}

/** The stations of an equation may disagree with each other by this much, m: files round them. */
const stationTolerance = 0.01

function readEquations(
  alignment: XmlElement,
  startStation: Metres,
  long: (value: number) => Metres,
  reader: Reader,
): readonly StationEquation[] {
  const equations: StationEquation[] = []
  const found = childrenOf(alignment, 'StaEquation')
  reader.count(alignment, 'stationEquations', found.length)
  for (const element of found) {
    if (element.attributes.staIncrement === 'decreasing')
      reader.fault(element, { kind: 'increasing stations' }, theirs('staIncrement decreasing'))
    const internal = long(reader.number(element, 'staInternal', 'station'))
    const ahead = long(reader.number(element, 'staAhead', 'station'))
    const before = equations.at(-1)
    const follows = before === undefined ? internal : before.ahead + (internal - before.internal)
    const back = element.attributes.staBack === undefined ? follows : long(reader.number(element, 'staBack', 'station'))
    if (internal < (before?.internal ?? startStation))
      reader.fault(element, { kind: 'later staInternal' }, theirs(element.attributes.staInternal ?? ''))
    else if (Math.abs(back - follows) > stationTolerance)
      reader.fault(element, { kind: 'staBack that follows' }, theirs(element.attributes.staBack ?? ''))
    equations.push({ internal, back, ahead })
  }
  return equations
}
