declare const unit: unique symbol
type Quantity<U extends string> = number & { readonly [unit]?: U }

export type Metres = Quantity<'m'>
export type Radians = Quantity<'rad'>

export const metres = (n: number): Metres => n
/** Exact by definition (1959). */
export const inches = (n: number): Metres => n * 0.0254
/** The international foot, exact by definition (1959). */
export const feet = (n: number): Metres => n * 0.3048
/** The US survey foot, 1200/3937 m; only for coordinates of older files. */
export const usSurveyFeet = (n: number): Metres => (n * 1200) / 3937
export const degrees = (n: number): Radians => (n * Math.PI) / 180
