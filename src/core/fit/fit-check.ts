import type { Cited, Confirmation, HardwareSheet } from '../hardware/hardware-sheet.ts'
import { exactLength, type Nanometres } from '../units/exact-length.ts'
import { printLength } from '../units/print-length.ts'
import type { FitCheck } from './fit.ts'

/** A check from its answer: true meets, false fails with the change that cures it, null is not known. */
export function fitCheck(parts: {
  readonly what: string
  readonly meets: boolean | null
  readonly limit: string
  readonly value: string
  readonly source: string
  readonly confirmation: Confirmation
  readonly change: string
}): FitCheck {
  const { meets, change, ...rest } = parts
  return {
    ...rest,
    verdict: meets === null ? 'unread' : meets ? 'meets' : 'fails',
    smallestChange: meets === false ? change : null,
  }
}

/** Source and confirmation of a statement of a sheet. */
export function sheetSource(
  sheet: HardwareSheet,
  cited: Cited,
): { readonly source: string; readonly confirmation: Confirmation } {
  const source = sheet.sources[cited.source]
  return {
    source: source === undefined ? cited.source : `${source.title}, ${source.edition}`,
    confirmation: cited.confirmation,
  }
}

const sixteenth: Nanometres = exactLength(1 / 16, 'in')

/** `4 ft 11 15/16 in`: what there is of a length that has to reach a limit; short of the limit it never reads as the limit. */
export const reachingText = (length: Nanometres): string =>
  printLength(Math.floor(length / sixteenth) * sixteenth, 'feet-inches')

/** What there is of a length that must not exceed a limit; beyond the limit it never reads as the limit. */
export const exceedingText = (length: Nanometres): string =>
  printLength(Math.ceil(length / sixteenth) * sixteenth, 'feet-inches')
