import { strip } from '../../words/en/drawings/strip.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What a strip says of its own, in the language of `print`. */
export const stripWords = (print: Print): OwnWords['strip'] => print.own('strip', strip)
