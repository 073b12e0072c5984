import type { Print } from '../../words/print.ts'
import { run } from './en/run.ts'
import { strip } from './en/strip.ts'
import { run as runEs } from './es/run.ts'
import { strip as stripEs } from './es/strip.ts'

const en = { run, strip }

/** The drawings' own words: what stands on them in no saying of the model. */
export type DrawingWords = typeof en

const es: DrawingWords = { run: runEs, strip: stripEs }

/** Those of the language of `print`. */
export const drawingWords = (print: Print): DrawingWords => print.pick({ en, es })
