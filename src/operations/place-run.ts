import type { HorizontalAlignment } from '../core/alignment/horizontal-alignment.ts'
import type { StationEquation } from '../core/alignment/station-equations.ts'
import { meaningsOf } from '../core/alignment/station-equations.ts'
import { feetInchesText } from '../core/hardware/dimension-text.ts'
import { flareBends } from '../core/layout/run-flare.ts'
import { err, ok, type Result } from '../core/result.ts'
import { type GroundUnit, metresFromGround } from '../core/staking/ground-unit.ts'
import { locatePanels } from '../core/staking/locate-panels.ts'
import type { RailPlace, StakingRefusal } from '../core/staking/locate-rail.ts'
import { type Staking, stakeRun } from '../core/staking/stake-run.ts'
import { type RoadSurface, type StakingFrame, straightFrame } from '../core/staking/staking-frame.ts'
import { lengthIn } from '../core/units/exact-length.ts'
import type { Metres } from '../core/units/quantity.ts'
import { parseStation } from '../core/units/station.ts'
import type { Finding } from '../core/verdicts/verdict.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { RequiredRun } from './require-run.ts'

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
  readonly frame: StakingFrame
  readonly staking: Staking
  /** The face of rail from end to end, by its posts and splices, and where a flare of the run begins. */
  readonly rail: readonly RailPlace[]
  /** None while the run is not judged. */
  readonly findings: readonly { readonly finding: Finding; readonly at: RailPlace }[]
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
  const missing = (field: string, expected: string): Result<never, readonly InputProblem[]> =>
    err([{ file, place: `road.${field}`, expected, found: 'nothing' }])
  if (side === null) return missing('side', '"right" or "left", to place the run on its road')
  if (side === 'left' && traffic === null)
    return missing('traffic', 'the kind of traffic, which says whether a run on the left goes up-station')
  const direction = side === 'left' && traffic === 'two-way' ? -1 : 1
  const datum = datumOf(run.units, datumStation, place)
  if (datum.length !== 1) {
    const expected = `a station of the alignment${datum.length > 1 ? ' that its station equations leave only one meaning' : ''}`
    return err([{ file, place: 'road.datumStation', expected, found: datumStation ?? 'nothing' }])
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
  return placed.ok ? placed : err([problemOf(file, placed.error)])
}

function placeOn(frame: StakingFrame, required: RequiredRun | JudgedRun): Result<PlacedRun, StakingRefusal> {
  const { model } = required
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
  const findingPlaces = locatePanels(model, frame, found)
  if (!findingPlaces.ok) return findingPlaces
  return ok({
    frame,
    staking: staking.value,
    rail: railPlaces.value,
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
  const metres = (length: number): string => `${length.toFixed(3)} m`
  switch (refusal.kind) {
    case 'off-alignment':
      return {
        file,
        place: 'road.datumStation',
        expected: `a run between stations ${metres(refusal.from)} and ${metres(refusal.to)} of the alignment`,
        found: `rail that leaves it ${metres(refusal.rail)} along the rail from post 1`,
      }
    case 'tighter-than-offset':
      return {
        file,
        place: 'road',
        expected: `a curve with a radius of more than ${metres(Math.abs(refusal.offset))} on the side of the run`,
        found: `a radius of ${metres(refusal.radius)}`,
      }
    case 'flare-not-stated':
      return {
        file,
        place: 'first or second',
        expected: 'a sheet that states the nominal offset of its flare',
        found: refusal.sheet,
      }
    case 'flare-inside-unit':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected: `a flare that begins on the run's own rail, clear of the end unit ${refusal.sheet}: a bend inside it was not tested`,
        found: `a bend ${feetInchesText(refusal.flareInches)} along the rail from post 1, where the unit reaches to ${feetInchesText(refusal.unitInches)}`,
      }
    case 'flare-at-fixed-end':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected: 'a flare toward an end that may leave the line of the rail',
        found: refusal.closedBy === 'bridge end' ? 'one toward a bridge end' : 'one toward a run that stands',
      }
    case 'flare-on-curve':
      return {
        file,
        place: `flare.${refusal.end}From`,
        expected:
          'a straight road beside the flared rail: a flare is generally not used on a curve, and is not staked there',
        found: `a radius of ${metres(refusal.radius)}`,
      }
    default:
      return refusal satisfies never
  }
}
