import { longestRunInches } from '../../core/units/longest-run.ts'

/** How far a number of a file may go. Hard limits are refused; what is not usual is read, and said with the record. */
export interface NumberRange {
  readonly least: number
  readonly most: number
  /** Null where any value inside the hard limits is as likely as another. */
  readonly usual: UsualRange | null
  /** What the limits rest on, one line. */
  readonly why: string
  readonly basis: 'common practice' | 'our judgement'
}

/** In the unit of the file: feet and mi/h in a us file, metres and km/h in a metric one. */
interface UsualRange {
  readonly us: readonly [low: number, high: number]
  readonly metric: readonly [low: number, high: number]
}

const both = (low: number, high: number): UsualRange => ({ us: [low, high], metric: [low, high] })

const practice = (least: number, most: number, usual: UsualRange | null, why: string): NumberRange => ({
  ...{ least, most, usual, why, basis: 'common practice' },
})
const judgement = (least: number, most: number, usual: UsualRange | null, why: string): NumberRange => ({
  ...{ least, most, usual, why, basis: 'our judgement' },
})

/**
 * The plausible range of every number in a file. Hard limits are one number for both unit systems, wide enough for feet
 * and metres; they catch slips of the keyboard and of units, not bad design.
 */
export const ranges = {
  speed: practice(5, 200, { us: [25, 80], metric: [40, 130] }, 'Posted and design speeds, mi/h or km/h'),
  adt: practice(0, 1_000_000, both(0, 400_000), 'Vehicles a day; the busiest motorways carry about 400 000'),
  lanes: practice(1, 30, both(1, 12), 'Through lanes of both directions'),
  laneWidth: practice(1, 100, { us: [8, 16], metric: [2.4, 5] }, 'Lanes are 9 to 12 ft, ramps up to 16 ft'),
  shoulderWidth: practice(0, 100, { us: [0, 20], metric: [0, 6] }, 'Shoulders are up to 12 ft'),
  medianWidth: practice(0.1, 5000, { us: [2, 400], metric: [0.6, 120] }, 'From a painted median to independent lines'),
  radius: judgement(
    5,
    10_000_000,
    { us: [50, 100_000], metric: [15, 30_000] },
    'Sharper than a turning lorry takes, or so flat that it is a straight line',
  ),
  elementLength: judgement(
    0.001,
    1_000_000,
    { us: [1, 100_000], metric: [0.3, 30_000] },
    'One element of an alignment',
  ),
  coordinate: judgement(-100_000_000, 100_000_000, null, 'Projected coordinates stay below 33 million feet'),
  azimuth: practice(-360, 360, null, 'A whole turn either way, degrees'),
  station: judgement(-5_000_000, 5_000_000, null, 'Distance along a road; counts begin anew long before'),
  clearZone: practice(1, 500, { us: [7, 100], metric: [2, 30] }, 'Tabulated clear zones are 7 to 50 ft'),
  smallLength: judgement(-50_000, 50_000, null, 'Inches or mm; what it comes to is looked at too'),
  slopeRun: judgement(0.05, 1000, both(0.25, 100), 'Horizontal run of one vertical, from a wall to a floor'),
  runoutLength: practice(1, 5000, { us: [50, 600], metric: [15, 185] }, 'Tabulated runout lengths are 70 to 475 ft'),
  shyLine: practice(0.1, 100, { us: [2, 15], metric: [0.5, 4.5] }, 'Tabulated shy lines are 4 to 12 ft'),
  flareRate: practice(1, 1000, both(5, 50), 'Tabulated flare rates are 7:1 to 30:1'),
  lateral: judgement(
    0,
    5000,
    { us: [0, 300], metric: [0, 90] },
    'From the edge of travelled way to what stands beside it',
  ),
  barrierOffset: practice(0, 1000, { us: [0, 60], metric: [0, 18] }, 'Barriers stand within the clear zone'),
  parallelLength: judgement(0, 52_800, { us: [0, 1000], metric: [0, 300] }, 'Parallel barrier before a flare'),
  groundLength: judgement(0, 5000, { us: [0, 300], metric: [0, 90] }, 'Grading at one end of a run'),
  alongRail: judgement(
    -2 * longestRunInches,
    2 * longestRunInches,
    null,
    'Inches from the datum of a run of at most 10 miles',
  ),
  panel: practice(12, 1200, both(75, 300), 'Inches; panels are made from 6 ft 3 in to 25 ft'),
  panelCount: judgement(0, 100_000, null, 'Panels in stock'),
  pieceNumber: judgement(
    1,
    50_000,
    null,
    'Posts and panels of one run; quarter spacing over 10 miles has 33 792 posts',
  ),
  pieceCount: judgement(0, 50_000, null, 'Posts of one run'),
  guardBand: practice(0.01, 10, both(0.5, 3), 'Guard bands in use are 0.83 U to 3 U'),
  instrumentUncertainty: judgement(0, 10_000, null, 'In the unit named; 0 where all of it grows with the reading'),
  relativeUncertainty: judgement(1e-6, 0.5, null, 'A fraction of the reading; a torque wrench has about 0.02'),
  instrumentStep: judgement(1e-6, 10_000, null, 'In the unit named; what it comes to in metres is looked at too'),
  sheetInches: judgement(-12_000, 12_000, null, 'Inches within one hardware unit, 1000 ft'),
  dimension: judgement(-100_000, 100_000, null, 'A dimension of hardware in the unit of its source'),
  spacing: judgement(6, 1200, null, 'Inches between posts'),
  sheetNumber: judgement(1, 500, null, 'Posts and panels of one hardware unit'),
  sheetCount: judgement(0, 50, null, 'Special posts beside a gap'),
  boltSlot: judgement(0.25, 12, null, 'Inches, each way; the usual slot of a rail is 3/4 in by 2 1/2 in'),
  workingWidth: practice(1, 400, both(20, 150), 'Inches; W-beam deflects 1 to 10 ft'),
  readingValue: judgement(-20_000_000, 20_000_000, null, 'A value in any of the units; 10 miles are 16 093 440 mm'),
  photoBytes: judgement(1, 25 * 1024 * 1024, null, 'The largest photo that is taken in, 25 MiB'),
  photoEdge: judgement(1, 20_000, null, 'Pixels along one edge of a photo'),
  photoPart: judgement(0, 1, null, 'A part of the width or height of a photo'),
  latitude: practice(-90, 90, null, 'Degrees'),
  longitude: practice(-180, 180, null, 'Degrees'),
  positionAccuracy: judgement(0, 40_000_000, both(0, 1000), 'Metres; devices that know nothing say the whole earth'),
  neededLength: judgement(
    -5_000_000,
    5_000_000,
    null,
    'A length that was found of a site; it may lie before its hazards',
  ),
  siteCheckNumber: judgement(-1_000_000, 1_000_000, null, 'Inches, feet or the run of a slope in a check of a site'),
  siteCheckLength: judgement(-1e14, 1e14, null, 'Nanometres in a check of a site; 10 miles are 16 093 440 000 000'),
  signaturePoint: judgement(-10, 10, null, 'In a box 1 wide; a finger may leave it'),
} as const satisfies Readonly<Record<string, NumberRange>>

export type RangeName = keyof typeof ranges

/** Limits of lengths that may be written in any unit, metres. */
export const lengthRanges = {
  railHeight: { least: 0.1, most: 3, usual: [0.5, 1.2], why: 'Rail heights are 27 to 34 in', basis: 'common practice' },
  curbHeight: { least: 0, most: 1, usual: [0, 0.25], why: 'Curbs are 4 to 8 in', basis: 'common practice' },
  curbToRail: { least: -5, most: 50, usual: [-0.3, 10], why: 'From curb to rail', basis: 'our judgement' },
  readingValue: {
    least: -20_000,
    most: 20_000,
    usual: null,
    why: 'A place along a run of 10 miles',
    basis: 'our judgement',
  },
  roadOffset: {
    least: 0,
    most: 1000,
    usual: null,
    why: 'From an alignment to a rail beside it',
    basis: 'our judgement',
  },
  resolution: {
    least: 1e-6,
    most: 1,
    usual: [1e-4, 0.03],
    why: 'The step of a tape; coarser than 1 m measures nothing here',
    basis: 'our judgement',
  },
  uncertainty: {
    least: 1e-6,
    most: 10,
    usual: [1e-4, 0.1],
    why: 'From a micrometer to a phone that knows its place',
    basis: 'our judgement',
  },
  dimension: { least: -150, most: 150, usual: null, why: 'A dimension of one hardware unit', basis: 'our judgement' },
  station: {
    least: -5e6,
    most: 5e6,
    usual: null,
    why: 'Distance along a road; counts begin anew long before',
    basis: 'our judgement',
  },
} as const satisfies Readonly<
  Record<
    string,
    {
      readonly least: number
      readonly most: number
      readonly usual: readonly [number, number] | null
      readonly why: string
      readonly basis: NumberRange['basis']
    }
  >
>

export type LengthRangeName = keyof typeof lengthRanges

/** Years of a date that is read: road hardware of these standards is no older, and no clock is further ahead. Our judgement. */
export const years = { least: 1950, most: 2100 } as const

/** Most entries of a list: what one run, site or file of readings can hold. Our judgement. */
export const listLimits = {
  hazards: 200,
  driveways: 500,
  obstructions: 2000,
  reduced: 1000,
  stock: 100,
  panels: 20_000,
  posts: 50_000,
  versions: 1000,
  revisions: 200,
  instruments: 200,
  sheets: 50,
  sheetParts: 500,
  elements: 5000,
  stationEquations: 500,
  alignments: 500,
  readings: 100_000,
  photosOfReading: 200,
  entries: 200_000,
  photosOfDevice: 5000,
  signatureStrokes: 2000,
  strokePoints: 20_000,
  photoStrokes: 500,
  names: 50_000,
  crew: 500,
  marks: 2000,
  siteChecks: 200,
} as const
