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
import { type NamedPhoto, photoProblems, photosNamed } from './packet-photos.ts'
import { type PlacedRun, placeRun, type RunPlace } from './place-run.ts'
import {
  type PayRule,
  quantityList,
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
  /** Told the name of each file before it is made. */
  readonly progress: (name: string) => void
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
  const wrongPhotos = photoProblems(judged.readings, options.photos, sources.readings.name)
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
  const files: PacketFile[] = []
  const add = async (name: string, make: () => string | Uint8Array | Promise<Uint8Array>): Promise<void> => {
    options.progress(name)
    const made = await make()
    files.push({ name, bytes: typeof made === 'string' ? new TextEncoder().encode(made) : made })
  }

  await add('crew-sheet.pdf', () =>
    writeCrewSheet(
      crewSheetContents(input, options.ticket),
      { ...strip, verdicts: null },
      lapFigures(judged),
      printing,
    ),
  )
  await add('record.pdf', () => writeRecord(judged, { page, printedAt, author, sha256 }))
  await add('as-built.pdf', () => writeAsBuilt(asBuiltContents(input), strip, printing))
  await add('quantities.pdf', () => writeQuantities(quantities.value, printing))
  await add('quantities.xlsx', () =>
    writeRunWorkbook(judged, place && stakes && stakeList(judged, stakes, unit), quantities.value, stamp),
  )
  await add('material-list.pdf', () => writeMaterialList(materialListContents(quantities.value), printing))
  await add('strip.svg', () => writeStrip(judged, 'web')[0]!)
  await add('strip.dxf', () => writeStripDxf(judged, stamp))
  if (stakes !== null)
    await add('stakes.csv', () =>
      writeStakeCsv(stakes, { order: 'point, northing, easting, elevation, code', header: true, unit }),
    )
  if (stakes !== null && place !== null) {
    const map = await mapFiles(judged, stakes, options, place, stamp)
    if (!map.ok) return map
    files.push(...map.value)
  }
  files.push({ name: 'run.json', bytes: sources.run.bytes }, { name: 'readings.json', bytes: sources.readings.bytes })
  for (const { file, bytes } of options.photos ?? []) {
    const name = `photos/${file}`
    if (!files.some((one) => one.name === name)) files.push({ name, bytes })
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
  await add('manifest.json', () => `${JSON.stringify(manifest, null, 2)}\n`)
  return ok(files)
}

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

async function mapFiles(
  judged: JudgedRun,
  stakes: PlacedRun,
  { sources, progress }: PacketOptions,
  { system, sqliteAt }: PacketPlace,
  stamp: { readonly at: string; readonly author: string },
): Promise<Result<readonly PacketFile[], Problems>> {
  progress('run.geojson')
  const geoJson = writeRunGeoJson(sources.run.name, judged, stakes, system)
  if (!geoJson.ok) return geoJson
  progress('run.gpkg')
  const geoPackage = await writeRunGeoPackage(sources.run.name, judged, stakes, { system, sqliteAt, stamp })
  if (!geoPackage.ok) return geoPackage
  return ok([
    { name: 'run.geojson', bytes: new TextEncoder().encode(geoJson.value) },
    { name: 'run.gpkg', bytes: geoPackage.value },
  ])
}

function leftOut(judged: JudgedRun, { place, photos }: PacketOptions, unstaked: Problems | null): readonly LeftOut[] {
  const named = photosNamed(judged.readings)
  return [
    ...(unstaked === null
      ? []
      : [{ what: 'stakes.csv', why: unstaked.map((one) => `${one.place}: expected ${one.expected}`).join('; ') }]),
    ...(place === null
      ? [{ what: 'run.geojson, run.gpkg', why: 'the run has no place on a road with map coordinates' }]
      : []),
    ...(photos === null && named.length > 0
      ? [{ what: `photos: ${named.join(', ')}`, why: 'no folder of photos was given' }]
      : []),
  ]
}
