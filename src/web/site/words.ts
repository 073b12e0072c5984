import { type SiteWords, siteEn } from '../messages/site-en.ts'
import { siteWords } from '../messages.ts'

/** The words of this part of the page, in the language in force. */
export const words = (): SiteWords => siteWords ?? siteEn
