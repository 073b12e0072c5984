import type { Print } from '../words/print.ts'
import { cautions as en } from './words/en/cautions.ts'
import { cautions as es } from './words/es/cautions.ts'

/** Shown on every record and in the foot of every page. */
export const cautions = (print: Print): readonly string[] => print.pick({ en, es })
