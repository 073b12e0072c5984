import { z } from 'zod'
import { railLength, stretchFrom, stretchTo } from '../length-field.ts'
import { sheetSchema } from '../sheet/sheet-file.ts'

const text = z.string().min(1)
const sheetId = text.meta({ description: 'The id of a hardware sheet, shipped or listed in `sheets`.' })

const end = z
  .union(
    [
      z.strictObject({ sheet: sheetId, at: railLength.nullable().default(null) }),
      z.strictObject({
        standingSplice: z.strictObject({ at: railLength, position: z.enum(['post', 'midspan']) }),
      }),
    ],
    { error: 'an object with "sheet", or one with "standingSplice"' },
  )
  .meta({
    id: 'RunEnd',
    description: 'An end unit by its sheet, with the place of its origin when that is given; or a splice that stands.',
  })

const road = z.strictObject({
  route: text.nullable().default(null),
  side: z.enum(['right', 'left']).nullable().default(null).meta({
    description: 'Side of the road, looking up-station.',
  }),
  datumStation: text.nullable().default(null).meta({
    description: "Station of the run's datum: 104+00 in a us file, 1+237.500 in a metric one.",
  }),
  speed: z.number().positive().nullable().default(null).meta({
    description: 'Miles an hour in a us file, kilometres an hour in a metric one.',
  }),
  traffic: z.enum(['two-way', 'one-way', 'divided']).nullable().default(null),
})

const panels = z.array(railLength)

/** A run file as it is written, with defaults filled in and lengths as inches. */
export const runShape = z.strictObject({
  format: z.literal('lapwise-run/1'),
  name: text,
  units: z.enum(['us', 'metric']).default('us').meta({
    description: 'For stations, speed and print. A bare length along the rail is inches in both.',
  }),
  road: road.prefault({}),
  work: z.enum(['new', 'standing']).nullable().default(null),
  letting: z.iso.date({ error: 'a date such as 2017-03-15' }).nullable().default(null),
  system: sheetId,
  first: end,
  second: end,
  need: z.strictObject({ from: stretchFrom, to: stretchTo }).nullable().default(null),
  stock: z
    .array(z.union([railLength, z.strictObject({ length: railLength, count: z.int().min(0) })]))
    .min(1)
    .nullable()
    .default(null),
  obstructions: z.array(z.strictObject({ name: text, from: stretchFrom, to: stretchTo })).default([]),
  reduced: z
    .array(
      z.strictObject({
        from: stretchFrom,
        to: stretchTo,
        spacing: z.enum(['full', 'half', 'quarter']),
        nested: z.boolean().default(false),
      }),
    )
    .default([]),
  standing: z
    .strictObject({ postOneAt: railLength, panels, postsDriven: z.int().min(0) })
    .nullable()
    .default(null),
  mayExtend: railLength.default(600),
  decision: z
    .strictObject({ postOneAt: railLength, panels: panels.min(1) })
    .nullable()
    .default(null),
  decisionRule: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('guard band'), multiple: z.number().positive() }),
      z.strictObject({ kind: z.literal('simple') }),
    ])
    .default({ kind: 'guard band', multiple: 1 }),
  instruments: z
    .array(
      z.strictObject({
        id: text,
        name: text,
        standardUncertainty: z.number().positive().meta({ description: 'k = 1, of one reading, in `unit`.' }),
        unit: z.enum(['in', 'ft', 'mm', 'm']),
        readTo: z.number().positive().meta({ description: 'Smallest step to which it is read, in `unit`.' }),
        source: text,
        confirmation: z.enum(['published', 'common practice', 'from memory']),
      }),
    )
    .default([]),
  sheets: z.array(sheetSchema).default([]),
})

export type RunShape = z.output<typeof runShape>
