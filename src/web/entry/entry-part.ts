import { partOf } from '../parts/later-part.tsx'

/** Where a requirement is read: fetched when one is opened, or once the walk is shown. */
export const entryPart = partOf(() => import('./entry-panel.tsx'))
