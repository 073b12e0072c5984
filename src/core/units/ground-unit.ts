import { feet, type Metres, metres, usSurveyFeet } from './quantity.ts'

/** A unit of coordinates by its full name; the two feet differ by 2 ppm, 4 ft in a coordinate of 2,000,000 ft. */
export const groundUnits = ['metre', 'foot', 'US survey foot'] as const
export type GroundUnit = (typeof groundUnits)[number]

const sizes: Readonly<Record<GroundUnit, (value: number) => Metres>> = {
  metre: metres,
  foot: feet,
  'US survey foot': usSurveyFeet,
}

export const metresFromGround = (value: number, unit: GroundUnit): Metres => sizes[unit](value)

export const groundFromMetres = (length: Metres, unit: GroundUnit): number =>
  unit === 'US survey foot' ? (length * 3937) / 1200 : length / sizes[unit](1)
