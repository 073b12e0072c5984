/**
 * A drawing in true size, which any writer can put on paper or screen.
 *
 * All coordinates and lengths are inches in the world: a panel of 12 ft 6 in is 150 long. x grows to the right, y grows
 * upward, angles are degrees counterclockwise from +x. What has no size in the world (text, pen widths, signs) is given
 * in points on paper (1/72 in) and comes to the world through `scale`.
 */
export interface Drawing {
  /** One line that names the drawing. */
  readonly title: string
  /** What the drawing shows, in sentences, for someone who cannot see it. */
  readonly description: string
  /** What is shown; everything drawn lies within it. */
  readonly extent: Box
  /** Inches in the world for each inch on paper: 240 for 1 in = 20 ft. */
  readonly scale: number
  /** The sheet of paper that `extent` fills exactly at `scale`; null for a drawing without paper. */
  readonly paper: Paper | null
  /** Every layer that an item names, in the order in which a program should list them. */
  readonly layers: readonly Layer[]
  /** From the back to the front. */
  readonly items: readonly Item[]
}

export interface Point {
  readonly x: number
  readonly y: number
}

export interface Box {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

/** Size in points as it is held, width first. */
export interface Paper {
  readonly name: string
  readonly widthPoints: number
  readonly heightPoints: number
}

/** How everything of one kind is drawn. Its name is plain words, as `posts`. */
export interface Layer {
  readonly name: string
  /** Width of line on paper. */
  readonly penPoints: number
  readonly dash: 'solid' | 'dashed' | 'dotted' | 'dash-dot'
  /** `#rrggbb`; dark enough to read on white when printed in grey. */
  readonly ink: string
}

/** `blank` covers what lies behind with paper white; `solid` fills with the layer's ink, `tint` with a light grey. */
export type Fill = 'none' | 'blank' | 'tint' | 'solid' | 'hatch'

export type Item = Line | Polyline | Area | Circle | Arc | Text | Dimension | Group

interface OnLayer {
  readonly layer: string
}

export interface Line extends OnLayer {
  readonly kind: 'line'
  readonly from: Point
  readonly to: Point
}

export interface Polyline extends OnLayer {
  readonly kind: 'polyline'
  readonly points: readonly Point[]
}

/** A closed shape; the last corner joins the first. */
export interface Area extends OnLayer {
  readonly kind: 'area'
  readonly points: readonly Point[]
  readonly fill: Fill
  /** Whether its edge is drawn with the layer's pen. */
  readonly edged: boolean
}

export interface Circle extends OnLayer {
  readonly kind: 'circle'
  readonly centre: Point
  readonly radius: number
  readonly fill: Fill
}

/** From `fromDegrees` counterclockwise to `toDegrees`. */
interface Arc extends OnLayer {
  readonly kind: 'arc'
  readonly centre: Point
  readonly radius: number
  readonly fromDegrees: number
  readonly toDegrees: number
}

/** Height of letters (font size) on paper in points, or in the world in inches. */
type TextHeight = { readonly points: number } | { readonly inches: number }

export interface Text extends OnLayer {
  readonly kind: 'text'
  readonly at: Point
  readonly text: string
  readonly height: TextHeight
  readonly anchor: 'start' | 'middle' | 'end'
  /** Which height of the letters lies at `at`. */
  readonly level: 'base' | 'middle' | 'top'
  readonly bold: boolean
  readonly turnDegrees: number
}

/** The distance from `from` to `to`, written as `text`; its line lies `offset` inches to the left of that direction. */
export interface Dimension extends OnLayer {
  readonly kind: 'dimension'
  readonly from: Point
  readonly to: Point
  readonly offset: number
  readonly text: string
  readonly height: TextHeight
}

/** Things that belong together and have a name, as one post: `id` is `post-9`, `title` says it in words. */
export interface Group {
  readonly kind: 'group'
  readonly id: string
  readonly title: string
  readonly items: readonly Item[]
}
