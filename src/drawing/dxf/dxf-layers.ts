import { type DxfWriter, TrueColor } from '@tarikjabiri/dxf'
import type { Drawing, Layer } from '../drawing.ts'

/** Dashes and gaps (negative) in points on paper; a dot has no length. */
const dashes: Readonly<Record<Exclude<Layer['dash'], 'solid'>, readonly number[]>> = {
  dashed: [2.4, -1.6],
  dotted: [0, -1.5],
  'dash-dot': [8, -2, 1.5, -2],
}

/** The colour that programs show black on white and white on black. */
const contrastColour = 7

/**
 * Adds every layer of the drawing, with its colour and kind of line; what lies on it takes both from it. Grey inks
 * become the colour that stands out from the ground, since many programs draw on black.
 * @param perPoint drawing units for one point on paper
 */
export function addLayers(dxf: DxfWriter, drawing: Drawing, perPoint: number): void {
  for (const [dash, elements] of Object.entries(dashes)) {
    if (!drawing.layers.some((layer) => layer.dash === dash)) continue
    const lengths = elements.map((points) => rounded(points * perPoint))
    dxf.addLType(dash.toUpperCase(), dash, lengths)
  }
  for (const { name, dash, ink } of drawing.layers) {
    const layer = dxf.addLayer(layerName(name), contrastColour, dash === 'solid' ? 'Continuous' : dash.toUpperCase())
    if (!isGrey(ink)) layer.trueColor = TrueColor.fromHex(ink)
  }
}

function isGrey(ink: string): boolean {
  const parts = [1, 3, 5].map((at) => Number.parseInt(ink.slice(at, at + 2), 16))
  return Math.max(...parts) - Math.min(...parts) < 24
}

/** A layer's plain words as DXF takes them: letters, digits and hyphens. */
export const layerName = (words: string): string => words.replace(/[^A-Za-z0-9]+/g, '-')

/** To a millionth of a unit, and never with an exponent. */
export const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0
