import * as z from 'zod/mini'
import { deviceFileShape } from './entry/device-file.ts'
import { manifestShape } from './handover/handover-shape.ts'
import { readingsShape } from './readings/readings-shape.ts'
import { runShape } from './run/run-shape.ts'
import { sheetShape } from './sheet/sheet-shape.ts'
import { siteSchema } from './site/site-file.ts'

const formats = {
  sheet: { schema: sheetShape(), title: 'Lapwise hardware sheet' },
  run: { schema: runShape, title: 'Lapwise run' },
  site: { schema: siteSchema, title: 'Lapwise site' },
  readings: { schema: readingsShape, title: 'Lapwise readings' },
  handover: { schema: manifestShape, title: 'What a handover says of itself' },
  device: { schema: deviceFileShape, title: 'Everything on one device' },
} satisfies Record<string, { schema: z.core.$ZodType; title: string }>

export type PublishedFormat = keyof typeof formats

export const publishedFormats = Object.keys(formats) as PublishedFormat[]

/**
 * The JSON Schema (draft 2020-12) of a format, for editors and other programs.
 *
 * It says what shape a file has. What only holds between several fields (an id that must exist, limits in order, a
 * text that must read as a length) is checked when the file is read.
 */
export function publishedSchema(format: PublishedFormat): object {
  const { schema, title } = formats[format]
  const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input' })
  return { $schema, $id: `urn:lapwise:${format}:1`, title, ...rest }
}

/** Path of the schema in the project, from its root. */
export const publishedPath = (format: PublishedFormat): string => `docs/schemas/${format}.schema.json`
