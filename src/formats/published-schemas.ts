import * as z from 'zod/mini'
import { deviceFileShape } from './entry/device-file.ts'
import { fieldDescriptions } from './field-descriptions.ts'
import { manifestShape } from './handover/handover-shape.ts'
import { readingsShape } from './readings/readings-shape.ts'
import { recordFileShape } from './record/record-file-shape.ts'
import { runShape } from './run/run-shape.ts'
import { sheetShape } from './sheet/sheet-shape.ts'
import { siteSchema } from './site/site-file.ts'

const formats = {
  sheet: { schema: sheetShape(), title: 'Lapwise hardware sheet' },
  run: { schema: runShape, title: 'Lapwise run' },
  site: { schema: siteSchema, title: 'Lapwise site' },
  readings: { schema: readingsShape, title: 'Lapwise readings' },
  handover: { schema: manifestShape, title: 'What a handover says of itself' },
  record: { schema: recordFileShape, title: 'All that an inspection record says' },
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
  const { $defs = {}, ...bare } = rest
  const [root, shapes] = withEditorLine(bare, $defs)
  const described = { ...withDescription(`${format} file`, describeFields(format, root)), ...describeAll(shapes) }
  return { $schema, $id: `urn:lapwise:${format}:1`, title, ...described }
}

type Shape = z.core.JSONSchema.BaseSchema

/** A schema of which a whole file may name its schema, so that an editor finds it. */
function withEditorLine(root: Shape, $defs: Readonly<Record<string, Shape>>): [Shape, Readonly<Record<string, Shape>>] {
  const open = (shape: Shape): Shape => ({ ...shape, properties: { $schema: { type: 'string' }, ...shape.properties } })
  if (root.properties) return [open(root), $defs]
  const ids = (root.oneOf ?? []).map(({ $ref }) => ($ref ?? '').replace('#/$defs/', ''))
  return [
    root,
    Object.fromEntries(Object.entries($defs).map(([id, shape]) => [id, ids.includes(id) ? open(shape) : shape])),
  ]
}

const describeAll = ($defs: Readonly<Record<string, object>>) => {
  const described = Object.entries($defs).map(([id, schema]) => [id, withDescription(id, describeFields(id, schema))])
  return described.length === 0 ? {} : { $defs: Object.fromEntries(described) }
}

/** A schema with what each of its fields means. `path` is that of the schema. */
function describeFields<T>(path: string, schema: T): T {
  if (Array.isArray(schema)) return schema.map((one) => describeFields(path, one)) as T
  if (typeof schema !== 'object' || schema === null) return schema
  const parts = Object.entries(schema).map(([key, part]) => [
    key,
    key === 'properties' && typeof part === 'object' ? describeProperties(path, part) : describeFields(path, part),
  ])
  return Object.fromEntries(parts)
}

const describeProperties = (path: string, properties: Readonly<Record<string, object | boolean>>) =>
  Object.fromEntries(
    Object.entries(properties).map(([name, schema]) => {
      const at = `${path}.${name}`
      const inside = describeFields(at, schema)
      return [name, typeof inside === 'object' ? withDescription(at, inside) : inside]
    }),
  )

function withDescription<T extends object>(path: string, schema: T): T {
  const description = descriptionOf(path)
  return description === undefined ? schema : { description, ...schema }
}

/** The description whose key is the longest end of a path. */
function descriptionOf(path: string): string | undefined {
  const names = path.split('.')
  const key = names.map((_, at) => names.slice(at).join('.')).find((end) => end in fieldDescriptions)
  return key === undefined ? undefined : fieldDescriptions[key]
}

/** Path of the schema in the project, from its root. */
export const publishedPath = (format: PublishedFormat): string => `docs/schemas/${format}.schema.json`
