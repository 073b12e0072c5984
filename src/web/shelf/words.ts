import { language } from '../language.ts'
import { type ShelfWords, shelfEn } from '../messages/shelf-en.ts'
import { shelfEs } from '../messages/shelf-es.ts'

/** What is said on the shelf, in the language of the page as it is at the time. */
export const words = (): ShelfWords => (language() === 'es' ? shelfEs : shelfEn)
