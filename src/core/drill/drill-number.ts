import { err, ok, type Result } from '../result.ts'
import { type FaultSize, faultSizes } from './faults.ts'
import type { DrillWish } from './make-drill.ts'

/** A drill as its number says it: which practice run, and what is planted in it. */
export interface NumberedDrill extends DrillWish {
  /** Of the practice runs, from 0. */
  readonly site: number
}

export type DrillNumberProblem = { readonly kind: 'not a drill number' } | { readonly kind: 'of another edition' }

/** Raised when the same number would give another drill: then what was handed on by number is refused, not changed. */
const edition = 1

const sizes: readonly (FaultSize | 'mixed')[] = [...faultSizes, 'mixed']

/**
 * Twelve digits in groups of four: edition, practice run (2), faults (2), size, decoys, seed (4), check digit.
 *
 * @example printDrillNumber({ site: 3, faults: 6, size: 'mixed', decoys: 2, seed: 4821 })  // '1030 6324 8217'
 * @source check digit: ISO/IEC 7812-1, annex B (modulus 10, "double-add-double"), which notices every single wrong digit and
 *   every two exchanged neighbours but 0 and 9
 */
export function printDrillNumber({ site, faults, size, decoys, seed }: NumberedDrill): string {
  const digits = [
    String(edition),
    String(site).padStart(2, '0'),
    String(faults).padStart(2, '0'),
    String(sizes.indexOf(size)),
    String(decoys),
    String(seed).padStart(4, '0'),
  ].join('')
  return `${digits}${checkDigit(digits)}`.replace(/(\d{4})(?=\d)/g, '$1 ')
}

/** @returns what the number says, however its groups are parted; or why it is none of ours */
export function readDrillNumber(text: string): Result<NumberedDrill, DrillNumberProblem> {
  const digits = text.replace(/[\s.-]/g, '')
  if (!/^\d{12}$/.test(digits) || checkDigit(digits.slice(0, -1)) !== digits.at(-1))
    return err({ kind: 'not a drill number' })
  if (digits[0] !== String(edition)) return err({ kind: 'of another edition' })
  const size = sizes[Number(digits[5])]
  if (size === undefined) return err({ kind: 'not a drill number' })
  return ok({
    site: Number(digits.slice(1, 3)),
    faults: Number(digits.slice(3, 5)),
    size,
    decoys: Number(digits[6]),
    seed: Number(digits.slice(7, 11)),
  })
}

/** Every second digit from the right doubled, the digits of all added up: what is missing to the next ten. */
export function checkDigit(digits: string): string {
  const sum = [...digits].toReversed().reduce((all, digit, i) => {
    const value = Number(digit) * (i % 2 === 0 ? 2 : 1)
    return all + (value > 9 ? value - 9 : value)
  }, 0)
  return String((10 - (sum % 10)) % 10)
}
