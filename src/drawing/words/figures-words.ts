import { figures } from '../../words/en/drawings/figures.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What figures says of its own, in the language of `print`. */
export const figuresWords = (print: Print): OwnWords['figures'] => print.own('figures', figures)
