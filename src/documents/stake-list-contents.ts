import { writtenStations } from '../core/alignment/station-equations.ts'
import type { Stake, Staking } from '../core/staking/stake-run.ts'
import type { StakingFrame } from '../core/staking/staking-frame.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { type GroundUnit, groundFromMetres } from '../core/units/ground-unit.ts'
import { type Metres, metres } from '../core/units/quantity.ts'
import { printStation } from '../core/units/station.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import type { RoadBreak } from '../words/problems/run.ts'
import { alongText } from './places-text.ts'
import { documentWords } from './words/document-words.ts'

/** What a crew sets out from: every stake with its distances, in one unit of coordinates, for any writer. */
export interface StakeListContents {
  /** Of coordinates, offsets and chords. */
  readonly unit: GroundUnit
  readonly stakes: readonly StakeLine[]
  readonly closure: string
  /** What the numbers mean and leave out. */
  readonly notes: readonly string[]
}

/** Numbers are in the list's unit. */
export interface StakeLine {
  readonly point: number
  readonly code: string
  readonly purpose: string
  /** Along the rail from the centre of post 1. */
  readonly along: string
  /** As it is written on the stake; two at a station equation. */
  readonly station: string
  /** Positive to the right, looking up-station. */
  readonly offset: number
  readonly northing: number
  readonly easting: number
  readonly elevation: number | null
  /** From the stake before along the rail; null at the first. */
  readonly railFromLast: string | null
  /** From the stake before, straight, as a tape shows it. */
  readonly chordFromLast: number | null
}

export function stakeListContents(
  run: Pick<RunFile, 'units'>,
  { stakes, closure }: Staking,
  frame: StakingFrame,
  breaksBeyond: readonly RoadBreak[],
  unit: GroundUnit,
  print: Print,
): StakeListContents {
  const words = documentWords(print).stakeList
  const apart = (length: Metres): string =>
    length < metres(0.0001) ? words.lessThan('0.1 mm') : `${(length * 1000).toFixed(1)} mm`
  return {
    unit,
    stakes: stakes.map((stake) => stakeLine(run, stake, frame, unit, print)),
    closure: words.closure(apart(closure.atLast), apart(closure.largest)),
    notes: [
      ...words.notes,
      frame.surface === null ? words.noHeights : words.heights,
      ...breaksBeyond.map((one) => words.roadBeyond(print.say(one))),
    ],
  }
}

function stakeLine(
  run: Pick<RunFile, 'units'>,
  stake: Stake,
  frame: StakingFrame,
  unit: GroundUnit,
  print: Print,
): StakeLine {
  const number = (length: Metres): number => Math.round(groundFromMetres(length, unit) * 1e4) / 1e4 + 0
  return {
    point: stake.point,
    code: stake.code,
    purpose: print.say(stake.purpose),
    along: alongText(run, stake.alongInches),
    station: stationText(stake.station, frame, unit),
    offset: number(stake.offset),
    northing: number(stake.position.northing),
    easting: number(stake.position.easting),
    elevation: stake.elevation === null ? null : number(stake.elevation),
    railFromLast: stake.fromLast && alongText(run, stake.fromLast.railInches),
    chordFromLast: stake.fromLast && number(stake.fromLast.chord),
  }
}

/** `12+37.50`, in stations of 100 of the unit's own feet, or of 1000 m. */
export function stationText(station: Metres, { equations }: Pick<StakingFrame, 'equations'>, unit: GroundUnit): string {
  return writtenStations(equations, station)
    .map((written) => {
      const number = groundFromMetres(written, unit)
      return unit === 'metre'
        ? printStation(exactLength(number, 'm'), 'metric', 3)
        : printStation(exactLength(number, 'ft'), 'us', 2)
    })
    .join(' = ')
}
