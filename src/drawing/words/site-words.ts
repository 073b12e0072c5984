import { site } from '../../words/en/drawings/site.ts'
import type { OwnWords } from '../../words/own-words.ts'
import type { Print } from '../../words/print.ts'

/** What plans and sections of a site says of its own, in the language of `print`. */
export const siteWords = (print: Print): OwnWords['site'] => print.own('site', site)
