import type { Paper } from './drawing.ts'

export const paperNames = ['letter', 'tabloid', 'A4', 'A3'] as const
export type PaperName = (typeof paperNames)[number]

/** Which edge of the paper is at the bottom of a page of text. */
export type PageLie = 'portrait' | 'landscape'

/** Landscape. Letter and tabloid are ANSI/ASME Y14.1 A and B sizes, A4 and A3 are ISO 216. */
export const papers: Readonly<Record<PaperName, Paper>> = {
  letter: { name: 'letter', widthPoints: 11 * 72, heightPoints: 8.5 * 72 },
  tabloid: { name: 'tabloid', widthPoints: 17 * 72, heightPoints: 11 * 72 },
  A4: { name: 'A4', widthPoints: (297 / 25.4) * 72, heightPoints: (210 / 25.4) * 72 },
  A3: { name: 'A3', widthPoints: (420 / 25.4) * 72, heightPoints: (297 / 25.4) * 72 },
}

/** A scale as a person with a scale rule knows it. */
export interface PlainScale {
  /** Inches in the world for each inch on paper. */
  readonly ratio: number
  readonly words: string
}

/** From the largest picture to the smallest. */
export const plainScales: Readonly<Record<'feet and inches' | 'metric', readonly PlainScale[]>> = {
  'feet and inches': [5, 10, 20, 30, 40].map((feet) => ({
    ratio: feet * 12,
    words: `1 in = ${feet} ft (1:${feet * 12})`,
  })),
  metric: [50, 100, 200, 250, 500].map((ratio) => ({ ratio, words: `1:${ratio}` })),
}
