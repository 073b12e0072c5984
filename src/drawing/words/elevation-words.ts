import { elevation } from '../../words/en/drawings/elevation.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What an elevation says of its own, in the language of `print`. */
export const elevationWords = (print: Print): OwnWords['elevation'] => print.own('elevation', elevation)
