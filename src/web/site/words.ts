import { language } from '../language.ts'
import { type SiteWords, siteEn } from '../messages/site-en.ts'
import { siteEs } from '../messages/site-es.ts'

/** The words of this part of the page, in the language in force. */
export const words = (): SiteWords => (language() === 'es' ? siteEs : siteEn)
