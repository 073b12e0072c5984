import { language } from '../language.ts'
import { type GlossaryWords, glossaryEn, type TermId } from '../messages/glossary-en.ts'
import { glossaryEs } from '../messages/glossary-es.ts'

type Words = Omit<GlossaryWords, 'terms'> & { readonly terms: Readonly<Record<TermId, readonly [string, string]>> }

/** What is said in the glossary, in the language of the page as it is at the time. */
export const words = (): Words => (language() === 'es' ? glossaryEs : glossaryEn)
