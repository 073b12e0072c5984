import * as z from 'zod/mini'
import { seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities } from '../../core/hardware/severity.ts'
import { units } from '../../core/units/quantity-kinds.ts'
import { drawnFields } from '../entry/stroke-shape.ts'
import { listOf, moment, ranged } from '../range/ranged.ts'

const text = z.string().check(z.minLength(1))
const note = z.nullable(text)

const valueText = text.check(
  z.meta({
    id: 'ValueText',
    description:
      'A length such as 30 3/4 in or 781 mm, or what else the requirement measures, as 2.5 %, 3°, 25 lbf·ft, 34 N·m, 500 lbf or 2.2 kN. Without a unit it is inches in a us file, mm in a metric one.',
  }),
)

const unit = z.enum(units)

/** The fields of which a reading has exactly one. */
export const answerFields = ['value', 'choice', 'confirmed', 'cannotSee', 'doesNotApply'] as const

const reading = z
  .strictObject({
    id: z.optional(text).check(z.meta({ description: 'r1, r2 … by place in the list when left out.' })),
    of: text.check(z.meta({ description: 'The requirement it answers, as post-3/rail-height.' })),
    value: z.optional(z.union([ranged('readingValue'), valueText])),
    unit: z
      .optional(unit)
      .check(z.meta({ description: 'Unit of a value that names none; count for a number of things.' })),
    resolution: z
      .optional(valueText)
      .check(z.meta({ description: 'Smallest step read; when left out, the step to which the instrument is read.' })),
    side: z.optional(z.enum(['away', 'toward', 'not stated'])).check(
      z.meta({
        description:
          'Of an offset, on which side of the line: away from traffic or toward it. Every offset but 0 says it from lapwise-readings/2 on; not stated is for one taken before.',
      }),
    ),
    uncertainty: z
      ._default(z.nullable(z.union([valueText, z.strictObject({ value: ranged('instrumentStep'), unit })])), null)
      .check(z.meta({ description: 'Standard uncertainty, k = 1.' })),
    choice: z.optional(text),
    confirmed: z.optional(z.boolean()),
    cannotSee: z.optional(z.literal(true)),
    doesNotApply: z.optional(text).check(z.meta({ description: 'Because of what.' })),
    instrument: z.optional(note),
    by: z.optional(text),
    at: z.optional(moment),
    where: z.optional(note),
    note: z
      .optional(text.check(z.maxLength(4000)))
      .check(z.meta({ description: 'What its person says beside the answer; nothing is decided by it.' })),
    version: z.optional(text).check(
      z.meta({
        description:
          'Id of the version of the run that its person saw, from lapwise-readings/3 on; the first one when left out.',
      }),
    ),
    photos: z._default(listOf(text, 'photosOfReading'), []),
    corrects: z._default(note, null).check(z.meta({ description: 'Id of an earlier reading that this one replaces.' })),
    rechecks: z._default(note, null).check(z.meta({ description: 'Id of the finding that this one rechecks.' })),
    together: z
      ._default(note, null)
      .check(z.meta({ description: 'A name shared by readings that were taken in one go for several places.' })),
  })
  .check(
    z.meta({
      id: 'Reading',
      oneOf: answerFields.map((field) => ({ required: [field] })),
    }),
  )

const finding = z
  .strictObject({
    id: text,
    what: z.enum(seenKinds),
    of: text.check(z.meta({ description: 'The place where it was seen, as post-3, splice-2, first or run.' })),
    severity: z
      .optional(z.enum(severities))
      .check(
        z.meta({ description: 'How bad it is by the word of its finder; it counts where the sheet says nothing.' }),
      ),
    note,
    photos: listOf(text, 'photosOfReading'),
    by: text,
    at: moment,
    version: z.optional(text),
    closed: z.nullable(
      z.strictObject({
        id: text,
        as: z.enum(['put right', 'not so']),
        note,
        photos: listOf(text, 'photosOfReading'),
        by: text,
        at: moment,
      }),
    ),
  })
  .check(z.meta({ id: 'FreeFinding', description: 'Something seen that no requirement asks for.' }))

const photoStrokes = z
  .strictObject({
    id: text,
    photo: text.check(z.meta({ description: 'SHA-256 of the photo that was drawn on.' })),
    ...drawnFields,
    by: text,
    at: moment,
  })
  .check(
    z.meta({
      id: 'PhotoStrokes',
      description: 'What was drawn on a photo, in parts of its width and height; the photo itself stays as it is.',
    }),
  )

/** A readings file as it is written; what its texts say is read by `readReadings`. */
export const readingsShape = z.strictObject({
  format: z.enum(['lapwise-readings/3', 'lapwise-readings/2', 'lapwise-readings/1']),
  run: text.check(z.meta({ description: 'The name of the run.' })),
  units: z._default(z.enum(['us', 'metric']), 'us'),
  visit: z
    ._default(
      z.strictObject({
        by: z.optional(text),
        at: z.optional(moment),
        instrument: z.optional(note),
        where: z.optional(note),
        version: z.optional(text),
      }),
      {},
    )
    .check(z.meta({ description: 'What holds for every reading that does not say otherwise.' })),
  readings: listOf(reading, 'readings'),
  findings: z._default(listOf(finding, 'readings'), []),
  photoStrokes: z._default(listOf(photoStrokes, 'readings'), []),
})

export type ReadingsShape = z.output<typeof readingsShape>
export type ReadingShape = ReadingsShape['readings'][number]
