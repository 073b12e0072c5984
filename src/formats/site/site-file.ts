import * as z from 'zod/mini'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'
import { ranges } from '../range/ranges.ts'
import { sheetSchema } from '../sheet/sheet-file.ts'

/** The lower bound stands in the published schema and is checked by readSite, which can say what it means. */
const outside = z.number().check(z.maximum(ranges.lateral.most), z.meta({ minimum: 0 }))

const station = z.union([ranged('station'), z.string()]).check(
  z.meta({
    description:
      'Distance along the alignment (continuous, ft or m), or station text as on the stakes: "12+37.50", metric "1+237.500".',
  }),
)

const turn = z.enum(['right', 'left']).check(z.meta({ description: 'Looking up-station.' }))

const radiusAtEnd = z.nullable(ranged('radius')).check(z.meta({ description: 'null where the spiral is straight.' }))

const azimuth = ranged('azimuth')

const ownStart = z
  .optional(z.strictObject({ easting: ranged('coordinate'), northing: ranged('coordinate'), azimuth }))
  .check(
    z.meta({
      description:
        'Where the element begins, if that is not where the one before it ends, and in its direction: a gap or a kink. Azimuth in degrees clockwise from north.',
    }),
  )

const element = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('tangent'), length: ranged('elementLength'), start: ownStart }),
  z.strictObject({
    kind: z.literal('curve'),
    length: ranged('elementLength'),
    radius: ranged('radius'),
    turn,
    start: ownStart,
  }),
  z
    .strictObject({
      kind: z.literal('spiral'),
      length: ranged('elementLength'),
      radiusStart: radiusAtEnd,
      radiusEnd: radiusAtEnd,
      turn,
      start: ownStart,
    })
    .check(z.meta({ description: 'A clothoid, also between two radii of the same turn.' })),
])

const equation = z.strictObject({ back: station, ahead: station }).check(
  z.meta({
    description: 'Where the stationing that reaches `back` goes on from `ahead`. In order along the alignment.',
  }),
)

/** The elements of an alignment in the short form; each is laid tangent to the one before it, or at its own start. */
const elementsSchema = z.strictObject({
  kind: z.literal('elements'),
  line: z._default(z.enum(['edge', 'centreline']), 'edge').check(
    z.meta({
      description: 'What the elements describe: the edge of travelled way beside the hazards, or the centreline.',
    }),
  ),
  foot: z._default(z.enum(['international', 'US survey']), 'international').check(
    z.meta({
      description:
        'Of easting and northing of a site in us units; in a metric one they are metres. The two differ by 2 ppm: 4 ft in 2,000,000.',
    }),
  ),
  start: z.prefault(
    z.strictObject({
      easting: z._default(ranged('coordinate'), 0),
      northing: z._default(ranged('coordinate'), 0),
      azimuth: z._default(azimuth, 0).check(z.meta({ description: 'Degrees clockwise from north.' })),
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
    radiusOf: z._default(z.literal('edge'), 'edge').check(
      z.meta({
        description: 'The radius is that of the edge of travelled way beside the hazards; stations run along it.',
      }),
    ),
  }),
  elementsSchema,
])

const slope = z
  .union([ranged('slopeRun'), z.string()])
  .check(z.meta({ description: 'Horizontal run of one vertical: 6 or "1V:6H".' }))
const take = z
  ._default(z.enum(['low', 'high']), 'high')
  .check(z.meta({ description: 'Which end of the range in the table is used.' }))

const clearZone = z
  .union([ranged('clearZone'), z.strictObject({ foreslope: slope, take }), z.strictObject({ backslope: slope, take })])
  .check(
    z.meta({ description: 'Width from the edge of travelled way, used as it stands; or the slope to look it up by.' }),
  )

const road = z.strictObject({
  speed: ranged('speed').check(z.meta({ description: 'Design speed, mi/h or km/h.' })),
  adt: ranged('adt').check(z.meta({ description: 'Vehicles a day.' })),
  traffic: z.enum(['one-way', 'two-way', 'divided']),
  lanes: rangedWhole('lanes').check(
    z.meta({
      description:
        'Through lanes of both directions together (2 for a two-lane road); of the one direction when one-way.',
    }),
  ),
  laneWidth: ranged('laneWidth'),
  shoulderWidth: ranged('shoulderWidth'),
  medianWidth: z._default(z.nullable(ranged('medianWidth')), null).check(
    z.meta({
      description:
        'Divided roads: between the inner edges of the two travelled ways. Without it opposing traffic is not judged.',
    }),
  ),
  alignment: z._default(alignment, { kind: 'straight' }),
})

const hazard = z.strictObject({
  name: z.string().check(z.minLength(1)),
  from: station,
  to: station,
  near: outside.check(z.meta({ description: 'Edge of travelled way to its near side.' })),
  far: z
    ._default(z.nullable(outside), null)
    .check(
      z.meta({ description: 'Edge of travelled way to its far side; may be left out where beyondClearZone is true.' }),
    ),
  side: z._default(turn, 'right'),
  beyondClearZone: z._default(z.boolean(), false).check(
    z.meta({
      description: 'True for water, a slope or a cliff that goes on: it is shielded to the limit of the clear zone.',
    }),
  ),
})

const barrier = z.strictObject({
  offset: ranged('barrierOffset').check(
    z.meta({ description: 'Edge of travelled way to the front face of the parallel part.' }),
  ),
  flare: z._default(
    z.nullable(
      z.strictObject({
        rate: z
          .union([ranged('flareRate'), z.string()])
          .check(z.meta({ description: 'The a of a flare of a along to 1 across: 14 or "14:1".' })),
        parallelLength: ranged('parallelLength').check(
          z.meta({ description: 'Parallel barrier between the hazards and the start of the flare.' }),
        ),
        ends: z
          ._default(z.enum(['approach', 'both']), 'both')
          .check(z.meta({ description: 'Whether the end that opposing traffic meets is flared too.' })),
      }),
    ),
    null,
  ),
  approachEnd: z._default(z.nullable(z.string()), null).check(z.meta({ description: 'Hardware sheet of the end.' })),
  departureEnd: z._default(z.nullable(z.string()), null).check(z.meta({ description: 'Hardware sheet of the end.' })),
})

const small = z
  .union([ranged('smallLength'), z.string().check(z.minLength(1))])
  .check(
    z.meta({ id: 'SmallLength', description: 'Inches in a us file, mm in a metric one; or a text with its unit.' }),
  )
const slopeRun = z._default(z.nullable(ranged('slopeRun')), null)
const groundLength = z._default(z.nullable(ranged('groundLength')), null)

const hardware = z.strictObject({
  system: z
    ._default(z.nullable(z.string()), null)
    .check(z.meta({ description: 'Hardware sheet of the longitudinal system.' })),
  spacing: z._default(z.enum(['full', 'half', 'quarter']), 'full'),
  work: z._default(z.nullable(z.enum(['new', 'standing'])), null),
  letting: z._default(z.nullable(day), null),
  adjoining: z
    ._default(
      z.nullable(
        z.strictObject({ railHeight: small, splice: z._default(z.nullable(z.enum(['post', 'midspan'])), null) }),
      ),
      null,
    )
    .check(z.meta({ description: 'A standing run that this one meets.' })),
  ground: z.prefault(
    z.strictObject({
      platformSlope: slopeRun.check(z.meta({ description: 'Run of 1 vertical: 10 for 1V:10H.' })),
      behindPostOne: groundLength,
      recoveryLength: groundLength,
      recoveryWidth: groundLength,
      besideSlope: slopeRun.check(z.meta({ description: 'Foreslope beside the platform, run of 1 vertical.' })),
      breakBehindPost: groundLength.check(
        z.meta({ description: 'From the back of the posts to where the slope breaks.' }),
      ),
      slopeBehind: slopeRun.check(z.meta({ description: 'Slope beyond the break, run of 1 vertical.' })),
    }),
    {},
  ),
  curb: z
    ._default(
      z.nullable(
        z.union([
          z.literal('none'),
          z.strictObject({
            height: small,
            face: z.enum(['vertical', 'sloping']),
            faceSlope: slopeRun.check(z.meta({ description: 'Of a sloping face, run of 1 vertical: 3 for 1V:3H.' })),
            toRail: small,
          }),
        ]),
      ),
      null,
    )
    .check(
      z.meta({
        description: '"none" where there is none. toRail: from the face of the curb back to the face of the rail.',
      }),
    ),
})

const driveway = z.strictObject({ name: z.string().check(z.minLength(1)), from: station, to: station })

/**
 * The site file. Lengths are feet or metres after `units`; laterals are measured from the edge of travelled way beside
 * the hazards, away from the road. Traffic keeps to the right.
 */
export const siteSchema = z
  .strictObject({
    format: z.literal('lapwise-site/1'),
    name: z.optional(z.string()),
    units: z
      .enum(['us', 'metric'])
      .check(z.meta({ description: 'us: feet and mi/h; metric: metres and km/h. Each has tables of its own.' })),
    edition: z._default(z.enum(['rdg-2011', 'rdg-2006']), 'rdg-2011').check(
      z.meta({
        description: 'Edition of the AASHTO Roadside Design Guide; rdg-2006 stands for 1996, 2002 and 2006.',
      }),
    ),
    interpolateSpeeds: z._default(z.boolean(), false).check(
      z.meta({
        description: 'Interpolate runout lengths between two tabulated speeds; otherwise the next higher one is used.',
      }),
    ),
    runoutOnCurves: z._default(z.enum(['path', 'edge']), 'edge').check(
      z.meta({
        description: "What the runout length measures on a curve: the vehicle's straight path, or the edge beside it.",
      }),
    ),
    road,
    clearZone,
    runoutLength: z
      ._default(z.nullable(ranged('runoutLength')), null)
      .check(z.meta({ description: 'Used instead of the table.' })),
    shyLine: z
      ._default(z.nullable(ranged('shyLine')), null)
      .check(z.meta({ description: 'Used instead of the table.' })),
    flareLimits: z
      ._default(z.nullable(z.strictObject({ inside: ranged('flareRate'), beyond: ranged('flareRate') })), null)
      .check(z.meta({ description: 'The a of a:1 inside and beyond the shy line; used instead of the table.' })),
    hazards: listOf(hazard, 'hazards').check(z.minLength(1)),
    barrier,
    hardware: z.prefault(hardware, {}),
    sheets: z._default(listOf(z.lazy(sheetSchema), 'sheets'), []),
    driveways: z
      ._default(listOf(driveway, 'driveways'), [])
      .check(z.meta({ description: 'Stretches where no barrier can stand.' })),
  })
  .check(
    z.meta({
      description:
        'Road, traffic, ground and hazards at one place. Lengths in ft or m after `units`; laterals from the edge of travelled way beside the hazards.',
    }),
  )

export type SiteFile = z.output<typeof siteSchema>
