export const languages = ['en', 'es'] as const

/** In which something is written or said. */
export type Language = (typeof languages)[number]
