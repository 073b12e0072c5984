import { later } from './later.ts'
import type { Answer } from './run-source.ts'

/** What makes documents on a device, fetched with the first one. */
export const documentsPart = (): Answer<typeof import('./device-documents.ts')> =>
  later(() => import('./device-documents.ts'))
