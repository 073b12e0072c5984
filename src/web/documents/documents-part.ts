import type { DocumentsPart } from '../data/documents-part.ts'
import { later } from '../data/later.ts'
import type { Answer } from '../data/run-source.ts'

/** What makes documents, fetched with the first one. */
export const documentsPart = (): Answer<DocumentsPart> => later(() => import('../data/device-documents.ts'))
