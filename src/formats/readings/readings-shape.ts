import { z } from 'zod'

const text = z.string().min(1)
const note = text.nullable()

const date = z.regexes.date.source.replace(/\$$/, '')
const time = '([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d(\\.\\d+)?)?'
const zone = '(Z|[+-]([01]\\d|2[0-3]):[0-5]\\d)?'

const moment = z
  .string()
  .regex(new RegExp(`${date}T${time}${zone}$`), { error: 'a date and time such as 2026-05-04T10:30 (ISO 8601)' })
  .meta({ id: 'Moment', description: 'ISO 8601 date and time; seconds and zone may be left out.' })

const lengthText = text.meta({
  id: 'LengthText',
  description: 'A length such as 30 3/4 in or 781 mm; without a unit it is inches in a us file, mm in a metric one.',
})

const unit = z.enum(['in', 'ft', 'mm', 'm'])

/** The fields of which a reading has exactly one. */
export const answerFields = ['value', 'choice', 'confirmed', 'cannotSee', 'doesNotApply'] as const

const reading = z
  .strictObject({
    id: text.optional().meta({ description: 'r1, r2 … by place in the list when left out.' }),
    of: text.meta({ description: 'The requirement it answers, as post-3/rail-height.' }),
    value: z.union([z.number(), lengthText]).optional(),
    unit: unit.optional().meta({ description: 'Unit of a value that names none.' }),
    resolution: lengthText
      .optional()
      .meta({ description: 'Smallest step read; when left out, the step to which the instrument is read.' }),
    uncertainty: z
      .union([lengthText, z.strictObject({ value: z.number().positive(), unit })])
      .nullable()
      .default(null)
      .meta({ description: 'Standard uncertainty, k = 1.' }),
    choice: text.optional(),
    confirmed: z.boolean().optional(),
    cannotSee: z.literal(true).optional(),
    doesNotApply: text.optional().meta({ description: 'Because of what.' }),
    instrument: note.optional(),
    by: text.optional(),
    at: moment.optional(),
    where: note.optional(),
    photos: z.array(text).default([]),
    corrects: note.default(null).meta({ description: 'Id of an earlier reading that this one replaces.' }),
    rechecks: note.default(null).meta({ description: 'Id of the finding that this one rechecks.' }),
    together: note
      .default(null)
      .meta({ description: 'A name shared by readings that were taken in one go for several places.' }),
  })
  .meta({
    id: 'Reading',
    oneOf: answerFields.map((field) => ({ required: [field] })),
  })

/** A readings file as it is written; what its texts say is read by `readReadings`. */
export const readingsShape = z.strictObject({
  format: z.literal('lapwise-readings/1'),
  run: text.meta({ description: 'The name of the run.' }),
  units: z.enum(['us', 'metric']).default('us'),
  visit: z
    .strictObject({ by: text.optional(), at: moment.optional(), instrument: note.optional(), where: note.optional() })
    .default({})
    .meta({ description: 'What holds for every reading that does not say otherwise.' }),
  readings: z.array(reading),
})

export type ReadingsShape = z.output<typeof readingsShape>
export type ReadingShape = ReadingsShape['readings'][number]
