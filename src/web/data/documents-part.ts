import { later } from './later.ts'
import type { DeviceEntry } from './merge-entries.ts'
import type { Answer, DocumentWish, KeptRun, SheetDocumentWish } from './run-source.ts'

/** What makes documents on a device. */
export interface DocumentsPart {
  /** @param entries  all that is kept of the run */
  documentHere(kept: KeptRun, entries: readonly DeviceEntry[], wish: DocumentWish): Answer<Blob>
  sheetDocumentHere(wish: SheetDocumentWish): Answer<Blob>
}

/**
 * The page's own code leads to nothing that sets documents. The build puts `src/web/documents/documents-part.ts` into this
 * file's place.
 */
export const documentsPart = (): Answer<DocumentsPart> =>
  later(() => Promise.reject(new Error('only a built page sets documents')))
