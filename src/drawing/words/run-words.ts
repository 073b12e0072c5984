import { run } from '../../words/en/drawings/run.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What every drawing of a run says of its own, in the language of `print`. */
export const runWords = (print: Print): OwnWords['run'] => print.own('run', run)
