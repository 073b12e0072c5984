/** In which something is written or said. */
export type Language = 'en' | 'es'
