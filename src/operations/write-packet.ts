import type { RunModel } from '../core/requirements/run-model.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { GroundUnit } from '../core/staking/ground-unit.ts'
import { asBuiltContents } from '../documents/as-built-contents.ts'
import { crewSheetContents } from '../documents/crew-sheet-contents.ts'
import { groupBy } from '../documents/group-by.ts'
import { materialListContents } from '../documents/material-list-contents.ts'
import { writeAsBuilt } from '../documents/pdf/as-built.ts'
import { writeCrewSheet } from '../documents/pdf/crew-sheet.ts'
import { writeMaterialList } from '../documents/pdf/material-list.ts'
import { writeQuantities } from '../documents/pdf/quantities.ts'
import { instantOf } from '../documents/printed-time.ts'
import { recordHash } from '../documents/record-hash.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { PaperName } from '../drawing/paper.ts'
import { figureFacts } from '../drawing/views/figures/figure-facts.ts'
import { figureDrawing } from '../drawing/views/figures.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { ReferenceSystem } from '../formats/map/reference-system.ts'
import type { JudgedRun } from './judge-readings.ts'
import { type AbsentPhotos, type NamedPhoto, photoProblems, photosNamed } from './packet-photos.ts'
import { type PlacedRun, placeRun, type RunPlace } from './place-run.ts'
import {
  type PayRule,
  quantityList,
  type Stamp,
  stakeList,
  writeRunGeoJson,
  writeRunGeoPackage,
  writeRunWorkbook,
  writeStakeCsv,
  writeStripDxf,
} from './write-exports.ts'
import { recordInput, writeRecord } from './write-record.ts'
import { stripInput, writeStrip } from './write-strip.ts'

export interface PacketFile {
  /** With `/` between folder and file. */
  readonly name: string
  readonly bytes: Uint8Array
}

export interface PacketOptions {
  readonly page: PaperName
  /** ISO 8601 date and time; without a zone it counts as UTC. */
  readonly printedAt: string
  /** Who prints it; empty when not said. */
  readonly author: string
  /** Of the program that writes it. */
  readonly version: string
  /** Hexadecimal SHA-256 of bytes, or of a text in UTF-8. */
  readonly sha256: (content: string | Uint8Array) => string
  /** The files that the run was read from, taken into the packet as they are. */
  readonly sources: { readonly run: PacketSource; readonly readings: PacketSource }
  readonly pay: PayRule
  /** The utility ticket as somebody wrote it; null when nobody did. */
  readonly ticket: string | null
  /** Null where the run has no place on a road with coordinates. */
  readonly place: PacketPlace | null
  /** The photos that the readings name; null to leave them out. */
  readonly photos: readonly NamedPhoto[] | null
  readonly absentPhotos: AbsentPhotos
  /** Told of each file before it is made; the making goes on when it is done. */
  readonly progress: (step: PacketStep) => void | Promise<void>
}

/** A file of a packet that is about to be made. */
export interface PacketStep {
  readonly file: string
  /** From 1. */
  readonly number: number
  readonly of: number
}

interface PacketSource {
  /** As problems name it. */
  readonly name: string
  readonly bytes: Uint8Array
}

interface PacketPlace {
  readonly run: RunPlace
  readonly system: ReferenceSystem
  /** Where the database library's own file lies; null where it finds it by itself. */
  readonly sqliteAt: string | null
}

interface LeftOut {
  readonly what: string
  readonly why: string
}

type Problems = readonly InputProblem[]

/**
 * Every document of a run, with the files it was made from and a manifest that names each by its SHA-256. The same run,
 * readings and options give the same bytes, workbook and GeoPackage too.
 */
export async function writePacket(
  judged: JudgedRun,
  options: PacketOptions,
): Promise<Result<readonly PacketFile[], Problems>> {
  const { page, printedAt, author, sha256, sources, place } = options
  const quantities = quantityList(sources.run.name, judged, options.pay)
  const staked = placeRun(sources.run.name, judged, place?.run ?? ownLine(judged))
  const wrongPhotos = photoProblems(judged.readings, options.photos, options.absentPhotos, sources.readings.name)
  const problems = [
    ...(quantities.ok ? [] : quantities.error),
    ...(staked.ok || place === null ? [] : staked.error),
    ...wrongPhotos,
  ]
  if (!quantities.ok || problems.length > 0) return err(problems)

  const input = recordInput(judged)
  const printing = { page, printedAt, author, hash: recordHash(input, sha256) }
  const stamp = { at: new Date(instantOf(printedAt)).toISOString(), author }
  const strip = stripInput(judged)
  const stakes = staked.ok ? staked.value : null
  const unit = place?.run.unit ?? lineUnit(judged)
  const plan: readonly PlannedFile[] = [
    {
      name: 'crew-sheet.pdf',
      make: () =>
        writeCrewSheet(
          crewSheetContents(input, options.ticket),
          { ...strip, verdicts: null },
          lapFigures(judged),
          printing,
        ),
    },
    { name: 'record.pdf', make: () => writeRecord(judged, { page, printedAt, author, sha256 }) },
    { name: 'as-built.pdf', make: () => writeAsBuilt(asBuiltContents(input), strip, printing) },
    { name: 'quantities.pdf', make: () => writeQuantities(quantities.value, printing) },
    {
      name: 'quantities.xlsx',
      make: () => writeRunWorkbook(judged, place && stakes && stakeList(judged, stakes, unit), quantities.value, stamp),
    },
    {
      name: 'material-list.pdf',
      make: () => writeMaterialList(materialListContents(quantities.value), printing),
    },
    { name: 'strip.svg', make: () => writeStrip(judged, 'web')[0]! },
    { name: 'strip.dxf', make: () => writeStripDxf(judged, stamp) },
    ...stakeFiles(judged, stakes, options, unit, stamp),
    { name: 'run.json', make: () => sources.run.bytes },
    { name: 'readings.json', make: () => sources.readings.bytes },
    ...photoFiles(options.photos ?? []),
  ]
  const of = plan.length + 1
  const files: PacketFile[] = []
  for (const [i, { name, make }] of plan.entries()) {
    await options.progress({ file: name, number: i + 1, of })
    const made = await make()
    const isContent = typeof made === 'string' || made instanceof Uint8Array
    if (!isContent && !made.ok) return made
    files.push({ name, bytes: bytesOf(isContent ? made : made.value) })
  }
  const manifest = {
    format: 'lapwise-packet/1',
    run: judged.run.name,
    acceptance: judged.judgement.acceptance,
    recordHash: printing.hash,
    printedAt,
    author,
    program: { name: 'Lapwise', version: options.version },
    pay: { boundaries: quantities.value.boundaries, rounding: quantities.value.roundingText },
    files: files.map(({ name, bytes }) => ({ name, bytes: bytes.length, sha256: sha256(bytes) })),
    leftOut: leftOut(judged, options, staked.ok ? null : staked.error),
    notes: place === null && stakes !== null ? [lineNote] : [],
  }
  await options.progress({ file: 'manifest.json', number: of, of })
  return ok([...files, { name: 'manifest.json', bytes: bytesOf(`${JSON.stringify(manifest, null, 2)}\n`) }])
}

type Content = string | Uint8Array

interface PlannedFile {
  readonly name: string
  /** The problems of a file end the packet. */
  readonly make: () => Content | Result<Content, Problems> | Promise<Content | Result<Content, Problems>>
}

const bytesOf = (content: Content): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content

/** The line of the run itself as a straight road without coordinates. */
const ownLine = (judged: JudgedRun): RunPlace => ({ offset: 0, road: null, unit: lineUnit(judged) })

const lineUnit = ({ run }: JudgedRun): GroundUnit => (run.units === 'metric' ? 'metre' : 'foot')

const lineNote =
  'stakes.csv: the road is not given, so northing runs along the line of the run as if it were straight, 0 at the datum, and easting square to it, positive to the right looking up-station. These are no map coordinates.'

/** One picture for each way in which the run's panels lap. */
function lapFigures({ requirements, model }: JudgedRun): readonly Drawing[] {
  const laps = requirements.filter(({ figure }) => figure === 'lap')
  return groupBy(laps, ({ must }) => must).map(([lap]) =>
    figureDrawing('lap', figureFacts(lap, sheetNamed(model, lap.sheet))),
  )
}

function sheetNamed({ system, first, second }: RunModel, id: string) {
  const ends = [first, second].flatMap((end) => (end.kind === 'unit' ? [end.sheet] : []))
  return ends.find((sheet) => sheet.id === id) ?? system
}

/** The stakes, and on a road with coordinates the maps. */
function stakeFiles(
  judged: JudgedRun,
  stakes: PlacedRun | null,
  { sources, place }: PacketOptions,
  unit: GroundUnit,
  stamp: Stamp,
): readonly PlannedFile[] {
  if (stakes === null) return []
  const csv: PlannedFile = {
    name: 'stakes.csv',
    make: () => writeStakeCsv(stakes, { order: 'point, northing, easting, elevation, code', header: true, unit }),
  }
  if (place === null) return [csv]
  const { system, sqliteAt } = place
  const file = sources.run.name
  return [
    csv,
    { name: 'run.geojson', make: () => writeRunGeoJson(file, judged, stakes, system) },
    { name: 'run.gpkg', make: () => writeRunGeoPackage(file, judged, stakes, { system, sqliteAt, stamp }) },
  ]
}

/** Each photo once, also where the readings name it twice. */
const photoFiles = (photos: readonly NamedPhoto[]): readonly PlannedFile[] =>
  [...new Map(photos.map(({ file, bytes }) => [`photos/${file}`, bytes]))].map(([name, bytes]) => ({
    name,
    make: () => bytes,
  }))

function leftOut(judged: JudgedRun, { place, photos }: PacketOptions, unstaked: Problems | null): readonly LeftOut[] {
  const given = new Set(photos?.map(({ photo }) => photo))
  const absent = photosNamed(judged.readings).filter((name) => !given.has(name))
  return [
    ...(unstaked === null
      ? []
      : [{ what: 'stakes.csv', why: unstaked.map((one) => `${one.place}: expected ${one.expected}`).join('; ') }]),
    ...(place === null
      ? [{ what: 'run.geojson, run.gpkg', why: 'the run has no place on a road with map coordinates' }]
      : []),
    ...(absent.length > 0
      ? [
          {
            what: `photos: ${absent.join(', ')}`,
            why: photos === null ? 'no photos were asked for' : 'they are not where this packet was made',
          },
        ]
      : []),
  ]
}
