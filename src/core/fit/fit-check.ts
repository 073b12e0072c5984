import { sourceIn } from '../hardware/hardware-saying.ts'
import type { Cited, Confirmation, HardwareSheet } from '../hardware/hardware-sheet.ts'
import type { FitChange, FitLimit, FitSource, FitTopic, FitValue } from './fit-saying.ts'

/** Whether one thing about the chosen hardware is right for the site. Nothing said is `unread`, never `meets`. */
export interface FitCheck {
  readonly what: FitTopic
  readonly verdict: 'meets' | 'fails' | 'unread'
  readonly limit: FitLimit
  readonly value: FitValue
  readonly source: FitSource
  readonly confirmation: Confirmation
  /** The smallest change that makes it lawful; null when it meets or when the site says too little. */
  readonly smallestChange: FitChange | null
}

/**
 * A check from its answer: true meets, false fails with the change that cures it, null is not known.
 * @param parts  `change` null where it cannot fail
 */
export function fitCheck(
  parts: Omit<FitCheck, 'verdict' | 'smallestChange'> & {
    readonly meets: boolean | null
    readonly change: FitChange | null
  },
): FitCheck {
  const { meets, change, ...rest } = parts
  return {
    ...rest,
    verdict: meets === null ? 'unread' : meets ? 'meets' : 'fails',
    smallestChange: meets === false ? change : null,
  }
}

/** What cites one document for a check. */
export interface FitCitation {
  readonly source: FitSource
  readonly confirmation: Confirmation
}

/** Source and confirmation of a statement of a sheet. */
export const sheetSource = (sheet: HardwareSheet, cited: Cited): FitCitation => ({
  source: sourceIn(sheet, cited),
  confirmation: cited.confirmation,
})
