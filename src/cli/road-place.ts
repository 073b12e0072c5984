import { theirs } from '../core/theirs.ts'
import type { GroundUnit } from '../core/units/ground-unit.ts'
import { parseLength } from '../core/units/length-text.ts'
import type { Metres } from '../core/units/quantity.ts'
import { written } from '../formats/input-problem.ts'
import type { LinearUnit } from '../formats/landxml/landxml.ts'
import { readLandXml } from '../formats/landxml/read-landxml.ts'
import { loadReferenceSystem, type ReferenceProblem, type ReferenceSystem } from '../formats/map/reference-system.ts'
import { lengthFault } from '../formats/range/range-faults.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { readSite } from '../formats/site/read-site.ts'
import type { PacketPlace } from '../operations/packet-options.ts'
import type { RoadPlace } from '../operations/place-run.ts'
import { BadInput, badWords, type CommandOptions } from './command.ts'
import { readXmlText, say, shownName, soundValue, words } from './io.ts'

/** Where the run stands by its road, as the options say; null where they say nothing. */
export async function placeOf(run: RunFile, options: CommandOptions): Promise<PacketPlace | null> {
  const { alignment, offset, epsg } = options
  if (alignment === null) {
    if (offset !== null || epsg !== null) throw badWords('--alignment FILE with --offset and --epsg', 'none')
    return null
  }
  if (offset === null) throw badWords('--offset LENGTH, from the alignment to the face of rail', 'none')
  const length = parseLength(offset, run.units === 'us' ? 'ft' : 'm')
  if (!length.ok) throw badWords(`--offset: ${words.say({ kind: 'no length', problem: length.error })}`, offset)
  if (length.value.nanometres < 0) throw badWords('--offset without a sign: the run file says the side', offset)
  const away: Metres = length.value.nanometres / 1e9
  const beyond = lengthFault('roadOffset', away)
  if (beyond !== null) throw badWords(`--offset: ${words.say(beyond)}`, offset)
  const { road, unit, epsg: ofRoad } = await readRoad(alignment)
  const system = epsg === null ? null : await referenceOf(epsg)
  if (system !== null && ofRoad !== null && system.code !== ofRoad)
    throw badWords(`--epsg ${ofRoad}, which the road's file names`, `${system.code}`)
  if (system !== null && system.unit !== unit)
    throw badWords(
      `--epsg with a reference system in the unit of the road, ${unit}${unit === 'foot' ? ' (a site file may say "foot": "US survey")' : ''}`,
      `${system.code}, ${system.name}, in ${system.unit}`,
    )
  return { run: { offset: run.road.side === 'left' ? -away : away, road, unit }, system, sqliteAt: null }
}

const groundUnits: Readonly<Record<LinearUnit, GroundUnit>> = {
  meter: 'metre',
  foot: 'foot',
  USSurveyFoot: 'US survey foot',
}

interface ReadRoad {
  readonly road: RoadPlace
  readonly unit: GroundUnit
  /** Of the reference system that the file names; null where it names none. */
  readonly epsg: number | null
}

/** The one alignment of a road or site file, or of several the one whose name follows after `#`. */
async function readRoad(named: string): Promise<ReadRoad> {
  const [, file = named, name = null] = /^(.+?)#(.+)$/.exec(named) ?? []
  const text = await readXmlText(file)
  if (!text.trimStart().startsWith('<')) return roadOfSite(file, text)
  const { unit, alignments, epsg, notes } = soundValue(readLandXml(shownName(file), text, name))
  const [found] = alignments
  if (found === undefined || alignments.length !== 1) {
    const names = alignments.map((one) => JSON.stringify(one.name)).join(', ')
    throw new BadInput([
      { file: shownName(file), place: 'Alignments', expected: { kind: 'alignment named', file }, found: theirs(names) },
    ])
  }
  for (const { place, said } of notes) say(`${shownName(file)}: ${place}: ${words.say(said)}`)
  const { horizontal, equations } = found
  return { road: { horizontal, equations, surface: null }, unit: groundUnits[unit], epsg }
}

function roadOfSite(file: string, text: string): ReadRoad {
  const site = soundValue(readSite(shownName(file), text))
  const { alignment } = site.road
  if (alignment.kind !== 'elements')
    throw new BadInput([
      {
        file: shownName(file),
        place: 'road.alignment',
        expected: { kind: 'alignment with coordinates' },
        found: written(alignment.kind),
      },
    ])
  const { horizontal, equations, unit } = alignment
  return { road: { horizontal, equations, surface: null }, unit, epsg: null }
}

async function referenceOf(epsg: string): Promise<ReferenceSystem> {
  const system = await loadReferenceSystem(/^\d{1,6}$/.test(epsg) ? Number(epsg) : Number.NaN)
  if (!system.ok)
    throw badWords('--epsg with the code of a projected reference system', `${epsg}: ${why(system.error)}`)
  return system.value
}

function why(problem: ReferenceProblem): string {
  switch (problem.kind) {
    case 'unknown-code':
      return 'there is no such code'
    case 'not-projected':
      return `${problem.name} is not projected`
    case 'unit-not-supported':
      return `${problem.name} is in ${problem.unit ?? 'no unit'}`
    case 'datum-needs-grids':
      return `${problem.name} cannot be brought to WGS 84 without shift grids`
    default:
      return problem satisfies never
  }
}
