import { type AlignmentBreak, alignmentBreaks } from '../core/alignment/alignment-breaks.ts'
import type { HorizontalAlignment } from '../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../core/alignment/station-equations.ts'
import { meaningsOf } from '../core/alignment/station-equations.ts'
import { flareBends } from '../core/layout/run-flare.ts'
import { err, ok, type Result } from '../core/result.ts'
import { locatePanels } from '../core/staking/locate-panels.ts'
import type { RailPlace, StakingRefusal } from '../core/staking/locate-rail.ts'
import { type Staking, stakeRun } from '../core/staking/stake-run.ts'
import { type RoadSurface, type StakingFrame, straightFrame } from '../core/staking/staking-frame.ts'
import { theirs } from '../core/theirs.ts'
import { lengthIn } from '../core/units/exact-length.ts'
import { type GroundUnit, metresFromGround } from '../core/units/ground-unit.ts'
import type { Metres } from '../core/units/quantity.ts'
import { parseStation } from '../core/units/station.ts'
import type { Finding } from '../core/verdicts/verdict.ts'
import { stationText } from '../documents/stake-list-contents.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { ProblemSaying } from '../words/problems/problem-saying.ts'
import type { RoadBreak } from '../words/problems/run.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-by.ts'

/** Where a run stands by its road, besides what its file says. */
export interface RunPlace {
  /** Of the face of rail where it runs parallel to the alignment, m; positive right looking up-station. */
  readonly offset: Metres
  /** Null for a straight road without coordinates. */
  readonly road: RoadPlace | null
  /** The unit that the road's stations are written in. */
  readonly unit: GroundUnit
}

export interface RoadPlace {
  readonly horizontal: HorizontalAlignment
  readonly equations: readonly StationEquation[]
  readonly surface: RoadSurface | null
}

/** A run on its road. */
export interface PlacedRun {
  /** Its stations are the road's own; else they run along the line of the run, as if that were a straight road. */
  readonly isOnRoad: boolean
  readonly frame: StakingFrame
  readonly staking: Staking
  /** The face of rail from end to end, by its posts and splices, and where a flare of the run begins. */
  readonly rail: readonly RailPlace[]
  /** Every place of the run that a requirement names, from the first end. */
  readonly places: readonly RailPlace[]
  /** None while the run is not judged. */
  readonly findings: readonly { readonly finding: Finding; readonly at: RailPlace }[]
  /** Where the road is broken beyond the run: stakes do not rest on it. */
  readonly breaksBeyond: readonly RoadBreak[]
}

/**
 * The run on its road, staked. The run file has to say its side, the station of its datum (unless the road is a straight
 * one without coordinates) and, on the left, its traffic.
 */
export function placeRun(
  file: string,
  required: RequiredRun | JudgedRun,
  place: RunPlace,
): Result<PlacedRun, readonly InputProblem[]> {
  const { run } = required
  const { side, traffic, datumStation } = run.road
  if (place.road !== null && (run.units === 'metric') !== (place.unit === 'metre'))
    return err([
      {
        file,
        place: 'units',
        expected: { kind: 'units of its road', road: place.unit },
        found: { kind: 'units of run', units: run.units },
      },
    ])
  const missing = (field: string, expected: ProblemSaying): Result<never, readonly InputProblem[]> =>
    err([{ file, place: `road.${field}`, expected, found: { kind: 'nothing' } }])
  if (side === null) return missing('side', { kind: 'side of road' })
  if (side === 'left' && traffic === null) return missing('traffic', { kind: 'traffic of left side' })
  const direction = side === 'left' && traffic === 'two-way' ? -1 : 1
  const datum = datumOf(run.units, datumStation, place)
  if (datum.length !== 1) {
    const expected = { kind: datum.length > 1 ? 'station with one meaning' : 'station of alignment' } as const
    const found = datumStation === null ? ({ kind: 'nothing' } as const) : theirs(datumStation)
    return err([{ file, place: 'road.datumStation', expected, found }])
  }
  const where = { datumStation: datum[0]!, offset: place.offset, side, direction } as const
  const frame: StakingFrame =
    place.road === null
      ? straightFrame(where)
      : {
          ...where,
          alignment: place.road.horizontal,
          equations: place.road.equations,
          surface: place.road.surface,
        }
  const placed = placeOn(frame, required)
  if (!placed.ok) return err([problemOf(file, placed.error)])
  const end = Math.max(...placed.value.rail.map(({ station }) => station))
  const breaks = alignmentBreaks(frame.alignment)
  const before = breaks.filter(({ station }) => station <= end)
  const told = (one: AlignmentBreak): RoadBreak => ({
    kind: 'break of road',
    station: stationText(one.station, frame, place.unit),
    metres: one.distance,
    degrees: (one.kink * 180) / Math.PI,
  })
  if (before.length > 0)
    return err(
      before.map((one) => ({
        file,
        place: 'road.datumStation',
        expected: { kind: 'road without breaks' },
        found: told(one),
      })),
    )
  return ok({ ...placed.value, isOnRoad: place.road !== null, breaksBeyond: breaks.map(told) })
}

function placeOn(
  frame: StakingFrame,
  required: RequiredRun | JudgedRun,
): Result<Omit<PlacedRun, 'isOnRoad' | 'breaksBeyond'>, StakingRefusal> {
  const { model, requirements } = required
  const findings = 'judgement' in required ? required.judgement.findings : []
  const { posts, panels } = model.layout
  const rail = rising([
    ...posts.map(({ alongInches }) => alongInches),
    ...panels.flatMap(({ fromInches, toInches }) => [fromInches, toInches]),
    ...Object.values(flareBends(model.layout, model.flare)).filter((bend) => bend !== null),
  ])
  const found = rising(findings.map(({ place }) => place.alongInches))
  const staking = stakeRun(model, frame)
  if (!staking.ok) return staking
  const railPlaces = locatePanels(model, frame, rail)
  if (!railPlaces.ok) return railPlaces
  const named = locatePanels(model, frame, rising(requirements.map(({ place }) => place.alongInches)))
  if (!named.ok) return named
  const findingPlaces = locatePanels(model, frame, found)
  if (!findingPlaces.ok) return findingPlaces
  return ok({
    frame,
    staking: staking.value,
    rail: railPlaces.value,
    places: named.value,
    findings: findings.map((finding) => ({
      finding,
      at: findingPlaces.value[found.indexOf(finding.place.alongInches)]!,
    })),
  })
}

const rising = (values: readonly number[]): readonly number[] => [...new Set(values)].sort((a, b) => a - b)

/** Every continuous station that the datum's text can mean; on a straight road without a station, 0. */
function datumOf(units: 'us' | 'metric', text: string | null, { road, unit }: RunPlace): readonly Metres[] {
  if (text === null) return road === null ? [0] : []
  const parsed = parseStation(text, units)
  if (!parsed.ok) throw new RangeError(`a run file with the station ${text} should not have been read`)
  const written = metresFromGround(lengthIn(parsed.value, units === 'us' ? 'ft' : 'm'), unit)
  return road === null ? [written] : meaningsOf(road.equations, written).map(({ internal }) => internal)
}

function problemOf(file: string, refusal: StakingRefusal): InputProblem {
  switch (refusal.kind) {
    case 'off-alignment':
      return {
        file,
        place: 'road.datumStation',
        expected: { kind: 'run within stations', from: refusal.from, to: refusal.to },
        found: { kind: 'rail beyond stations', along: refusal.rail },
      }
    case 'tighter-than-offset':
      return {
        file,
        place: 'road',
        expected: { kind: 'radius beyond offset', metres: Math.abs(refusal.offset) },
        found: { kind: 'radius in metres', metres: refusal.radius },
      }
    case 'flare-not-stated':
      return {
        file,
        place: 'first or second',
        expected: { kind: 'stated flare offset' },
        found: theirs(refusal.sheet),
      }
    case 'flare-inside-unit':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected: { kind: 'flare clear of unit', sheet: refusal.sheet },
        found: { kind: 'bend inside unit', flareInches: refusal.flareInches, unitInches: refusal.unitInches },
      }
    case 'flare-at-fixed-end':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected: { kind: 'flare to free end' },
        found: { kind: refusal.closedBy === 'bridge end' ? 'flare to bridge' : 'flare to standing run' },
      }
    case 'flare-on-curve':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected: { kind: 'flare on straight' },
        found: { kind: 'radius in metres', metres: refusal.radius },
      }
    default:
      return refusal satisfies never
  }
}
