/** Sizes of paper by name: letter and tabloid are ANSI/ASME Y14.1 A and B, A4 and A3 are ISO 216. */
export const paperNames = ['letter', 'tabloid', 'A4', 'A3'] as const

export type PaperName = (typeof paperNames)[number]
