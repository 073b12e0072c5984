import { type LengthUnit, type Nanometres, nanometresPer } from './exact-length.ts'

/** What a requirement may measure. */
export type QuantityKind = 'length' | 'slope' | 'angle' | 'torque' | 'force' | 'count'

/** Units beside those of length; `count` is a number of things and is printed as the number alone. */
export type OtherUnit = '%' | '°' | 'lbf·ft' | 'N·m' | 'lbf' | 'kN' | 'count'

export type Unit = LengthUnit | OtherUnit

/** A value as a whole number of the steps of its kind: nanometres of a length, whole things of a count. */
export type Steps = Nanometres

/**
 * Exact by definition: the international foot is 0.3048 m, the pound-force 4.4482216152605 N, and so the pound-force foot
 * 1.3558179483314004 N·m.
 * @source NIST SP 811, 2008, appendix B.8
 */
const newtonsPerPoundForce = 4.4482216152605
const newtonMetresPerPoundForceFoot = newtonsPerPoundForce * 0.3048

interface UnitFacts {
  readonly kind: QuantityKind
  /** Steps in one of the unit. */
  readonly stepsPer: number
  /** Ways to write it, besides its own name; a letter's case counts. */
  readonly written: readonly string[]
}

/**
 * Every unit. Steps are nanometres of lengths, and of the rest so small that a decimal with six places comes back as it was
 * published: millionths of a percent and of a degree, nanonewton metres, nanonewtons. Both units of one kind count in the same steps, so
 * that a value in one is compared with a limit in the other.
 */
const unitFacts: Readonly<Record<Unit, UnitFacts>> = {
  in: { kind: 'length', stepsPer: nanometresPer.in, written: [] },
  ft: { kind: 'length', stepsPer: nanometresPer.ft, written: [] },
  mm: { kind: 'length', stepsPer: nanometresPer.mm, written: [] },
  m: { kind: 'length', stepsPer: nanometresPer.m, written: [] },
  '%': { kind: 'slope', stepsPer: 1e6, written: ['percent'] },
  '°': { kind: 'angle', stepsPer: 1e6, written: ['deg', 'degree', 'degrees'] },
  lbf·ft: {
    kind: 'torque',
    stepsPer: newtonMetresPerPoundForceFoot * 1e9,
    written: ['lbf ft', 'lbf-ft', 'lb-ft', 'ft·lbf', 'ft lbf', 'ft-lbf', 'ft-lb'],
  },
  N·m: { kind: 'torque', stepsPer: 1e9, written: ['N m', 'N-m', 'Nm'] },
  lbf: { kind: 'force', stepsPer: newtonsPerPoundForce * 1e9, written: [] },
  kN: { kind: 'force', stepsPer: 1e12, written: [] },
  count: { kind: 'count', stepsPer: 1, written: [] },
}

/** The units of lengths, and those of everything else. */
export const lengthUnits = ['in', 'ft', 'mm', 'm'] as const satisfies readonly LengthUnit[]
export const otherUnits = ['%', '°', 'lbf·ft', 'N·m', 'lbf', 'kN', 'count'] as const satisfies readonly OtherUnit[]
export const units = [...lengthUnits, ...otherUnits] as const

export const kindOf = (unit: Unit): QuantityKind => unitFacts[unit].kind

/** Whether values of this kind other than lengths go below nothing. */
export const isSigned = (kind: QuantityKind): boolean => kind === 'slope' || kind === 'angle'

export const isLengthUnit = (unit: Unit): unit is LengthUnit => unit in nanometresPer

export const isUnit = (text: string): text is Unit => text in unitFacts

export const stepsPer = (unit: Unit): number => unitFacts[unit].stepsPer

/** Ways to write a unit that is none of length, the unit's own name first. */
export const spellingsOf = (unit: OtherUnit): readonly string[] => [unit, ...unitFacts[unit].written]

/**
 * The whole number of steps in `value` of `unit`; what is finer than a step is rounded to one.
 * @throws RangeError when the value is not finite or larger than a double holds exactly
 */
export function exactValue(value: number, unit: Unit): Steps {
  const steps = Math.round(value * stepsPer(unit))
  if (!Number.isSafeInteger(steps)) throw new RangeError(`${value} ${unit} is not finite, or more than is kept exactly`)
  return steps
}

/**
 * `steps` in `unit`: the nearest double of a length, as published (to six decimals) of anything else, so that 25 lbf·ft
 * comes back as 25.
 */
export const valueIn = (steps: Steps, unit: Unit): number =>
  isLengthUnit(unit) ? steps / stepsPer(unit) : Math.round((steps / stepsPer(unit)) * 1e6) / 1e6
