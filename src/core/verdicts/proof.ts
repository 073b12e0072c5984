import type { Dimension } from '../hardware/hardware-sheet.ts'
import type { Reading } from '../measurement/reading.ts'
import { standardUncertainty } from '../measurement/uncertainty.ts'
import { exactLength, type LengthUnit, type Nanometres, nanometresPer } from '../units/exact-length.ts'
import { guardBand } from './judge-measured.ts'
import type { JudgingRules } from './judge-requirements.ts'
import { readable } from './second-reading.ts'
import type { Measured, Verdict } from './verdict.ts'

/** How far inside its limits a value has to lie to be proven, and the step to which it is read. */
export interface Doubt {
  readonly guard: Nanometres
  readonly step: Nanometres
}

/** What the readings at hand, and the instruments of the run, can prove. */
export interface Proof {
  /** The doubt of the value that a verdict rests on. */
  readonly of: (verdict: Verdict, because: Measured) => Doubt
  /** The doubt of one reading with each instrument, the least first. */
  readonly instruments: readonly (Doubt & { readonly name: string })[]
}

export function proofOf(readings: readonly Reading[], rules: JudgingRules): Proof {
  const byId = new Map(readings.map((reading) => [reading.id, reading]))
  const instruments = new Map(rules.instruments.map((instrument) => [instrument.id, instrument]))
  const coarse = instruments.get('not-stated') ?? rules.instruments[rules.instruments.length - 1]!
  const stepOf = ({ readTo, unit }: typeof coarse): Nanometres => readTo * nanometresPer[unit]
  return {
    of: ({ readings: ids }, because) => ({
      guard: because.guard * nanometresPer[because.unit],
      step: Math.max(
        ...ids.map((id) => {
          const reading = byId.get(id)!
          const own = reading.answer.kind === 'length' ? reading.answer.resolution : null
          return own ?? stepOf(instruments.get(reading.instrument ?? '') ?? coarse)
        }),
      ),
    }),
    instruments: rules.instruments
      .filter(({ id }) => id !== coarse.id)
      .map((instrument) => {
        const answer = { kind: 'length', value: 0, unit: 'mm', resolution: null } as const
        const u = standardUncertainty({ uncertainty: null }, answer, instrument)
        return { name: instrument.name, guard: guardBand(u, rules.rule), step: stepOf(instrument) }
      })
      .sort((a, b) => a.guard - b.guard || a.step - b.step),
  }
}

/** A step at least as coarse as the trade sets out by: the next reading then falls on such a step again. */
const coarseStep: Nanometres = nanometresPer.in / 16

/** The part of a room where the next reading falls for certain: on a step from the one at hand, or a step further in. */
export function landing(room: Room, value: Nanometres, step: Nanometres): Room {
  if (step < coarseStep) return { low: room.low + step, high: room.high - step }
  return {
    low: value + Math.ceil((room.low - value) / step) * step,
    high: value + Math.floor((room.high - value) / step) * step,
  }
}

/** Steps in which something can be set out so that a reading with this step falls where it is meant to. */
export const setOutSteps = (step: Nanometres, unit: LengthUnit): readonly Nanometres[] =>
  step < coarseStep ? setOut[unit] : [step]

/** Lengths from `low` to `high`; infinite where no limit is stated. */
export interface Room {
  readonly low: Nanometres
  readonly high: Nanometres
}

/** Where a value has to lie so that a reading with this guard band proves it; empty when `low` is over `high`. */
export const roomWithin = ({ low, high, unit }: Dimension, guard: Nanometres): Room => ({
  low: low === 'notStated' ? Number.NEGATIVE_INFINITY : Math.ceil(exactLength(low, unit) + guard),
  high: high === 'notStated' ? Number.POSITIVE_INFINITY : Math.floor(exactLength(high, unit) - guard),
})

export const isInside = ({ low, high }: Room, value: Nanometres): boolean => value >= low && value <= high

/** Steps that a person can set out, the coarsest first: our judgement. */
const setOut: Readonly<Record<LengthUnit, readonly Nanometres[]>> = {
  in: [nanometresPer.in / 8, nanometresPer.in / 16],
  ft: [nanometresPer.ft / 100],
  mm: [5 * nanometresPer.mm, nanometresPer.mm],
  m: [5 * nanometresPer.mm, nanometresPer.mm],
}

/**
 * The change among `changes` that comes nearest to `wanted` and can be set out, so that the next reading proves it: a
 * step of the reading inside them, or, where they are narrower, one after which the reading falls on a step of its own
 * again. Where `wanted` is not inside, the middle of the changes.
 * @returns null when no reading of this step can fall inside
 */
export function chooseChange(changes: Room, wanted: Nanometres, step: Nanometres, unit: LengthUnit): Nanometres | null {
  const inner = { low: changes.low + step, high: changes.high - step }
  if (inner.low > inner.high) {
    const landed = roundTo((changes.low + changes.high) / 2, step)
    return isInside(changes, landed) ? landed : null
  }
  const target = isInside(inner, wanted) ? wanted : middleOf(inner, wanted)
  const rounded = setOut[unit].map((one) => roundTo(target, one)).find((one) => isInside(inner, one))
  return rounded ?? Math.round(target)
}

function middleOf({ low, high }: Room, wanted: Nanometres): Nanometres {
  if (Number.isFinite(low) && Number.isFinite(high)) return (low + high) / 2
  return wanted < low ? low : high
}

/** To the nearest step, halves toward nothing, so that a mirrored length is rounded to the mirrored step. */
export const roundTo = (value: Nanometres, step: Nanometres): Nanometres =>
  Math.sign(value) * Math.ceil(Math.abs(value) / step - 0.5) * step || 0

/** The room in steps that can be read on a tape, drawn inward, in `unit`. */
export function readableRoom({ low, high }: Room, unit: LengthUnit): { from: number | null; to: number | null } {
  const per = readable[unit] / nanometresPer[unit]
  return {
    from: Number.isFinite(low) ? Math.ceil(low / readable[unit]) * per : null,
    to: Number.isFinite(high) ? Math.floor(high / readable[unit]) * per : null,
  }
}
