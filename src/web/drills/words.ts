import { language } from '../language.ts'
import { type DrillsWords, drillsEn } from '../messages/drills-en.ts'
import { drillsEs } from '../messages/drills-es.ts'

/** What is said in practice, in the language of the page as it is at the time. */
export const words = (): DrillsWords => (language() === 'es' ? drillsEs : drillsEn)
