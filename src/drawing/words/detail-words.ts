import { detail } from '../../words/en/drawings/detail.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What the detail of a terminal says of its own, in the language of `print`. */
export const detailWords = (print: Print): OwnWords['detail'] => print.own('detail', detail)
