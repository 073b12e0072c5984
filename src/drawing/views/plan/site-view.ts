import type { Dimension, EndSheet } from '../../../core/hardware/hardware-sheet.ts'
import type { Need } from '../../../core/need/need.ts'
import type { Site } from '../../../core/site/site.ts'
import type { PaperName } from '../../../core/units/paper-names.ts'
import type { Metres } from '../../../core/units/quantity.ts'
import type { Print } from '../../../words/print.ts'
import { papers } from '../../paper.ts'

/** A sheet of paper, or a screen by its width: 1200 or 360 CSS pixels. */
export type SitePage = PaperName | 'web' | 'phone'

/** What a picture of a site shows, and on what. Lengths in m, laterals from the edge beside the hazards. */
export interface SiteView {
  readonly site: Site
  /** Null where it was refused: the picture then shows road, ground, hazards and the barrier beside them. */
  readonly need: Need | null
  /** Null where the tables do not give it. */
  readonly clearZone: Metres | null
  readonly shyLine: Metres | null
  readonly approachEnd: EndSheet | null
  readonly departureEnd: EndSheet | null
  /** Of the barrier; null where no sheet is chosen. */
  readonly railHeight: Dimension | null
  readonly page: SitePage
  readonly print: Print
}

export interface PlanInput extends SiteView {
  /**
   * Stations to show; null to fit. While something is dragged, a page passes the range of the picture with which the
   * dragging began: neither scale nor place of the road then changes under the hand.
   */
  readonly range: Stretch | null
}

/** Stations, m, `from` below `to`. */
export interface Stretch {
  readonly from: Metres
  readonly to: Metres
}

/** Width of the page in points, and what is left free at its left and right edge. */
export interface PageWidths {
  readonly width: number
  readonly margin: number
  /** Whether there is no room for words beside what they name: numbers stand there instead, and words in a key. */
  readonly isNarrow: boolean
}

export function pageWidths(page: SitePage): PageWidths {
  switch (page) {
    case 'web':
      return { width: 1200 / 1.75, margin: 10, isNarrow: false }
    case 'phone':
      return { width: 360 / 1.75, margin: 8, isNarrow: true }
    default:
      return { width: papers[page].widthPoints, margin: 30, isNarrow: false }
  }
}
