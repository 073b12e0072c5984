import { acceptance } from './en/acceptance.ts'
import { common } from './en/common.ts'
import type { Print } from './print.ts'
import { printIn, type Words } from './print-in.ts'
import { together } from './together.ts'

/**
 * What of English a list of runs says: how each stands, and what somebody wrote. A page is drawn with it before the rest
 * has come; to say anything else with it is a mistake of the program.
 */
const words: Words = {
  language: 'en',
  printers: together(acceptance, common) as Words['printers'],
  joints: { and: 'and', or: 'or' },
  own: null,
}

export const firstEnglish = (units: Print['units']): Print => printIn(words, units)
