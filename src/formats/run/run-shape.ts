import * as z from 'zod/mini'
import { units } from '../../core/units/quantity-kinds.ts'
import { devicePositionShape } from '../device-position.ts'
import { railLength, stretchFrom, stretchTo } from '../length-field.ts'
import { form } from '../range/form.ts'
import { day, listOf, ranged, rangedWhole } from '../range/ranged.ts'
import { sheetSchema } from '../sheet/sheet-file.ts'
import { earlierShape, layoutShape } from './layout-shape.ts'

const text = z.string().check(z.minLength(1))
const sheetId = text.check(z.meta({ description: 'The id of a hardware sheet, shipped or listed in `sheets`.' }))

const end = z
  .union(
    [
      z.strictObject({ sheet: sheetId, at: z._default(z.nullable(railLength), null) }),
      z.strictObject({
        standingSplice: z.strictObject({ at: railLength, position: z.enum(['post', 'midspan']) }),
      }),
      z.strictObject({
        unknown: z.enum(['no sheet fits', 'not looked at']),
        at: z._default(z.nullable(railLength), null),
        posts: z._default(rangedWhole('pieceCount'), 0),
        panels: z._default(rangedWhole('pieceCount'), 0),
      }),
    ],
    form('sheet or standing splice'),
  )
  .check(
    z.meta({
      id: 'RunEnd',
      description:
        'An end unit by its sheet, with the place of its origin when that is given; or a splice that stands; of a run that was counted also one of which nobody knows what it is, with how many of the posts and panels belong to it.',
    }),
  )

const road = z.strictObject({
  route: z._default(z.nullable(text), null),
  side: z._default(z.nullable(z.enum(['right', 'left'])), null).check(
    z.meta({
      description: 'Side of the road, looking up-station.',
    }),
  ),
  datumStation: z._default(z.nullable(text), null).check(
    z.meta({
      description: "Station of the run's datum: 104+00 in a us file, 1+237.500 in a metric one.",
    }),
  ),
  speed: z._default(z.nullable(ranged('speed')), null).check(
    z.meta({
      description: 'Miles an hour in a us file, kilometres an hour in a metric one.',
    }),
  ),
  traffic: z._default(z.nullable(z.enum(['two-way', 'one-way', 'divided'])), null),
  opposingReaches: z._default(z.nullable(z.boolean()), null).check(
    z.meta({
      description: 'Whether opposing traffic can reach the second end: the end stands inside its clear zone.',
    }),
  ),
  position: z.optional(devicePositionShape).check(
    z.meta({
      description: 'Where a device was that stood at the end of a run that was counted, as the device said.',
    }),
  ),
})

const flare = z
  .strictObject({
    rate: ranged('flareRate').check(z.meta({ description: 'The a of a flare of a along to 1 across.' })),
    firstFrom: z
      ._default(z.nullable(railLength), null)
      .check(z.meta({ description: 'Upstream of here the rail leaves its line, away from the road.' })),
    secondFrom: z
      ._default(z.nullable(railLength), null)
      .check(z.meta({ description: 'Downstream of here the rail leaves its line, away from the road.' })),
  })
  .check(z.meta({ description: 'A flare of the run itself; those of its end units stand on their sheets.' }))

const panels = listOf(railLength, 'panels')

/** A run file as it is written, with defaults filled in and lengths as inches. */
export const runShape = z
  .strictObject({
    format: z.enum(['lapwise-run/1', 'lapwise-run/2']).check(
      z.meta({
        description: 'lapwise-run/1 says what is asked; lapwise-run/2 also what was chosen, with every sheet in use.',
      }),
    ),
    version: z.optional(text).check(z.meta({ description: 'Id of this version of the run.' })),
    earlier: z
      .optional(earlierShape)
      .check(z.meta({ description: 'The versions that it came from, the first one first.' })),
    layout: z.optional(layoutShape),
    name: text,
    project: z
      .optional(text)
      .check(z.meta({ description: 'What the run is listed under, together with others of the same word.' })),
    units: z._default(z.enum(['us', 'metric']), 'us').check(
      z.meta({
        description: 'For stations, speed and print. A bare length along the rail is inches in both.',
      }),
    ),
    road: z.prefault(road, {}),
    work: z._default(z.nullable(z.enum(['new', 'standing'])), null),
    letting: z._default(z.nullable(day), null),
    system: sheetId,
    first: end,
    second: end,
    need: z._default(z.nullable(z.strictObject({ from: stretchFrom, to: stretchTo })), null),
    flare: z._default(z.nullable(flare), null),
    stock: z._default(
      z.nullable(
        listOf(
          z.union([railLength, z.strictObject({ length: railLength, count: rangedWhole('panelCount') })]),
          'stock',
        ).check(z.minLength(1)),
      ),
      null,
    ),
    obstructions: z._default(
      listOf(z.strictObject({ name: text, from: stretchFrom, to: stretchTo }), 'obstructions'),
      [],
    ),
    clearance: z.optional(railLength),
    curb: z
      .optional(z.enum(['present', 'none']))
      .check(
        z.meta({ description: 'Whether a curb stands before the rail: it decides what a gap in the posts needs.' }),
      ),
    reduced: z._default(
      listOf(
        z.strictObject({
          from: stretchFrom,
          to: stretchTo,
          spacing: z.enum(['full', 'half', 'quarter']),
          nested: z._default(z.boolean(), false),
        }),
        'reduced',
      ),
      [],
    ),
    standing: z._default(
      z.nullable(
        z.strictObject({
          postOneAt: railLength,
          panels,
          postsDriven: rangedWhole('pieceCount'),
          leftOut: z.optional(listOf(railLength, 'posts')).check(
            z.meta({
              description:
                'Where before the last driven post one was left out, from the datum; each in an obstruction.',
            }),
          ),
          moved: z
            .optional(listOf(railLength, 'posts'))
            .check(
              z.meta({ description: 'Where among the driven posts one stands that was moved there, from the datum.' }),
            ),
          special: z
            .optional(listOf(railLength, 'posts'))
            .check(z.meta({ description: 'Where among the driven posts one stands that is special, from the datum.' })),
        }),
      ),
      null,
    ),
    counted: z
      .optional(
        z.strictObject({
          panels: panels.check(z.minLength(1)),
          posts: z.union([
            rangedWhole('pieceCount').check(z.minimum(2)),
            listOf(railLength, 'posts').check(z.minLength(2)),
          ]),
        }),
      )
      .check(
        z.meta({
          description:
            'What stands, from the first end on: the lengths of the panels, and how many posts or how far each stands from post 1.',
        }),
      ),
    mayExtend: z._default(railLength, 600),
    decision: z._default(
      z.nullable(z.strictObject({ postOneAt: railLength, panels: panels.check(z.minLength(1)) })),
      null,
    ),
    decisionRule: z._default(
      z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('guard band'), multiple: ranged('guardBand') }),
        z.strictObject({ kind: z.literal('simple') }),
      ]),
      { kind: 'guard band', multiple: 1 },
    ),
    instruments: z._default(
      listOf(
        z.strictObject({
          id: text,
          name: text,
          standardUncertainty: ranged('instrumentUncertainty').check(
            z.meta({ description: 'k = 1, of one reading, in `unit`.' }),
          ),
          relativeUncertainty: z.optional(ranged('relativeUncertainty')).check(
            z.meta({
              description:
                'k = 1, the part that grows with the reading, as a fraction of it: 0.02 for 2 %. None when left out.',
            }),
          ),
          unit: z.enum(units).check(z.meta({ description: 'Tells also what kind of quantity it reads.' })),
          readTo: ranged('instrumentStep').check(
            z.meta({ description: 'Smallest step to which it is read, in `unit`.' }),
          ),
          source: text,
          confirmation: z.enum(['published', 'common practice', 'from memory']),
        }),
        'instruments',
      ),
      [],
    ),
    sheets: z._default(listOf(z.lazy(sheetSchema), 'sheets'), []),
  })
  .check(
    z.meta({
      oneOf: [
        { properties: { format: { const: 'lapwise-run/1' }, version: false, earlier: false, layout: false } },
        { properties: { format: { const: 'lapwise-run/2' } }, required: ['version', 'earlier', 'layout', 'sheets'] },
      ],
    }),
  )

export type RunShape = z.output<typeof runShape>
