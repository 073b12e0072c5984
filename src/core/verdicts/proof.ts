import type { Dimension } from '../hardware/hardware-sheet.ts'
import { type Doubt, doubt, doubtAt, doubtfulAround } from '../measurement/doubt.ts'
import type { InstrumentName } from '../measurement/instrument-saying.ts'
import { type Instrument, instrumentOf, instrumentsReading, isNotStated } from '../measurement/instruments.ts'
import type { Reading } from '../measurement/reading.ts'
import { type LengthUnit, type Nanometres, nanometresPer } from '../units/exact-length.ts'
import { exactValue, kindOf, type Steps, stepsPer, type Unit, valueIn } from '../units/quantity-kinds.ts'
import { guardBand } from './judge-measured.ts'
import type { JudgingRules } from './judge-requirements.ts'
import { readable, stepAbove, stepBelow } from './readable.ts'
import type { Measured, Verdict } from './verdict.ts'

/** How far inside its limits a value has to lie to be proven, read in one way, and the step to which it is read. */
export interface HowRead {
  readonly guard: Doubt
  readonly step: Steps
}

/** What the readings at hand, and the instruments of the run, can prove. */
export interface Proof {
  /** How the value was read that a verdict rests on. */
  readonly of: (verdict: Verdict, because: Measured) => HowRead
  /** How one reading for these limits is taken with each instrument that can, the least doubtful first. */
  readonly instrumentsFor: (limits: Dimension<Unit>) => readonly (HowRead & { readonly name: InstrumentName })[]
}

export function proofOf(readings: readonly Reading[], rules: JudgingRules): Proof {
  const byId = new Map(readings.map((reading) => [reading.id, reading]))
  const guardOf = (one: Doubt): Doubt => guardBand(one, rules.rule)
  return {
    of: ({ readings: ids }, { unit, uncertainty, doubt: grows }) => {
      const { fixed, relative } = grows ?? { fixed: uncertainty, relative: 0 }
      return {
        guard: guardOf({ fixed: fixed * stepsPer(unit), relative }),
        step: Math.max(...ids.map((id) => stepOf(byId.get(id)!, rules.instruments))),
      }
    },
    instrumentsFor: (limits) => {
      const most = Math.max(...[limits.low, limits.high].map((one) => (one === 'notStated' ? 0 : Math.abs(one))))
      const size = exactValue(most, limits.unit)
      return instrumentsReading(rules.instruments, kindOf(limits.unit))
        .filter((one) => !isNotStated(one))
        .map((one) => ({
          name: one.name,
          guard: guardOf(doubt(one, { uncertainty: null, resolution: null })),
          step: readingStep(one),
        }))
        .sort((a, b) => doubtAt(a.guard, size) - doubtAt(b.guard, size) || a.step - b.step)
    },
  }
}

function stepOf({ answer, instrument }: Reading, instruments: readonly Instrument[]): Steps {
  if (answer.kind !== 'measured') throw new RangeError('a value rests on readings that measure')
  return answer.resolution ?? readingStep(instrumentOf(instruments, instrument, kindOf(answer.unit)))
}

const readingStep = ({ readTo, unit }: Instrument): Steps => readTo * stepsPer(unit)

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

/** Values from `low` to `high`; infinite where no limit is stated. */
export interface Room {
  readonly low: Steps
  readonly high: Steps
}

/** Where a value has to lie so that a reading with this guard band proves it; empty when `low` is over `high`. */
export const roomWithin = ({ low, high, unit }: Dimension<Unit>, guard: Doubt): Room => ({
  low: low === 'notStated' ? Number.NEGATIVE_INFINITY : Math.ceil(doubtfulAround(exactValue(low, unit), guard).to),
  high:
    high === 'notStated' ? Number.POSITIVE_INFINITY : Math.floor(doubtfulAround(exactValue(high, unit), guard).from),
})

export const isInside = ({ low, high }: Room, value: Steps): boolean => value >= low && value <= high

/** Steps that a person can set out, the coarsest first: our judgement. */
const setOut: Readonly<Record<Unit, readonly Steps[]>> = {
  in: [nanometresPer.in / 8, nanometresPer.in / 16],
  ft: [nanometresPer.ft / 100],
  mm: [5 * nanometresPer.mm, nanometresPer.mm],
  m: [5 * nanometresPer.mm, nanometresPer.mm],
  '%': [readable('%')],
  '°': [readable('°')],
  lbf·ft: [readable('lbf·ft')],
  N·m: [readable('N·m')],
  lbf: [readable('lbf')],
  kN: [readable('kN')],
  count: [readable('count')],
}

/**
 * The change among `changes` that comes nearest to `wanted` and can be set out, so that the next reading proves it: a
 * step of the reading inside them, or, where they are narrower, one after which the reading falls on a step of its own
 * again. Where `wanted` is not inside, the middle of the changes.
 * @returns null when no reading of this step can fall inside
 */
export function chooseChange(changes: Room, wanted: Steps, step: Steps, unit: Unit): Steps | null {
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

/** The room in steps that can be read, drawn inward, in `unit`. */
export const readableRoom = ({ low, high }: Room, unit: Unit): { from: number | null; to: number | null } => ({
  from: Number.isFinite(low) ? valueIn(stepAbove(low, unit), unit) : null,
  to: Number.isFinite(high) ? valueIn(stepBelow(high, unit), unit) : null,
})
