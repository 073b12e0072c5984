import { endStation } from '../core/alignment/horizontal-alignment.ts'
import { offsetLine } from '../core/alignment/offset-line.ts'
import type { PayRounding } from '../core/quantities/pay-length.ts'
import type { Boundaries, BoundaryProblem } from '../core/quantities/run-length.ts'
import { takeQuantities } from '../core/quantities/take-quantities.ts'
import { err, ok, type Result } from '../core/result.ts'
import type { GroundUnit } from '../core/units/ground-unit.ts'
import { inches, metres } from '../core/units/quantity.ts'
import { type QuantitiesContents, quantitiesContents } from '../documents/quantities-contents.ts'
import type { OnRoad } from '../documents/record-input.ts'
import { type StakeListContents, stakeListContents } from '../documents/stake-list-contents.ts'
import { documentWords } from '../documents/words/document-words.ts'
import { runSheets } from '../documents/xlsx/run-sheets.ts'
import { writeWorkbook } from '../documents/xlsx/write-workbook.ts'
import { writeDxf } from '../drawing/dxf/write-dxf.ts'
import { stakePlan } from '../drawing/views/stake-plan.ts'
import { surveyPointOf } from '../formats/csv/survey-point.ts'
import { type PointColumns, writePoints } from '../formats/csv/write-points.ts'
import type { RunEntries } from '../formats/entry/run-entries.ts'
import { writeGeoJson } from '../formats/geojson/write-geojson.ts'
import { writeGeoPackage } from '../formats/geopackage/write-geopackage.ts'
import { writeIfc } from '../formats/ifc/write-ifc.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { writePointsXml } from '../formats/landxml/write-points.ts'
import { firstOutside, type MapLayer } from '../formats/map/map-layer.ts'
import type { ReferenceSystem } from '../formats/map/reference-system.ts'
import type { Print } from '../words/print.ts'
import { entriesInForce } from './entries-in-force.ts'
import { ifcRun } from './ifc-run.ts'
import type { JudgedRun } from './judge-readings.ts'
import { mapLayers } from './map-layers.ts'
import type { PlacedRun } from './place-run.ts'
import type { RequiredRun } from './require-by.ts'
import { recordInput } from './write-record.ts'

type Problems = readonly InputProblem[]

/** Who writes a file and when, as the file states it; the same stamp gives the same bytes. */
export interface Stamp {
  /** ISO 8601 in UTC, as `2026-05-12T10:05:00.000Z`. */
  readonly at: string
  /** Empty when not said. */
  readonly author: string
}

export interface PayRule {
  readonly boundaries: Boundaries
  readonly rounding: PayRounding
}

/** The stakes as a text for survey programs. */
export const writeStakeCsv = ({ staking }: PlacedRun, columns: PointColumns, print: Print): string =>
  writePoints(
    staking.stakes.map((stake) => surveyPointOf(stake, print)),
    columns,
  )

/** The stakes as points of a LandXML file. */
export function writeStakeXml({ staking }: PlacedRun, unit: GroundUnit, { at }: Stamp, print: Print): string {
  const [date = '', time = ''] = at.split('T')
  const points = staking.stakes.map((stake) => surveyPointOf(stake, print))
  return writePointsXml(points, unit, date, time.slice(0, 8))
}

/** Stakes, rail, alignment and findings as a DXF plan at their own coordinates. */
export function writeStakeDxf(
  { run }: RequiredRun,
  placed: PlacedRun,
  unit: GroundUnit,
  { author }: Stamp,
  print: Print,
): string {
  const { alignment } = placed.frame
  const stations = placed.rail.map(({ station }) => station)
  const margin = metres(10)
  const from = Math.max(Math.min(...stations) - margin, alignment.startStation)
  const to = Math.min(Math.max(...stations) + margin, endStation(alignment))
  const beside = offsetLine(alignment, from, to, 0, inches(0.125))
  const drawing = stakePlan({
    run: run.name,
    stakes: placed.staking.stakes,
    print,
    rail: placed.rail.map(({ position }) => position),
    alignment: beside.ok ? beside.value : [],
    findings: placed.findings.map(({ finding, at }, i) => ({
      number: i + 1,
      finding,
      position: at.position,
    })),
  })
  return writeDxf(drawing, { unit, author })
}

/** Run, posts and findings as GeoJSON. */
export function writeRunGeoJson(
  file: string,
  run: RequiredRun,
  placed: PlacedRun,
  system: ReferenceSystem,
  print: Print,
): Result<string, Problems> {
  const layers = layersWithin(file, run, placed, system, print)
  return layers.ok ? ok(writeGeoJson(layers.value, system)) : layers
}

/** The same as a GeoPackage in the reference system's own coordinates. */
export async function writeRunGeoPackage(
  file: string,
  run: RequiredRun,
  placed: PlacedRun,
  options: {
    readonly system: ReferenceSystem
    readonly sqliteAt: string | null
    readonly stamp: Stamp
    readonly print: Print
  },
): Promise<Result<Uint8Array, Problems>> {
  const { system, sqliteAt, stamp, print } = options
  const layers = layersWithin(file, run, placed, system, print)
  return layers.ok ? ok(await writeGeoPackage(layers.value, { system, sqliteAt, changedAt: stamp.at })) : layers
}

/**
 * The run as a building model (IFC 4.3).
 * @param options  `system` null where the road has no coordinates of a known system; `unit` of stations and offsets;
 *                 `sha256` hexadecimal, of a text in UTF-8
 */
export function writeRunIfc(
  file: string,
  run: RequiredRun,
  placed: PlacedRun,
  options: {
    readonly system: ReferenceSystem | null
    readonly unit: GroundUnit
    readonly sha256: (content: string) => string
    readonly stamp: Stamp
    readonly print: Print
  },
): Result<string, Problems> {
  const { system, unit, sha256, stamp, print } = options
  const within = system === null ? ok([]) : layersWithin(file, run, placed, system, print)
  return within.ok ? ok(writeIfc(ifcRun(run, placed, unit, system, print), { ...stamp, sha256 })) : within
}

function layersWithin(
  file: string,
  run: RequiredRun,
  placed: PlacedRun,
  system: ReferenceSystem,
  print: Print,
): Result<readonly MapLayer[], Problems> {
  const layers = mapLayers(run, placed, system.unit, print)
  const outside = firstOutside(layers, system)
  if (outside === null) return ok(layers)
  const { easting, northing } = outside.points[0]!
  return err([
    {
      file,
      place: 'road',
      expected: { kind: 'area of reference', name: system.name, code: system.code },
      found: { kind: 'outside area', of: outside.id, easting, northing },
    },
  ])
}

/** The stakes as a list for any writer. */
export const stakeList = (
  { run }: RequiredRun,
  { staking, frame, breaksBeyond }: PlacedRun,
  unit: GroundUnit,
  print: Print,
): StakeListContents => stakeListContents(run, staking, frame, breaksBeyond, unit, print)

/** Quantities, spares and material of a run for any writer. */
export function quantityList(
  file: string,
  run: RequiredRun,
  rule: PayRule,
  print: Print,
): Result<QuantitiesContents, Problems> {
  const postsDriven = run.request.standing?.postsDriven ?? 0
  const quantities = takeQuantities(run.model, { ...rule, postsDriven })
  if (!quantities.ok) return err([boundaryProblem(file, quantities.error)])
  return ok(quantitiesContents(run.run, run.model, quantities.value, rule, print))
}

/**
 * The run as a workbook: facts, pieces, stakes, quantities, requirements, readings and findings.
 * @param stakes  null where the run was not placed on its road
 * @param entries  of the photos those stand in it that show what an earlier version asked
 */
export function writeRunWorkbook(
  judged: JudgedRun,
  stakes: StakeListContents | null,
  quantities: QuantitiesContents,
  { photos, versions, assignments }: Pick<RunEntries, 'photos' | 'versions' | 'assignments'>,
  { at, author }: Stamp,
  print: Print,
  onRoad: OnRoad | null = null,
): Promise<Uint8Array> {
  const sheets = runSheets(recordInput(judged, print, onRoad), stakes, quantities, {
    photos: entriesInForce(photos),
    versions,
    assignments,
  })
  const page = documentWords(print).workbook.page('&P', '&N')
  return writeWorkbook(sheets, { title: judged.run.name, author, writtenAt: at, page })
}

function boundaryProblem(file: string, problem: BoundaryProblem): InputProblem {
  switch (problem.kind) {
    case 'no-such-post':
      return {
        file,
        place: problem.end,
        expected: { kind: 'boundary at post', end: problem.end, posts: problem.posts },
        found: { kind: 'post numbered', number: problem.number },
      }
    case 'boundaries-cross':
      return {
        file,
        place: '',
        expected: { kind: 'run between boundaries' },
        found: { kind: 'crossed boundaries', inches: problem.fromInches - problem.toInches },
      }
    default:
      return problem satisfies never
  }
}
