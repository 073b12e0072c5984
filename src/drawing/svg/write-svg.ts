import { dimensionParts } from '../dimension-parts.ts'
import type { Area, Circle, Drawing, Fill, Item, Layer, Line, Point, Text } from '../drawing.ts'
import { hatchLines } from '../hatch-lines.ts'
import { escapeXml } from './escape-xml.ts'

const pixelsPerPoint = 1.75

/** Only names of faces that systems carry: nothing is fetched. */
const fontFamily = "Arial, 'Liberation Sans', Helvetica, 'DejaVu Sans', sans-serif"

/**
 * `drawing` as an SVG document.
 *
 * The view box is in points on paper. With paper, width and height are in millimetres, so that the print is true to
 * scale; without, in CSS pixels, enlarged so that 7-point letters are 12 pixels high. A group carries its id as `data-place`, for a page that listens to
 * clicks. The same drawing gives the same bytes.
 */
export function writeSvg(drawing: Drawing): string {
  const { extent, scale, paper } = drawing
  const width = ((extent.maxX - extent.minX) / scale) * 72
  const height = ((extent.maxY - extent.minY) / scale) * 72
  const size = paper
    ? `width="${number((paper.widthPoints * 25.4) / 72)}mm" height="${number((paper.heightPoints * 25.4) / 72)}mm"`
    : `width="${number(width * pixelsPerPoint)}" height="${number(height * pixelsPerPoint)}"`
  const writer = svgWriter(drawing)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} viewBox="0 0 ${number(width)} ${number(height)}" role="img" font-family="${fontFamily}" stroke-linejoin="round">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    `<desc>${escapeXml(drawing.description)}</desc>`,
    `<rect width="${number(width)}" height="${number(height)}" fill="#ffffff"/>`,
    ...drawing.items.map(writer),
    '</svg>',
    '',
  ].join('\n')
}

/** To 0.01 pt, which is 0.0035 mm on paper. */
const number = (value: number): string => String(Math.round(value * 100) / 100 + 0)

function svgWriter(drawing: Drawing): (item: Item) => string {
  const perPoint = drawing.scale / 72
  const layers = new Map(drawing.layers.map((layer) => [layer.name, layer]))
  const strokes = new Map(drawing.layers.map((layer) => [layer.name, stroke(layer)]))
  const x = (p: Point): string => number((p.x - drawing.extent.minX) / perPoint)
  const y = (p: Point): string => number((drawing.extent.maxY - p.y) / perPoint)
  const list = (points: readonly Point[]): string => points.map((p) => `${x(p)},${y(p)}`).join(' ')
  const layerOf = (name: string): Layer => {
    const layer = layers.get(name)
    if (!layer) throw new RangeError(`the drawing has no layer “${name}”`)
    return layer
  }
  const penOf = (name: string): string => strokes.get(layerOf(name).name)!
  const fillOf = (fill: Fill, layer: string): string =>
    ` fill="${{ none: 'none', hatch: 'none', blank: '#ffffff', tint: '#e3e3e3', solid: layerOf(layer).ink }[fill]}"`

  const writeLine = (item: Line): string =>
    `<path d="M${x(item.from)} ${y(item.from)}L${x(item.to)} ${y(item.to)}"${penOf(item.layer)}/>`

  const writeText = (item: Text): string => {
    const size = 'points' in item.height ? item.height.points : item.height.inches / perPoint
    const drop = { base: 0, middle: 0.36, top: 0.72 }[item.level] * size
    const turn = (item.turnDegrees * Math.PI) / 180
    const left = (item.at.x - drawing.extent.minX) / perPoint + Math.sin(turn) * drop
    const down = (drawing.extent.maxY - item.at.y) / perPoint + Math.cos(turn) * drop
    const place = `x="${number(left)}" y="${number(down)}"`
    const turned =
      item.turnDegrees === 0 ? '' : ` transform="rotate(${number(-item.turnDegrees)} ${number(left)} ${number(down)})"`
    const anchor = item.anchor === 'start' ? '' : ` text-anchor="${item.anchor}"`
    const weight = item.bold ? ' font-weight="bold"' : ''
    return `<text ${place} font-size="${number(size)}"${anchor}${weight}${turned} fill="${layerOf(item.layer).ink}">${escapeXml(item.text)}</text>`
  }

  const hatch = (corners: readonly Point[], layer: string): string => {
    const path = hatchLines(corners, 3 * perPoint).map(([a, b]) => `M${x(a)} ${y(a)}L${x(b)} ${y(b)}`)
    return path.length === 0 ? '' : `<path d="${path.join('')}" stroke="${layerOf(layer).ink}" stroke-width="0.5"/>`
  }

  const writeArea = (item: Area): string => {
    const pen = item.edged ? penOf(item.layer) : ''
    const shape = `<polygon points="${list(item.points)}"${fillOf(item.fill, item.layer)}${pen.replace(' fill="none"', '')}/>`
    return item.fill === 'hatch' ? hatch(item.points, item.layer) + shape : shape
  }

  const writeCircle = (item: Circle): string => {
    const pen = penOf(item.layer).replace(' fill="none"', '')
    return `<circle cx="${x(item.centre)}" cy="${y(item.centre)}" r="${number(item.radius / perPoint)}"${fillOf(item.fill, item.layer)}${pen}/>`
  }

  const write = (item: Item): string => {
    switch (item.kind) {
      case 'line':
        return writeLine(item)
      case 'polyline':
        return `<polyline points="${list(item.points)}"${penOf(item.layer)}/>`
      case 'area':
        return writeArea(item)
      case 'circle':
        return writeCircle(item)
      case 'arc': {
        const end = (degrees: number): Point => ({
          x: item.centre.x + item.radius * Math.cos((degrees * Math.PI) / 180),
          y: item.centre.y + item.radius * Math.sin((degrees * Math.PI) / 180),
        })
        const [from, to] = [end(item.fromDegrees), end(item.toDegrees)]
        const radius = number(item.radius / perPoint)
        const isLarge = (((item.toDegrees - item.fromDegrees) % 360) + 360) % 360 > 180 ? 1 : 0
        return `<path d="M${x(from)} ${y(from)}A${radius} ${radius} 0 ${isLarge} 0 ${x(to)} ${y(to)}"${penOf(item.layer)}/>`
      }
      case 'text':
        return writeText(item)
      case 'dimension': {
        const parts = dimensionParts(item, perPoint)
        return [...parts.lines.map(writeLine), writeText(parts.text)].join('')
      }
      case 'group':
        return `<g data-place="${escapeXml(item.id)}"><title>${escapeXml(item.title)}</title>${item.items.map(write).join('')}</g>`
      default:
        return item satisfies never
    }
  }
  return write
}

function stroke(layer: Layer): string {
  const width = layer.penPoints
  const dashes = { solid: '', dashed: '2.4 1.6', dotted: '1 1.5', 'dash-dot': '8 2 1.5 2' }[layer.dash]
  const dash = dashes === '' ? '' : ` stroke-dasharray="${dashes}"`
  return ` fill="none" stroke="${layer.ink}" stroke-width="${number(width)}"${dash}`
}
