import { language } from '../language.ts'
import { type FilesWords, filesEn } from '../messages/files-en.ts'
import { filesEs } from '../messages/files-es.ts'

/** What is said of files, in the language of the page as it is at the time. */
export const words = (): FilesWords => (language() === 'es' ? filesEs : filesEn)
