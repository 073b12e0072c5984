import * as z from 'zod/mini'
import { seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities } from '../../core/hardware/severity.ts'
import { units } from '../../core/units/quantity-kinds.ts'
import { drawnFields } from '../entry/stroke-shape.ts'
import { listOf, moment, ranged } from '../range/ranged.ts'

const text = z.string().check(z.minLength(1))
const note = z.nullable(text)

const valueText = text.check(z.meta({ id: 'ValueText' }))

const unit = z.enum(units)

/** The fields of which a reading has exactly one. */
export const answerFields = ['value', 'choice', 'confirmed', 'cannotSee', 'doesNotApply'] as const

const reading = z
  .strictObject({
    id: z.optional(text),
    of: text,
    value: z.optional(z.union([ranged('readingValue'), valueText])),
    unit: z.optional(unit),
    resolution: z.optional(valueText),
    side: z.optional(z.enum(['away', 'toward', 'not stated'])),
    uncertainty: z._default(
      z.nullable(z.union([valueText, z.strictObject({ value: ranged('instrumentStep'), unit })])),
      null,
    ),
    choice: z.optional(text),
    confirmed: z.optional(z.boolean()),
    cannotSee: z.optional(z.literal(true)),
    doesNotApply: z.optional(text),
    instrument: z.optional(note),
    by: z.optional(text),
    at: z.optional(moment),
    where: z.optional(note),
    note: z.optional(text.check(z.maxLength(4000))),
    version: z.optional(text),
    photos: z._default(listOf(text, 'photosOfReading'), []),
    corrects: z._default(note, null),
    rechecks: z._default(note, null),
    together: z._default(note, null),
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
    of: text,
    severity: z.optional(z.enum(severities)),
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
  .check(z.meta({ id: 'FreeFinding' }))

const photoStrokes = z
  .strictObject({
    id: text,
    photo: text,
    ...drawnFields,
    by: text,
    at: moment,
  })
  .check(z.meta({ id: 'PhotoStrokes' }))

/** A readings file as it is written; what its texts say is read by `readReadings`. */
export const readingsShape = z.strictObject({
  format: z.enum(['lapwise-readings/3', 'lapwise-readings/2', 'lapwise-readings/1']),
  run: text,
  units: z._default(z.enum(['us', 'metric']), 'us'),
  visit: z._default(
    z.strictObject({
      by: z.optional(text),
      at: z.optional(moment),
      instrument: z.optional(note),
      where: z.optional(note),
      version: z.optional(text),
    }),
    {},
  ),
  readings: listOf(reading, 'readings'),
  findings: z._default(listOf(finding, 'readings'), []),
  photoStrokes: z._default(listOf(photoStrokes, 'readings'), []),
})

export type ReadingsShape = z.output<typeof readingsShape>
export type ReadingShape = ReadingsShape['readings'][number]
