/** A point of a photo as it is seen upright, in parts of its width and height from its upper left corner. */
type PhotoPoint = readonly [x: number, y: number]

/** An arrow points from the first point to the second; a circle is centred on the first and goes through the second. */
export type Stroke =
  | { readonly kind: 'arrow' | 'circle'; readonly points: readonly [PhotoPoint, PhotoPoint] }
  | { readonly kind: 'line'; readonly points: readonly PhotoPoint[] }

/** What somebody drew on a photo, in the order of drawing; the photo itself stays as it is. */
export interface PhotoStrokes {
  readonly id: string
  /** SHA-256 of the photo. */
  readonly photo: string
  /** Pixels of the photo upright, as it was drawn on: a circle is round in these. */
  readonly width: number
  readonly height: number
  readonly strokes: readonly Stroke[]
  readonly by: string
  /** ISO 8601 date and time. */
  readonly at: string
}
