import { err, ok, type Result } from '../../core/result.ts'
import type { ClearZone, Hazard, Site, SiteAlignment } from '../../core/site/site.ts'
import { feet, type Metres, metres } from '../../core/units/quantity.ts'
import { type InputProblem, written } from '../input-problem.ts'
import { numberFault } from '../range/range-faults.ts'
import { checkShape, parseJson } from '../read-json.ts'
import { checkSite } from './check-site.ts'
import { readElements } from './read-elements.ts'
import { hardwareOf } from './read-hardware.ts'
import { type SiteFile, siteSchema } from './site-file.ts'
import { type Fault, type StationText, stationReader } from './station-text.ts'

/**
 * The site that a site file states, or every problem found in it.
 * @param file  name shown in the problems
 */
export function readSite(file: string, text: string): Result<Site, readonly InputProblem[]> {
  const parsed = parseJson(file, text)
  return parsed.ok ? siteFromValue(file, parsed.value) : parsed
}

/** The same of a site file that is a value already. */
export function siteFromValue(file: string, raw: unknown): Result<Site, readonly InputProblem[]> {
  const shape = checkShape(file, raw, siteSchema)
  return shape.ok ? senseOf(file, shape.value) : shape
}

function senseOf(file: string, from: SiteFile): Result<Site, readonly InputProblem[]> {
  const faults: Fault[] = []
  const site = siteOf(from, faults)
  if (faults.length === 0) checkSite(site, from, faults)
  return faults.length === 0 ? ok(site) : err(faults.map((fault) => ({ file, ...fault })))
}

function siteOf(from: SiteFile, faults: Fault[]): Site {
  const long = from.units === 'us' ? feet : metres
  const { road, barrier } = from
  const alignment = alignmentOf(from, faults)
  const stationAt = stationReader(from.units, alignment, faults)
  return {
    units: from.units,
    edition: from.edition,
    interpolateSpeeds: from.interpolateSpeeds,
    runoutOnCurves: from.runoutOnCurves,
    road: {
      speed: road.speed,
      adt: road.adt,
      traffic: road.traffic,
      lanes: road.lanes,
      laneWidth: long(road.laneWidth),
      shoulderWidth: long(road.shoulderWidth),
      medianWidth: orNull(road.medianWidth, long),
      alignment,
    },
    clearZone: clearZoneOf(from, long, faults),
    runoutLength: orNull(from.runoutLength, long),
    shyLine: orNull(from.shyLine, long),
    flareLimits: from.flareLimits,
    side: from.hazards[0]!.side,
    hazards: from.hazards.map(
      (hazard, i): Hazard => ({
        name: hazard.name,
        ...stretchOf(hazard, `hazards[${i}]`, stationAt, faults),
        near: long(hazard.near),
        far: orNull(hazard.far, long),
        beyondClearZone: hazard.beyondClearZone,
      }),
    ),
    barrier: {
      offset: long(barrier.offset),
      flare:
        barrier.flare === null
          ? null
          : {
              rate: rateOf(barrier.flare.rate, 'flareRate', 'barrier.flare.rate', faults),
              parallelLength: long(barrier.flare.parallelLength),
              ends: barrier.flare.ends,
            },
      approachEnd: barrier.approachEnd,
      departureEnd: barrier.departureEnd,
    },
    driveways: from.driveways.map((driveway, i) => ({
      name: driveway.name,
      ...stretchOf(driveway, `driveways[${i}]`, stationAt, faults),
    })),
    hardware: hardwareOf(from, long, faults),
    sheets: from.sheets,
  }
}

const orNull = (value: number | null, long: (n: number) => Metres): Metres | null =>
  value === null ? null : long(value)

function alignmentOf(from: SiteFile, faults: Fault[]): SiteAlignment {
  const { alignment } = from.road
  switch (alignment.kind) {
    case 'straight':
      return alignment
    case 'curve':
      return {
        kind: 'curve',
        radius: from.units === 'us' ? feet(alignment.radius) : alignment.radius,
        turn: alignment.turn,
      }
    case 'elements':
      return readElements(alignment, from.units, 'road.alignment', faults)
    default:
      return alignment satisfies never
  }
}

function clearZoneOf(from: SiteFile, long: (n: number) => Metres, faults: Fault[]): ClearZone {
  const { clearZone } = from
  if (typeof clearZone === 'number') return { kind: 'width', width: long(clearZone) }
  const slope = 'foreslope' in clearZone ? 'foreslope' : 'backslope'
  const stated = 'foreslope' in clearZone ? clearZone.foreslope : clearZone.backslope
  const run = rateOf(stated, 'slopeRun', `clearZone.${slope}`, faults)
  return { kind: 'slope', slope, run, take: clearZone.take }
}

/** How rates are written as texts. */
const rateTexts = {
  flareRate: { form: /^\s*(\d+(?:\.\d+)?)\s*:\s*1\s*$/, expected: { kind: 'flare rate' } },
  slopeRun: { form: /^\s*1\s*V?\s*:\s*(\d+(?:\.\d+)?)\s*H?\s*$/i, expected: { kind: 'slope' } },
} as const

function rateOf(stated: number | string, rate: keyof typeof rateTexts, place: string, faults: Fault[]): number {
  if (typeof stated === 'number') return stated
  const { form, expected } = rateTexts[rate]
  const found = form.exec(stated)?.[1]
  const problem = found === undefined ? expected : numberFault(rate, Number(found))
  if (problem === null) return Number(found)
  faults.push({ place, expected: problem, found: written(stated) })
  return 1
}

function stretchOf(
  stretch: { readonly from: StationText; readonly to: StationText },
  place: string,
  stationAt: (written: StationText, place: string) => Metres,
  faults: Fault[],
): { readonly from: Metres; readonly to: Metres } {
  const before = faults.length
  const from = stationAt(stretch.from, `${place}.from`)
  const to = stationAt(stretch.to, `${place}.to`)
  if (to < from && faults.length === before)
    faults.push({
      place: `${place}.to`,
      expected: { kind: 'station after', from: JSON.stringify(stretch.from) },
      found: written(stretch.to),
    })
  return { from, to }
}
