import { ok, type Result } from '../core/result.ts'
import type { GroundUnit } from '../core/units/ground-unit.ts'
import { asBuiltContents } from '../documents/as-built-contents.ts'
import { dailyReportContents } from '../documents/daily-report-contents.ts'
import { materialListContents } from '../documents/material-list-contents.ts'
import { writeAsBuilt } from '../documents/pdf/as-built.ts'
import { writeDailyReport } from '../documents/pdf/daily-report.ts'
import { writeMaterialList } from '../documents/pdf/material-list.ts'
import { writeQuantities } from '../documents/pdf/quantities.ts'
import { instantOf } from '../documents/printed-time.ts'
import type { QuantitiesContents } from '../documents/quantities-contents.ts'
import type { StripInput } from '../drawing/views/strip/strip-input.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { writeReadings } from '../formats/readings/readings-file.ts'
import { writeRun } from '../formats/run/write-run.ts'
import { type PacketPurpose, packetPurposes } from '../protocol/packet-purposes.ts'
import { english } from '../words/english.ts'
import type { Print } from '../words/print.ts'
import { spanish } from '../words/spanish.ts'
import { dayInZone } from './day-in-zone.ts'
import { dayReport } from './day-report.ts'
import { entriesInForce } from './entries-in-force.ts'
import type { JudgedRun } from './judge-readings.ts'
import { onRoad } from './on-road.ts'
import type { PacketOptions } from './packet-options.ts'
import type { PlacedRun } from './place-run.ts'
import type { NamedPhoto } from './record-photos.ts'
import { stripInput } from './strip-input.ts'
import {
  type Stamp,
  stakeList,
  writeRunGeoJson,
  writeRunGeoPackage,
  writeRunIfc,
  writeRunWorkbook,
  writeStakeCsv,
  writeStakeDxf,
  writeStakeXml,
} from './write-exports.ts'
import { recordFileText, recordInput, writeRecord } from './write-record.ts'
import { writeRunCrewSheet } from './write-run-crew-sheet.ts'
import { writeRunSummary } from './write-run-summary.ts'
import { writeRunViewDxf, writeStrip } from './write-strip.ts'

type Made = string | Uint8Array
type Outcome = Result<Made, readonly InputProblem[]>

/** One file of the packet and the way to make it. */
export interface PacketMaker {
  readonly name: string
  /** What a packet is made for that holds it. */
  readonly purposes: readonly PacketPurpose[]
  readonly make: () => Outcome | Promise<Outcome>
}

interface Material extends PacketOptions {
  /** Of the record. */
  readonly hash: string
  readonly quantities: QuantitiesContents
  /** Null where the run cannot be staked. */
  readonly placed: PlacedRun | null
}

/** Every file that is made of the run, in the order of the packet. */
export function packetMakers(judged: JudgedRun, material: Material): readonly PacketMaker[] {
  const { page, lie, printedAt, author, hash, quantities, placed: stakes, place, print } = material
  const unit = place?.run.unit ?? lineUnit(judged)
  const onRoadOf = stakes?.isOnRoad ? onRoad(stakes, unit) : null
  const input = recordInput(judged, print, onRoadOf)
  const strip = stripInput(judged, print)
  const printing = { page, lie, printedAt, author, hash, print }
  const stamp = { at: new Date(instantOf(printedAt)).toISOString(), author }
  const crewSheet = (print: Print): Promise<Uint8Array> =>
    writeRunCrewSheet(judged, { ...material, onRoad: onRoadOf }, { ...printing, print })
  return [
    // Crews on this work read both languages.
    sure('crew-sheet.pdf', ['crew'], () => crewSheet(english(judged.run.units))),
    sure('crew-sheet-es.pdf', ['crew'], () => crewSheet(spanish(judged.run.units))),
    sure('record.pdf', ['record'], async () => (await writeRecord(judged, { ...material, onRoad: onRoadOf })).pdf),
    sure('record.json', ['record'], () => recordFileText(judged, { ...material, onRoad: onRoadOf })),
    sure('summary.pdf', ['record'], async () => (await writeRunSummary(judged, { ...material, onRoad: onRoadOf })).pdf),
    sure('as-built.pdf', ['record'], () => writeAsBuilt(asBuiltContents(input), strip, printing)),
    sure('quantities.pdf', ['estimate', 'record'], () => writeQuantities(quantities, printing)),
    sure('quantities.xlsx', ['estimate', 'record'], () =>
      writeRunWorkbook(
        judged,
        place && stakes && stakeList(judged, stakes, unit, print),
        quantities,
        material.entries,
        stamp,
        print,
        onRoadOf,
      ),
    ),
    sure('material-list.pdf', ['crew', 'estimate'], () =>
      writeMaterialList(materialListContents(quantities, print), printing),
    ),
    ...dailyReports(judged, material).map(({ day, contents }) =>
      sure(`daily-report-${day}.pdf`, ['record'], () => writeDailyReport(contents(), printing)),
    ),
    sure('strip.svg', packetPurposes, () => writeStrip(judged, 'web', print)[0]!),
    ...viewFiles(judged, strip, author, print),
    ...(stakes === null ? [] : stakeFiles(judged, stakes, material, stamp)),
    ...(stakes === null ? [] : mapFiles(judged, stakes, material, stamp)),
    sure('run.json', packetPurposes, () => writeRun(judged.run)),
    sure('readings.json', ['record'], () =>
      writeReadings({
        ...{ run: judged.run.name, readings: judged.log, findings: judged.freeFindings },
        photoStrokes: material.entries.photoStrokes,
      }),
    ),
    ...photoFiles(material.photos ?? []),
  ]
}

/** A file that nothing of a user can keep from being made. */
const sure = (name: string, purposes: readonly PacketPurpose[], make: () => Made | Promise<Made>): PacketMaker => ({
  ...{ name, purposes },
  make: async () => ok(await make()),
})

export const lineUnit = ({ run }: JudgedRun): GroundUnit => (run.units === 'metric' ? 'metre' : 'foot')

/** One for each day on which something was read or a log was written. */
function dailyReports(judged: JudgedRun, { entries, zone, print }: PacketOptions) {
  const dayOf = dayInZone(zone)
  const days = [...entriesInForce(entries.logs).map(({ body }) => body.day), ...judged.log.map(({ at }) => dayOf(at))]
  return [...new Set(days)].sort().map((day) => ({
    day,
    contents: () => dailyReportContents({ ...judged, print }, dayReport(judged, entries, day, dayOf), zone),
  }))
}

/** The run from above, in elevation and, for each end unit, in detail. */
function viewFiles(
  judged: JudgedRun,
  { first, second }: StripInput,
  author: string,
  print: Print,
): readonly PacketMaker[] {
  const details = [first, second].filter(({ sheet }) => sheet !== null)
  return [
    sure('strip.dxf', ['crew', 'survey'], () => writeRunViewDxf(judged, 'strip', author, print)[0]!),
    sure('elevation.dxf', ['crew', 'survey'], () => writeRunViewDxf(judged, 'elevation', author, print)[0]!),
    ...details.map((_, i) =>
      sure(`detail-${i + 1}.dxf`, ['crew', 'survey'], () => writeRunViewDxf(judged, 'detail', author, print)[i]!),
    ),
  ]
}

/** The stakes as points and the run as a model, on a road with coordinates for every program that sets out. */
function stakeFiles(
  judged: JudgedRun,
  stakes: PlacedRun,
  { sources, place, sha256, stakes: columns, print }: Material,
  stamp: Stamp,
): readonly PacketMaker[] {
  const unit = place?.run.unit ?? lineUnit(judged)
  const model = { system: place?.system ?? null, unit, sha256, stamp, print }
  return [
    sure('stakes.csv', ['survey'], () => writeStakeCsv(stakes, { ...columns, unit }, print)),
    ...(place === null
      ? []
      : [
          sure('stakes.xml', ['survey'], () => writeStakeXml(stakes, unit, stamp, print)),
          sure('stakes.dxf', ['survey'], () => writeStakeDxf(judged, stakes, unit, stamp, print)),
        ]),
    { name: 'run.ifc', purposes: ['survey'], make: () => writeRunIfc(sources.run, judged, stakes, model) },
  ]
}

/** Each photo once, also where the readings name it twice. */
const photoFiles = (photos: readonly NamedPhoto[]): readonly PacketMaker[] =>
  [...new Map(photos.map(({ file, bytes }) => [`photos/${file}`, bytes]))].map(([name, bytes]) =>
    sure(name, ['record'], () => bytes),
  )

function mapFiles(
  judged: JudgedRun,
  stakes: PlacedRun,
  { sources, place, print }: Material,
  stamp: Stamp,
): readonly PacketMaker[] {
  const { system = null, sqliteAt = null } = place ?? {}
  if (system === null) return []
  const file = sources.run
  return [
    { name: 'run.geojson', purposes: ['survey'], make: () => writeRunGeoJson(file, judged, stakes, system, print) },
    {
      name: 'run.gpkg',
      purposes: ['survey'],
      make: () => writeRunGeoPackage(file, judged, stakes, { system, sqliteAt, stamp, print }),
    },
  ]
}
