import { cautions as english } from '../words/en/cautions.ts'
import type { Print } from '../words/print.ts'

/** Shown on every record and in the foot of every page. */
export const cautions = (print: Print): readonly string[] => print.own('cautions', english)
