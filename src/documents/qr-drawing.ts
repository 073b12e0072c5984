import { encode } from 'uqr'
import { rectangle } from '../drawing/draw.ts'
import type { Drawing } from '../drawing/drawing.ts'

/** Light modules around the code. @source ISO/IEC 18004:2015, 5.3.8 */
const quiet = 4

/** Dark modules reach into the row below by so much of one, or viewers show hairlines between rows. */
const overlap = 0.04

/**
 * `text` as a QR code `width` inches wide; what is dirty or torn of it, up to a seventh, is made good (level M).
 * @param alt  what is said of it where it is not seen
 */
export function qrDrawing(text: string, width: number, alt: string): Drawing {
  const { size, data } = encode(text, { ecc: 'M', border: quiet })
  return {
    title: alt,
    description: text,
    extent: { minX: 0, minY: -size, maxX: size, maxY: 0 },
    scale: size / width,
    paper: null,
    layers: [{ name: 'code', penPoints: 0.1, dash: 'solid', ink: '#000000' }],
    items: data.flatMap((row, y) =>
      stretches(row).map(({ from, to }) =>
        rectangle('code', { minX: from, maxX: to, minY: -y - 1 - overlap, maxY: -y }, 'solid', false),
      ),
    ),
  }
}

/** Where a row is dark, from and to. */
function stretches(row: readonly boolean[]): readonly { readonly from: number; readonly to: number }[] {
  const found: { from: number; to: number }[] = []
  for (const [x, isDark] of row.entries()) {
    const last = found.at(-1)
    if (isDark && last?.to === x) last.to = x + 1
    else if (isDark) found.push({ from: x, to: x + 1 })
  }
  return found
}
