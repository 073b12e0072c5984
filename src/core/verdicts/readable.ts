import { nanometresPer } from '../units/exact-length.ts'
import { type Steps, stepsPer, type Unit } from '../units/quantity-kinds.ts'

/** The step to which a value of `unit` is given back, so that it can be read on a tape or a scale: our judgement. */
export const readable = (unit: Unit): Steps => steps[unit]

const steps: Readonly<Record<Unit, Steps>> = {
  in: nanometresPer.in / 16,
  ft: nanometresPer.ft / 100,
  mm: nanometresPer.mm,
  m: nanometresPer.m / 1000,
  '%': stepsPer('%') / 10,
  '°': stepsPer('°') / 10,
  lbf·ft: stepsPer('lbf·ft'),
  N·m: stepsPer('N·m'),
  lbf: stepsPer('lbf'),
  kN: stepsPer('kN') / 100,
  count: 1,
}

/**
 * A value published in pound-force is no whole number of nanonewtons: what is nearer to a readable step than this part
 * of one lies on it. Lengths come no nearer without lying on it.
 */
const onStep = 1e-9

/** The first readable step from `value` up. */
export const stepAbove = (value: Steps, unit: Unit): Steps => Math.ceil(value / steps[unit] - onStep) * steps[unit]

/** The last readable step up to `value`. */
export const stepBelow = (value: Steps, unit: Unit): Steps => Math.floor(value / steps[unit] + onStep) * steps[unit]

/** The last readable step before `value`, and the first after it. */
export const stepBefore = (value: Steps, unit: Unit): Steps => stepAbove(value, unit) - steps[unit]
export const stepAfter = (value: Steps, unit: Unit): Steps => stepBelow(value, unit) + steps[unit]
