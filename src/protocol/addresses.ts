/** Every address of the API. What names one thing stands in it as text of an address: encoded, or a pattern's own name. */

/** Entries that devices hand in, and read on. */
export const entriesPath = '/api/entries'

export const runsPath = '/api/runs'
export const runPath = (run: string): string => `${runsPath}/${run}`
export const recordPath = (run: string): string => `${runPath(run)}/record.pdf`
export const stripPath = (run: string): string => `${runPath(run)}/strip.svg`

/** Where the packet of a run is made. */
export const packetOfRunPath = (run: string): string => `${runPath(run)}/packet`
/** A packet that was made, as a ZIP file. */
export const packetPath = (packet: string): string => `/api/packets/${packet}`

/** A photo by the hash of its bytes. */
export const photoPath = (sha256: string): string => `/api/photos/${sha256}`
/** Which photos are stored, of those that are asked for. */
export const storedPhotosPath = '/api/photos/stored'
/** Where uploads begin that can be taken up again (tus 1.0). */
export const uploadsPath = '/api/photos/uploads'

/** Where documents of hardware sheets are made. */
export const sheetDocumentPath = '/api/sheets/document.pdf'
