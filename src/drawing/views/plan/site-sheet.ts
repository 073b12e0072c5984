import type { Box, Drawing, Item } from '../../drawing.ts'
import { papers } from '../../paper.ts'
import { boxAround } from './item-box.ts'
import { pageWidths, type SitePage } from './site-view.ts'

/**
 * The page around `items`, whose content begins at `left` and `top` and goes down to `bottom`: a sheet of paper, or as
 * much of a screen as they need, at least its width.
 */
export function siteSheet(
  page: SitePage,
  items: readonly Item[],
  left: number,
  top: number,
  bottom: number,
  perPoint: number,
): Pick<Drawing, 'paper' | 'extent'> {
  const { width, margin } = pageWidths(page)
  const paper = page === 'web' || page === 'phone' ? null : papers[page]
  const minX = left - margin * perPoint
  const maxY = top + margin * perPoint
  const maxX = minX + width * perPoint
  const extent: Box =
    paper === null
      ? {
          minX,
          maxX: Math.max(maxX, boxAround(items, perPoint).maxX + margin * perPoint),
          minY: bottom - margin * perPoint,
          maxY,
        }
      : { minX, maxX, minY: maxY - paper.heightPoints * perPoint, maxY }
  return { paper, extent }
}

/** Whether all of a drawing on paper keeps off the edges of its sheet; on a screen there is none. */
export function fitsPage({ paper, extent, items, scale }: Drawing): boolean {
  if (paper === null) return true
  const box = boxAround(items, scale / 72)
  const edge = (18 * scale) / 72
  return box.minY >= extent.minY + edge && box.maxX <= extent.maxX - edge
}
