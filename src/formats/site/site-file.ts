import * as z from 'zod/mini'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'
import { ranges } from '../range/ranges.ts'
import { sheetSchema } from '../sheet/sheet-file.ts'

/** The lower bound stands in the published schema and is checked by readSite, which can say what it means. */
const outside = z.number().check(z.maximum(ranges.lateral.most), z.meta({ minimum: 0 }))

const station = z.union([ranged('station'), z.string()])

const turn = z.enum(['right', 'left'])

const radiusAtEnd = z.nullable(ranged('radius'))

const azimuth = ranged('azimuth')

const ownStart = z.optional(z.strictObject({ easting: ranged('coordinate'), northing: ranged('coordinate'), azimuth }))

const element = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tangent'), length: ranged('elementLength'), start: ownStart }),
  z.strictObject({
    kind: z.literal('curve'),
    length: ranged('elementLength'),
    radius: ranged('radius'),
    turn,
    start: ownStart,
  }),
  z.strictObject({
    kind: z.literal('spiral'),
    length: ranged('elementLength'),
    radiusStart: radiusAtEnd,
    radiusEnd: radiusAtEnd,
    turn,
    start: ownStart,
  }),
])

const equation = z.strictObject({ back: station, ahead: station })

/** The elements of an alignment in the short form; each is laid tangent to the one before it, or at its own start. */
const elementsSchema = z.strictObject({
  kind: z.literal('elements'),
  line: z._default(z.enum(['edge', 'centreline']), 'edge'),
  foot: z._default(z.enum(['international', 'US survey']), 'international'),
  start: z.prefault(
    z.strictObject({
      easting: z._default(ranged('coordinate'), 0),
      northing: z._default(ranged('coordinate'), 0),
      azimuth: z._default(azimuth, 0),
      station: z._default(station, 0),
    }),
    {},
  ),
  elements: listOf(element, 'elements').check(z.minLength(1)),
  stationEquations: z._default(listOf(equation, 'stationEquations'), []),
})

export type ElementsFile = z.output<typeof elementsSchema>

const alignment = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('straight') }),
  z.strictObject({
    kind: z.literal('curve'),
    radius: ranged('radius'),
    turn,
    radiusOf: z._default(z.literal('edge'), 'edge'),
  }),
  elementsSchema,
])

const slope = z.union([ranged('slopeRun'), z.string()])
const take = z._default(z.enum(['low', 'high']), 'high')

const clearZone = z.union([
  ranged('clearZone'),
  z.strictObject({ foreslope: slope, take }),
  z.strictObject({ backslope: slope, take }),
])

const road = z.strictObject({
  speed: ranged('speed'),
  adt: ranged('adt'),
  traffic: z.enum(['one-way', 'two-way', 'divided']),
  lanes: rangedWhole('lanes'),
  laneWidth: ranged('laneWidth'),
  shoulderWidth: ranged('shoulderWidth'),
  medianWidth: z._default(z.nullable(ranged('medianWidth')), null),
  alignment: z._default(alignment, { kind: 'straight' }),
})

const hazard = z.strictObject({
  name: z.string().check(z.minLength(1)),
  from: station,
  to: station,
  near: outside,
  far: z._default(z.nullable(outside), null),
  side: z._default(turn, 'right'),
  beyondClearZone: z._default(z.boolean(), false),
})

const barrier = z.strictObject({
  offset: ranged('barrierOffset'),
  flare: z._default(
    z.nullable(
      z.strictObject({
        rate: z.union([ranged('flareRate'), z.string()]),
        parallelLength: ranged('parallelLength'),
        ends: z._default(z.enum(['approach', 'both']), 'both'),
      }),
    ),
    null,
  ),
  approachEnd: z._default(z.nullable(z.string()), null),
  departureEnd: z._default(z.nullable(z.string()), null),
})

const small = z.union([ranged('smallLength'), z.string().check(z.minLength(1))]).check(z.meta({ id: 'SmallLength' }))
const slopeRun = z._default(z.nullable(ranged('slopeRun')), null)
const groundLength = z._default(z.nullable(ranged('groundLength')), null)

const hardware = z.strictObject({
  system: z._default(z.nullable(z.string()), null),
  spacing: z._default(z.enum(['full', 'half', 'quarter']), 'full'),
  work: z._default(z.nullable(z.enum(['new', 'standing'])), null),
  letting: z._default(z.nullable(day), null),
  adjoining: z._default(
    z.nullable(
      z.strictObject({ railHeight: small, splice: z._default(z.nullable(z.enum(['post', 'midspan'])), null) }),
    ),
    null,
  ),
  ground: z.prefault(
    z.strictObject({
      platformSlope: slopeRun,
      behindPostOne: groundLength,
      recoveryLength: groundLength,
      recoveryWidth: groundLength,
      besideSlope: slopeRun,
      breakBehindPost: groundLength,
      slopeBehind: slopeRun,
    }),
    {},
  ),
  curb: z._default(
    z.nullable(
      z.union([
        z.literal('none'),
        z.strictObject({
          height: small,
          face: z.enum(['vertical', 'sloping']),
          faceSlope: slopeRun,
          toRail: small,
        }),
      ]),
    ),
    null,
  ),
})

const driveway = z.strictObject({ name: z.string().check(z.minLength(1)), from: station, to: station })

/**
 * The site file. Lengths are feet or metres after `units`; laterals are measured from the edge of travelled way beside
 * the hazards, away from the road. Traffic keeps to the right.
 */
export const siteSchema = z.strictObject({
  format: z.literal('lapwise-site/1'),
  name: z.optional(z.string()),
  units: z.enum(['us', 'metric']),
  edition: z._default(z.enum(['rdg-2011', 'rdg-2006']), 'rdg-2011'),
  interpolateSpeeds: z._default(z.boolean(), false),
  runoutOnCurves: z._default(z.enum(['path', 'edge']), 'edge'),
  road,
  clearZone,
  runoutLength: z._default(z.nullable(ranged('runoutLength')), null),
  shyLine: z._default(z.nullable(ranged('shyLine')), null),
  flareLimits: z._default(
    z.nullable(z.strictObject({ inside: ranged('flareRate'), beyond: ranged('flareRate') })),
    null,
  ),
  hazards: listOf(hazard, 'hazards').check(z.minLength(1)),
  barrier,
  hardware: z.prefault(hardware, {}),
  sheets: z._default(listOf(z.lazy(sheetSchema), 'sheets'), []),
  driveways: z._default(listOf(driveway, 'driveways'), []),
})

export type SiteFile = z.output<typeof siteSchema>
