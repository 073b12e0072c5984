import type { PhotoStrokes, Stroke } from '../../core/record/photo-strokes.ts'

/** Strokes, and the pixels of the photo under them. */
export type DrawnOn = Pick<PhotoStrokes, 'width' | 'height' | 'strokes'>

/** What was drawn on a photo, as an SVG document of the photo's own shape, to lie over it. */
export function writePhotoStrokes(drawn: DrawnOn): string {
  const { width, height } = drawn
  const path = strokesPath(drawn)
  const lines = strokePens(drawn).map(
    ({ ink, pen }) => `<path d="${path}" stroke="${ink}" stroke-width="${pen.toFixed(1)}"/>`,
  )
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" fill="none" stroke-linecap="round" stroke-linejoin="round">${lines.join('')}</svg>`
}

/** White below red, so that a stroke shows on any ground. */
export function strokePens({ width, height }: DrawnOn) {
  const size = Math.max(width, height)
  return [
    { ink: '#ffffff', pen: size / 90 },
    { ink: '#c40000', pen: size / 180 },
  ] as const
}

/** All strokes as one path in pixels of the photo. */
export const strokesPath = ({ width, height, strokes }: DrawnOn): string =>
  strokes.map((stroke) => strokePath(stroke, width, height)).join('')

function strokePath({ kind, points }: Stroke, width: number, height: number): string {
  const placed = points.map(([x, y]) => [x * width, y * height] as const)
  const [[x, y], [toX, toY]] = placed as [(typeof placed)[number], (typeof placed)[number]]
  switch (kind) {
    case 'line':
      return linePath(placed)
    case 'circle': {
      const r = n(Math.hypot(toX - x, toY - y))
      return `M${n(x + Number(r))} ${n(y)}a${r} ${r} 0 1 1 ${n(-2 * Number(r))} 0a${r} ${r} 0 1 1 ${n(2 * Number(r))} 0`
    }
    case 'arrow': {
      const angle = Math.atan2(toY - y, toX - x)
      const long = Math.max(width, height) / 28
      const barb = (turn: number): string =>
        linePath([
          [toX, toY],
          [toX - long * Math.cos(angle + turn), toY - long * Math.sin(angle + turn)],
        ])
      return linePath(placed) + barb(0.5) + barb(-0.5)
    }
    default:
      return kind satisfies never
  }
}

const linePath = (points: readonly (readonly [x: number, y: number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('')

const n = (value: number): string => value.toFixed(1)
