import { partOf } from '../parts/later-part.tsx'

/** Photos stand below what is read, and come after it. */
export const photosPart = partOf(() => import('./photos.tsx'))
