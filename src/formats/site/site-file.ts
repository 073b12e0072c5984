import { z } from 'zod'
import { sheetSchema } from '../sheet/sheet-file.ts'

const length = z.number()
const positive = length.positive()
const lateral = length.nonnegative()
/** The lower bound stands in the published schema and is checked by readSite, which can say what it means. */
const outside = length.meta({ minimum: 0 })

const station = z.union([z.number(), z.string()]).meta({
  description:
    'Distance along the alignment (continuous, ft or m), or station text as on the stakes: "12+37.50", metric "1+237.500".',
})

const turn = z.enum(['right', 'left']).meta({ description: 'Looking up-station.' })

const radiusAtEnd = positive.nullable().meta({ description: 'null where the spiral is straight.' })

const element = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tangent'), length: positive }),
  z.strictObject({ kind: z.literal('curve'), length: positive, radius: positive, turn }),
  z
    .strictObject({
      kind: z.literal('spiral'),
      length: positive,
      radiusStart: radiusAtEnd,
      radiusEnd: radiusAtEnd,
      turn,
    })
    .meta({ description: 'A clothoid, also between two radii of the same turn.' }),
])

const equation = z
  .strictObject({ back: station, ahead: station })
  .meta({ description: 'Where the stationing that reaches `back` goes on from `ahead`. In order along the alignment.' })

/** The elements of an alignment in the short form of the site file; each is laid tangent to the one before it. */
const elementsSchema = z.strictObject({
  kind: z.literal('elements'),
  line: z.enum(['edge', 'centreline']).default('edge').meta({
    description: 'What the elements describe: the edge of travelled way beside the hazards, or the centreline.',
  }),
  start: z
    .strictObject({
      easting: z.number().default(0),
      northing: z.number().default(0),
      azimuth: z.number().default(0).meta({ description: 'Degrees clockwise from north.' }),
      station: station.default(0),
    })
    .prefault({}),
  elements: z.array(element).min(1),
  stationEquations: z.array(equation).default([]),
})

export type ElementsFile = z.output<typeof elementsSchema>

const alignment = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('straight') }),
  z.strictObject({
    kind: z.literal('curve'),
    radius: positive,
    turn,
    radiusOf: z.literal('edge').default('edge').meta({
      description: 'The radius is that of the edge of travelled way beside the hazards; stations run along it.',
    }),
  }),
  elementsSchema,
])

const slope = z
  .union([z.number().positive(), z.string()])
  .meta({ description: 'Horizontal run of one vertical: 6 or "1V:6H".' })
const take = z
  .enum(['low', 'high'])
  .default('high')
  .meta({ description: 'Which end of the range in the table is used.' })

const clearZone = z
  .union([
    z.number().positive(),
    z.strictObject({ foreslope: slope, take }),
    z.strictObject({ backslope: slope, take }),
  ])
  .meta({ description: 'Width from the edge of travelled way, used as it stands; or the slope to look it up by.' })

const road = z.strictObject({
  speed: z.number().positive().meta({ description: 'Design speed, mi/h or km/h.' }),
  adt: z.number().nonnegative().meta({ description: 'Vehicles a day.' }),
  traffic: z.enum(['one-way', 'two-way', 'divided']),
  lanes: z.int().positive().meta({
    description:
      'Through lanes of both directions together (2 for a two-lane road); of the one direction when one-way.',
  }),
  laneWidth: positive,
  shoulderWidth: lateral,
  medianWidth: positive.nullable().default(null).meta({
    description:
      'Divided roads: between the inner edges of the two travelled ways. Without it opposing traffic is not judged.',
  }),
  alignment: alignment.default({ kind: 'straight' }),
})

const hazard = z.strictObject({
  name: z.string().min(1),
  from: station,
  to: station,
  near: outside.meta({ description: 'Edge of travelled way to its near side.' }),
  far: outside
    .nullable()
    .default(null)
    .meta({ description: 'Edge of travelled way to its far side; may be left out where beyondClearZone is true.' }),
  side: turn.default('right'),
  beyondClearZone: z.boolean().default(false).meta({
    description: 'True for water, a slope or a cliff that goes on: it is shielded to the limit of the clear zone.',
  }),
})

const barrier = z.strictObject({
  offset: lateral.meta({ description: 'Edge of travelled way to the front face of the parallel part.' }),
  flare: z
    .strictObject({
      rate: z
        .union([z.number().positive(), z.string()])
        .meta({ description: 'The a of a flare of a along to 1 across: 14 or "14:1".' }),
      parallelLength: lateral.meta({ description: 'Parallel barrier between the hazards and the start of the flare.' }),
      ends: z
        .enum(['approach', 'both'])
        .default('both')
        .meta({ description: 'Whether the end that opposing traffic meets is flared too.' }),
    })
    .nullable()
    .default(null),
  approachEnd: z.string().nullable().default(null).meta({ description: 'Hardware sheet of the end.' }),
  departureEnd: z.string().nullable().default(null).meta({ description: 'Hardware sheet of the end.' }),
})

const small = z
  .union([z.number(), z.string().min(1)])
  .meta({ id: 'SmallLength', description: 'Inches in a us file, mm in a metric one; or a text with its unit.' })
const slopeRun = z.number().positive().nullable().default(null)
const groundLength = lateral.nullable().default(null)

const hardware = z.strictObject({
  system: z.string().nullable().default(null).meta({ description: 'Hardware sheet of the longitudinal system.' }),
  spacing: z.enum(['full', 'half', 'quarter']).default('full'),
  work: z.enum(['new', 'standing']).nullable().default(null),
  letting: z.iso.date({ error: 'a date such as 2017-03-15' }).nullable().default(null),
  adjoining: z
    .strictObject({ railHeight: small, splice: z.enum(['post', 'midspan']).nullable().default(null) })
    .nullable()
    .default(null)
    .meta({ description: 'A standing run that this one meets.' }),
  ground: z
    .strictObject({
      platformSlope: slopeRun.meta({ description: 'Run of 1 vertical: 10 for 1V:10H.' }),
      behindPostOne: groundLength,
      recoveryLength: groundLength,
      recoveryWidth: groundLength,
      besideSlope: slopeRun.meta({ description: 'Foreslope beside the platform, run of 1 vertical.' }),
      breakBehindPost: groundLength.meta({ description: 'From the back of the posts to where the slope breaks.' }),
      slopeBehind: slopeRun.meta({ description: 'Slope beyond the break, run of 1 vertical.' }),
    })
    .prefault({}),
  curb: z
    .strictObject({ height: small, face: z.enum(['vertical', 'sloping']), toRail: small })
    .nullable()
    .default(null)
    .meta({ description: 'toRail: from the face of the curb back to the face of the rail.' }),
})

const driveway = z.strictObject({ name: z.string().min(1), from: station, to: station })

/**
 * The site file. Lengths are feet or metres after `units`; laterals are measured from the edge of travelled way beside
 * the hazards, away from the road. Traffic keeps to the right.
 */
export const siteSchema = z
  .strictObject({
    format: z.literal('lapwise-site/1'),
    name: z.string().optional(),
    units: z
      .enum(['us', 'metric'])
      .meta({ description: 'us: feet and mi/h; metric: metres and km/h. Each has tables of its own.' }),
    edition: z
      .enum(['rdg-2011', 'rdg-2006'])
      .default('rdg-2011')
      .meta({ description: 'Edition of the AASHTO Roadside Design Guide; rdg-2006 stands for 1996, 2002 and 2006.' }),
    interpolateSpeeds: z.boolean().default(false).meta({
      description: 'Interpolate runout lengths between two tabulated speeds; otherwise the next higher one is used.',
    }),
    runoutOnCurves: z.enum(['path', 'edge']).default('edge').meta({
      description: "What the runout length measures on a curve: the vehicle's straight path, or the edge beside it.",
    }),
    road,
    clearZone,
    runoutLength: positive.nullable().default(null).meta({ description: 'Used instead of the table.' }),
    shyLine: positive.nullable().default(null).meta({ description: 'Used instead of the table.' }),
    flareLimits: z
      .strictObject({ inside: positive, beyond: positive })
      .nullable()
      .default(null)
      .meta({ description: 'The a of a:1 inside and beyond the shy line; used instead of the table.' }),
    hazards: z.array(hazard).min(1),
    barrier,
    hardware: hardware.prefault({}),
    sheets: z.array(sheetSchema).default([]),
    driveways: z.array(driveway).default([]).meta({ description: 'Stretches where no barrier can stand.' }),
  })
  .meta({
    description:
      'Road, traffic, ground and hazards at one place. Lengths in ft or m after `units`; laterals from the edge of travelled way beside the hazards.',
  })

export type SiteFile = z.output<typeof siteSchema>
