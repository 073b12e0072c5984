import type { PaperName } from '../core/units/paper-names.ts'
import type { Paper } from './drawing.ts'

/** Which edge of the paper is at the bottom of a page of text. */
export type PageLie = 'portrait' | 'landscape'

/** Landscape, by the standards that name them. */
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
