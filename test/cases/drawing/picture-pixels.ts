import { createRequire } from 'node:module'
import { Resvg } from '@resvg/resvg-js'
import pixelmatch from 'pixelmatch'
import { PNG } from 'pngjs'

/** A picture pixel by pixel, four bytes each: red, green, blue, opacity. */
export interface Picture {
  readonly width: number
  readonly height: number
  readonly data: Uint8Array
}

/** So that the thinnest pen of a drawing, 0.4 points, is nearly one pixel. */
const pixelsPerPoint = 2

/**
 * How much of the way from black to white a pixel may differ; not one may differ by more.
 *
 * The renderer and its fonts come with the pinned packages, so nothing differs but the last bit of a sine. The writer
 * gives places to 0.01 pt, a fiftieth of a pixel: one that is rounded the other way shades the edge of a line by 2 %.
 * A tenth lets that pass, and refuses any line that moved by a tenth of a pixel (0.05 pt, 0.02 mm on paper).
 */
const tolerance = 0.1

const require = createRequire(import.meta.url)

/** Faces with the proportions of those that the writer names first, from a package and not from the system. */
const fontFiles = [
  require.resolve('@expo-google-fonts/arimo/400Regular/Arimo_400Regular.ttf'),
  require.resolve('@expo-google-fonts/arimo/700Bold/Arimo_700Bold.ttf'),
]

/** An SVG document of ours as pixels, the same on every machine. */
export function renderSvg(svg: string): Picture {
  const widthPoints = Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1])
  const rendered = new Resvg(svg, {
    fitTo: { mode: 'width', value: Math.round(widthPoints * pixelsPerPoint) },
    font: { loadSystemFonts: false, fontFiles, defaultFontFamily: 'Arimo', sansSerifFamily: 'Arimo' },
  }).render()
  return { width: rendered.width, height: rendered.height, data: rendered.pixels }
}

/** Where the ink of a text set in the same faces ends, points from where it begins to be set. */
export function inkEnd(words: string, size: number, bold: boolean): number {
  const weight = bold ? 'bold' : 'normal'
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="2000" height="50"><text y="30" font-family="Arimo" font-size="${size}" font-weight="${weight}">${words}</text></svg>`
  const box = new Resvg(svg, { font: { loadSystemFonts: false, fontFiles } }).getBBox()!
  return box.x + box.width
}

export const readPng = (bytes: Buffer): Picture => PNG.sync.read(bytes)

export const writePng = ({ width, height, data }: Picture): Buffer => {
  const png = new PNG({ width, height })
  png.data = Buffer.from(data)
  return PNG.sync.write(png)
}

/** What is different between two pictures; null when they are alike within the tolerance. */
export interface PictureDifference {
  readonly words: string
  /** The second picture, pale, with what differs in red. */
  readonly shown: Picture
}

export function pictureDifference(expected: Picture, drawn: Picture): PictureDifference | null {
  const { width, height } = drawn
  if (expected.width !== width || expected.height !== height)
    return { words: `${expected.width} x ${expected.height} pixels expected, ${width} x ${height} drawn`, shown: drawn }
  const data = new Uint8Array(width * height * 4)
  const options = { threshold: tolerance, includeAA: true }
  const count = pixelmatch(expected.data, drawn.data, data, width, height, options)
  return count === 0 ? null : { words: `${count} pixels differ`, shown: { width, height, data } }
}
