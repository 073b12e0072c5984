import { cutAlignment } from '../core/alignment/cut-alignment.ts'
import { endStation, type HorizontalAlignment, pointAt } from '../core/alignment/horizontal-alignment.ts'
import { writtenStations } from '../core/alignment/station-equations.ts'
import { profileAt, type VerticalAlignment } from '../core/alignment/vertical-alignment.ts'
import { azimuthFrom } from '../core/geometry/point.ts'
import type { Unit } from '../core/layout/layout.ts'
import { sheetOf } from '../core/layout/sheet-of.ts'
import type { RailPlace } from '../core/staking/locate-rail.ts'
import { outwardSign } from '../core/staking/staking-frame.ts'
import { exactLength, toMetres } from '../core/units/exact-length.ts'
import { type GroundUnit, groundFromMetres } from '../core/units/ground-unit.ts'
import { inches, type Metres, metres } from '../core/units/quantity.ts'
import { remedyOf } from '../core/verdicts/saying.ts'
import { stationText } from '../documents/stake-list-contents.ts'
import type { Place } from '../formats/ifc/geometry.ts'
import type {
  IfcEndUnit,
  IfcFinding,
  IfcPanel,
  IfcPost,
  IfcProperty,
  IfcRun,
  IfcStation,
} from '../formats/ifc/ifc-run.ts'
import { sizesInWords } from '../formats/ifc/rail-shapes.ts'
import type { ReferenceSystem } from '../formats/map/reference-system.ts'
import type { Print } from '../words/print.ts'
import type { PlacedRun } from './place-run.ts'
import type { RequiredRun } from './require-by.ts'

interface Source {
  readonly run: RequiredRun
  readonly placed: PlacedRun
  /** Of stations, offsets and heights. */
  readonly unit: GroundUnit
  readonly print: Print
}

/** A placed run as a building model holds it. @param system null where the coordinates belong to no known one */
export function ifcRun(
  run: RequiredRun,
  placed: PlacedRun,
  unit: GroundUnit,
  system: ReferenceSystem | null,
  print: Print,
): IfcRun {
  const source = { run, placed, unit, print }
  const { name, road } = run.run
  const alignment = system === null ? besideRun(placed) : placed.frame.alignment
  return {
    name,
    identity: JSON.stringify(['lapwise', name, road.route, road.side]),
    road: road.route ?? 'Road',
    system,
    alignment,
    profile: profileOf(placed),
    stations: stations(source, alignment),
    properties: runProperties(source),
    units: endUnits(source),
    posts: posts(source),
    panels: panels(source),
    findings: findings(source),
  }
}

/** A straight road without coordinates is as long as its run and 10 m at each end. */
function besideRun({ frame, rail }: PlacedRun): HorizontalAlignment {
  const along = rail.map(({ station }) => station)
  return cutAlignment(frame.alignment, Math.min(...along) - metres(10), Math.max(...along) + metres(10))
}

const text = (name: string, words: string | null): IfcProperty[] =>
  words === null ? [] : [{ name, value: { kind: 'text', text: words } }]
const count = (name: string, number: number | null): IfcProperty[] =>
  number === null ? [] : [{ name, value: { kind: 'count', count: number } }]
const truth = (name: string, yes: boolean): IfcProperty => ({ name, value: { kind: 'truth', yes } })
const inchesOf = (name: string, length: number): IfcProperty => ({
  name,
  value: { kind: 'length', length, unit: 'inch' },
})

/** The road's profile where it is known along the whole rail; null where it is not, and everything stands on level 0. */
const profileOf = ({ rail, frame }: PlacedRun): VerticalAlignment | null =>
  rail.every(({ elevation }) => elevation !== null) ? (frame.surface?.profile ?? null) : null

const onGround = (placed: PlacedRun, { position, elevation }: RailPlace): Place => ({
  ...position,
  elevation: profileOf(placed) === null ? 0 : (elevation ?? 0),
})

function runProperties({ run: { run, model }, placed }: Source): readonly IfcProperty[] {
  const { posts, panels } = model.layout
  return [
    ...text('Route', run.road.route),
    ...text('Side, looking up-station', run.road.side),
    ...text('System', model.system.name),
    ...text('Sheet', `${model.system.id} ${model.system.version}`),
    ...count('Posts', posts.length),
    ...count('Panels', panels.length),
    inchesOf(
      'Rail',
      panels.reduce((sum, panel) => sum + panel.inches, 0),
    ),
    ...text(
      'Heights',
      profileOf(placed) !== null
        ? 'of the road surface, extended with its cross slope'
        : 'the profile of the road is not known along the whole run: the ground is drawn level, at 0',
    ),
    ...text('Drawn sizes', `${sizesInWords}; ${heightWords(model.system.railHeight.nominal)}`),
  ]
}

const heightWords = (nominal: number | 'notStated'): string =>
  nominal === 'notStated' ? 'height of rail not stated, drawn at 31 in' : 'height of rail as its sheet states it'

function topOf({ run }: Source, unit: Unit): Metres {
  const { nominal, unit: lengthUnit } = sheetOf(run.model, unit).railHeight
  return nominal === 'notStated' ? inches(31) : toMetres(exactLength(nominal, lengthUnit))
}

const outwardOf = ({ placed: { frame } }: Source) => (outwardSign(frame.side) * frame.direction > 0 ? 'right' : 'left')

function placeProperties({ placed, unit }: Source, place: RailPlace): readonly IfcProperty[] {
  const inUnit = (name: string, length: Metres): IfcProperty => ({
    name,
    value: { kind: 'length', length: Math.round(groundFromMetres(length, unit) * 1e4) / 1e4 + 0, unit },
  })
  return [
    inchesOf('Along the rail from post 1', place.alongInches),
    ...(placed.isOnRoad
      ? [
          ...text('Station', stationText(place.station, placed.frame, unit)),
          inUnit('Offset, right positive', place.offset),
        ]
      : []),
    ...(place.elevation === null ? [] : [inUnit('Elevation', place.elevation)]),
  ]
}

function endUnits({ run: { model } }: Source): readonly IfcEndUnit[] {
  return (['first', 'second'] as const).flatMap((unit) => {
    const end = model[unit]
    if (end.kind !== 'unit') return []
    const { id, version, name, kind, crashworthy } = end.sheet
    return [
      {
        id: `${unit}-end`,
        unit,
        name,
        kind,
        properties: [...text('Kind', kind), ...text('Sheet', `${id} ${version}`), truth('Crashworthy', crashworthy)],
      },
    ]
  })
}

function posts(source: Source): readonly IfcPost[] {
  const { run, placed } = source
  const { stakes } = placed.staking
  return stakes.map((stake, i) => {
    const { id, number, kind, block, unit, ownNumber, state } = run.model.layout.posts[i]!
    const [before, after] = [stakes[Math.max(i - 1, 0)]!, stakes[Math.min(i + 1, stakes.length - 1)]!]
    return {
      id,
      name: `Post ${number}`,
      unit,
      kind,
      top: topOf(source, unit),
      outward: outwardOf(source),
      at: onGround(placed, stake),
      azimuth: azimuthFrom(before.position, after.position),
      block,
      properties: [
        ...count('Number', number),
        ...text('Kind', kind),
        truth('Block', block),
        ...text('State', state),
        ...text('Purpose', source.print.say(stake.purpose)),
        ...count('Number in its end unit', ownNumber),
        ...placeProperties(source, stake),
        ...text('Sheet', sheetOf(run.model, unit).id),
      ],
    }
  })
}

function panels(source: Source): readonly IfcPanel[] {
  const { run, placed } = source
  return run.model.layout.panels.map((panel) => {
    const { id, number, unit, fromInches, toInches, role } = panel
    const line = placed.rail.filter(({ alongInches }) => alongInches >= fromInches && alongInches <= toInches)
    return {
      id,
      name: `Panel ${number}`,
      unit,
      kind: `${role} panel`,
      top: topOf(source, unit),
      outward: outwardOf(source),
      line: line.map((place) => onGround(placed, place)),
      properties: [
        ...count('Number', number),
        inchesOf('Length', panel.inches),
        ...text('Role', role),
        truth('Nested', panel.nested),
        ...count('Number in its end unit', panel.ownNumber),
        ...placeProperties(source, line[0]!),
        ...text('Sheet', sheetOf(run.model, unit).id),
      ],
    }
  })
}

function findings(source: Source): readonly IfcFinding[] {
  return source.placed.findings.map(({ finding, at }) => ({
    id: `finding-${finding.id}`,
    name: source.print.say(finding.place),
    description: source.print.say(finding.what),
    at: onGround(source.placed, at),
    properties: [
      ...text('What', source.print.say(finding.what)),
      ...text('Remedy', source.print.say(remedyOf(finding))),
      ...placeProperties(source, at),
    ],
  }))
}

/** The start of the alignment, its station equations, and where the run begins and ends, in order. */
function stations(source: Source, alignment: HorizontalAlignment): readonly IfcStation[] {
  const { placed, unit } = source
  const { equations } = placed.frame
  const profile = profileOf(placed)
  const stakes = placed.staking.stakes
  const end = endStation(alignment)
  const at = (id: string, words: string, internal: Metres, kind: IfcStation['kind']): IfcStation => {
    const written = writtenStations(equations, internal)
    const elevation = profile === null ? 0 : (profileAt(profile, internal)?.elevation ?? 0)
    return {
      id,
      name: placed.isOnRoad ? `${words}${stationText(internal, placed.frame, unit)}` : words,
      internal,
      station: written.at(-1)!,
      incoming: written.length > 1 ? written[0]! : null,
      kind,
      place: { ...pointAt(alignment, internal), elevation },
    }
  }
  const all = [
    at('station-start', placed.isOnRoad ? '' : 'Start of the line of the run', alignment.startStation, 'STATION'),
    ...equations
      .filter(({ internal }) => internal > alignment.startStation && internal <= end)
      .map(({ internal }, i) => at(`station-equation-${i + 1}`, '', internal, 'STATION')),
    ...[stakes[0]!, stakes.at(-1)!].map(({ point, station }) =>
      at(`station-post-${point}`, `Post ${point}${placed.isOnRoad ? ', ' : ''}`, station, 'POSITION'),
    ),
  ]
  return all.sort((a, b) => a.internal - b.internal)
}
