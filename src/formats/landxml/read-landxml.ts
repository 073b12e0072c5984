import { goingOn } from '../../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../../core/alignment/station-equations.ts'
import { azimuthAlong } from '../../core/geometry/clothoid.ts'
import { err, ok, type Result } from '../../core/result.ts'
import { theirs } from '../../core/theirs.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { InputProblem } from '../input-problem.ts'
import { lengthFault } from '../range/range-faults.ts'
import { listLimits } from '../range/ranges.ts'
import {
  type LandXml,
  type LandXmlAlignment,
  type LinearUnit,
  metresFrom,
  type RoadFileNote,
  readNamespaces,
} from './landxml.ts'
import { type LaidElement, notesOn } from './notes-on.ts'
import { readElement } from './read-element.ts'
import { Reader } from './reader.ts'
import { childrenOf, readXml, type XmlElement } from './xml-tree.ts'

/**
 * The alignments of a LandXML file (1.1, 1.2, 2.0, or of the Inframodel schema), what it says against itself, or what is
 * wrong with it. Lines, circular curves, clothoids and station equations are read; anything else in an alignment's
 * geometry is refused by name. Profiles, cant and cross sections are not used, and a note says so.
 *
 * @param only  the name of the one alignment that is wanted: no other is judged; null for all
 */
export function readLandXml(
  file: string,
  text: string,
  only: string | null = null,
): Result<
  LandXml & { readonly epsg: number | null; readonly notes: readonly RoadFileNote[] },
  readonly InputProblem[]
> {
  const xml = readXml(file, text, ['Units', 'CoordinateSystem', 'CgPoints', 'Alignments'])
  if (!xml.ok) return err([xml.error])
  const root = xml.value
  const reader = new Reader(file, pointsOf(root))
  if (root.name !== 'LandXML' || !readNamespaces.includes(root.namespace)) {
    reader.fault(
      root,
      { kind: 'root in namespace', namespaces: readNamespaces },
      { kind: 'root element', name: root.name, namespace: root.namespace },
    )
    return err(reader.problems)
  }
  const unit = readUnit(root, reader)
  if (unit === null) return err(reader.problems)
  const found = childrenOf(root, 'Alignments').flatMap((group) => childrenOf(group, 'Alignment'))
  if (found.length === 0) reader.fault(root, { kind: 'one or more alignments' }, { kind: 'none' })
  reader.count(root, 'alignments', found.length)
  const named = found.filter(({ attributes }) => only === null || attributes.name === only)
  if (found.length > 0 && named.length === 0) {
    const names = found.map(({ attributes }) => JSON.stringify(attributes.name ?? ''))
    reader.fault(childrenOf(root, 'Alignments')[0]!, { kind: 'alignment named', file }, theirs(names.join(', ')))
  }
  const read = named.map((element) => readAlignment(element, unit, reader))
  if (reader.problems.length > 0) return err(reader.problems)
  const code = Number(childrenOf(root, 'CoordinateSystem')[0]?.attributes.epsgCode)
  return ok({
    unit,
    alignments: read.map(({ alignment }) => alignment),
    epsg: Number.isSafeInteger(code) && code > 0 ? code : null,
    notes: read.flatMap(({ notes }) => notes),
  })
}

/** The file's own points, by name, as they are written. */
const pointsOf = (root: XmlElement): ReadonlyMap<string, string> =>
  new Map(
    childrenOf(root, 'CgPoints')
      .flatMap((group) => childrenOf(group, 'CgPoint'))
      .map(({ attributes, text }) => [attributes.name ?? '', text]),
  )

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
  unit: LinearUnit,
  reader: Reader,
): { readonly alignment: LandXmlAlignment; readonly notes: readonly RoadFileNote[] } {
  const long = metresFrom[unit]
  const name = element.attributes.name ?? ''
  // Stations begin somewhere in every version but the last.
  const isStated = element.attributes.staStart !== undefined || !element.namespace.endsWith('LandXML-2.0')
  const startStation = isStated ? long(reader.number(element, 'staStart', 'station')) : 0
  const [geometry, ...others] = childrenOf(element, 'CoordGeom')
  if (geometry === undefined || others.length > 0)
    reader.fault(others[0] ?? element, { kind: 'one geometry', alignment: name }, { kind: geometry ? 'more' : 'none' })
  const laid: LaidElement[] = []
  let station = startStation
  if (geometry !== undefined) reader.count(geometry, 'elements', geometry.children.length)
  for (const child of geometry?.children.slice(0, listLimits.elements) ?? []) {
    if (child.name === 'Feature') continue
    const read = readElement(child, long, reader)
    if (read === null) continue
    const before = laid.at(-1)?.element
    const azimuth =
      before === undefined ? read.line.azimuth : goingOn(azimuthAlong(before, before.length), read.line.azimuth)
    laid.push({ element: { ...read.line, azimuth, station }, end: read.end, from: child })
    station += read.line.length
  }
  const beyond = lengthFault('station', station)
  if (beyond !== null) reader.fault(element, { kind: 'alignment to', end: beyond }, theirs(`${station} m`))
  if (geometry !== undefined && laid.length === 0)
    reader.fault(geometry, { kind: 'one or more elements' }, { kind: 'none' })
  const alignment = {
    name,
    horizontal: { startStation, elements: laid.map((one) => one.element) },
    equations: readEquations(element, startStation, long, reader),
  }
  const notes = laid.length === 0 ? [] : notesOn(element, alignment, laid, unit)
  return { alignment, notes: notes.map(({ place, said }) => ({ alignment: name, place, said })) }
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
